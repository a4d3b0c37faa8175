package staunch.earth;

import java.util.Arrays;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * Normal compaction trend of a log in shale: ln y = a + b h with h the depth below mudline or ground, fitted by least
 * squares to readings where pore pressure is known to be normal. Resistivity and velocity rise with depth, sonic slowness
 * falls. The readings may be in any unit, the same throughout; trend and scatter are in that unit and as a share of it.
 */
public final class NormalTrend {
    private final double intercept;
    private final double slope;
    private final double scatter;
    private final double top;
    private final double deepest;

    private NormalTrend(double intercept, double slope, double scatter, double top, double deepest) {
        this.intercept = intercept;
        this.slope = slope;
        this.scatter = scatter;
        this.top = top;
        this.deepest = deepest;
    }

    /**
     * Fits the trend.
     *
     * @param depths below mudline or ground, m, 0 to 20 000, at least three and not all the same
     * @param readings above 0, one for each depth
     * @param deepest depth to which the trend may be carried on, m, not above the deepest reading
     * @throws InputFault where there are too few points, or no trend
     * @throws RangeFault where a depth or reading is out of range
     */
    public static NormalTrend fit(
            @Si(value = "m", kind = Kind.LENGTH) double[] depths,
            @Si("1") double[] readings,
            @Si(value = "m", kind = Kind.LENGTH) double deepest) {
        int n = depths.length;
        if (n < 3 || readings.length != n) {
            throw new InputFault("normal trend", "needs at least three depths and as many readings", "check them");
        }
        double meanDepth = 0;
        double meanLog = 0;
        for (int i = 0; i < n; i++) {
            Check.within("depth of the normal trend below mudline", depths[i], 0, 20_000, Measure.LENGTH);
            Check.within("reading of the normal trend", readings[i], 1e-6, 1e9, Measure.NUMBER);
            meanDepth += depths[i] / n;
            meanLog += Math.log(readings[i]) / n;
        }
        double squares = 0;
        double products = 0;
        for (int i = 0; i < n; i++) {
            squares += (depths[i] - meanDepth) * (depths[i] - meanDepth);
            products += (depths[i] - meanDepth) * (Math.log(readings[i]) - meanLog);
        }
        double top = Arrays.stream(depths).min().orElseThrow();
        double bottom = Arrays.stream(depths).max().orElseThrow();
        if (bottom - top < 1) {
            throw new InputFault("normal trend", "has all its readings at one depth", "pick readings over an interval");
        }
        Check.within("depth to which the normal trend is carried on", deepest, bottom, 20_000, Measure.LENGTH);
        double slope = products / squares;
        double intercept = meanLog - slope * meanDepth;
        double residuals = 0;
        for (int i = 0; i < n; i++) {
            double residual = Math.log(readings[i]) - intercept - slope * depths[i];
            residuals += residual * residual;
        }
        return new NormalTrend(intercept, slope, Math.sqrt(residuals / (n - 2)), top, deepest);
    }

    /**
     * A trend that is stated, from mudline or ground down.
     *
     * @param atGround reading there, above 0
     * @param length depth over which it rises to e times as much, m, 100 to 100 000; negative where it falls to 1/e
     * @param scatter of readings about it, as a share, 0 to 0.5
     * @throws RangeFault where one of them is out of range
     */
    static NormalTrend given(double atGround, double length, double scatter) {
        Check.within("reading of the normal trend", atGround, 1e-6, 1e9, Measure.NUMBER);
        Check.within("length of the normal trend", Math.abs(length), 100, 100_000, Measure.LENGTH);
        Check.within("scatter about the normal trend", scatter, 0, 0.5, Measure.NUMBER);
        return new NormalTrend(Math.log(atGround), 1 / length, scatter, 0, 20_000);
    }

    /** Change of the logarithm of the reading over a metre. */
    double slope() {
        return slope;
    }

    boolean covers(double depth) {
        return depth >= top && depth <= deepest;
    }

    /**
     * Reading on the trend.
     *
     * @param depth below mudline or ground, m, from the shallowest reading of the fit to the depth given with it
     * @throws RangeFault outside that range
     */
    @Si("1")
    public double at(@Si(value = "m", kind = Kind.LENGTH) double depth) {
        Check.within("depth below mudline asked of the normal trend", depth, top, deepest, Measure.LENGTH);
        return Math.exp(intercept + slope * depth);
    }

    /** Standard deviation of the fitted readings about the trend, as a share: the uncertainty of a single reading. */
    @Si("1")
    public double scatter() {
        return scatter;
    }

    /**
     * Depth at which the trend has a reading: the equivalent depth.
     *
     * @param reading in the unit of the fit
     * @return m below mudline or ground
     * @throws RangeFault where that depth lies outside the range of the trend
     * @throws InputFault where the trend does not change with depth
     */
    @Si(value = "m", kind = Kind.LENGTH)
    public double depthOf(@Si("1") double reading) {
        Check.within("reading", reading, 1e-6, 1e9, Measure.NUMBER);
        if (Math.abs(slope) < 1e-9) {
            throw new InputFault("normal trend", "does not change with depth", "pick other readings");
        }
        double depth = (Math.log(reading) - intercept) / slope;
        return Check.within("equivalent depth on the normal trend", depth, top, deepest, Measure.LENGTH);
    }
}
