package staunch.influx;

import java.util.Arrays;
import staunch.earth.TemperatureProfile;
import staunch.fluid.Gas;
import staunch.units.Kind;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * Static pressure in a continuous column of gas: d(ln p)/dz = g ρ(p, T(z)) / p, integrated from one known point both
 * ways. Pressure in a continuous static gas depends on vertical depth alone, so one column serves any path, also one
 * that rises towards its toe.
 *
 * <p>Fourth-order Runge–Kutta in ln p with steps of at most 100 m that never cross a kink of the temperature profile;
 * ln p between nodes by the quadratic through the slopes at both ends and in the middle. In an isothermal ideal gas this
 * is exact.
 *
 * <p>A column is a workspace for one thread: {@link #start} begins a new column and keeps the memory.
 */
public final class GasColumn {
    private static final double LONGEST_STEP = 100.0;

    private final Gas gas;
    private final double[] kinkDepth;
    private final double[] kinkTemperature;
    private final Branch down = new Branch();
    private final Branch up = new Branch();
    private double startDepth;

    /** Column of a gas in a temperature profile. */
    public GasColumn(Gas gas, TemperatureProfile temperature) {
        this.gas = gas;
        this.kinkDepth = temperature.depths();
        this.kinkTemperature = temperature.temperatures();
    }

    /**
     * Begins a column.
     *
     * @param verticalDepth of the known point, m
     * @param pressure there, Pa absolute
     */
    public void start(
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure) {
        startDepth = verticalDepth;
        double y = Math.log(pressure);
        double slope = slope(verticalDepth, y);
        down.start(verticalDepth, y, slope);
        up.start(verticalDepth, y, slope);
    }

    /**
     * Pressure at a depth.
     *
     * @throws staunch.units.RangeFault where the gas model or the temperature profile does not reach there
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double pressure(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        return Math.exp(logPressure(verticalDepth));
    }

    /** Density that carries the mass, at a depth. */
    @Si("kg/m3")
    public double density(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        return gas.density(pressure(verticalDepth), temperature(verticalDepth));
    }

    double columnDensity(double verticalDepth) {
        Branch branch = branch(verticalDepth);
        return Math.exp(branch.value(verticalDepth)) * branch.slopeAt(verticalDepth) / Physics.GRAVITY;
    }

    Gas gas() {
        return gas;
    }

    private double logPressure(double z) {
        return branch(z).value(z);
    }

    private Branch branch(double z) {
        Branch branch = z >= startDepth ? down : up;
        branch.reach(z, z >= startDepth ? 1 : -1);
        return branch;
    }

    private double slope(double z, double y) {
        double p = Math.exp(y);
        return Physics.GRAVITY * gas.columnDensity(p, temperature(z)) / p;
    }

    private double temperature(double z) {
        int n = kinkDepth.length;
        if (n == 1) {
            return kinkTemperature[0];
        }
        int i = 0;
        while (i < n - 2 && kinkDepth[i + 1] < z) {
            i++;
        }
        if (z < kinkDepth[0] - 1e-6 || z > kinkDepth[n - 1] + 1e-6) {
            throw outside(z);
        }
        double share = (z - kinkDepth[i]) / (kinkDepth[i + 1] - kinkDepth[i]);
        return kinkTemperature[i] + share * (kinkTemperature[i + 1] - kinkTemperature[i]);
    }

    private staunch.units.RangeFault outside(double z) {
        return new staunch.units.RangeFault(
                "depth asked of the temperature profile",
                z,
                kinkDepth[0],
                kinkDepth[kinkDepth.length - 1],
                staunch.units.Measure.DEPTH,
                "extend the temperature profile in the case");
    }

    /** Nodes of the column in one direction from the known point. */
    private final class Branch {
        private double[] depth = new double[32];
        private double[] y = new double[32];
        private double[] slope = new double[32];
        private double[] middleSlope = new double[32];
        private int last;
        private int hint;

        void start(double z, double logPressure, double k) {
            last = 0;
            hint = 0;
            depth[0] = z;
            y[0] = logPressure;
            slope[0] = k;
        }

        void reach(double z, int sign) {
            while (sign * (z - depth[last]) > 0) {
                step(sign);
            }
        }

        private void step(int sign) {
            if (last + 1 == depth.length) {
                depth = Arrays.copyOf(depth, 2 * depth.length);
                y = Arrays.copyOf(y, 2 * y.length);
                slope = Arrays.copyOf(slope, 2 * slope.length);
                middleSlope = Arrays.copyOf(middleSlope, 2 * middleSlope.length);
            }
            double z0 = depth[last];
            double z1 = nextNode(z0, sign);
            double h = z1 - z0;
            double y0 = y[last];
            double k1 = slope[last];
            double middle = z0 + 0.5 * h;
            double k2 = slope(middle, y0 + 0.5 * h * k1);
            double k3 = slope(middle, y0 + 0.5 * h * k2);
            double k4 = slope(z1, y0 + h * k3);
            double y1 = y0 + h * (k1 + 2 * k2 + 2 * k3 + k4) / 6;
            // The slope in the middle that makes the quadratic end in y1 as Runge–Kutta found it.
            double end = slope(z1, y1);
            middleSlope[last] = (6 * (y1 - y0) / h - k1 - end) / 4;
            last++;
            depth[last] = z1;
            y[last] = y1;
            slope[last] = end;
        }

        private double nextNode(double z0, int sign) {
            double z1 = z0 + sign * LONGEST_STEP;
            for (double kink : kinkDepth) {
                if (sign * (kink - z0) > 1e-9 && sign * (z1 - kink) > 0) {
                    z1 = kink;
                }
            }
            return z1;
        }

        private int find(double z) {
            int i = Math.min(hint, Math.max(last - 1, 0));
            boolean downwards = this == down;
            while (i > 0 && (downwards ? z < depth[i] : z > depth[i])) {
                i--;
            }
            while (i < last - 1 && (downwards ? z > depth[i + 1] : z < depth[i + 1])) {
                i++;
            }
            hint = i;
            return i;
        }

        double value(double z) {
            if (last == 0) {
                return y[0];
            }
            int i = find(z);
            double h = depth[i + 1] - depth[i];
            double s = (z - depth[i]) / h;
            double k0 = slope[i];
            double km = middleSlope[i];
            double k1 = slope[i + 1];
            return y[i] + h * s * (k0 + s * ((-3 * k0 + 4 * km - k1) / 2 + s * (2 * k0 - 4 * km + 2 * k1) / 3));
        }

        double slopeAt(double z) {
            if (last == 0) {
                return slope[0];
            }
            int i = find(z);
            double s = (z - depth[i]) / (depth[i + 1] - depth[i]);
            double k0 = slope[i];
            double km = middleSlope[i];
            double k1 = slope[i + 1];
            return k0 + s * (-3 * k0 + 4 * km - k1 + s * (2 * k0 - 4 * km + 2 * k1));
        }
    }
}
