package staunch.fluid;

import java.util.Objects;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * A real natural gas by the law of corresponding states: ρ = p M / (Z R T), Z from a {@link DeviationFactor} at
 * ppr = p/ppc and Tpr = T/Tpc.
 */
public final class RealGas implements Gas {
    private final DeviationFactor factor;
    private final PseudoCritical critical;
    private final double molarMass;
    private final String description;

    private final double perCriticalPressure;
    private final double perCriticalTemperature;
    private final double massPerGasConstant;
    private final double lowestTemperature;
    private final double highestTemperature;
    private final double highestPressure;

    private RealGas(DeviationFactor factor, PseudoCritical critical, double molarMass, String description) {
        this.factor = Objects.requireNonNull(factor, "factor");
        this.critical = Objects.requireNonNull(critical, "critical");
        this.molarMass = molarMass;
        this.description = description;
        this.perCriticalPressure = 1 / critical.pressure();
        this.perCriticalTemperature = 1 / critical.temperature();
        this.massPerGasConstant = molarMass / Physics.GAS_CONSTANT;
        this.lowestTemperature = factor.lowestReducedTemperature() * critical.temperature();
        this.highestTemperature = factor.highestReducedTemperature() * critical.temperature();
        this.highestPressure = factor.highestReducedPressure() * critical.pressure();
    }

    /** A gas by the defaults of this library: Sutton's pseudo-criticals, Dranchuk and Abou-Kassem's Z. */
    public static RealGas of(GasComposition composition) {
        return of(composition, PseudoCriticalCorrelation.SUTTON_1985, DeviationFactor.DRANCHUK_ABOU_KASSEM);
    }

    /**
     * A gas by its gravity and non-hydrocarbon parts.
     *
     * @throws RangeFault where the composition lies outside the range of the correlation
     */
    public static RealGas of(
            GasComposition composition, PseudoCriticalCorrelation correlation, DeviationFactor factor) {
        return new RealGas(
                factor,
                correlation.of(composition),
                composition.molarMass(),
                "real gas, " + factor.title() + " with pseudo-criticals of " + correlation.title());
    }

    /**
     * A gas whose pseudo-critical point is known.
     *
     * @param molarMass kg/mol, 0.01 to 0.06
     */
    public static RealGas of(@Si("kg/mol") double molarMass, PseudoCritical critical, DeviationFactor factor) {
        Check.within("molar mass of the gas", molarMass, 0.01, 0.06, Measure.MOLAR_MASS);
        return new RealGas(factor, critical, molarMass, "real gas, " + factor.title() + " with known pseudo-criticals");
    }

    /**
     * {@inheritDoc}
     *
     * @param pressure 0 to {@link #highestPressure()}, Pa absolute
     * @param temperature {@link #lowestTemperature()} to {@link #highestTemperature()}, K
     */
    @Override
    @Si("kg/m3")
    public double density(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        return massPerGasConstant * pressure / (temperature * deviationFactor(pressure, temperature));
    }

    /**
     * Deviation factor Z, dimensionless.
     *
     * @throws RangeFault outside the ranges of {@link #density}
     */
    @Si("1")
    public double deviationFactor(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        if (!(pressure >= 0
                && pressure <= highestPressure
                && temperature >= lowestTemperature
                && temperature <= highestTemperature)) {
            throw outside(pressure, temperature);
        }
        return factor.solve(pressure * perCriticalPressure, temperature * perCriticalTemperature);
    }

    private RangeFault outside(double pressure, double temperature) {
        String advice = "the correlation of " + factor.title() + " holds in that range only for this gas";
        if (!(pressure >= 0 && pressure <= highestPressure)) {
            return new RangeFault("gas pressure", pressure, 0, highestPressure, Measure.PRESSURE_ABSOLUTE, advice);
        }
        return new RangeFault(
                "gas temperature", temperature, lowestTemperature, highestTemperature, Measure.TEMPERATURE, advice);
    }

    /**
     * Dynamic viscosity after Lee, Gonzalez and Eakin, see {@link LeeGonzalezEakin}.
     *
     * @throws RangeFault outside the range of that correlation or of the density
     */
    @Si("Pa.s")
    public double viscosity(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        LeeGonzalezEakin.checkRange(pressure, temperature);
        return LeeGonzalezEakin.viscosity(molarMass, density(pressure, temperature), temperature);
    }

    /** Pseudo-critical point in use. */
    public PseudoCritical critical() {
        return critical;
    }

    /** Molar mass. */
    @Si("kg/mol")
    public double molarMass() {
        return molarMass;
    }

    /** Least temperature at which the correlation holds for this gas. */
    @Si(value = "K", kind = Kind.POINT)
    public double lowestTemperature() {
        return lowestTemperature;
    }

    /** Greatest temperature at which the correlation holds for this gas. */
    @Si(value = "K", kind = Kind.POINT)
    public double highestTemperature() {
        return highestTemperature;
    }

    /** Greatest pressure at which the correlation holds for this gas. */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double highestPressure() {
        return highestPressure;
    }

    /** Pressure below which Z is continued to 1 beyond the published range; a result that relies on it says so. */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double lowestPublishedPressure() {
        return factor.lowestPublishedReducedPressure() * critical.pressure();
    }

    @Override
    public String description() {
        return description;
    }
}
