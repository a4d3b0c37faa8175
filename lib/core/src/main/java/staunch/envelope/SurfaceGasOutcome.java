package staunch.envelope;

import java.util.Objects;
import java.util.OptionalDouble;
import staunch.control.CirculationMethod;
import staunch.control.CirculationPoint;
import staunch.units.Kind;
import staunch.units.Si;

/** Gas at surface while the influx is circulated out. */
public sealed interface SurfaceGasOutcome permits SurfaceGasOutcome.Computed, NotAssessed {
    /**
     * The greatest gas rate.
     *
     * @param method by which it is the greater
     * @param rate at the choke, m³/s at 15 °C and one atmosphere
     * @param moment when
     * @param separator what it does to the separator
     */
    record Computed(
            CirculationMethod method,
            @Si(value = "m3/s", kind = Kind.STANDARD) double rate,
            CirculationPoint moment,
            SeparatorOutcome separator)
            implements SurfaceGasOutcome {
        public Computed {
            Objects.requireNonNull(method, "method");
            Objects.requireNonNull(moment, "moment");
            Objects.requireNonNull(separator, "separator");
        }
    }

    /** The separator at the greatest gas rate. */
    sealed interface SeparatorOutcome permits Separator, NotAssessed {}

    /**
     * The separator holds the gas back as long as the mud leg weighs more than the gas needs to leave by the vent.
     *
     * @param pressure in the separator: friction of the vent line, Pa gauge
     * @param handPressure the same by the hand formula, Pa gauge
     * @param mudLeg weight of the fluid in the mud leg, Pa
     * @param legDensity of that fluid, kg/m³
     * @param capacity that the maker states, m³/s at 15 °C and one atmosphere, where given
     */
    record Separator(
            @Si(value = "Pa", kind = Kind.GAUGE) double pressure,
            @Si(value = "Pa", kind = Kind.GAUGE) double handPressure,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double mudLeg,
            @Si("kg/m3") double legDensity,
            @Si(value = "m3/s", kind = Kind.STANDARD) OptionalDouble capacity)
            implements SeparatorOutcome {
        public Separator {
            Objects.requireNonNull(capacity, "capacity");
        }

        /** What the mud leg holds beyond the pressure; at or below zero the gas blows through. */
        @Si(value = "Pa", kind = Kind.DIFFERENCE)
        public double blowThroughMargin() {
            return mudLeg - pressure;
        }
    }
}
