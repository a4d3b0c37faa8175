package staunch.influx;

import staunch.units.Kind;
import staunch.units.Si;

/**
 * Pressure at the lower end of a bubble that has risen to a depth while bottom-hole pressure is held: the mud below it is
 * known whatever the size of the bubble.
 */
@FunctionalInterface
public interface LowerEnd {
    /**
     * Pressure there.
     *
     * @param measuredDepth of the lower end, m
     * @param verticalDepth of the lower end, m
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    double pressure(
            @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth);
}
