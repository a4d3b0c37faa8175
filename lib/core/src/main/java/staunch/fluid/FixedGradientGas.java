package staunch.fluid;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * The gas of the hand calculation: its column weighs the same at every pressure, while its volume follows Boyle's law at
 * constant temperature. The two contradict each other, as the hand calculation does, so the density of the mass balance
 * is only proportional to absolute pressure: ρ = p / (1e5 m²/s²). Its ratios are right, its size means nothing.
 *
 * @param columnDensity density that gives the weight of the column, kg/m³, 0 to 1000
 */
public record FixedGradientGas(@Si("kg/m3") double columnDensity) implements Gas {
    private static final double DENSITY_PER_PRESSURE = 1e-5;

    public FixedGradientGas {
        Check.within("density of the gas column", columnDensity, 0, 1000, Measure.DENSITY);
    }

    /**
     * A gas of a given column gradient.
     *
     * @param gradient weight of the column, Pa/m, 0 to 9800 (0.1 psi/ft is 2262 Pa/m)
     */
    public static FixedGradientGas ofGradient(@Si("Pa/m") double gradient) {
        Check.within("gradient of the gas column", gradient, 0, 9800, Measure.PRESSURE_GRADIENT);
        return new FixedGradientGas(gradient / Physics.GRAVITY);
    }

    @Override
    @Si("kg/m3")
    public double density(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        if (!(pressure >= 0 && pressure < Double.POSITIVE_INFINITY)) {
            throw new RangeFault("gas pressure", pressure, 0, Double.POSITIVE_INFINITY, Measure.PRESSURE_ABSOLUTE, "");
        }
        return DENSITY_PER_PRESSURE * pressure;
    }

    @Override
    @Si("kg/m3")
    public double columnDensity(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        return columnDensity;
    }

    @Override
    public boolean weighsItsMass() {
        return false;
    }

    @Override
    public String description() {
        return "fixed gradient of the gas column, Boyle's law, constant temperature";
    }
}
