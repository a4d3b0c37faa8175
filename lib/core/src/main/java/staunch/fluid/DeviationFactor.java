package staunch.fluid;

import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * Equation for the deviation factor Z of a natural gas from its pseudo-reduced pressure and temperature,
 * Z = p M / (ρ R T).
 *
 * <p>Every equation here tends to Z = 1 as pressure falls, and is continued below its published least pressure; that is
 * the only extrapolation. Everything else outside the stated range is a {@link RangeFault}.
 */
public enum DeviationFactor {
    /**
     * Dranchuk and Abou-Kassem, J. Can. Pet. Tech. 14 (1975) no. 3: eleven-constant equation in reduced density
     * ρr = 0.27 ppr / (Z Tpr). Published for 0.2 ≤ ppr ≤ 30 and 1.0 &lt; Tpr ≤ 3.0, with an average departure from the
     * Standing–Katz chart of 0.585 %. Here Tpr starts at 1.05, the lowest isotherm of that chart: below 1.022 the
     * equation has three densities for one pressure.
     */
    DRANCHUK_ABOU_KASSEM("Dranchuk–Abou-Kassem 1975", 1.05, 3.0, 0.2, 30.0) {
        @Override
        double solve(double reducedPressure, double reducedTemperature) {
            return DranchukAbouKassem.solve(reducedPressure, reducedTemperature);
        }
    },
    /**
     * Hall and Yarborough, Oil and Gas J. (18 June 1973) 82: Carnahan–Starling equation in reduced density, fitted to
     * the Standing–Katz chart for 1.15 ≤ Tpr ≤ 3.0 and 0.1 ≤ ppr ≤ 24, average departure 0.3 %, largest 2 %.
     */
    HALL_YARBOROUGH("Hall–Yarborough 1973", 1.15, 3.0, 0.1, 24.0) {
        @Override
        double solve(double reducedPressure, double reducedTemperature) {
            return HallYarborough.solve(reducedPressure, reducedTemperature);
        }
    };

    private final String title;
    private final double lowestTemperature;
    private final double highestTemperature;
    private final double lowestPublishedPressure;
    private final double highestPressure;

    DeviationFactor(
            String title,
            double lowestTemperature,
            double highestTemperature,
            double lowestPublishedPressure,
            double highestPressure) {
        this.title = title;
        this.lowestTemperature = lowestTemperature;
        this.highestTemperature = highestTemperature;
        this.lowestPublishedPressure = lowestPublishedPressure;
        this.highestPressure = highestPressure;
    }

    /** Root of the equation, without a check of range. */
    abstract double solve(double reducedPressure, double reducedTemperature);

    /**
     * Deviation factor, dimensionless.
     *
     * @param reducedPressure pressure over pseudo-critical pressure, 0 to {@link #highestReducedPressure()}
     * @param reducedTemperature temperature over pseudo-critical temperature, {@link #lowestReducedTemperature()} to
     *     {@link #highestReducedTemperature()}
     * @throws RangeFault outside that range
     */
    @Si("1")
    public double z(@Si("1") double reducedPressure, @Si("1") double reducedTemperature) {
        if (!(reducedPressure >= 0 && reducedPressure <= highestPressure)) {
            throw new RangeFault(
                    "pseudo-reduced pressure", reducedPressure, 0, highestPressure, Measure.NUMBER, advice());
        }
        if (!(reducedTemperature >= lowestTemperature && reducedTemperature <= highestTemperature)) {
            throw new RangeFault(
                    "pseudo-reduced temperature",
                    reducedTemperature,
                    lowestTemperature,
                    highestTemperature,
                    Measure.NUMBER,
                    advice());
        }
        return solve(reducedPressure, reducedTemperature);
    }

    private String advice() {
        return "the equation of " + title + " holds in that range only";
    }

    /** Name and year. */
    public String title() {
        return title;
    }

    /** Least pseudo-reduced temperature. */
    @Si("1")
    public double lowestReducedTemperature() {
        return lowestTemperature;
    }

    /** Greatest pseudo-reduced temperature. */
    @Si("1")
    public double highestReducedTemperature() {
        return highestTemperature;
    }

    /** Pseudo-reduced pressure below which Z is continued to 1 without published data. */
    @Si("1")
    public double lowestPublishedReducedPressure() {
        return lowestPublishedPressure;
    }

    /** Greatest pseudo-reduced pressure. */
    @Si("1")
    public double highestReducedPressure() {
        return highestPressure;
    }
}
