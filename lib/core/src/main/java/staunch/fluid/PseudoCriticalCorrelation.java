package staunch.fluid;

import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * Pseudo-critical point of a natural gas from its gravity and its non-hydrocarbon parts. Constants are in °R and psia, as
 * published; arguments and results are SI.
 */
public enum PseudoCriticalCorrelation {
    /**
     * Sutton, SPE 14265 (1985), for the hydrocarbon part of gravity γ: Tpc = 169.2 + 349.5 γ − 74.0 γ² °R, ppc =
     * 756.8 − 131.0 γ − 3.6 γ² psia, 0.57 ≤ γ ≤ 1.68. Non-hydrocarbon parts are taken out of the gravity, mixed in by
     * mole fraction with their own critical points (Kay), and H2S and CO2 corrected after Wichert and Aziz
     * (Hydrocarbon Processing 51 (1972) 119; CO2 up to 54.4 and H2S up to 73.8 mol %).
     */
    SUTTON_1985("Sutton 1985", 0.57, 1.68) {
        @Override
        double sweetTemperature(double gravity) {
            return 169.2 + gravity * (349.5 - 74.0 * gravity);
        }

        @Override
        double sweetPressure(double gravity) {
            return 756.8 - gravity * (131.0 + 3.6 * gravity);
        }
    },
    /**
     * Standing, Volumetric and Phase Behavior of Oil Field Hydrocarbon Systems (1977), for the hydrocarbon part of a dry
     * gas: Tpc = 168 + 325 γ − 12.5 γ² °R, ppc = 677 + 15.0 γ − 37.5 γ² psia, 0.55 ≤ γ ≤ 0.75 (constants and range from
     * memory). Non-hydrocarbon parts as for {@link #SUTTON_1985}.
     */
    STANDING_1977("Standing 1977", 0.55, 0.75) {
        @Override
        double sweetTemperature(double gravity) {
            return 168.0 + gravity * (325.0 - 12.5 * gravity);
        }

        @Override
        double sweetPressure(double gravity) {
            return 677.0 + gravity * (15.0 - 37.5 * gravity);
        }
    },
    /**
     * Piper, McCain and Corredor, SPE 26668 (1993), form with gravity γ and the mole fractions y of H2S, CO2 and N2:
     * J = Tpc/ppc = 0.11582 − 0.45820 y Tc/pc |H2S − 0.90348 y Tc/pc |CO2 − 0.66026 y Tc/pc |N2 + 0.70729 γ − 0.099397
     * γ², K = Tpc/√ppc = 3.8216 − 0.06534 y Tc/√pc |H2S − 0.42113 y Tc/√pc |CO2 − 0.91249 y Tc/√pc |N2 + 17.438 γ −
     * 3.2191 γ²; Tpc = K²/J, ppc = Tpc/J. Data of the fit: gravity 0.613 to 1.821, H2S up to 51.37, CO2 up to 67.16,
     * N2 up to 15.68 mol % (constants and data range from memory).
     */
    PIPER_MCCAIN_CORREDOR_1993("Piper–McCain–Corredor 1993", 0.613, 1.821) {
        @Override
        double sweetTemperature(double gravity) {
            double k = sweetK(gravity);
            return k * k / sweetJ(gravity);
        }

        @Override
        double sweetPressure(double gravity) {
            return sweetTemperature(gravity) / sweetJ(gravity);
        }

        @Override
        void check(GasComposition gas) {
            checkGravity("gas gravity", gas.gravity());
            Check.within(FIELD_H2S, gas.hydrogenSulphide(), 0, 0.5137, Measure.NUMBER);
            Check.within(FIELD_CO2, gas.carbonDioxide(), 0, 0.6716, Measure.NUMBER);
            Check.within("mole fraction of nitrogen", gas.nitrogen(), 0, 0.1568, Measure.NUMBER);
        }

        @Override
        PseudoCritical at(GasComposition gas) {
            double h2s = gas.hydrogenSulphide();
            double co2 = gas.carbonDioxide();
            double n2 = gas.nitrogen();
            double j = sweetJ(gas.gravity())
                    - 0.45820 * h2s * TC_H2S / PC_H2S
                    - 0.90348 * co2 * TC_CO2 / PC_CO2
                    - 0.66026 * n2 * TC_N2 / PC_N2;
            double k = sweetK(gas.gravity())
                    - 0.06534 * h2s * TC_H2S / Math.sqrt(PC_H2S)
                    - 0.42113 * co2 * TC_CO2 / Math.sqrt(PC_CO2)
                    - 0.91249 * n2 * TC_N2 / Math.sqrt(PC_N2);
            double temperature = k * k / j;
            return new PseudoCritical(temperature * FieldUnits.RANKINE, temperature / j * FieldUnits.PSI);
        }

        private double sweetJ(double gravity) {
            return 0.11582 + gravity * (0.70729 - 0.099397 * gravity);
        }

        private double sweetK(double gravity) {
            return 3.8216 + gravity * (17.438 - 3.2191 * gravity);
        }
    };

