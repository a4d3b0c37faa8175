package staunch.fluid;

import staunch.units.Measure;
import staunch.units.RangeFault;

/**
 * Viscosity of natural gas, Lee, Gonzalez and Eakin, J. Pet. Tech. (August 1966) 997: with M in g/mol, T in °R and ρ in
 * g/cm³,
 *
 * <pre>
 * μ = 1e-4 K exp(X ρ^Y) cP
 * K = (9.4 + 0.02 M) T^1.5 / (209 + 19 M + T),  X = 3.5 + 986/T + 0.01 M,  Y = 2.4 − 0.2 X
 * </pre>
 *
 * <p>Data of the fit: 100 to 340 °F (311 to 444 K), up to 8000 psia (55.2 MPa), sweet gas; standard deviation 2.7 %,
 * largest 9 %. Towards low pressure it tends to the dilute gas and is continued to zero pressure.
 */
final class LeeGonzalezEakin {
    static final double LOWEST_TEMPERATURE = (100 + FieldUnits.FAHRENHEIT_ZERO) * FieldUnits.RANKINE;
    static final double HIGHEST_TEMPERATURE = (340 + FieldUnits.FAHRENHEIT_ZERO) * FieldUnits.RANKINE;
    static final double HIGHEST_PRESSURE = 8000 * FieldUnits.PSI;

    private static final String ADVICE =
            "the viscosity correlation of Lee, Gonzalez and Eakin holds in that range only";

    private LeeGonzalezEakin() {}

    static void checkRange(double pressure, double temperature) {
        if (!(temperature >= LOWEST_TEMPERATURE && temperature <= HIGHEST_TEMPERATURE)) {
            throw new RangeFault(
                    "gas temperature",
                    temperature,
                    LOWEST_TEMPERATURE,
                    HIGHEST_TEMPERATURE,
                    Measure.TEMPERATURE,
                    ADVICE);
        }
        if (!(pressure >= 0 && pressure <= HIGHEST_PRESSURE)) {
            throw new RangeFault("gas pressure", pressure, 0, HIGHEST_PRESSURE, Measure.PRESSURE_ABSOLUTE, ADVICE);
        }
    }

    /** Without a check of range. */
    static double viscosity(double molarMass, double density, double temperature) {
        double x = x(molarMass, temperature);
        return 1e-7 * k(molarMass, temperature) * Math.exp(x * Math.pow(density / 1000, y(x)));
    }

    static double k(double molarMass, double temperature) {
        double m = molarMass * 1000;
        double t = temperature / FieldUnits.RANKINE;
        return (9.4 + 0.02 * m) * t * Math.sqrt(t) / (209 + 19 * m + t);
    }

    static double x(double molarMass, double temperature) {
        return 3.5 + 986 * FieldUnits.RANKINE / temperature + 10 * molarMass;
    }

    static double y(double x) {
        return 2.4 - 0.2 * x;
    }
}
