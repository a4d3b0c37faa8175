package staunch.control;

import java.util.Objects;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * The limit that is closest at a moment.
 *
 * @param name of the limit
 * @param measuredDepth where it is closest, m
 * @param margin limit less pressure there, Pa; negative where it is exceeded
 */
public record ClosestLimit(
        String name,
        @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) double margin) {
    public ClosestLimit {
        Objects.requireNonNull(name, "name");
    }
}
