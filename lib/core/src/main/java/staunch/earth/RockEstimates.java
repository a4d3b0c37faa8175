package staunch.earth;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.units.Si;

/** Estimates of overburden and strength from depth, porosity or sound, for profiles that no measurement supports. */
public final class RockEstimates {
    private static final double FOOT = 0.3048;

    /** A pound per US gallon, kg/m³: 0.45359237 kg in 231 cubic inches. */
    private static final double POUND_PER_GALLON = 0.45359237 / (231 * 0.0254 * 0.0254 * 0.0254);

    private RockEstimates() {}

    /**
     * Fracture gradient of a formation that carries its overburden without straining sideways: G = (S − P) ν / (1 − ν) + P (Eaton, B.A.,
     * "Fracture gradient prediction and its application in oilfield operations", Journal of Petroleum Technology, October
     * 1969). Mean gradients from the datum, as the paper uses them.
     *
     * @param overburden gradient S of the overburden, Pa/m, 9000 to 30 000
     * @param porePressure gradient P of the pore pressure, Pa/m, 0 to the overburden's
     * @param poissonRatio ν, 0.05 to 0.5
     * @return Pa/m, from P to S
     * @throws RangeFault outside these ranges
     */
    @Si("Pa/m")
    public static double eatonFractureGradient(
            @Si("Pa/m") double overburden, @Si("Pa/m") double porePressure, @Si("1") double poissonRatio) {
        Check.within("gradient of the overburden", overburden, 9000, 30_000, Measure.PRESSURE_GRADIENT);
        Check.within("gradient of the pore pressure", porePressure, 0, overburden, Measure.PRESSURE_GRADIENT);
        Check.within("Poisson's ratio", poissonRatio, 0.05, 0.5, Measure.NUMBER);
        return (overburden - porePressure) * poissonRatio / (1 - poissonRatio) + porePressure;
    }

    /**
     * Sediment whose porosity falls with depth: φ = φ₀ exp(−z/λ) (Athy, L.F., "Density, porosity, and compaction of
     * sedimentary rocks", AAPG Bulletin, January 1930).
     *
     * @param surfacePorosity φ₀, 0 to 0.95
     * @param decayLength λ over which porosity falls to 1/e, m, 100 to 100 000
     * @param grainDensity kg/m³, 2000 to 3500
     * @param fluidDensity of the pore water, kg/m³, 900 to 1400
     */
    public record Sediment(
            @Si("1") double surfacePorosity,
            @Si(value = "m", kind = Kind.LENGTH) double decayLength,
            @Si("kg/m3") double grainDensity,
            @Si("kg/m3") double fluidDensity) {
        public Sediment {
            Check.within("porosity at the mudline", surfacePorosity, 0, 0.95, Measure.NUMBER);
            Check.within("decay length of the porosity", decayLength, 100, 100_000, Measure.LENGTH);
            Check.within("density of the grains", grainDensity, 2000, 3500, Measure.DENSITY);
            Check.within("density of the pore water", fluidDensity, 900, 1400, Measure.DENSITY);
        }

        /**
         * Stress that the sediment adds below the mudline: σ = g [ρ_s z − (ρ_s − ρ_f) φ₀ λ (1 − exp(−z/λ))].
         *
         * @param depth below the mudline or ground, m, 0 to 20 000
         * @throws RangeFault outside that range
         */
        @Si(value = "Pa", kind = Kind.DIFFERENCE)
        public double overburden(@Si(value = "m", kind = Kind.LENGTH) double depth) {
            Check.within("depth below the mudline", depth, 0, 20_000, Measure.LENGTH);
            double pores = surfacePorosity * decayLength * -Math.expm1(-depth / decayLength);
            return Physics.GRAVITY * (grainDensity * depth - (grainDensity - fluidDensity) * pores);
        }
    }

    /**
     * Bulk density from the speed of sound: ρ = 310 V^0.25 with V in m/s (Gardner, G.H.F., Gardner, L.W. and Gregory,
     * A.R., "Formation velocity and density", Geophysics, December 1974; coefficient from memory). An average over water
     * saturated sediments; salt and anhydrite lie off it.
     *
     * @param velocity of the compressional wave, m/s, 1500 to 6500
     * @throws RangeFault outside that range
     */
    @Si("kg/m3")
    public static double gardnerDensity(@Si("m/s") double velocity) {
        Check.within("velocity of the compressional wave", velocity, 1500, 6500, Measure.SPEED);
        return 310 * Math.pow(velocity, 0.25);
    }

    /**
     * Mean density of the sediment above a depth: ρ = 16.3 + (D / 3125)^0.6 in pounds per gallon with D in feet
     * (Traugott, M., "Pore/fracture pressure determinations in deep water", World Oil, August 1997; from memory). For
     * young deepwater basins.
     *
     * @param depth below the mudline, m, 0 to 9144 (30 000 ft)
     * @throws RangeFault outside that range
     */
    @Si("kg/m3")
    public static double traugottMeanDensity(@Si(value = "m", kind = Kind.LENGTH) double depth) {
        Check.within("depth below the mudline", depth, 0, 9144, Measure.LENGTH);
        return (16.3 + Math.pow(depth / FOOT / 3125, 0.6)) * POUND_PER_GALLON;
    }
}
