package staunch.control;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.units.Si;

/**
 * A circulation in time.
 *
 * @param points in order
 * @param greatestChokePressure moment of the highest choke pressure
 * @param greatestGasVolume moment of the largest pit gain
 * @param greatestGasRate moment of the highest gas rate at the choke
 * @param greatestWatched for each watched depth the moment of its highest pressure
 * @param leastMargin moment at which a limit is closest; empty where no limits are watched
 * @param influxMass of gas taken, kg
 */
public record CirculationSchedule(
        List<CirculationPoint> points,
        CirculationPoint greatestChokePressure,
        CirculationPoint greatestGasVolume,
        CirculationPoint greatestGasRate,
        List<CirculationPoint> greatestWatched,
        Optional<CirculationPoint> leastMargin,
        @Si("kg") double influxMass) {
    public CirculationSchedule {
        points = List.copyOf(points);
        Objects.requireNonNull(greatestChokePressure, "greatestChokePressure");
        Objects.requireNonNull(greatestGasVolume, "greatestGasVolume");
        Objects.requireNonNull(greatestGasRate, "greatestGasRate");
        greatestWatched = List.copyOf(greatestWatched);
        Objects.requireNonNull(leastMargin, "leastMargin");
    }
}
