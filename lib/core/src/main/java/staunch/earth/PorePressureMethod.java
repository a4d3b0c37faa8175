package staunch.earth;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * Pore pressure from the departure of a shale log, or of the drilling exponent, from its normal trend: P = S − (S − Pₙ) rⁿ (Eaton, B.A., "The equation
 * for geopressure prediction from well logs", SPE 5544, 1975; from memory). S is the overburden, Pₙ the hydrostatic
 * pressure, r the observed property over its normal value or the other way round, so that r &lt; 1 means undercompaction.
 * The exponents are those of the paper for the Gulf Coast; elsewhere they are calibrated. The paper states no error; the
 * uncertainty given here is that of r alone, and a further error of the method has to be judged by calibration.
 */
public enum PorePressureMethod {
    /** Resistivity: r = R observed / R normal, n = 1.2; r from 0.1 to 1.25. */
    EATON_RESISTIVITY(1.2, 0.1),
    /** Sonic: r = Δt normal / Δt observed, equal to V observed / V normal, n = 3.0; r from 0.4 to 1.25. */
    EATON_SONIC(3.0, 0.4),
    /** Drilling exponent corrected for mud: r = d observed / d normal ({@link DrillingExponent}), n = 1.2; r from 0.4 to 1.25. */
    EATON_DRILLING_EXPONENT(1.2, 0.4);

    /** Readings scatter about the normal trend, so that a ratio somewhat above one is no mistake. */
    static final double GREATEST = 1.25;

    private final double exponent;
    private final double least;

    PorePressureMethod(double exponent, double least) {
        this.exponent = exponent;
        this.least = least;
    }

    /** Exponent of the paper. */
    @Si("1")
    public double exponent() {
        return exponent;
    }

    /**
     * Pore pressure with the exponent of the paper.
     *
     * @param normal overburden, and hydrostatic pressure as pore pressure, at the depth
     * @param ratio r
     * @throws RangeFault where r is outside the range of the method, or the result is below vacuum
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double pressure(StressState normal, @Si("1") double ratio) {
        return pressure(normal, ratio, exponent);
    }

    /**
     * Pore pressure with an exponent calibrated to measured pressures.
     *
     * @param calibrated n, 0.3 to 6
     * @throws RangeFault where r or n is outside its range, or the result is below vacuum
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double pressure(StressState normal, @Si("1") double ratio, @Si("1") double calibrated) {
        Check.within("ratio of the log to its normal trend", ratio, least, GREATEST, Measure.NUMBER);
        Check.within("exponent of Eaton's equation", calibrated, 0.3, 6, Measure.NUMBER);
        double pressure = normal.overburden() - normal.effectiveStress() * Math.pow(ratio, calibrated);
        return Check.within(
                "pore pressure by Eaton's equation", pressure, 0, normal.overburden(), Measure.PRESSURE_ABSOLUTE);
    }

    /**
     * Pore pressure with the spread that the uncertainty of the ratio causes: r (1 ± u).
     *
     * @param uncertainty u, such as {@link NormalTrend#scatter()}, 0 to 0.5
     * @throws RangeFault where u, or a ratio at either end, is outside its range
     */
    public PressureEstimate estimate(StressState normal, @Si("1") double ratio, @Si("1") double uncertainty) {
        Check.within("uncertainty of the ratio", uncertainty, 0, 0.5, Measure.NUMBER);
        return new PressureEstimate(
                pressure(normal, ratio * (1 + uncertainty)),
                pressure(normal, ratio),
                pressure(normal, ratio * (1 - uncertainty)));
    }

    /**
     * Exponent that makes the equation meet a measured pressure: n = ln((S − P) / (S − Pₙ)) / ln r.
     *
     * @param measured P, Pa absolute, above the hydrostatic pressure and below the overburden
     * @param ratio r, from the least of the method to 0.98: nearer to one the exponent means nothing
     * @return 0.3 to 6
     * @throws RangeFault where an argument or the exponent is outside its range
     */
    @Si("1")
    public double calibrate(
            StressState normal, @Si(value = "Pa", kind = Kind.ABSOLUTE) double measured, @Si("1") double ratio) {
        Check.within("ratio of the log to its normal trend", ratio, least, 0.98, Measure.NUMBER);
        Check.within(
                "measured pore pressure",
                measured,
                normal.porePressure(),
                normal.overburden() - 1,
                Measure.PRESSURE_ABSOLUTE);
        double exponentFound = Math.log((normal.overburden() - measured) / normal.effectiveStress()) / Math.log(ratio);
        return Check.within("exponent of Eaton's equation", exponentFound, 0.3, 6, Measure.NUMBER);
    }

    /**
     * Pore pressure by the equivalent depth: the effective stress is that of the normally pressured depth with the same
     * reading, P = S − (Sₑ − Pₙₑ) (Foster, J.B. and Whalen, H.E., "Estimation of formation pressures from electrical
     * surveys offshore Louisiana", Journal of Petroleum Technology, February 1966; from memory). For undercompaction
     * only; no error is stated in the paper.
     *
     * @param overburden S at the depth asked, Pa absolute
     * @param equivalent overburden and hydrostatic pressure at the equivalent depth, which lies at or above the depth
     *     asked
     * @throws RangeFault where the equivalent depth bears more overburden than the depth asked
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public static double byEquivalentDepth(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double overburden, StressState equivalent) {
        Check.within(
                "overburden at the depth asked", overburden, equivalent.overburden(), 4e8, Measure.PRESSURE_ABSOLUTE);
        return overburden - equivalent.effectiveStress();
    }
}
