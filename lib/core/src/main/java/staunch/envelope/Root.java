package staunch.envelope;

import java.util.function.DoubleUnaryOperator;
import staunch.units.ConvergenceFault;

/**
 * Regula falsi with the Illinois modification (Dowell and Jarratt, BIT 11, 1971) for the nearly straight pressure
 * differences of the tolerance search, which settle in two or three steps; here rather than from a library because both
 * ends are known already and nothing may be allocated.
 */
final class Root {
    private static final double PRESSURE_TOLERANCE = 1e-6;
    private static final double DEPTH_TOLERANCE = 1e-10;
    private static final int MOST_STEPS = 100;

    private Root() {}

    /**
     * Depth where a pressure difference is zero.
     *
     * @param what is sought, for the fault
     * @param difference in Pa, of opposite signs at both ends
     * @param from one end, m
     * @param to the other end, m
     * @throws ConvergenceFault where it does not settle
     */
    static double find(String what, DoubleUnaryOperator difference, double from, double to) {
        double a = from;
        double fa = difference.applyAsDouble(a);
        double b = to;
        double fb = difference.applyAsDouble(b);
        int lastSide = 0;
        for (int k = 0; k < MOST_STEPS; k++) {
            double x = b - fb * (b - a) / (fb - fa);
            double f = difference.applyAsDouble(x);
            if (Math.abs(f) < PRESSURE_TOLERANCE || Math.abs(b - a) < DEPTH_TOLERANCE) {
                return x;
            }
            int side = f > 0 == fb > 0 ? 1 : -1;
            if (side > 0) {
                b = x;
                fb = f;
                fa *= lastSide == side ? 0.5 : 1;
            } else {
                a = x;
                fa = f;
                fb *= lastSide == side ? 0.5 : 1;
            }
            lastSide = side;
        }
        throw new ConvergenceFault(what, "bracket of " + Math.abs(b - a) + " m left");
    }
}
