package staunch.ingest;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers of ten significant digits. What a case gives is read to so many, far more than anything is measured to: the
 * same value is then the same number whatever unit it is written in.
 */
final class FixedDigits {
    private static final int DIGITS = 10;
    private static final MathContext NEAREST = new MathContext(DIGITS, RoundingMode.HALF_EVEN);
    private static final int MOST_ZEROS = 6;

    private FixedDigits() {}

    /** The nearest such number; a value within a range stays within it. */
    static double round(double value, double lowest, double highest) {
        if (value == 0 || !Double.isFinite(value)) {
            return value + 0.0;
        }
        BigDecimal exact = new BigDecimal(value);
        double nearest = exact.round(NEAREST).doubleValue();
        if (value >= lowest && nearest < lowest) {
            return exact.round(new MathContext(DIGITS, RoundingMode.CEILING)).doubleValue();
        }
        if (value <= highest && nearest > highest) {
            return exact.round(new MathContext(DIGITS, RoundingMode.FLOOR)).doubleValue();
        }
        return nearest;
    }

    static double round(double value) {
        return round(value, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** The number as text, always the same for the same number. */
    static String text(double value) {
        BigDecimal number = new BigDecimal(round(value)).round(NEAREST).stripTrailingZeros();
        if (number.signum() == 0) {
            return "0";
        }
        int exponent = number.precision() - number.scale() - 1;
        return exponent < -MOST_ZEROS || exponent > DIGITS + MOST_ZEROS ? number.toString() : number.toPlainString();
    }
}
