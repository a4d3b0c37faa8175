package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.control.CirculationMethod;
import staunch.control.CirculationPoint;
import staunch.control.CirculationSchedule;
import staunch.units.Kind;
import staunch.units.Si;

/** The influx circulated out by one method. */
public sealed interface CirculationOutcome permits CirculationOutcome.Computed, NotAssessed {
    /**
     * The circulation in time.
     *
     * @param method driller's with both circulations, or wait-and-weight
     * @param pumpRate m³/s
     * @param chokeLineFriction at that rate, Pa; zero for a stack at surface
     * @param bottomHolePressure held, Pa absolute
     * @param schedule moments, and those at which something is greatest
     * @param peaks highest pressure at each watched depth
     * @param byHand pressure at the top of the gas by the classical quadratic, at the watched depths it passes; driller's
     *     method only
     */
    record Computed(
            CirculationMethod method,
            @Si("m3/s") double pumpRate,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double chokeLineFriction,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double bottomHolePressure,
            CirculationSchedule schedule,
            List<Peak> peaks,
            List<HandPressure> byHand)
            implements CirculationOutcome {
        public Computed {
            Objects.requireNonNull(method, "method");
            Objects.requireNonNull(schedule, "schedule");
            peaks = List.copyOf(peaks);
            byHand = List.copyOf(byHand);
        }

        /** Whether every watched limit holds; a formation load equal to its limit does. */
        public boolean holds() {
            return schedule.leastMargin()
                    .flatMap(CirculationPoint::closest)
                    .map(c -> c.margin() >= 0)
                    .orElse(true);
        }
    }

    /**
     * Highest pressure at a depth.
     *
     * @param where the depth
     * @param pressure Pa absolute
     * @param moment when
     */
    record Peak(
            KickOperations.WatchedDepth where,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            CirculationPoint moment) {
        public Peak {
            Objects.requireNonNull(where, "where");
            Objects.requireNonNull(moment, "moment");
        }
    }
}
