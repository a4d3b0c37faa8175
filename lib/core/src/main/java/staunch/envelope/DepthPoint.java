package staunch.envelope;

import java.util.Objects;
import java.util.OptionalDouble;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Tolerance and shoe margin with the bit and the influx at one depth of the section.
 *
 * @param measuredDepth m
 * @param verticalDepth m
 * @param drilled tolerance of the drilled kick
 * @param swabbed tolerance of the swabbed kick
 * @param formationMaasp static, with the hole drilled to this depth, Pa gauge, where assessed
 * @param shoeMargin least margin at the shoe while an influx of the required (or detectable) volume is circulated past
 *     it, Pa, where assessed; negative where it breaks
 */
public record DepthPoint(
        @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
        @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
        Tolerance drilled,
        Tolerance swabbed,
        @Si(value = "Pa", kind = Kind.GAUGE) OptionalDouble formationMaasp,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble shoeMargin) {
    public DepthPoint {
        Objects.requireNonNull(drilled, "drilled");
        Objects.requireNonNull(swabbed, "swabbed");
    }
}
