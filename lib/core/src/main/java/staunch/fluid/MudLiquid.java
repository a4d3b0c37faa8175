package staunch.fluid;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * Liquids of drilling muds by the linear correlations of Sorelle and others, SPE 11118 (1982): ρ = a + b T + c p in
 * lb/gal with T in °F and p in psi gauge, 60 to 400 °F (289 to 478 K) and 0 to 14 000 psi (96.6 MPa). Constants and range
 * from memory.
 */
public enum MudLiquid {
    /** Diesel oil no. 2: 7.24032 − 2.84383e-3 T + 2.7566e-5 p. */
    DIESEL(7.24032, -2.84383e-3, 2.7566e-5),
    /** Water: 8.63186 − 3.31977e-3 T + 2.3717e-5 p; up to 1 % above {@link PureWater}. */
    WATER(8.63186, -3.31977e-3, 2.3717e-5);

    private static final double POUND_PER_GALLON = 0.45359237 / 3.785411784e-3;

    private final double atZero;
    private final double perDegree;
    private final double perPressure;

    MudLiquid(double atZero, double perDegree, double perPressure) {
        this.atZero = atZero;
        this.perDegree = perDegree;
        this.perPressure = perPressure;
    }

    /**
     * Density, kg/m³.
     *
     * @throws staunch.units.RangeFault outside the range of the correlation
     */
    @Si("kg/m3")
    public double density(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        Check.within("pressure of the mud's liquid", pressure, 1e5, 96.7e6, Measure.PRESSURE_ABSOLUTE);
        Check.within("temperature of the mud's liquid", temperature, 288.7, 477.6, Measure.TEMPERATURE);
        double fahrenheit = temperature / FieldUnits.RANKINE - FieldUnits.FAHRENHEIT_ZERO;
        double gauge = (pressure - Physics.ATMOSPHERE) / FieldUnits.PSI;
        return POUND_PER_GALLON * (atZero + perDegree * fahrenheit + perPressure * gauge);
    }
}
