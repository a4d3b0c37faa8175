package staunch.control;

import staunch.units.Kind;
import staunch.units.Si;

/**
 * One moment of a migration in a closed well.
 *
 * @param time since shut-in, s
 * @param lowerEnd measured depth of the lower end of the gas, m
 * @param upperEnd measured depth of its upper end, m
 * @param surfacePressure at the surface gauge, Pa gauge
 * @param bottomHolePressure Pa absolute
 * @param gasVolume m³
 * @param watched pressures at the depths of the limits, in their order, Pa absolute
 */
public record MigrationPoint(
        @Si("s") double time,
        @Si(value = "m", kind = Kind.DEPTH) double lowerEnd,
        @Si(value = "m", kind = Kind.DEPTH) double upperEnd,
        @Si(value = "Pa", kind = Kind.GAUGE) double surfacePressure,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double bottomHolePressure,
        @Si("m3") double gasVolume,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double[] watched) {
    public MigrationPoint {
        watched = watched.clone();
    }

    @Override
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double[] watched() {
        return watched.clone();
    }

    /** Pressure at the depth of one limit. */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double watched(int limit) {
        return watched[limit];
    }
}
