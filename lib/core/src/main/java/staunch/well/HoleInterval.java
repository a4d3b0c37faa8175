package staunch.well;

import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.Si;

/**
 * A stretch of open hole with one diameter.
 *
 * @param topDepth measured depth, m
 * @param bottomDepth measured depth, m
 * @param diameter of the hole as it is, washout included, m
 */
public record HoleInterval(
        @Si(value = "m", kind = Kind.DEPTH) double topDepth,
        @Si(value = "m", kind = Kind.DEPTH) double bottomDepth,
        @Si(value = "m", kind = Kind.DIAMETER) double diameter) {
    public HoleInterval {
        Check.within("top of the hole interval", topDepth, 0, 20_000, Measure.DEPTH);
        Check.within("bottom of the hole interval", bottomDepth, 0, 20_000, Measure.DEPTH);
        if (bottomDepth <= topDepth) {
            throw new InputFault("hole interval", "has its bottom at or above its top", "check its depths");
        }
        Check.within("hole diameter", diameter, 0.05, 1.5, Measure.DIAMETER);
    }

    /** In units as written. */
    public static HoleInterval of(Quantity topDepth, Quantity bottomDepth, Quantity diameter) {
        return new HoleInterval(
                topDepth.si("top of the hole interval", Measure.DEPTH),
                bottomDepth.si("bottom of the hole interval", Measure.DEPTH),
                diameter.si("hole diameter", Measure.DIAMETER));
    }
}
