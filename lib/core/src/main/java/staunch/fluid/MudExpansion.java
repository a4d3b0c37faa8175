package staunch.fluid;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * How the density of a mud moves with pressure and temperature:
 * ρ = ρ₀ exp(c (p − p₀) − α (T − T₀)), constant coefficients over the range of the well.
 *
 * @param compressibility isothermal compressibility c, 1/Pa, 0 to 2e-9
 * @param thermalExpansion thermal expansion α, 1/K, 0 to 2e-3
 * @param referencePressure pressure p₀ at which the density is stated, Pa absolute
 * @param referenceTemperature temperature T₀ at which the density is stated, K
 */
public record MudExpansion(
        @Si("1/Pa") double compressibility,
        @Si("1/K") double thermalExpansion,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double referencePressure,
        @Si(value = "K", kind = Kind.POINT) double referenceTemperature) {
    public MudExpansion {
        Check.within("mud compressibility", compressibility, 0, 2e-9, Measure.COMPRESSIBILITY);
        Check.within("mud thermal expansion", thermalExpansion, 0, 2e-3, Measure.THERMAL_EXPANSION);
        Check.within("reference pressure of the mud density", referencePressure, 1e4, 2e8, Measure.PRESSURE_ABSOLUTE);
        Check.within("reference temperature of the mud density", referenceTemperature, 250, 500, Measure.TEMPERATURE);
    }

    /** Density at a pressure and a temperature over the stated density: exp(c (p − p₀) − α (T − T₀)). */
    @Si("1")
    public double relativeDensity(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        return Math.exp(compressibility * (pressure - referencePressure)
                - thermalExpansion * (temperature - referenceTemperature));
    }
}
