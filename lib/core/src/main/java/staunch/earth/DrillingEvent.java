package staunch.earth;

import java.util.Objects;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * Something seen while an offset well was drilled, with the mud pressure on the formation at that moment. It bounds what
 * the rock holds or bears and measures neither.
 *
 * @param name what the report calls it
 * @param type what was seen
 * @param verticalDepth of the formation, below the datum of its well, m, 1 to 20 000
 * @param pressure of the mud there, Pa absolute, 0.1 to 400 MPa: for losses with circulation and cuttings where they ran,
 *     for a kick with the shut-in drill-pipe pressure where it was read
 * @param source where the figures come from
 */
public record DrillingEvent(
        String name,
        Type type,
        @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
        Source source) {
    public DrillingEvent {
        Check.text("name of the event", name);
        Objects.requireNonNull(type, "type");
        Check.within("vertical depth of the event", verticalDepth, 1, 20_000, Measure.DEPTH);
        Check.within("mud pressure of the event", pressure, 1e5, 4e8, Measure.PRESSURE_ABSOLUTE);
        Objects.requireNonNull(source, "source");
    }

    /** What was seen. */
    public enum Type {
        /** Mud was lost: the strength, at least of what took it, was not above the mud pressure. */
        LOSS("losses", "strength at most"),
        /** The formation flowed: its pore pressure was not below the mud pressure. */
        KICK("kick", "pore pressure at least"),
        /** Drilled without a kick: a permeable formation was not above the mud pressure; a tight one may have been. */
        MUD("drilled without a kick", "pore pressure hardly above");

        private final String title;
        private final String bound;

        Type(String title, String bound) {
            this.title = title;
            this.bound = bound;
        }

        /** In plain words. */
        public String title() {
            return title;
        }

        /** What it bounds. */
        public String bound() {
            return bound;
        }
    }
}
