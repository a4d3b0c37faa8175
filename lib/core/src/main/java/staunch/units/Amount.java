package staunch.units;

import java.util.Objects;

/**
 * A quantity that a text names.
 *
 * @param value in the SI unit of its measure
 * @param measure what it measures
 * @param digits significant digits it is shown with; 0 for the decimals usual of the units shown
 */
public record Amount(double value, Measure measure, int digits) {
    private static final int MOST_DIGITS = 17;

    public Amount {
        Objects.requireNonNull(measure, "measure");
        if (!Double.isFinite(value) || digits < 0 || digits > MOST_DIGITS) {
            throw new IllegalArgumentException(value + " to " + digits + " digits cannot be shown");
        }
    }

    /** Shown with the decimals usual of the units. */
    public static Amount of(double value, Measure measure) {
        return new Amount(value, measure, 0);
    }

    /** Number and unit. */
    public String in(UnitSystem units) {
        return digits > 0 ? units.significant(value, digits, measure) : units.text(value, measure);
    }

    /** As it stands in a text before units are chosen. */
    String si() {
        return UnitSystem.SI.significant(value, digits > 0 ? digits : 6, measure);
    }
}
