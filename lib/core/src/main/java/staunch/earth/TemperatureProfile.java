package staunch.earth;

import java.util.Arrays;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.Si;

/** Temperature against vertical depth below the datum, linear between points; beyond the ends the end value's slope is not guessed. */
public final class TemperatureProfile {
    private final double[] depth;
    private final double[] temperature;

    private TemperatureProfile(double[] depth, double[] temperature) {
        this.depth = depth;
        this.temperature = temperature;
    }

    /**
     * Profile through measured points.
     *
     * @param verticalDepths increasing, m
     * @param temperatures K, 260 to 600
     * @throws InputFault where points are missing or depths do not increase
     */
    public static TemperatureProfile of(
            @Si(value = "m", kind = Kind.DEPTH) double[] verticalDepths,
            @Si(value = "K", kind = Kind.POINT) double[] temperatures) {
        if (verticalDepths.length == 0 || verticalDepths.length != temperatures.length) {
            throw new InputFault(
                    "temperature profile", "needs as many temperatures as depths, at least one", "check its points");
        }
        for (int i = 0; i < verticalDepths.length; i++) {
            Check.within("vertical depth of the temperature profile", verticalDepths[i], 0, 20_000, Measure.DEPTH);
            Check.within("temperature", temperatures[i], 260, 600, Measure.TEMPERATURE);
            if (i > 0 && verticalDepths[i] <= verticalDepths[i - 1]) {
                throw new InputFault(
                        "temperature profile", "has depths that do not increase", "sort its points downwards");
            }
        }
        return new TemperatureProfile(verticalDepths.clone(), temperatures.clone());
    }

    /** The same temperature everywhere. */
    public static TemperatureProfile isothermal(@Si(value = "K", kind = Kind.POINT) double temperature) {
        return of(new double[] {0}, new double[] {temperature});
    }

    /** Linear geothermal from the datum down, in units as written. */
    public static TemperatureProfile geothermal(Quantity atDatum, Quantity gradient, Quantity bottom) {
        return geothermal(
                new Point(0, atDatum.si("temperature at the datum", Measure.TEMPERATURE)),
                gradient.si("geothermal gradient", Measure.TEMPERATURE_GRADIENT),
                bottom.si("bottom of the temperature profile", Measure.DEPTH));
    }

    /**
     * Linear geothermal below ground or seabed: T = T₀ + G (z − z₀).
     *
     * @param start depth of ground or seabed and temperature there
     * @param gradient K/m, 0 to 0.15
     * @param bottom vertical depth down to which the profile holds, m
     */
    public static TemperatureProfile geothermal(
            Point start, @Si("K/m") double gradient, @Si(value = "m", kind = Kind.DEPTH) double bottom) {
        Check.within("geothermal gradient", gradient, 0, 0.15, Measure.TEMPERATURE_GRADIENT);
        if (start.verticalDepth() == 0) {
            return of(
                    new double[] {0, bottom},
                    new double[] {start.temperature(), start.temperature() + gradient * bottom});
        }
        return of(new double[] {0, start.verticalDepth(), bottom}, new double[] {
            start.temperature(), start.temperature(), start.temperature() + gradient * (bottom - start.verticalDepth())
        });
    }

    /**
     * A depth with its temperature.
     *
     * @param verticalDepth m below the datum
     * @param temperature K
     */
    public record Point(
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "K", kind = Kind.POINT) double temperature) {}

    /** Depths of the points. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double[] depths() {
        return depth.clone();
    }

    /** Temperatures of the points. */
    @Si(value = "K", kind = Kind.POINT)
    public double[] temperatures() {
        return temperature.clone();
    }

    /** Whether a depth lies within the points; an isothermal profile covers every depth. */
    public boolean covers(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        return depth.length == 1 || (verticalDepth >= depth[0] && verticalDepth <= depth[depth.length - 1]);
    }

    /**
     * Temperature at a depth.
     *
     * @throws staunch.units.RangeFault outside the points
     */
    @Si(value = "K", kind = Kind.POINT)
    public double at(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        if (depth.length == 1) {
            return temperature[0];
        }
        Check.within(
                "depth asked of the temperature profile",
                verticalDepth,
                depth[0],
                depth[depth.length - 1],
                Measure.DEPTH);
        int i = 0;
        while (i < depth.length - 2 && depth[i + 1] < verticalDepth) {
            i++;
        }
        double share = (verticalDepth - depth[i]) / (depth[i + 1] - depth[i]);
        return temperature[i] + share * (temperature[i + 1] - temperature[i]);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TemperatureProfile that
                && Arrays.equals(depth, that.depth)
                && Arrays.equals(temperature, that.temperature);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(depth) + Arrays.hashCode(temperature);
    }

    @Override
    public String toString() {
        return "TemperatureProfile" + Arrays.toString(depth) + Arrays.toString(temperature);
    }
}
