package staunch.control;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Single formulas of the kill sheet and of the hand estimates of a circulating kick, as course notes and handbooks give
 * them (N.J. Lapeyrouse, "Formulas and Calculations for Drilling, Production and Workover"). {@link KillSheet} puts them
 * together for a well.
 */
public final class KillFormulas {
    /** Rounding that a sum of unit conversions may leave on a density that is a whole number of steps, in steps. */
    private static final double WHOLE_STEP = 1e-6;

    private static final double HUNDRED_PSI = 100 * 0.45359237 * 9.80665 / (0.0254 * 0.0254);

    private KillFormulas() {}

    /**
     * Density rounded up to a whole number of steps.
     *
     * @param density kg/m³, 500 to 3000
     * @param step kg/m³, 0.1 to 100
     */
    @Si("kg/m3")
    public static double roundedUp(
            @Si("kg/m3") double density, @Si(value = "kg/m3", kind = Kind.DIFFERENCE) double step) {
        Check.within("kill mud density", density, 500, 3000, Measure.DENSITY);
        Check.within("step of the kill mud density", step, 0.1, 100, Measure.DENSITY_DIFFERENCE);
        return Math.ceil(density / step - WHOLE_STEP) * step;
    }

    /** Initial circulating pressure: slow circulating pressure plus shut-in drill-pipe pressure. */
    @Si(value = "Pa", kind = Kind.GAUGE)
    public static double initialCirculatingPressure(
            @Si(value = "Pa", kind = Kind.GAUGE) double slowCirculatingPressure,
            @Si(value = "Pa", kind = Kind.GAUGE) double shutInDrillPipePressure) {
        gauge("slow circulating pressure", slowCirculatingPressure);
        gauge("shut-in drill-pipe pressure", shutInDrillPipePressure);
        return slowCirculatingPressure + shutInDrillPipePressure;
    }

    /** Final circulating pressure: slow circulating pressure in proportion to density, p ρ_kill/ρ. */
    @Si(value = "Pa", kind = Kind.GAUGE)
    public static double finalCirculatingPressure(
            @Si(value = "Pa", kind = Kind.GAUGE) double slowCirculatingPressure,
            @Si("kg/m3") double mudDensity,
            @Si("kg/m3") double killDensity) {
        gauge("slow circulating pressure", slowCirculatingPressure);
        Check.within("mud density", mudDensity, 500, 3000, Measure.DENSITY);
        Check.within("kill mud density", killDensity, 500, 3000, Measure.DENSITY);
        return slowCirculatingPressure * killDensity / mudDensity;
    }

    /**
     * Weighting material for a volume of mud.
     *
     * @param mass kg
     * @param volumeIncrease m³
     */
    public record Weighting(@Si("kg") double mass, @Si("m3") double volumeIncrease) {}

    /**
     * Mass that brings a volume to a new density, by balance of mass and volume: m = V ρ_b (ρ₂ − ρ₁)/(ρ_b − ρ₂); the volume
     * grows by m/ρ_b. (In field units the usual 1470 (W₂ − W₁)/(35 − W₂) sacks per 100 bbl, with ρ_b = 35 ppg.)
     *
     * @param volume before, m³, 0 to 5000
     * @param change old and new density, and that of the material
     */
    public static Weighting weighting(@Si("m3") double volume, DensityChange change) {
        Check.within("volume to weight up", volume, 0, 5000, Measure.VOLUME);
        double mass = volume
                * change.material
                * (change.newDensity - change.oldDensity)
                / (change.material - change.newDensity);
        return new Weighting(mass, mass / change.material);
    }

    /**
     * A change of mud density.
     *
     * @param oldDensity kg/m³, 500 to the new one
     * @param newDensity kg/m³, to 2800
     * @param material density of the weighting material, kg/m³, 2600 to 7000 and above the new density; barite 4200
     */
    public record DensityChange(
            @Si("kg/m3") double oldDensity,
            @Si("kg/m3") double newDensity,
            @Si("kg/m3") double material) {
        public DensityChange {
            Check.within("new mud density", newDensity, 500, 2800, Measure.DENSITY);
            Check.within("old mud density", oldDensity, 500, newDensity, Measure.DENSITY);
            Check.within(
                    "density of the weighting material",
                    material,
                    Math.max(2600, newDensity + 1),
                    7000,
                    Measure.DENSITY);
        }
    }

    /**
     * Gas kick circulated with the driller's method in a uniform annulus, by the hand formulas of the trade: greatest
     * surface pressure 0.2 √(p_f V W/C) psi and greatest pit gain 4 √(p_f V C/W) bbl (p_f psi, V bbl, W ppg, C bbl/ft).
     * Estimates for gas in water-based mud; temperature, Z and the weight of the gas are in the constants.
     *
     * @param formationPressure Pa gauge, 0 to 4e8
     * @param gain m³, 0 to 500
     * @param killDensity kg/m³, 500 to 3000
     * @param capacity of the annulus, m³/m, 1e-4 to 2
     */
    public record GasKick(
            @Si(value = "Pa", kind = Kind.GAUGE) double formationPressure,
            @Si("m3") double gain,
            @Si("kg/m3") double killDensity,
            @Si("m3/m") double capacity) {
        /** 0.2² psi/(ppg ft) in SI, by the 0.052 psi/(ppg ft) of the trade. */
        private static final double PRESSURE_FACTOR = 0.2 * 0.2 / 0.052;

        /** 4² ppg ft/psi in SI, likewise. */
        private static final double GAIN_FACTOR = 4 * 4 * 0.052;

        public GasKick {
            gauge("formation pressure", formationPressure);
            Check.within("gain", gain, 0, 500, Measure.VOLUME);
            Check.within("kill mud density", killDensity, 500, 3000, Measure.DENSITY);
            Check.within("capacity of the annulus", capacity, 1e-4, 2, Measure.CAPACITY);
        }

        /** Greatest surface pressure. */
        @Si(value = "Pa", kind = Kind.GAUGE)
        public double greatestSurfacePressure() {
            double gradient = HydrostaticConstant.TRADE_0_052.gradient(killDensity);
            return Math.sqrt(PRESSURE_FACTOR * formationPressure * gain * gradient / capacity);
        }

        /** Greatest pit gain. */
        @Si("m3")
        public double greatestGain() {
            double gradient = HydrostaticConstant.TRADE_0_052.gradient(killDensity);
            return Math.sqrt(GAIN_FACTOR * formationPressure * gain * capacity / gradient);
        }
    }

    /**
     * Hydrostatic pressure lost to gas-cut mud, by the field rule 100 (ρ − ρ_cut)/ρ_cut psi, from
     * which Δp = p₀ (ρ − ρ_cut)/ρ_cut with p₀ = 100 psi.
     *
     * @param density uncut, kg/m³, 500 to 3000
     * @param cutDensity kg/m³, 50 to the uncut one
     */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public static double lossToGasCutMud(@Si("kg/m3") double density, @Si("kg/m3") double cutDensity) {
        Check.within("mud density", density, 500, 3000, Measure.DENSITY);
        Check.within("density of the gas-cut mud", cutDensity, 50, density, Measure.DENSITY);
        return HUNDRED_PSI * (density - cutDensity) / cutDensity;
    }

    private static void gauge(String field, double value) {
        Check.within(field, value, 0, 4e8, Measure.PRESSURE_GAUGE);
    }
}
