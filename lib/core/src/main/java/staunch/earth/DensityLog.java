package staunch.earth;

import java.util.Objects;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;
import staunch.units.Source;

/** Bulk density against vertical depth below the datum, linear between readings. */
public final class DensityLog {
    private final double[] depth;
    private final double[] density;
    private final double uncertainty;
    private final Source source;

    private DensityLog(double[] depth, double[] density, double uncertainty, Source source) {
        this.depth = depth;
        this.density = density;
        this.uncertainty = uncertainty;
        this.source = source;
    }

    /**
     * A log.
     *
     * @param verticalDepths below the datum, m, increasing, at least two
     * @param densities kg/m³, 1200 to 3300: below it a washed-out hole is read, not rock
     * @param uncertainty by which the whole log may be off, kg/m³, 0 to 300; tool, hole and missing corrections together
     * @param source where it comes from
     * @throws InputFault where there are too few readings, unequal numbers of them, or depths that do not increase
     * @throws RangeFault where a value is out of range
     */
    public static DensityLog of(
            @Si(value = "m", kind = Kind.DEPTH) double[] verticalDepths,
            @Si("kg/m3") double[] densities,
            @Si(value = "kg/m3", kind = Kind.DIFFERENCE) double uncertainty,
            Source source) {
        Objects.requireNonNull(source, "source");
        if (verticalDepths.length < 2 || densities.length != verticalDepths.length) {
            throw new InputFault("density log", "needs at least two depths and as many densities", "check it");
        }
        for (int i = 0; i < densities.length; i++) {
            Check.within("vertical depth of the density log", verticalDepths[i], 0, 20_000, Measure.DEPTH);
            Check.within("bulk density at " + verticalDepths[i] + " m", densities[i], 1200, 3300, Measure.DENSITY);
            if (i > 0 && verticalDepths[i] <= verticalDepths[i - 1]) {
                throw new InputFault(
                        "density log",
                        "has vertical depth " + verticalDepths[i] + " m after " + verticalDepths[i - 1] + " m",
                        "sort it downwards and keep one reading for each depth");
            }
        }
        Check.within("uncertainty of the density log", uncertainty, 0, 300, Measure.DENSITY_DIFFERENCE);
        return new DensityLog(verticalDepths.clone(), densities.clone(), uncertainty, source);
    }

    /** Depths of the readings. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double[] depths() {
        return depth.clone();
    }

    /** Readings. */
    @Si("kg/m3")
    public double[] densities() {
        return density.clone();
    }

    /** By how much the whole log may be off. */
    @Si(value = "kg/m3", kind = Kind.DIFFERENCE)
    public double uncertainty() {
        return uncertainty;
    }

    /** Where it comes from. */
    public Source source() {
        return source;
    }
}
