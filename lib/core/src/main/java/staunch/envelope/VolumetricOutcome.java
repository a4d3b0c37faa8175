package staunch.envelope;

import java.util.Objects;
import java.util.Optional;
import staunch.control.ClosestLimit;
import staunch.control.VolumetricMethod;
import staunch.units.Kind;
import staunch.units.Si;

/** The volumetric method while the gas rises. */
public sealed interface VolumetricOutcome permits VolumetricOutcome.Computed, NotAssessed {
    /**
     * The step table.
     *
     * @param rate slip law in plain words; it sets the times alone
     * @param lowest bottom of the window of bottom-hole pressure, Pa absolute
     * @param highest top of the window, Pa absolute
     * @param table steps and states
     * @param closest limit that comes closest on the way; empty where none is known
     */
    record Computed(
            String rate,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double lowest,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double highest,
            VolumetricMethod.Table table,
            Optional<ClosestLimit> closest)
            implements VolumetricOutcome {
        public Computed {
            Objects.requireNonNull(rate, "rate");
            Objects.requireNonNull(table, "table");
            Objects.requireNonNull(closest, "closest");
        }
    }
}
