package staunch.envelope;

import staunch.earth.TemperatureProfile;
import staunch.fluid.Gas;
import staunch.units.Physics;
import staunch.well.WellPath;

/**
 * The definition of kick tolerance, computed the slow and obvious way as an independent check: the lower end of the gas is
 * moved up metre by metre, the gas is filled upwards in half-metre cells, and the first amount at which any exposed depth
 * exceeds its limit is kept. It shares nothing with the solver but the gas model and the path.
 */
final class BruteForce {
    private static final double CELL = 0.5;

    private final double shoe;
    private final double[] z;
    private final double[] area;
    private final double[] carried;
    private final double[] friction;
    private final double mud;
    private final Gas gas;
    private final TemperatureProfile temperature;

    interface Profile {
        double at(double measuredDepth);
    }

    BruteForce(
            WellPath path,
            double[] shoeAndBottom,
            Profile area,
            Profile limit,
            double mud,
            Gas gas,
            TemperatureProfile temperature) {
        this(path, shoeAndBottom, area, limit, md -> 0, mud, gas, temperature);
    }

    /** With mud flowing: its friction between each depth and surface loads that depth. */
    BruteForce(
            WellPath path,
            double[] shoeAndBottom,
            Profile area,
            Profile limit,
            Profile frictionAbove,
            double mud,
            Gas gas,
            TemperatureProfile temperature) {
        this.shoe = shoeAndBottom[0];
        int n = (int) Math.round((shoeAndBottom[1] - shoe) / CELL);
        this.z = new double[n + 1];
        this.area = new double[n];
        this.carried = new double[n + 1];
        this.friction = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            double md = Math.min(shoe + i * CELL, shoeAndBottom[1]);
            z[i] = path.verticalDepth(md);
            friction[i] = frictionAbove.at(md);
            carried[i] = limit.at(md);
            if (i > 0) {
                double between = mud * Physics.GRAVITY * (z[i] - z[i - 1]) + friction[i] - friction[i - 1];
                carried[i] = Math.min(carried[i], carried[i - 1] + between);
            }
            if (i < n) {
                this.area[i] = area.at(md + CELL / 2);
            }
        }
        this.mud = mud;
        this.gas = gas;
        this.temperature = temperature;
    }

    /** Largest mass with the lower end at one cell boundary and a pressure there; infinite where nothing breaks. */
    double massAt(int lower, double pressure) {
        double p = pressure;
        double mass = 0;
        for (int i = lower; i > 0; i--) {
            double t = temperature.at(0.5 * (z[i] + z[i - 1]));
            double rho = gas.density(p, t);
            double middle = p - rho * Physics.GRAVITY * (z[i] - z[i - 1]) / 2;
            rho = gas.density(middle, t);
            double above = p - rho * Physics.GRAVITY * (z[i] - z[i - 1]);
            double excess = excess(i - 1, above);
            if (excess > 0) {
                double before = excess(i, p);
                return before >= 0 ? mass : mass + rho * area[i - 1] * CELL * (-before) / (excess - before);
            }
            mass += rho * area[i - 1] * CELL;
            p = above;
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Greatest excess over the limit at or above the top of the gas, with mud between; the minimum is kept per depth. */
    private double excess(int top, double pressure) {
        return pressure - carried[top];
    }

    /** Least mass over lower ends every so many cells, with bottom-hole pressure held. */
    double leastMass(double bottomHolePressure, int stride) {
        return leastMassFrom(shoe + area.length * CELL, bottomHolePressure, stride);
    }

    /** The same for gas that comes in at a depth above bottom; friction comes on top of the pressure held. */
    double leastMassFrom(double influxDepth, double bottomHolePressure, int stride) {
        double least = Double.POSITIVE_INFINITY;
        int n = area.length;
        for (int i = (int) Math.round((influxDepth - shoe) / CELL); i > 0; i -= stride) {
            double pressure = bottomHolePressure - mud * Physics.GRAVITY * (z[n] - z[i]) + friction[i];
            least = Math.min(least, massAt(i, pressure));
        }
        return least;
    }

    /** The naive way: bisect the mass, check a few positions only. */
    double naiveMass(double bottomHolePressure, int positions) {
        return leastMass(bottomHolePressure, Math.max(1, area.length / positions));
    }
}
