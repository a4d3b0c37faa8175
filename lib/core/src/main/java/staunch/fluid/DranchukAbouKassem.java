package staunch.fluid;

import staunch.units.ConvergenceFault;

/**
 * Root of the Dranchuk–Abou-Kassem equation. With x = ρr, u = 1/Tpr and b = A11 x²,
 *
 * <pre>
 * x Z(x) = x + R1 x² + R2 x³ − R3 x⁶ + R4 x³ (1 + b) exp(−b) = 0.27 ppr u
 * R1 = A1 + A2 u + A3 u³ + A4 u⁴ + A5 u⁵   R2 = A6 + A7 u + A8 u²
 * R3 = A9 (A7 u + A8 u²)                    R4 = A10 u³
 * </pre>
 *
 * <p>The left side rises with x for every Tpr above 1.022, so the root is single. It is found from a first guess read
 * from a table by Householder's iteration of third order, whose error goes with the fourth power of the last step; a
 * relative step below 1e-4 therefore leaves an error at rounding level.
 */
final class DranchukAbouKassem {
    private static final double A1 = 0.3265;
    private static final double A2 = -1.0700;
    private static final double A3 = -0.5339;
    private static final double A4 = 0.01569;
    private static final double A5 = -0.05165;
    private static final double A6 = 0.5475;
    private static final double A7 = -0.7361;
    private static final double A8 = 0.1844;
    private static final double A9 = 0.1056;
    private static final double A10 = 0.6134;
    private static final double A11 = 0.7210;

    /** Critical deviation factor in the definition of the reduced density. */
    static final double CRITICAL_FACTOR = 0.27;

    private static final double LAST_STEP = 1e-4;
    private static final int MOST_STEPS = 30;

    private DranchukAbouKassem() {}

    static double solve(double reducedPressure, double reducedTemperature) {
        double u = 1 / reducedTemperature;
        if (reducedPressure == 0) {
            return 1;
        }
        return solve(reducedPressure, u, Start.deviationFactor(reducedPressure, u));
    }

    private static double solve(double reducedPressure, double u, double guess) {
        double u2 = u * u;
        double r1 = A1 + u * (A2 + u2 * (A3 + u * (A4 + u * A5)));
        double r3 = u * (A7 + u * A8);
        double r2 = A6 + r3;
        r3 *= A9;
        double r4 = A10 * u2 * u;
        double target = CRITICAL_FACTOR * reducedPressure * u;
        double x = target / guess;
        for (int step = 0; step < MOST_STEPS; step++) {
            double x2 = x * x;
            double b = A11 * x2;
            double e = r4 * Math.exp(-b);
            double x4r3 = r3 * x2 * x2;
            double f = x * (1 + x * (r1 + x * (r2 + e * (1 + b)) - x4r3)) - target;
            double f1 = 1 + x * (2 * r1 - 6 * x4r3 + x * (3 * r2 + e * (3 + b * (3 - 2 * b))));
            double f2 = 2 * r1 + x * (6 * r2 + e * (6 + b * (6 + b * (4 * b - 18)))) - 30 * x4r3;
            double f3 = 6 * r2 - 120 * r3 * x2 * x + e * (6 + b * (6 + b * (-102 + b * (64 - 8 * b))));
            double move = f * (f1 * f1 - 0.5 * f * f2) / (f1 * (f1 * f1 - f * f2) + f3 * f * f / 6);
            x -= move;
            if (Math.abs(move) <= LAST_STEP * x) {
                return target / x;
            }
        }
        throw new ConvergenceFault(
                "gas deviation factor",
                "no root at pseudo-reduced pressure " + reducedPressure + " and temperature " + 1 / u);
    }

    /**
     * First guess of Z: bilinear in ppr/(ppr + 2) and 1/Tpr over a table of exact roots; within 1 %, which leaves
     * one or two steps to the root. Shared with the other equation for the same chart.
     */
    static final class Start {
        private static final double PRESSURE_SCALE = 2;
        private static final double HIGHEST_PRESSURE = 30;
        private static final double LEAST_U = 1 / 3.0;
        private static final double GREATEST_U = 1 / 1.05;
        private static final int ROWS = 128;
        private static final int COLUMNS = 96;
        private static final double ROWS_PER_S = ROWS * (HIGHEST_PRESSURE + PRESSURE_SCALE) / HIGHEST_PRESSURE;
        private static final double COLUMNS_PER_U = COLUMNS / (GREATEST_U - LEAST_U);
        private static final double[] TABLE = table();

        private Start() {}

        static double deviationFactor(double reducedPressure, double u) {
            double s = reducedPressure / (reducedPressure + PRESSURE_SCALE) * ROWS_PER_S;
            int i = Math.min((int) s, ROWS - 1);
            double c = (u - LEAST_U) * COLUMNS_PER_U;
            int j = Math.max(0, Math.min((int) c, COLUMNS - 1));
            s -= i;
            c -= j;
            int k = i * (COLUMNS + 1) + j;
            double low = TABLE[k] + c * (TABLE[k + 1] - TABLE[k]);
            k += COLUMNS + 1;
            double high = TABLE[k] + c * (TABLE[k + 1] - TABLE[k]);
            return low + s * (high - low);
        }

        private static double[] table() {
            double[] t = new double[(ROWS + 1) * (COLUMNS + 1)];
            for (int j = 0; j <= COLUMNS; j++) {
                double u = LEAST_U + j / COLUMNS_PER_U;
                double z = 1;
                t[j] = z;
                for (int i = 1; i <= ROWS; i++) {
                    double s = i / ROWS_PER_S;
                    double reducedPressure = PRESSURE_SCALE * s / (1 - s);
                    z = solve(reducedPressure, u, z);
                    t[i * (COLUMNS + 1) + j] = z;
                }
            }
            return t;
        }
    }
}
