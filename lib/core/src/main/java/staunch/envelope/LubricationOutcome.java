package staunch.envelope;

import java.util.Objects;
import staunch.control.LubricateAndBleed;
import staunch.units.Kind;
import staunch.units.Si;

/** Lubricate and bleed once the gas is at the top of the annulus. */
public sealed interface LubricationOutcome permits LubricationOutcome.Computed, NotAssessed {
    /**
     * The step table.
     *
     * @param gasBottom measured depth of the lower end of the gas at the start, m
     * @param bottomHolePressure that is held, Pa absolute
     * @param table steps
     */
    record Computed(
            @Si(value = "m", kind = Kind.DEPTH) double gasBottom,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double bottomHolePressure,
            LubricateAndBleed.Table table)
            implements LubricationOutcome {
        public Computed {
            Objects.requireNonNull(table, "table");
        }
    }
}
