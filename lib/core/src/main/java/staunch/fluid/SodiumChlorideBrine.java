package staunch.fluid;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * Sodium chloride brine: mass fractions over the density of water and the apparent density of the dissolved salt
 * (Laliberté and Cooper, J. Chem. Eng. Data 49 (2004) 1141), with t in °C,
 *
 * <pre>
 * 1/ρ = (1 − w)/ρ_water + w/ρ_salt,
 * ρ_salt = (−0.00433 w + 0.06471) exp(1e-6 (t + 3315.6)²) / (w + 1.0166 + 0.014624 t)
 * </pre>
 *
 * <p>The apparent density is taken not to move with pressure. Constants from memory, held by handbook values at 20 °C to
 * 0.1 %.
 *
 * @param saltFraction mass fraction w of NaCl, 0 to 0.26
 */
public record SodiumChlorideBrine(@Si("1") double saltFraction) {
    public SodiumChlorideBrine {
        Check.within("mass fraction of salt", saltFraction, 0, 0.26, Measure.NUMBER);
    }

    /**
     * Density, kg/m³.
     *
     * @param pressure saturation pressure of water to 100 MPa, Pa absolute
     * @param temperature 273.15 to 373.15 K
     * @throws staunch.units.RangeFault outside that range
     */
    @Si("kg/m3")
    public double density(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        Check.within("brine temperature", temperature, 273.15, 373.15, Measure.TEMPERATURE);
        double w = saltFraction;
        double t = temperature - Physics.CELSIUS_ZERO;
        double shifted = t + 3315.6;
        double salt = (-0.00433 * w + 0.06471) * Math.exp(1e-6 * shifted * shifted) / (w + 1.0166 + 0.014624 * t);
        return 1 / ((1 - w) / PureWater.density(pressure, temperature) + w / salt);
    }
}
