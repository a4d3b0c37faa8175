package staunch.well;

import java.util.List;
import java.util.Objects;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * What bounds an annulus.
 *
 * @param casing strings and liners set; at each depth the innermost counts
 * @param openHole intervals below the deepest shoe, top to bottom without gaps; what lies above that shoe is cased and
 *     does not count
 * @param string in the hole
 * @param bitDepth measured depth of the bit, m; below it the full bore counts
 * @param topDepth measured depth where the annulus ends upwards, m: zero, or the stack on the seabed
 * @param bottomDepth measured depth of the bottom of the hole, m
 */
public record AnnulusGeometry(
        List<CasingString> casing,
        List<HoleInterval> openHole,
        DrillString string,
        @Si(value = "m", kind = Kind.DEPTH) double bitDepth,
        @Si(value = "m", kind = Kind.DEPTH) double topDepth,
        @Si(value = "m", kind = Kind.DEPTH) double bottomDepth) {
    public AnnulusGeometry {
        casing = List.copyOf(casing);
        openHole = List.copyOf(openHole);
        Objects.requireNonNull(string, "string");
        Check.within("measured depth of the top of the annulus", topDepth, 0, 20_000, Measure.DEPTH);
        Check.within("measured depth of the bottom of the annulus", bottomDepth, 0, 20_000, Measure.DEPTH);
        if (bottomDepth <= topDepth) {
            throw new InputFault("annulus", "has its bottom at or above its top", "check both depths");
        }
        Check.within("measured depth of the bit", bitDepth, 0, bottomDepth, Measure.DEPTH);
        for (int i = 1; i < openHole.size(); i++) {
            if (Math.abs(openHole.get(i).topDepth() - openHole.get(i - 1).bottomDepth()) > 1e-6) {
                throw new InputFault(
                        "open hole",
                        "has a gap or an overlap between interval " + i + " and " + (i + 1),
                        "let each interval begin where the one above it ends");
            }
        }
    }
}
