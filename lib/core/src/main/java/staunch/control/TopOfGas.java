package staunch.control;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * Pressure at the top of a bubble that is circulated up by the driller's method, by the quadratic of the handbooks: the
 * weight of the gas stays that of shut-in spread over the new cross-section, its volume follows pressure, deviation factor and
 * temperature at its top. With p_b held on bottom, the top at depth X below the datum, influx height h_b on bottom and r =
 * (z T)_x/(z T)_b:
 *
 * <p>p_x = B/2 + √(B²/4 + ρ_m g p_b r h_b A_b/A_x), B = p_b − ρ_m g (D − X) − ρ_g g h_b A_b/A_x
 *
 * <p>(R.D. Grace, Blowout and Well Control Handbook, chapter on classic pressure control; A.T. Bourgoyne et al., Applied
 * Drilling Engineering, 1986; both from memory.) Absolute pressures, vertical hole. It explains {@link Circulation}, which
 * integrates the column and keeps the mass.
 *
 * @param bottomHolePressure held, p_b, Pa absolute, 1e5 to 4e8
 * @param mudDensity ρ_m, kg/m³, 500 to 3000
 * @param heightBelow D − X, vertical from the top of the gas to the bottom of the hole, m, 0 to 20 000
 * @param influx on bottom
 * @param expansion r, 0.2 to 5; 1 is Boyle's law
 */
public record TopOfGas(
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double bottomHolePressure,
        @Si("kg/m3") double mudDensity,
        @Si(value = "m", kind = Kind.LENGTH) double heightBelow,
        Influx influx,
        @Si("1") double expansion) {
    public TopOfGas {
        Check.within("bottom-hole pressure held", bottomHolePressure, 1e5, 4e8, Measure.PRESSURE_ABSOLUTE);
        Check.within("mud density", mudDensity, 500, 3000, Measure.DENSITY);
        Check.within("height below the top of the gas", heightBelow, 0, 20_000, Measure.LENGTH);
        Check.within("ratio of zT", expansion, 0.2, 5, Measure.NUMBER);
    }

    /**
     * The influx at shut-in.
     *
     * @param height vertical, h_b, m, 0 to 20 000
     * @param density of the gas on bottom, ρ_g, kg/m³, 0 to 1000
     * @param areaRatio cross-section on bottom over that where the gas is now, A_b/A_x, 0.01 to 100
     */
    public record Influx(
            @Si(value = "m", kind = Kind.LENGTH) double height,
            @Si("kg/m3") double density,
            @Si("1") double areaRatio) {
        public Influx {
            Check.within("height of the influx on bottom", height, 0, 20_000, Measure.LENGTH);
            Check.within("density of the influx", density, 0, 1000, Measure.DENSITY);
            Check.within("ratio of the cross-sections", areaRatio, 0.01, 100, Measure.NUMBER);
        }
    }

    /** B: what the mud below and the gas leave of the bottom-hole pressure, the height of the gas not yet counted. */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public double left() {
        return bottomHolePressure
                - Physics.GRAVITY
                        * (mudDensity * heightBelow + influx.density() * influx.height() * influx.areaRatio());
    }

    /** p_x. */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double pressure() {
        double product =
                mudDensity * Physics.GRAVITY * bottomHolePressure * expansion * influx.height() * influx.areaRatio();
        return 0.5 * left() + Math.sqrt(0.25 * left() * left() + product);
    }
}
