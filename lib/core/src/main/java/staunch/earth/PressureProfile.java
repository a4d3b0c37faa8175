package staunch.earth;

import java.util.Arrays;
import staunch.units.Check;
import staunch.units.EquivalentDensity;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Quantity;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * Absolute pressure against vertical depth below the well's datum, linear in pressure between points. Two points at the
 * same depth make a step; at the step itself the lower pressure is given by {@link #lowestAt}, the higher by
 * {@link #highestAt}.
 */
public final class PressureProfile {
    /** Depths that differ by less are one depth: rounding of unit conversions and of the path, m. */
    private static final double SAME_DEPTH = 1e-6;

    private final double[] depth;
    private final double[] pressure;

    private PressureProfile(double[] depth, double[] pressure) {
        this.depth = depth;
        this.pressure = pressure;
    }

    /**
     * One equivalent density from the datum down to a vertical depth: p = pₐ + ρ g z. In units as written.
     *
     * @throws RangeFault where the density makes a pressure below the atmosphere's or above 400 MPa
     */
    public static PressureProfile ofEquivalentDensity(Quantity density, Quantity bottom) {
        double deep = bottom.si("bottom of the profile", Measure.DEPTH);
        double rho = density.si("equivalent density of the profile", Measure.EQUIVALENT_DENSITY);
        return of(new double[] {0, deep}, new double[] {Physics.ATMOSPHERE, EquivalentDensity.pressure(rho, deep)});
    }

    /**
     * Profile through points.
     *
     * @param verticalDepths not decreasing, m, at most two equal in a row
     * @param pressures absolute, Pa
     * @throws InputFault where there are no points, unequal numbers of them, or depths that decrease
     * @throws RangeFault where a pressure is below the atmosphere's or above 400 MPa
     */
    public static PressureProfile of(
            @Si(value = "m", kind = Kind.DEPTH) double[] verticalDepths,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double[] pressures) {
        if (verticalDepths.length == 0 || verticalDepths.length != pressures.length) {
            throw new InputFault(
                    "pressure profile", "needs as many pressures as depths, at least one", "check its points");
        }
        for (int i = 0; i < verticalDepths.length; i++) {
            Check.within("vertical depth of the pressure profile", verticalDepths[i], 0, 20_000, Measure.DEPTH);
            Check.within("pressure of the profile", pressures[i], 1e5, 4e8, Measure.PRESSURE_ABSOLUTE);
            if (i > 0 && verticalDepths[i] < verticalDepths[i - 1]) {
                throw new InputFault("pressure profile", "has depths that decrease", "sort its points downwards");
            }
            if (i > 1 && verticalDepths[i] == verticalDepths[i - 2]) {
                throw new InputFault("pressure profile", "has three points at one depth", "keep two at most");
            }
        }
        return new PressureProfile(verticalDepths.clone(), pressures.clone());
    }

    /** Depth of the first point. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double top() {
        return depth[0];
    }

    /** Depth of the last point. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double bottom() {
        return depth[depth.length - 1];
    }

    /** Whether a depth lies within the points, or outside by no more than rounding: 1e-6 m, where the end value counts. */
    public boolean covers(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        return verticalDepth >= top() - SAME_DEPTH && verticalDepth <= bottom() + SAME_DEPTH;
    }

    /** Depths of the points. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double[] depths() {
        return depth.clone();
    }

    /** Pressures of the points. */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double[] pressures() {
        return pressure.clone();
    }

    /**
     * Pressure at a depth; at a step the lower of the two.
     *
     * @throws RangeFault outside the points: a profile is never extended in silence
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double lowestAt(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        return Math.min(above(verticalDepth), below(verticalDepth));
    }

    /**
     * Pressure at a depth; at a step the higher of the two.
     *
     * @throws RangeFault outside the points: a profile is never extended in silence
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double highestAt(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        return Math.max(above(verticalDepth), below(verticalDepth));
    }

    /** Pressure just above a depth: the upper side of a step. */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double above(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        double z = within(verticalDepth);
        int i = Math.max(0, pointsAbove(z) - 1);
        return z == depth[i] || i == depth.length - 1 ? pressure[i] : between(i, z);
    }

    /** Pressure just below a depth: the lower side of a step. */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double below(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        double z = within(verticalDepth);
        int i = pointsAbove(z);
        while (i < depth.length && depth[i] == z) {
            i++;
        }
        i = Math.max(0, i - 1);
        return i == depth.length - 1 ? pressure[i] : between(i, z);
    }

    /** Number of points above a depth, none of those at it. */
    private int pointsAbove(double z) {
        int low = 0;
        int high = depth.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (depth[middle] < z) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Straight piece that holds a depth; at a step the one with the lower pressure, or the higher where asked. */
    Line pieceAt(double verticalDepth, boolean higher) {
        double z = within(verticalDepth);
        int first = 0;
        while (first < depth.length - 2 && depth[first + 1] < z) {
            first++;
        }
        Line best = piece(first);
        for (int i = first + 1; i < depth.length - 1 && depth[i] <= z; i++) {
            Line other = piece(i);
            if (other.at(z) > best.at(z) == higher) {
                best = other;
            }
        }
        return best;
    }

    private Line piece(int i) {
        double span = i < depth.length - 1 ? depth[i + 1] - depth[i] : 0;
        if (span == 0) {
            return new Line(pressure[i], 0);
        }
        double slope = (pressure[i + 1] - pressure[i]) / span;
        return new Line(pressure[i] - slope * depth[i], slope);
    }

    private double between(int i, double z) {
        double span = depth[i + 1] - depth[i];
        return span == 0 ? pressure[i] : pressure[i] + (pressure[i + 1] - pressure[i]) * (z - depth[i]) / span;
    }

    private double within(double verticalDepth) {
        if (!covers(verticalDepth)) {
            throw new RangeFault(
                    "depth asked of the pressure profile",
                    verticalDepth,
                    top(),
                    bottom(),
                    Measure.DEPTH,
                    "extend the profile in the case");
        }
        return Math.min(Math.max(verticalDepth, top()), bottom());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PressureProfile that
                && Arrays.equals(depth, that.depth)
                && Arrays.equals(pressure, that.pressure);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(depth) + Arrays.hashCode(pressure);
    }

    @Override
    public String toString() {
        return "PressureProfile" + Arrays.toString(depth) + Arrays.toString(pressure);
    }
}
