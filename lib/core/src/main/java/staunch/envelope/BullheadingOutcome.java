package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.control.Bullheading;
import staunch.units.Kind;
import staunch.units.Si;

/** The influx pumped back into its formation. */
public sealed interface BullheadingOutcome permits BullheadingOutcome.Computed, NotAssessed {
    /**
     * Whether it can be done.
     *
     * @param rate pumped, m³/s
     * @param friction of the annulus at that rate, Pa
     * @param injectionPressure at which the formation takes fluid, Pa absolute
     * @param killDensity of the mud pumped, kg/m³
     * @param stages from the start until the influx is in the formation
     * @param lineFriction of the line that a subsea well is pumped through, Pa; the stages are at the stack, without it
     * @param pump greatest pump pressure, friction of the line with it, against the rating of the pump
     * @param loads the load with the least margin of each limit
     */
    record Computed(
            @Si("m3/s") double rate,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double friction,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double injectionPressure,
            @Si("kg/m3") double killDensity,
            List<Bullheading.Stage> stages,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double lineFriction,
            Bullheading.Load pump,
            List<Bullheading.Load> loads)
            implements BullheadingOutcome {
        public Computed {
            stages = List.copyOf(stages);
            Objects.requireNonNull(pump, "pump");
            loads = List.copyOf(loads);
        }

        /** Load with the least margin, the pump's among them. */
        public Bullheading.Load governing() {
            return new Bullheading.Outcome(stages, pump, loads).governing();
        }

        /** Whether every limit holds. */
        public boolean feasible() {
            return governing().margin() > 0;
        }
    }
}
