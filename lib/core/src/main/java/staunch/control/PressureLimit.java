package staunch.control;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * A pressure that must not be exceeded at a depth of the annulus.
 *
 * @param name what it protects, in plain words
 * @param measuredDepth m
 * @param pressure Pa absolute, 1e5 to 4e8
 */
public record PressureLimit(
        String name,
        @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure) {
    public PressureLimit {
        Check.text("name of the limit", name);
        Check.within("measured depth of " + name, measuredDepth, 0, 20_000, Measure.DEPTH);
        Check.within("limit of " + name, pressure, 1e5, 4e8, Measure.PRESSURE_ABSOLUTE);
    }
}
