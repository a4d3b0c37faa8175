package staunch.control;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * One moment of a circulation.
 *
 * @param phase of the operation
 * @param pumped volume since the start of the phase's circulation, m³
 * @param time since the start of that circulation, s
 * @param strokes since the start of that circulation, where the pump's output is known
 * @param gasTop measured depth of the top of the gas, m; empty where no gas is left
 * @param gasBottom measured depth of the lower end of the gas, m; empty where no gas is left
 * @param chokePressure at the choke, Pa gauge
 * @param bottomHolePressure Pa absolute: the pressure held, or more where even a fully open choke cannot hold it down
 * @param watched pressures at the watched depths, Pa absolute
 * @param gasVolume in the well, m³: the pit gain, as mud is taken as incompressible
 * @param gasMass in the well, kg
 * @param gasRate leaving at the choke, m³/s at 15 °C and one atmosphere
 * @param closest limit of all that are watched; empty where none are
 */
public record CirculationPoint(
        Phase phase,
        @Si("m3") double pumped,
        @Si("s") double time,
        @Si("1") OptionalDouble strokes,
        @Si(value = "m", kind = Kind.DEPTH) OptionalDouble gasTop,
        @Si(value = "m", kind = Kind.DEPTH) OptionalDouble gasBottom,
        @Si(value = "Pa", kind = Kind.GAUGE) double chokePressure,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double bottomHolePressure,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double[] watched,
        @Si("m3") double gasVolume,
        @Si("kg") double gasMass,
        @Si(value = "m3/s", kind = Kind.STANDARD) double gasRate,
        Optional<ClosestLimit> closest) {
    public CirculationPoint {
        Objects.requireNonNull(phase, "phase");
        Objects.requireNonNull(closest, "closest");
        watched = watched.clone();
    }

    @Override
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double[] watched() {
        return watched.clone();
    }

    /** Part of the operation. */
    public enum Phase {
        INFLUX_RISING("influx on its way up"),
        INFLUX_LEAVING("gas at the choke"),
        KILL_MUD_DOWN("kill mud on its way down the string"),
        KILL_MUD_UP("kill mud on its way up the annulus");

        private final String title;

        Phase(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }
}
