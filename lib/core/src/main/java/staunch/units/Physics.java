package staunch.units;

/** Constants of nature and of convention. */
public final class Physics {
    /** Standard acceleration of gravity, m/s², exact by convention (3rd CGPM, 1901; ISO 80000-3). */
    public static final double GRAVITY = 9.80665;

    /** Standard atmosphere, Pa, exact by convention (10th CGPM, 1954): zero of every gauge pressure here. */
    public static final double ATMOSPHERE = 101_325.0;

    /** Molar gas constant, J/(mol K), exact since the 2019 SI. */
    public static final double GAS_CONSTANT = 8.31446261815324;

    /** Molar mass of dry air, kg/mol, the reference of gas gravity (28.9647 g/mol, US Standard Atmosphere 1976: 28.9644). */
    public static final double MOLAR_MASS_AIR = 0.0289647;

    /** Zero of the Celsius scale, K, exact by definition. */
    public static final double CELSIUS_ZERO = 273.15;

    private Physics() {}
}
