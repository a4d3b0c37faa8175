package staunch.envelope;

import java.util.Objects;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * The influx that a tolerance is asked for.
 *
 * @param scenario drilled or swabbed
 * @param measuredDepth of the influx, m
 * @param verticalDepth of the influx, m
 * @param formationPressure at that depth, Pa absolute
 * @param mudPressure static pressure of the mud at that depth, Pa absolute
 * @param governedBy what set the formation pressure
 */
public record Kick(
        Scenario scenario,
        @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
        @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double formationPressure,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double mudPressure,
        PressureBasis governedBy) {
    public Kick {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(governedBy, "governedBy");
    }

    /** How the influx came in. */
    public enum Scenario {
        DRILLED("drilled kick"),
        SWABBED("swabbed kick");

        private final String title;

        Scenario(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /** What set the formation pressure. */
    public enum PressureBasis {
        MUD_PLUS_INTENSITY("mud pressure plus kick intensity"),
        PORE_PRESSURE("pore pressure"),
        PORE_PRESSURE_PLUS_INTENSITY("pore pressure plus kick intensity"),
        MUD_PRESSURE("static mud pressure");

        private final String title;

        PressureBasis(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }
}
