package staunch.envelope;

import java.util.Objects;
import staunch.control.LubricateAndBleed;
import staunch.units.Kind;
import staunch.units.Si;

/** Lubricate and bleed once the gas is at the top of the annulus. */
public sealed interface LubricationOutcome permits LubricationOutcome.Computed, NotAssessed {
    /**
     * The step table. Where the volumetric method ends inside its window, gas is bled to the bottom of it before the first
     * step, so that every step stays inside.
     *
     * @param gasBottom measured depth of the lower end of the gas at the start, m
     * @param bottomHolePressure to which gas is bled before the first step and after each, Pa absolute
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
