package staunch.fluid;

import staunch.units.ConvergenceFault;

/**
 * Root of the Hall–Yarborough equation. With t = 1/Tpr,
 *
 * <pre>
 * (y + y² + y³ − y⁴)/(1 − y)³ − (14.76 t − 9.76 t² + 4.58 t³) y²
 *     + (90.7 t − 242.2 t² + 42.4 t³) y^(2.18 + 2.82 t) = 0.06125 t exp(−1.2 (1 − t)²) ppr
 * Z = 0.06125 t exp(−1.2 (1 − t)²) ppr / y
 * </pre>
 *
 * <p>Newton's iteration from the root of the other equation for the same chart; after a relative step below 1e-8 its
 * error is at rounding level.
 */
final class HallYarborough {
    private static final double LAST_STEP = 1e-8;
    private static final int MOST_STEPS = 50;

    private HallYarborough() {}

    static double solve(double reducedPressure, double reducedTemperature) {
        if (reducedPressure == 0) {
            return 1;
        }
        double t = 1 / reducedTemperature;
        double target = 0.06125 * t * Math.exp(-1.2 * (1 - t) * (1 - t)) * reducedPressure;
        double second = t * (14.76 + t * (-9.76 + t * 4.58));
        double third = t * (90.7 + t * (-242.2 + t * 42.4));
        double power = 2.18 + 2.82 * t;
        double y = target / DranchukAbouKassem.Start.deviationFactor(reducedPressure, t);
        for (int step = 0; step < MOST_STEPS; step++) {
            double q = 1 / (1 - y);
            double q3 = q * q * q;
            double last = third * Math.pow(y, power - 1);
            double f = y * ((1 + y * (1 + y * (1 - y))) * q3 - second * y + last) - target;
            double slope = (1 + y * (4 + y * (4 + y * (y - 4)))) * q3 * q - 2 * second * y + power * last;
            double move = f / slope;
            y -= move;
            if (Math.abs(move) <= LAST_STEP * y) {
                return target / y;
            }
        }
        throw new ConvergenceFault(
                "gas deviation factor",
                "no root at pseudo-reduced pressure " + reducedPressure + " and temperature " + reducedTemperature);
    }
}