    private static final String FIELD_H2S = "mole fraction of hydrogen sulphide";
    private static final String FIELD_CO2 = "mole fraction of carbon dioxide";

    /* Pure components: critical point in °R and psia, gravity to air (McCain, The Properties of Petroleum Fluids, 1990;
    from memory). */
    private static final double TC_H2S = 672.35;
    private static final double PC_H2S = 1306.0;
    private static final double GRAVITY_H2S = 1.1767;
    private static final double TC_CO2 = 547.58;
    private static final double PC_CO2 = 1071.0;
    private static final double GRAVITY_CO2 = 1.5196;
    private static final double TC_N2 = 227.16;
    private static final double PC_N2 = 493.1;
    private static final double GRAVITY_N2 = 0.9672;

    private final String title;
    private final double lowestGravity;
    private final double highestGravity;

    PseudoCriticalCorrelation(String title, double lowestGravity, double highestGravity) {
        this.title = title;
        this.lowestGravity = lowestGravity;
        this.highestGravity = highestGravity;
    }

    /** Tpc of a gas without other parts, °R, without a check of range. */
    abstract double sweetTemperature(double gravity);

    /** ppc of a gas without other parts, psia, without a check of range. */
    abstract double sweetPressure(double gravity);

    /**
     * Pseudo-critical point, corrected for the non-hydrocarbon parts.
     *
     * @throws RangeFault where gravity or a mole fraction lies outside the range of the correlation
     */
    public PseudoCritical of(GasComposition gas) {
        check(gas);
        return at(gas);
    }

    void check(GasComposition gas) {
        Check.within(FIELD_CO2, gas.carbonDioxide(), 0, 0.544, Measure.NUMBER);
        Check.within(FIELD_H2S, gas.hydrogenSulphide(), 0, 0.738, Measure.NUMBER);
        if (hydrocarbons(gas) <= 0) {
            throw new InputFault(
                    "gas composition",
                    "has no hydrocarbons, which the correlation of " + title + " needs",
                    "give the pseudo-critical point of such a gas itself");
        }
        checkGravity("gravity of the hydrocarbon part of the gas", hydrocarbonGravity(gas));
    }

    /** Without a check of range. */
    PseudoCritical at(GasComposition gas) {
        double n2 = gas.nitrogen();
        double co2 = gas.carbonDioxide();
        double h2s = gas.hydrogenSulphide();
        double hydrocarbons = hydrocarbons(gas);
        double gravity = hydrocarbonGravity(gas);
        double temperature = hydrocarbons * sweetTemperature(gravity) + TC_N2 * n2 + TC_CO2 * co2 + TC_H2S * h2s;
        double pressure = hydrocarbons * sweetPressure(gravity) + PC_N2 * n2 + PC_CO2 * co2 + PC_H2S * h2s;
        double shift = wichertAzizShift(h2s, co2);
        return new PseudoCritical(
                (temperature - shift) * FieldUnits.RANKINE,
                pressure * wichertAzizFactor(temperature, shift, h2s) * FieldUnits.PSI);
    }

    private static double hydrocarbons(GasComposition gas) {
        return 1 - gas.nitrogen() - gas.carbonDioxide() - gas.hydrogenSulphide();
    }

    private static double hydrocarbonGravity(GasComposition gas) {
        double others =
                GRAVITY_N2 * gas.nitrogen() + GRAVITY_CO2 * gas.carbonDioxide() + GRAVITY_H2S * gas.hydrogenSulphide();
        return (gas.gravity() - others) / hydrocarbons(gas);
    }

    /** Name and year. */
    public String title() {
        return title;
    }

    /** Least gravity, of the whole gas for {@link #PIPER_MCCAIN_CORREDOR_1993} and of its hydrocarbon part otherwise. */
    @Si("1")
    public double lowestGravity() {
        return lowestGravity;
    }

    /** Greatest gravity, of the same. */
    @Si("1")
    public double highestGravity() {
        return highestGravity;
    }

    void checkGravity(String field, double gravity) {
        if (!(gravity >= lowestGravity && gravity <= highestGravity)) {
            throw new RangeFault(
                    field,
                    gravity,
                    lowestGravity,
                    highestGravity,
                    Measure.NUMBER,
                    "the correlation of " + title + " holds in that range only");
        }
    }

    /** ε in °R: 120 (A^0.9 − A^1.6) + 15 (B^0.5 − B⁴) with A the fraction of both acid gases and B that of H2S. */
    static double wichertAzizShift(double hydrogenSulphide, double carbonDioxide) {
        double a = hydrogenSulphide + carbonDioxide;
        double b = hydrogenSulphide;
        return 120 * (Math.pow(a, 0.9) - Math.pow(a, 1.6)) + 15 * (Math.sqrt(b) - b * b * b * b);
    }

    /** Corrected over uncorrected ppc: Tpc′ / (Tpc + B (1 − B) ε), temperatures in °R. */
    static double wichertAzizFactor(double temperature, double shift, double hydrogenSulphide) {
        return (temperature - shift) / (temperature + hydrogenSulphide * (1 - hydrogenSulphide) * shift);
    }
}
