package staunch.control;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Hand formulas of gas migration, the volumetric method and lubricate-and-bleed, as course notes and handbooks give them
 * (N.J. Lapeyrouse, "Formulas and Calculations for Drilling, Production and Workover"). Densities 500 to 3000 kg/m³,
 * capacities 1e-6 to 2 m³/m.
 */
public final class MigrationFormulas {
    private MigrationFormulas() {}

    /**
     * Rise rate that the pressure of a closed well suggests where mud and hole do not yield: (dp/dt)/(k ρ), vertical. A
     * lower bound: see {@link Compliance#shareOfRigidRise()}.
     *
     * @param observed rise of the surface pressure
     */
    @Si("m/s")
    public static double apparentRiseRate(
            PressureRise observed, @Si("kg/m3") double mudDensity, HydrostaticConstant constant) {
        density(mudDensity);
        return observed.rise() / observed.duration() / constant.gradient(mudDensity);
    }

    /**
     * An observed rise of pressure.
     *
     * @param rise Pa, 0 to 1e8
     * @param duration s, 1 to 1e7
     */
    public record PressureRise(
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double rise,
            @Si("s") double duration) {
        public PressureRise {
            Check.within("rise of the pressure", rise, 0, 1e8, Measure.PRESSURE_DIFFERENCE);
            Check.within("duration", duration, 1, 1e7, Measure.TIME);
        }
    }

    /** Pressure of a unit of volume of mud in the annulus: k ρ/C, Pa per m³ given as the pressure of one cubic metre. */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public static double pressureOfVolume(
            @Si("kg/m3") double mudDensity,
            @Si("m3") double volume,
            @Si("m3/m") double capacity,
            HydrostaticConstant constant) {
        density(mudDensity);
        capacity(capacity);
        Check.within("volume of mud", volume, 0, 1000, Measure.VOLUME);
        return constant.gradient(mudDensity) * volume / capacity;
    }

    /** Volume of mud whose column makes up a pressure: Δp C/(k ρ): what to bleed at each step of the volumetric method. */
    @Si("m3")
    public static double volumeOfPressure(
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double pressure,
            @Si("kg/m3") double mudDensity,
            @Si("m3/m") double capacity,
            HydrostaticConstant constant) {
        density(mudDensity);
        capacity(capacity);
        Check.within("pressure of the step", pressure, 0, 1e8, Measure.PRESSURE_DIFFERENCE);
        return pressure * capacity / constant.gradient(mudDensity);
    }

    /**
     * What yields in a closed well when gas rises in it (A.B. Johnson and J.A. Tarvin, IADC European Well Control
     * Conference, Paris, 1993; relation from memory).
     *
     * @param kickVolume V_k, m³, above 0 to 1000
     * @param kickCompressibility c_k of the gas, 1/Pa, 1e-9 to 1e-4
     * @param mudVolume V_m of mud and hole, m³, 0 to 5000
     * @param mudCompressibility c_m of mud, hole and casing together, 1/Pa, 0 to 1e-7
     */
    public record Compliance(
            @Si("m3") double kickVolume,
            @Si("1/Pa") double kickCompressibility,
            @Si("m3") double mudVolume,
            @Si("1/Pa") double mudCompressibility) {
        public Compliance {
            Check.within("kick volume", kickVolume, 1e-6, 1000, Measure.VOLUME);
            Check.within("compressibility of the gas", kickCompressibility, 1e-9, 1e-4, Measure.COMPRESSIBILITY);
            Check.within("volume of mud", mudVolume, 0, 5000, Measure.VOLUME);
            Check.within("compressibility of mud and hole", mudCompressibility, 0, 1e-7, Measure.COMPRESSIBILITY);
        }

        /**
         * Pressure rise as a share of the rise in a rigid well with incompressible mud, without losses: c_k V_k/(c_k V_k + c_m
         * V_m). The true rise rate is the apparent one over this share.
         */
        @Si("1")
        public double shareOfRigidRise() {
            double kick = kickCompressibility * kickVolume;
            return kick / (kick + mudCompressibility * mudVolume);
        }
    }

    /**
     * State of a gas.
     *
     * @param pressure Pa absolute, 1e4 to 4e8
     * @param temperature K, 250 to 600
     * @param deviationFactor Z, 0.1 to 3
     */
    public record GasState(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature,
            @Si("1") double deviationFactor) {
        public GasState {
            Check.within("gas pressure", pressure, 1e4, 4e8, Measure.PRESSURE_ABSOLUTE);
            Check.within("gas temperature", temperature, 250, 600, Measure.TEMPERATURE);
            Check.within("deviation factor", deviationFactor, 0.1, 3, Measure.NUMBER);
        }

        /** Volume in another state of gas that fills a volume in this one: V p₁/p₂ T₂/T₁ Z₂/Z₁. */
        @Si("m3")
        public double volumeIn(GasState other, @Si("m3") double volume) {
            Check.atLeast("gas volume", volume, 0, Measure.VOLUME);
            return volume
                    * (pressure / other.pressure)
                    * (other.temperature / temperature)
                    * (other.deviationFactor / deviationFactor);
        }
    }

    private static void density(double value) {
        Check.within("mud density", value, 500, 3000, Measure.DENSITY);
    }

    private static void capacity(double value) {
        Check.within("capacity of the annulus", value, 1e-6, 2, Measure.CAPACITY);
    }
}
