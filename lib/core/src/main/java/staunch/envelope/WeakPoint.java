package staunch.envelope;

import java.util.Objects;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * A depth that may break, with what it holds.
 *
 * @param name the shoe, a named weak zone, or "open hole"
 * @param measuredDepth m
 * @param verticalDepth m
 * @param strength of the formation there, Pa absolute
 * @param limit strength less the margin of the criteria, Pa absolute
 * @param basis what the strength rests on, in plain words
 */
public record WeakPoint(
        String name,
        @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
        @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double strength,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double limit,
        String basis) {
    public WeakPoint {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(basis, "basis");
    }
}
