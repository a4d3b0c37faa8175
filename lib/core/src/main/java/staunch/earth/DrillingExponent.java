package staunch.earth;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * Drilling exponent: how hard the rock is to drill, freed of weight on bit, speed and bit size. It rises with depth in
 * normally compacted shale and falls back where shale is undercompacted; {@link PorePressureMethod#EATON_DRILLING_EXPONENT}
 * reads pore pressure from its departure from a {@link NormalTrend}. For shale drilled by roller-cone bits with steady
 * parameters; a bit's wear, its type and hydraulics are not in it.
 *
 * @param penetrationRate R, m/s, above 0 to 0.2, and no more than 0.1 m in one turn
 * @param rotarySpeed N, revolutions per second, 0.1 to 10
 * @param weightOnBit W, N, 1 to 600 kN
 * @param bitDiameter D, m, 0.05 to 1.5
 */
public record DrillingExponent(
        @Si("m/s") double penetrationRate,
        @Si("1/s") double rotarySpeed,
        @Si("N") double weightOnBit,
        @Si(value = "m", kind = Kind.DIAMETER) double bitDiameter) {
    private static final double FOOT = 0.3048;

    /** A million pounds-force for each foot of bit diameter, N/m. */
    private static final double MILLION_POUNDS_PER_FOOT = 1e6 * 0.45359237 * 9.80665 / FOOT;

    public DrillingExponent {
        Check.within("penetration rate", penetrationRate, 1e-6, 0.2, Measure.SPEED);
        Check.within("rotary speed", rotarySpeed, 0.1, 10, Measure.FREQUENCY);
        Check.within("weight on bit", weightOnBit, 1e3, 6e5, Measure.FORCE);
        Check.within("bit diameter", bitDiameter, 0.05, 1.5, Measure.DIAMETER);
        Check.within("advance of the bit in one turn", penetrationRate / rotarySpeed, 0, 0.1, Measure.LENGTH);
    }

    /**
     * As drilled: d = ln(R / (N · 1 ft)) / ln(W / (D · 10⁶ lbf/ft)), the same as lg(R / 60N) / lg(12 W / 10⁶ D) with R in
     * ft/h, N in 1/min, W in lbf and D in inches (Jorden, J.R. and Shirley, O.J., "Application of drilling performance
     * data to overpressure detection", Journal of Petroleum Technology, November 1966; from memory).
     *
     * @return without unit; 1 to 3 in most shale
     */
    @Si("1")
    public double asDrilled() {
        return Math.log(penetrationRate / rotarySpeed / FOOT)
                / Math.log(weightOnBit / bitDiameter / MILLION_POUNDS_PER_FOOT);
    }

    /**
     * Corrected for the mud, which holds chips down: d ρₙ / ρ (Rehm, B. and McClendon, R., "Measurement of formation
     * pressure from drilling data", SPE 3543, 1971; from memory).
     *
     * @param exponent d, as drilled, 0 to 10
     * @param normal ρₙ, equivalent density of normal pore pressure, kg/m³, 950 to 1250
     * @param mud ρ, the mud drilled with, circulating where it is known, kg/m³, 600 to 2700
     * @throws RangeFault outside these ranges
     */
    @Si("1")
    public static double corrected(
            @Si("1") double exponent,
            @Si(value = "kg/m3", kind = Kind.EQUIVALENT) double normal,
            @Si(value = "kg/m3", kind = Kind.EQUIVALENT) double mud) {
        Check.within("drilling exponent", exponent, 0, 10, Measure.NUMBER);
        Check.within("equivalent density of normal pore pressure", normal, 950, 1250, Measure.EQUIVALENT_DENSITY);
        Check.within("density of the mud drilled with", mud, 600, 2700, Measure.EQUIVALENT_DENSITY);
        return exponent * normal / mud;
    }
}
