package staunch.fluid;

/** Units in which the constants of correlations are published, in SI; exact by definition. */
final class FieldUnits {
    /** Degree Rankine, K. */
    static final double RANKINE = 5.0 / 9.0;

    /** Pound-force per square inch, Pa. */
    static final double PSI = 6894.757293168362;

    /** Zero of the Fahrenheit scale, °R. */
    static final double FAHRENHEIT_ZERO = 459.67;

    private FieldUnits() {}
}
