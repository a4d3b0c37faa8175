package staunch.fluid;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * An ideal gas: ρ = p M / (R T), at any pressure from zero and any temperature above absolute zero.
 *
 * @param molarMass kg/mol, 0.01 to 0.06
 */
public record IdealGas(@Si("kg/mol") double molarMass) implements Gas {
    public IdealGas {
        Check.within("molar mass of the gas", molarMass, 0.01, 0.06, Measure.MOLAR_MASS);
    }

    /** The ideal gas of a composition's gravity. */
    public static IdealGas of(GasComposition composition) {
        return new IdealGas(composition.molarMass());
    }

    @Override
    @Si("kg/m3")
    public double density(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        if (!(pressure >= 0 && pressure < Double.POSITIVE_INFINITY)) {
            throw new RangeFault("gas pressure", pressure, 0, Double.POSITIVE_INFINITY, Measure.PRESSURE_ABSOLUTE, "");
        }
        if (!(temperature >= Double.MIN_NORMAL && temperature < Double.POSITIVE_INFINITY)) {
            throw new RangeFault("gas temperature", temperature, 0, Double.POSITIVE_INFINITY, Measure.TEMPERATURE, "");
        }
        return molarMass / Physics.GAS_CONSTANT * pressure / temperature;
    }

    @Override
    public String description() {
        return "ideal gas";
    }
}
