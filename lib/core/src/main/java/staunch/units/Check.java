package staunch.units;

/** Checks that constructors share: each gives the value back or throws a fault that names the field and the range. */
public final class Check {
    private Check() {}

    /**
     * Value within a closed range.
     *
     * @throws RangeFault where it lies outside or is not a number
     */
    public static double within(String field, double value, double lowest, double highest, Measure measure) {
        if (!(value >= lowest && value <= highest)) {
            throw new RangeFault(field, value, lowest, highest, measure, "");
        }
        return value;
    }

    /**
     * Finite value of at least the given one.
     *
     * @throws RangeFault where it is less, infinite or not a number
     */
    public static double atLeast(String field, double value, double lowest, Measure measure) {
        if (!(value >= lowest) || Double.isInfinite(value)) {
            throw new RangeFault(field, value, lowest, Double.POSITIVE_INFINITY, measure, "");
        }
        return value;
    }

    /**
     * Text that is not blank.
     *
     * @throws InputFault where it is missing or blank
     */
    public static String text(String field, String value) {
        if (value == null || value.isBlank()) {
            throw new InputFault(field, "is missing", "give it a text");
        }
        return value;
    }
}
