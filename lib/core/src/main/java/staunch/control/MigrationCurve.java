package staunch.control;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.influx.SlipLaw;

/**
 * A migration in a closed well at one rate.
 *
 * @param law of the rise
 * @param points in order of time
 * @param ending why it ends
 * @param limits for each limit when it is first reached
 */
public record MigrationCurve(SlipLaw law, List<MigrationPoint> points, Ending ending, List<LimitTime> limits) {
    public MigrationCurve {
        Objects.requireNonNull(law, "law");
        points = List.copyOf(points);
        Objects.requireNonNull(ending, "ending");
        limits = List.copyOf(limits);
    }

    /** The rise in plain words. */
    public String title() {
        return law.description();
    }

    /** Limit that is reached first; empty where none is before the end. */
    public Optional<LimitTime> earliest() {
        return limits.stream()
                .filter(l -> l.reached().isPresent())
                .min(Comparator.comparingDouble(l -> l.reached().get().time()));
    }

    /**
     * A limit and the first moment it is reached.
     *
     * @param limit what is watched
     * @param reached the moment; empty where it is not reached before the end of the curve
     */
    public record LimitTime(PressureLimit limit, Optional<MigrationPoint> reached) {
        public LimitTime {
            Objects.requireNonNull(limit, "limit");
            Objects.requireNonNull(reached, "reached");
        }
    }

    /** Why a migration ends. */
    public enum Ending {
        TOP("the gas has reached the top of the annulus"),
        HELD("the mud holds the gas where it is"),
        TRAPPED("the hole turns downwards on the way to surface");

        private final String title;

        Ending(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }
}
