package staunch.envelope;

import java.util.function.DoubleUnaryOperator;

/**
 * Brent's minimisation in a bracket (R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 5), here
 * rather than from a library because it runs inside the tolerance search and must not allocate.
 */
final class Minimum {
    private static final double GOLDEN = 0.5 * (3 - Math.sqrt(5));
    private static final int MOST_STEPS = 60;

    private Minimum() {}

    /**
     * Evaluates a function until its minimum is located to a tolerance; the caller keeps the lowest value it saw.
     *
     * @param f the function
     * @param from lower end of the bracket
     * @param to upper end of the bracket
     * @param tolerance of the abscissa
     */
    static void search(DoubleUnaryOperator f, double from, double to, double tolerance) {
        double a = from;
        double b = to;
        double x = a + GOLDEN * (b - a);
        double w = x;
        double v = x;
        double fx = f.applyAsDouble(x);
        double fw = fx;
        double fv = fx;
        double step = 0;
        double before = 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            double middle = 0.5 * (a + b);
            if (Math.abs(x - middle) <= 2 * tolerance - 0.5 * (b - a)) {
                return;
            }
            boolean parabolic = false;
            if (Math.abs(before) > tolerance) {
                double r = (x - w) * (fx - fv);
                double q = (x - v) * (fx - fw);
                double p = (x - v) * q - (x - w) * r;
                q = 2 * (q - r);
                if (q > 0) {
                    p = -p;
                } else {
                    q = -q;
                }
                if (Math.abs(p) < Math.abs(0.5 * q * before) && p > q * (a - x) && p < q * (b - x)) {
                    before = step;
                    step = p / q;
                    double u = x + step;
                    if (u - a < 2 * tolerance || b - u < 2 * tolerance) {
                        step = x < middle ? tolerance : -tolerance;
                    }
                    parabolic = true;
                }
            }
            if (!parabolic) {
                before = x < middle ? b - x : a - x;
                step = GOLDEN * before;
            }
            double u = x + (Math.abs(step) >= tolerance ? step : Math.copySign(tolerance, step));
            double fu = f.applyAsDouble(u);
            if (fu <= fx) {
                if (u < x) {
                    b = x;
                } else {
                    a = x;
                }
                v = w;
                fv = fw;
                w = x;
                fw = fx;
                x = u;
                fx = fu;
            } else {
                if (u < x) {
                    a = u;
                } else {
                    b = u;
                }
                if (fu <= fw || w == x) {
                    v = w;
                    fv = fw;
                    w = u;
                    fw = fu;
                } else if (fu <= fv || v == x || v == w) {
                    v = u;
                    fv = fu;
                }
            }
        }
    }
}
