package staunch.envelope;

import java.util.Objects;
import java.util.OptionalDouble;
import staunch.control.CirculationMethod;
import staunch.units.Kind;
import staunch.units.Si;

/** Highest pressures while an influx is circulated out. */
public sealed interface CirculationPeaks permits CirculationPeaks.Computed, NotAssessed {
    /**
     * The peaks, found along the whole circulation.
     *
     * @param method of circulating out
     * @param volume of the influx at bottom-hole conditions at shut-in, m³
     * @param volumeBasis where the volume comes from
     * @param chokePressure highest pressure at the choke, Pa gauge
     * @param shoePressure highest pressure at the shoe above the section, Pa absolute; empty where the shoe is not followed
     */
    record Computed(
            CirculationMethod method,
            @Si("m3") double volume,
            String volumeBasis,
            @Si(value = "Pa", kind = Kind.GAUGE) double chokePressure,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) OptionalDouble shoePressure)
            implements CirculationPeaks {
        public Computed {
            Objects.requireNonNull(method, "method");
            Objects.requireNonNull(volumeBasis, "volumeBasis");
            Objects.requireNonNull(shoePressure, "shoePressure");
        }
    }
}
