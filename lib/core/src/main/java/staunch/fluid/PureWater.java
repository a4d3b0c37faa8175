package staunch.fluid;

import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * Liquid water by the industrial formulation IAPWS-IF97 (2007), region 1: the Gibbs energy as a sum of 34 terms,
 *
 * <pre>
 * γ(π, τ) = Σ nᵢ (7.1 − π)^Iᵢ (τ − 1.222)^Jᵢ,  π = p / 16.53 MPa,  τ = 1386 K / T
 * v = (R T / p) π ∂γ/∂π,  R = 461.526 J/(kg K)
 * </pre>
 *
 * <p>Range: 273.15 to 623.15 K, from the saturation pressure (the same formulation, region 4) to 100 MPa. Coefficients
 * from memory, held by the published check values of the formulation and by the reference rows of IAPWS-95.
 */
public final class PureWater {
    private static final double LOWEST_TEMPERATURE = 273.15;
    private static final double HIGHEST_TEMPERATURE = 623.15;
    private static final double HIGHEST_PRESSURE = 100e6;
    private static final double PRESSURE_SCALE = 16.53e6;
    private static final double TEMPERATURE_SCALE = 1386;
    private static final double SPECIFIC_GAS_CONSTANT = 461.526;

    private static final int[] I = {
        0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 3, 3, 3, 4, 4, 4, 5, 8, 8, 21, 23, 29, 30, 31, 32
    };
    private static final int[] J = {
        -2, -1, 0, 1, 2, 3, 4, 5, -9, -7, -1, 0, 1, 3, -3, 0, 1, 3, 17, -4, 0, 6, -5, -2, 10, -8, -11, -6, -29, -31,
        -38, -39, -40, -41
    };
    private static final double[] N = {
        0.14632971213167,
        -0.84548187169114,
        -0.37563603672040e1,
        0.33855169168385e1,
        -0.95791963387872,
        0.15772038513228,
        -0.16616417199501e-1,
        0.81214629983568e-3,
        0.28319080123804e-3,
        -0.60706301565874e-3,
        -0.18990068218419e-1,
        -0.32529748770505e-1,
        -0.21841717175414e-1,
        -0.52838357969930e-4,
        -0.47184321073267e-3,
        -0.30001780793026e-3,
        0.47661393906987e-4,
        -0.44141845330846e-5,
        -0.72694996297594e-15,
        -0.31679644845054e-4,
        -0.28270797985312e-5,
        -0.85205128120103e-9,
        -0.22425281908000e-5,
        -0.65171222895601e-6,
        -0.14341729937924e-12,
        -0.40516996860117e-6,
        -0.12734301741641e-8,
        -0.17424871230634e-9,
        -0.68762131295531e-18,
        0.14478307828521e-19,
        0.26335781662795e-22,
        -0.11947622640071e-22,
        0.18228094581404e-23,
        -0.93537087292458e-25
    };

    private PureWater() {}

    /**
     * Density, kg/m³.
     *
     * @throws RangeFault outside the range of region 1
     */
    @Si("kg/m3")
    public static double density(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        checkRange(pressure, temperature);
        double gamma = derivative(pressure, temperature, 1, 0);
        return PRESSURE_SCALE / (SPECIFIC_GAS_CONSTANT * temperature * gamma);
    }

    /**
     * Isothermal compressibility (1/ρ) ∂ρ/∂p, 1/Pa.
     *
     * @throws RangeFault outside the range of region 1
     */
    @Si("1/Pa")
    public static double compressibility(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        checkRange(pressure, temperature);
        return -derivative(pressure, temperature, 2, 0) / (PRESSURE_SCALE * derivative(pressure, temperature, 1, 0));
    }

    /**
     * Thermal expansion −(1/ρ) ∂ρ/∂T, 1/K; negative below the density maximum.
     *
     * @throws RangeFault outside the range of region 1
     */
    @Si("1/K")
    public static double thermalExpansion(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        checkRange(pressure, temperature);
        double tau = TEMPERATURE_SCALE / temperature;
        return (1 - tau * derivative(pressure, temperature, 1, 1) / derivative(pressure, temperature, 1, 0))
                / temperature;
    }

    /**
     * Pressure at which water boils, Pa absolute: region 4 of the formulation, to 623.15 K.
     *
     * @throws RangeFault outside 273.15 to 623.15 K
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public static double saturationPressure(@Si(value = "K", kind = Kind.POINT) double temperature) {
        checkTemperature(temperature);
        double v = temperature - 0.23855557567849 / (temperature - 0.65017534844798e3);
        double a = v * v + 0.11670521452767e4 * v - 0.72421316703206e6;
        double b = -0.17073846940092e2 * v * v + 0.12020824702470e5 * v - 0.32325550322333e7;
        double c = 0.14915108613530e2 * v * v - 0.48232657361591e4 * v + 0.40511340542057e6;
        double root = 2 * c / (Math.sqrt(b * b - 4 * a * c) - b);
        return 1e6 * root * root * root * root;
    }

    /** ∂^(m+n) γ / ∂π^m ∂τ^n for m of 1 or 2 and n of 0 or 1. */
    private static double derivative(double pressure, double temperature, int m, int n) {
        double a = 7.1 - pressure / PRESSURE_SCALE;
        double b = TEMPERATURE_SCALE / temperature - 1.222;
        double sum = 0;
        for (int k = 0; k < N.length; k++) {
            if (I[k] >= m) {
                double term = N[k] * Math.pow(a, I[k] - m) * Math.pow(b, J[k] - n);
                term *= m == 1 ? -I[k] : I[k] * (I[k] - 1);
                sum += n == 0 ? term : term * J[k];
            }
        }
        return sum;
    }

    private static void checkRange(double pressure, double temperature) {
        double lowest = saturationPressure(temperature);
        if (!(pressure >= lowest && pressure <= HIGHEST_PRESSURE)) {
            throw new RangeFault(
                    "water pressure",
                    pressure,
                    lowest,
                    HIGHEST_PRESSURE,
                    Measure.PRESSURE_ABSOLUTE,
                    "liquid water at this temperature has a formulation in that range only");
        }
    }

    private static void checkTemperature(double temperature) {
        if (!(temperature >= LOWEST_TEMPERATURE && temperature <= HIGHEST_TEMPERATURE)) {
            throw new RangeFault(
                    "water temperature",
                    temperature,
                    LOWEST_TEMPERATURE,
                    HIGHEST_TEMPERATURE,
                    Measure.TEMPERATURE,
                    "the formulation of liquid water holds in that range only");
        }
    }
}
