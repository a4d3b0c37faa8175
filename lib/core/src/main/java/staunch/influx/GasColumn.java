package staunch.influx;

import java.util.Arrays;
import staunch.earth.TemperatureProfile;
import staunch.fluid.Gas;
import staunch.units.ConvergenceFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * Static pressure in a continuous column of gas: d(ln p)/dz = g ρ(p, T(z)) / p, integrated from one known point both
 * ways. Pressure in a continuous static gas depends on vertical depth alone, so one column serves any path, also one
 * that rises towards its toe.
 *
 * <p>Sixth-order collocation at the four Lobatto points (Lobatto IIIA; Hairer and Wanner, Solving Ordinary Differential
 * Equations II, section IV.5, coefficients from memory, checked by the order seen in the tests) in ln p, with steps of at
 * most 200 m over which pressure falls by no more than a tenth, and that never cross a kink of the temperature profile. Fixed-point iteration settles at once, since the slope
 * hardly depends on pressure. In an isothermal ideal gas this is exact.
 *
 * <p>A column is a workspace for one thread: {@link #start} begins a new column and keeps the memory.
 */
public final class GasColumn {
    private static final double LONGEST_STEP = 200.0;
    private static final double FINE_STEP = 25.0;

    /** Greatest change of ln p over a step; a gas alone never comes near it, gas in mud does. */
    private static final double MOST_FALL = 0.1;

    private static final double FINE_FALL = 0.02;

    /** Of the last step, how far its cubic is carried on: after a short one, to a kink, it would run away. */
    private static final double FARTHEST_GUESS = 3;

    private static final double SAME_DEPTH = 1e-6;

    /** A depth that is no farther off is reached: a step to it, or to a kink there, would be rounding alone, m. */
    private static final double SHORTEST_STEP = 1e-9;

    private static final double LOG_TOLERANCE = 1e-10;
    private static final int MOST_ITERATIONS = 50;

    /** Lobatto points 0, a, 1 − a, 1 of the unit step and the weights of the integrals of the cubic up to a and 1 − a. */
    private static final double ROOT5 = Math.sqrt(5);

    private static final double LOBATTO = (5 - ROOT5) / 10;
    private static final double A0 = (11 + ROOT5) / 120;
    private static final double A1 = (25 - ROOT5) / 120;
    private static final double A2 = (25 - 13 * ROOT5) / 120;
    private static final double A3 = (-1 + ROOT5) / 120;
    private static final double B0 = (11 - ROOT5) / 120;
    private static final double B1 = (25 + 13 * ROOT5) / 120;
    private static final double B2 = (25 + ROOT5) / 120;
    private static final double B3 = (-1 - ROOT5) / 120;

    private final Gas gas;
    private final double[] kinkDepth;
    private final double[] kinkTemperature;
    private final Branch down = new Branch();
    private final Branch up = new Branch();
    private final double longestStep;
    private final double mostFall;
    private double startDepth;

    /** Column of a gas in a temperature profile; masses between its depths are good to 1e-7. */
    public GasColumn(Gas gas, TemperatureProfile temperature) {
        this(gas, temperature, LONGEST_STEP, MOST_FALL);
    }

    private GasColumn(Gas gas, TemperatureProfile temperature, double longestStep, double mostFall) {
        this.gas = gas;
        this.mostFall = mostFall;
        this.longestStep = longestStep;
        this.kinkDepth = temperature.depths();
        this.kinkTemperature = temperature.temperatures();
    }

    /** The same in steps of at most 25 m, for half the speed: masses between its depths are good to 1e-10. */
    public static GasColumn fine(Gas gas, TemperatureProfile temperature) {
        return new GasColumn(gas, temperature, FINE_STEP, FINE_FALL);
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

    /** Gas of the column. */
    public Gas gas() {
        return gas;
    }

    private double logPressure(double z) {
        return branch(z).value(z);
    }

    private Branch branch(double z) {
        Branch branch = z >= startDepth ? down : up;
        branch.reach(within(z), z >= startDepth ? 1 : -1);
        return branch;
    }

    /** A depth at the very end of the temperature profile may lie outside it by rounding. */
    private double within(double z) {
        int n = kinkDepth.length;
        if (n == 1) {
            return z;
        }
        if (z < kinkDepth[0] - SAME_DEPTH || z > kinkDepth[n - 1] + SAME_DEPTH) {
            throw outside(z);
        }
        return Math.min(Math.max(z, kinkDepth[0]), kinkDepth[n - 1]);
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
        if (z < kinkDepth[0] - SAME_DEPTH || z > kinkDepth[n - 1] + SAME_DEPTH) {
            throw outside(z);
        }
        double share = (z - kinkDepth[i]) / (kinkDepth[i + 1] - kinkDepth[i]);
        return kinkTemperature[i] + share * (kinkTemperature[i + 1] - kinkTemperature[i]);
    }

    private RangeFault outside(double z) {
        return new RangeFault(
                "depth asked of the temperature profile",
                z,
                kinkDepth[0],
                kinkDepth[kinkDepth.length - 1],
                Measure.DEPTH,
                "extend the temperature profile in the case");
    }

    /** Nodes of the column in one direction from the known point; each step keeps the cubic of its slope. */
    private final class Branch {
        private double[] depth = new double[16];
        private double[] y = new double[16];
        private double[] slope = new double[16];
        private double[] c1 = new double[16];
        private double[] c2 = new double[16];
        private double[] c3 = new double[16];
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
            while (sign * (z - depth[last]) > SHORTEST_STEP) {
                step(sign);
            }
        }

        private void step(int sign) {
            if (last + 1 == depth.length) {
                int n = 2 * depth.length;
                depth = Arrays.copyOf(depth, n);
                y = Arrays.copyOf(y, n);
                slope = Arrays.copyOf(slope, n);
                c1 = Arrays.copyOf(c1, n);
                c2 = Arrays.copyOf(c2, n);
                c3 = Arrays.copyOf(c3, n);
            }
            double z0 = depth[last];
            double h = nextNode(z0, sign) - z0;
            double k0 = slope[last];
            double y0 = y[last];
            double za = z0 + LOBATTO * h;
            double zb = z0 + (1 - LOBATTO) * h;
            double z1 = z0 + h;
            // The last step's cubic carried on is a good first guess; without one the slope is taken as constant.
            double ka = guess(za, k0);
            double kb = guess(zb, k0);
            double k1 = guess(z1, k0);
            double y1 = y0;
            for (int i = 0; ; i++) {
                double before = y1;
                double ya = y0 + h * (A0 * k0 + A1 * ka + A2 * kb + A3 * k1);
                double yb = y0 + h * (B0 * k0 + B1 * ka + B2 * kb + B3 * k1);
                y1 = y0 + h * (k0 + 5 * ka + 5 * kb + k1) / 12;
                if (Math.abs(y1 - before) < LOG_TOLERANCE) {
                    break;
                }
                if (i == MOST_ITERATIONS) {
                    throw new ConvergenceFault("pressure in the gas column", "step of " + h + " m does not settle");
                }
                ka = slope(za, ya);
                kb = slope(zb, yb);
                k1 = slope(z1, y1);
            }
            fit(k0, ka, kb, k1);
            last++;
            depth[last] = z1;
            y[last] = y1;
            slope[last] = k1;
        }

        private double guess(double z, double constant) {
            if (last == 0) {
                return constant;
            }
            double s = (z - depth[last - 1]) / (depth[last] - depth[last - 1]);
            if (s > FARTHEST_GUESS) {
                return constant;
            }
            int i = last - 1;
            return slope[i] + s * (c1[i] + s * (c2[i] + s * c3[i]));
        }

        /** Cubic through the slopes at the four Lobatto points of a step, in powers of its share s. */
        private void fit(double k0, double ka, double kb, double k1) {
            double a = LOBATTO;
            double b = 1 - LOBATTO;
            // Newton's divided differences on 0, a, b, 1.
            double f01 = (ka - k0) / a;
            double f12 = (kb - ka) / (b - a);
            double f23 = (k1 - kb) / (1 - b);
            double f012 = (f12 - f01) / b;
            double f123 = (f23 - f12) / (1 - a);
            double f0123 = f123 - f012;
            c3[last] = f0123;
            c2[last] = f012 - f0123 * (a + b);
            c1[last] = f01 - f012 * a + f0123 * a * b;
        }

        private double nextNode(double z0, int sign) {
            double z1 = z0 + sign * Math.min(longestStep, mostFall / slope[last]);
            for (double kink : kinkDepth) {
                if (sign * (kink - z0) > SHORTEST_STEP && sign * (z1 - kink) > 0) {
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
            return y[i] + h * s * (slope[i] + s * (c1[i] / 2 + s * (c2[i] / 3 + s * c3[i] / 4)));
        }

        double slopeAt(double z) {
            if (last == 0) {
                return slope[0];
            }
            int i = find(z);
            double s = (z - depth[i]) / (depth[i + 1] - depth[i]);
            return slope[i] + s * (c1[i] + s * (c2[i] + s * c3[i]));
        }
    }
}
