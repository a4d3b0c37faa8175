package staunch.fluid;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * Seawater by the international equation of state EOS-80 (UNESCO Technical Papers in Marine Science 44, 1983):
 *
 * <pre>
 * ρ(S, t, p) = ρ(S, t, 0) / (1 − p / K(S, t, p))
 * </pre>
 *
 * with polynomials in practical salinity S, temperature t (°C, IPTS-68) and pressure p (bar, gauge) for ρ(S, t, 0) and
 * the secant bulk modulus K. Coefficients from memory, held by reference rows of TEOS-10 to 0.01 %.
 *
 * @param salinity practical salinity, 0 to 42; the ocean has about 35
 */
public record Seawater(@Si("1") double salinity) {
    /** Degrees of IPTS-68 in one of ITS-90. */
    private static final double TEMPERATURE_SCALE_1968 = 1.00024;

    public Seawater {
        Check.within("salinity of the seawater", salinity, 0, 42, Measure.NUMBER);
    }

    /**
     * Density, kg/m³.
     *
     * @param pressure one atmosphere to 100 MPa, Pa absolute
     * @param temperature 271.15 to 313.15 K (−2 to 40 °C)
     * @throws staunch.units.RangeFault outside that range
     */
    @Si("kg/m3")
    public double density(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        Check.within("seawater pressure", pressure, 1e5, 1e8 + Physics.ATMOSPHERE, Measure.PRESSURE_ABSOLUTE);
        Check.within("seawater temperature", temperature, 271.15, 313.15, Measure.TEMPERATURE);
        double s = salinity;
        double rootS = Math.sqrt(s);
        double t = (temperature - Physics.CELSIUS_ZERO) * TEMPERATURE_SCALE_1968;
        double p = (pressure - Physics.ATMOSPHERE) / 1e5;
        double surface = 999.842594
                + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))))
                + s * (0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9))))
                + s * rootS * (-5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6))
                + s * s * 4.8314e-4;
        double modulus = 19652.21
                + t * (148.4206 + t * (-2.327105 + t * (1.360477e-2 - t * 5.155288e-5)))
                + s * (54.6746 + t * (-0.603459 + t * (1.09987e-2 - t * 6.1670e-5)))
                + s * rootS * (7.944e-2 + t * (1.6483e-2 - t * 5.3009e-4));
        double first = 3.239908
                + t * (1.43713e-3 + t * (1.16092e-4 - t * 5.77905e-7))
                + s * (2.2838e-3 + t * (-1.0981e-5 - t * 1.6078e-6))
                + s * rootS * 1.91075e-4;
        double second =
                8.50935e-5 + t * (-6.12293e-6 + t * 5.2787e-8) + s * (-9.9348e-7 + t * (2.0816e-8 + t * 9.1697e-10));
        return surface / (1 - p / (modulus + p * (first + p * second)));
    }
}
