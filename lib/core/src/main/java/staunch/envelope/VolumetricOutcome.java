package staunch.envelope;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.control.ClosestLimit;
import staunch.control.VolumetricMethod;
import staunch.units.Amount;
import staunch.units.Kind;
import staunch.units.Si;
import staunch.units.UnitSystem;
import staunch.units.Wording;

/** The volumetric method while the gas rises. */
public sealed interface VolumetricOutcome permits VolumetricOutcome.Computed, NotAssessed {
    /**
     * The step table.
     *
     * @param rate slip law in plain words; it sets the times alone
     * @param amounts quantities it names, in their order
     * @param lowest bottom of the window of bottom-hole pressure, Pa absolute
     * @param highest top of the window, Pa absolute
     * @param table steps and states
     * @param closest limit that comes closest on the way; empty where none is known
     */
    record Computed(
            String rate,
            List<Amount> amounts,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double lowest,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double highest,
            VolumetricMethod.Table table,
            Optional<ClosestLimit> closest)
            implements VolumetricOutcome {
        public Computed {
            Objects.requireNonNull(rate, "rate");
            amounts = List.copyOf(amounts);
            Objects.requireNonNull(table, "table");
            Objects.requireNonNull(closest, "closest");
        }

        /** The slip law in the given units. */
        public String rate(UnitSystem units) {
            return new Wording(rate, amounts).in(units);
        }
    }
}
