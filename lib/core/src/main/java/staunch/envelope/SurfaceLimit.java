package staunch.envelope;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * One component of the greatest pressure that the closed choke may show.
 *
 * @param name weak point, string interval or piece of equipment, in the words of the case
 * @param type what may break
 * @param pressure greatest static surface pressure with mud from choke to there, Pa gauge, rounded nowhere; empty where
 *     not assessed
 * @param measuredDepth where it applies, m; zero at surface
 * @param verticalDepth where it applies, m
 * @param notAssessed reason and missing field, where there is no value
 */
public record SurfaceLimit(
        String name,
        Type type,
        @Si(value = "Pa", kind = Kind.GAUGE) OptionalDouble pressure,
        @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
        @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
        Optional<String> notAssessed) {
    public SurfaceLimit {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(pressure, "pressure");
        Objects.requireNonNull(notAssessed, "notAssessed");
    }

    /** What may break. */
    public enum Type {
        FORMATION("formation"),
        CASING("casing burst"),
        LINER_TOP("liner top"),
        WELLHEAD("wellhead"),
        BOP("BOP stack"),
        CHOKE_LINE("choke line"),
        CHOKE_MANIFOLD("choke manifold");

        private final String title;

        Type(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }
}
