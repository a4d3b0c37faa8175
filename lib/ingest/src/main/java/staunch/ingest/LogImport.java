package staunch.ingest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import staunch.earth.DensityLog;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.Si;
import staunch.units.Source;
import staunch.well.WellPath;

/** Brings curves of a log to vertical depths below the well's datum and to SI, by units that the user states. */
public final class LogImport {
    private LogImport() {}

    private record Reading(double depth, double value) {}

    /**
     * Bulk density against vertical depth. Missing readings are left out; a log that runs upwards is turned round.
     *
     * @param las the log
     * @param depth its index curve, unit and level
     * @param density its density curve and unit
     * @param site well that it was run in
     * @param uncertainty by which the whole log may be off, kg/m³
     * @throws InputFault where a curve is missing or holds text, depths repeat or turn back, or a measured depth has no
     *     survey
     * @throws staunch.units.Fault where a unit is unknown or a reading out of range
     */
    public static DensityLog density(
            LasFile las,
            DepthColumns depth,
            TableColumn density,
            OffsetSite site,
            @Si(value = "kg/m3", kind = Kind.DIFFERENCE) double uncertainty) {
        LasCurve depths = curve(las, depth.depth());
        LasCurve values = curve(las, density);
        double top = offset(depth, site);
        List<Reading> readings = new ArrayList<>();
        for (int row = 0; row < las.rows(); row++) {
            OptionalDouble z = depths.number(row);
            OptionalDouble value = values.number(row);
            if (z.isPresent() && value.isPresent()) {
                double below = si(z.getAsDouble(), depth.depth(), Measure.DEPTH);
                readings.add(new Reading(
                        vertical(below, depth, top, site), si(value.getAsDouble(), density, Measure.DENSITY)));
            }
        }
        double[] z = readings.stream().mapToDouble(Reading::depth).toArray();
        double[] rho = readings.stream().mapToDouble(Reading::value).toArray();
        if (z.length > 1 && z[0] > z[z.length - 1]) {
            reverse(z);
            reverse(rho);
        }
        return DensityLog.of(z, rho, uncertainty, new Source(las.file(), density.heading()));
    }

    private static LasCurve curve(LasFile las, TableColumn column) {
        LasCurve curve = las.curve(column.heading());
        if (curve.isText()) {
            throw new InputFault("curve " + column.heading(), "holds text", "choose a curve of numbers");
        }
        return curve;
    }

    private static double offset(DepthColumns depth, OffsetSite site) {
        DepthColumns.Level level = depth.level()
                .always()
                .orElseThrow(() -> new InputFault("depth of a log", "has its level in a column", "state one level"));
        if (depth.kind() == DepthColumns.Kind.MEASURED && level != DepthColumns.Level.DATUM) {
            throw new InputFault(
                    "depth of a log", "is measured below " + level.title(), "give measured depths below the datum");
        }
        return site.depthOf(level);
    }

    /** Vertical depth below the datum of a depth, m, as a log states it. */
    static double vertical(double below, DepthColumns depth, OffsetSite site) {
        return vertical(below, depth, offset(depth, site), site);
    }

    private static double vertical(double below, DepthColumns depth, double top, OffsetSite site) {
        if (depth.kind() == DepthColumns.Kind.VERTICAL) {
            return below + top;
        }
        WellPath path = site.path()
                .orElseThrow(() -> new InputFault(
                        "log of " + site.name(), "has measured depths, but the well no survey", "give its survey"));
        return path.verticalDepth(below);
    }

    private static double si(double value, TableColumn column, Measure measure) {
        return Quantity.of(value, column.unit()).si(column.heading(), measure);
    }

    private static void reverse(double[] values) {
        double[] copy = Arrays.copyOf(values, values.length);
        for (int i = 0; i < values.length; i++) {
            values[i] = copy[values.length - 1 - i];
        }
    }
}
