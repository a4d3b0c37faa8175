package staunch.control;

import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * What a stretch of the well holds from inside: pressures at depths downwards, linear in vertical depth between them. Two
 * pressures at one depth are a step; a single depth is a point.
 *
 * @param name what it protects, in plain words
 * @param measuredDepth m, in rising order
 * @param pressure at each depth, Pa absolute, above zero to 1e10
 */
public record LimitLine(
        String name,
        @Si(value = "m", kind = Kind.DEPTH) double[] measuredDepth,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double[] pressure) {
    public LimitLine {
        Check.text("name of the limit", name);
        measuredDepth = measuredDepth.clone();
        pressure = pressure.clone();
        if (measuredDepth.length == 0 || measuredDepth.length != pressure.length) {
            throw new InputFault(
                    "limit of " + name, "has no pressure for each depth", "give one pressure for each depth");
        }
        for (int i = 0; i < pressure.length; i++) {
            Check.within("measured depth of " + name, measuredDepth[i], 0, 20_000, Measure.DEPTH);
            Check.within("limit of " + name, pressure[i], 0, 1e10, Measure.PRESSURE_ABSOLUTE);
            if (i > 0 && measuredDepth[i] < measuredDepth[i - 1]) {
                throw new InputFault("limit of " + name, "has depths out of order", "give them downwards");
            }
        }
    }

    /** A limit at one depth. */
    public static LimitLine at(PressureLimit limit) {
        return new LimitLine(limit.name(), new double[] {limit.measuredDepth()}, new double[] {limit.pressure()});
    }

    @Override
    @Si(value = "m", kind = Kind.DEPTH)
    public double[] measuredDepth() {
        return measuredDepth.clone();
    }

    @Override
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double[] pressure() {
        return pressure.clone();
    }
}
