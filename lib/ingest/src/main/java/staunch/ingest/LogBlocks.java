package staunch.ingest;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoublePredicate;
import staunch.design.InputValue;
import staunch.earth.WellLog;
import staunch.units.Amount;
import staunch.units.Fault;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.Source;
import staunch.units.Warning;
import staunch.units.Wording;

/**
 * Reads the log of an offset well and averages its curves over blocks of vertical depth: density and slowness by their
 * arithmetic mean, since mass and travel time add up; resistivity by its geometric mean, since its trend is straight in the
 * logarithm. Blocks count from the datum, so that the first row makes no difference to them; a block stands at its middle,
 * or at that of its part between the first and the last row. What is wrong with a file refuses it with one message for each
 * curve; nothing is mended.
 */
final class LogBlocks {
    /** Longest stretch without readings that is not told, m. */
    private static final double GAP = 50;

    /** Spikes of a curve that are told one by one. */
    private static final int TOLD = 5;

    private static final String CURVES = "section ~C";
    private static final String DATA = "section ~A";

    /** Kinds of curve, with the range of readings and the least difference of a spike. */
    private enum Curve {
        DENSITY("bulk density", Measure.DENSITY, 1200, 3300, 200, false),
        SLOWNESS("sonic slowness", Measure.SLOWNESS, 1e-4, 1e-3, Math.log(1.25), true),
        RESISTIVITY("resistivity", Measure.RESISTIVITY, 0.01, 1e5, Math.log(2), true);

        private final String title;
        private final Measure measure;
        private final double lowest;
        private final double highest;
        private final double spike;
        private final boolean logarithmic;

        Curve(String title, Measure measure, double lowest, double highest, double spike, boolean logarithmic) {
            this.title = title;
            this.measure = measure;
            this.lowest = lowest;
            this.highest = highest;
            this.spike = spike;
            this.logarithmic = logarithmic;
        }

        double scaled(double value) {
            return logarithmic ? Math.log(value) : value;
        }

        double unscaled(double value) {
            return logarithmic ? Math.exp(value) : value;
        }
    }

    private final String shown;
    private final LogColumns columns;
    private final OffsetSite site;
    private final List<Warning> warnings = new ArrayList<>();
    private final List<InputValue> register = new ArrayList<>();
    private final List<DataFileFault.Problem> problems = new ArrayList<>();

    private LogBlocks(String shown, LogColumns columns, OffsetSite site) {
        this.shown = shown;
        this.columns = columns;
        this.site = site;
    }

    /**
     * What was read.
     *
     * @param log averaged
     * @param warnings about the file
     * @param register a line for each curve
     */
    record Read(WellLog log, List<Warning> warnings, List<InputValue> register) {}

    /**
     * Reads a file.
     *
     * @param shown name of the file in messages
     * @throws DataFileFault where it cannot be used
     */
    static Read read(Path path, String shown, LogColumns columns, OffsetSite site) throws DataFileFault {
        LasFile las = LasReader.read(path);
        LogBlocks blocks = new LogBlocks(shown, columns, site);
        las.warnings()
                .forEach(w -> blocks.warnings.add(new Warning(shown + ", " + w.subject(), w.text(), w.amounts())));
        WellLog log = blocks.blocks(las);
        return new Read(log, blocks.warnings, blocks.register);
    }

    private void problem(String place, String problem, String advice) {
        problems.add(new DataFileFault.Problem(shown, 0, place, problem, advice));
    }

    private void stopWhereWrong() throws DataFileFault {
        if (!problems.isEmpty()) {
            throw new DataFileFault(problems);
        }
    }

    private WellLog blocks(LasFile las) throws DataFileFault {
        Optional<LasCurve> depth = curve(las, columns.depth().depth());
        Optional<LasCurve> density = columns.density().flatMap(c -> curve(las, c));
        Optional<LasCurve> slowness = columns.slowness().flatMap(c -> curve(las, c));
        Optional<LasCurve> resistivity = columns.resistivity().flatMap(c -> curve(las, c));
        Optional<LasCurve> shale = columns.shale().flatMap(s -> curve(las, s.curve()));
        stopWhereWrong();
        unit(depth.orElseThrow(), columns.depth().depth(), Measure.DEPTH);
        columns.shale()
                .ifPresent(s -> LogUnits.other(
                                s.curve().unit(), shale.orElseThrow().unit())
                        .ifPresent(other -> otherUnit(s.curve(), other)));
        double[] z = depths(depth.orElseThrow());
        stopWhereWrong();
        DoublePredicate all = row -> true;
        DoublePredicate inShale = shale.isEmpty()
                ? all
                : row -> {
                    OptionalDouble reading = shale.get().number((int) row);
                    return reading.isPresent() && columns.shale().orElseThrow().holds(reading.getAsDouble());
                };
        TreeMap<Long, double[]> means = new TreeMap<>();
        mean(Curve.DENSITY, density, columns.density(), z, all, means);
        mean(Curve.SLOWNESS, slowness, columns.slowness(), z, inShale, means);
        mean(Curve.RESISTIVITY, resistivity, columns.resistivity(), z, inShale, means);
        stopWhereWrong();
        double top = Arrays.stream(z).filter(Double::isFinite).min().orElseThrow();
        double bottom = Arrays.stream(z).filter(Double::isFinite).max().orElseThrow();
        List<WellLog.Block> blocks = new ArrayList<>();
        means.forEach((block, m) -> blocks.add(new WellLog.Block(
                FixedDigits.round(
                        (Math.max(top, block * columns.step()) + Math.min(bottom, (block + 1) * columns.step())) / 2),
                present(m, Curve.DENSITY),
                present(m, Curve.SLOWNESS),
                present(m, Curve.RESISTIVITY))));
        tell(blocks, las);
        return new WellLog(blocks, new Source(shown, ""));
    }

    private static OptionalDouble present(double[] means, Curve curve) {
        double value = means[curve.ordinal()];
        return Double.isNaN(value)
                ? OptionalDouble.empty()
                : OptionalDouble.of(FixedDigits.round(value, curve.lowest, curve.highest));
    }

    private Optional<LasCurve> curve(LasFile las, TableColumn column) {
        try {
            LasCurve curve = las.curve(column.heading());
            if (curve.isText()) {
                problem(DATA + ", curve " + column.heading(), "holds text", "choose a curve of numbers");
                return Optional.empty();
            }
            return Optional.of(curve);
        } catch (Fault none) {
            problem(CURVES, none.getMessage(), "");
            return Optional.empty();
        }
    }

    private void unit(LasCurve curve, TableColumn column, Measure measure) {
        LogUnits.other(column.unit(), curve.unit(), measure).ifPresent(other -> otherUnit(column, other));
    }

    private void otherUnit(TableColumn column, String other) {
        warnings.add(new Warning(
                shown,
                "curve " + column.heading() + " is stated in " + column.unit() + ", but the file writes " + other
                        + "; what the case states counts."));
    }

    /** Vertical depths below the datum by row; not a number where a row has none. */
    private double[] depths(LasCurve curve) {
        TableColumn column = columns.depth().depth();
        String place = DATA + ", curve " + column.heading();
        double[] z = new double[curve.rows()];
        double before = Double.NaN;
        int direction = 0;
        int turns = 0;
        double turned = 0;
        int found = 0;
        for (int row = 0; row < z.length; row++) {
            OptionalDouble written = curve.number(row);
            if (written.isEmpty()) {
                z[row] = Double.NaN;
                continue;
            }
            double here = written.getAsDouble();
            if (found == 1) {
                direction = here > before ? 1 : -1;
            }
            if (found > 0 && (here - before) * direction <= 0 && turns++ == 0) {
                turned = here;
            }
            before = here;
            found++;
            try {
                double below = Quantity.of(here, column.unit()).si(column.heading(), Measure.DEPTH);
                z[row] = micrometres(LogImport.vertical(below, columns.depth(), site));
            } catch (Fault outside) {
                problem(
                        place,
                        "has " + here + " " + column.unit() + ": " + outside.getMessage(),
                        "check unit and survey");
                return z;
            }
        }
        if (found < 2) {
            problem(place, "has fewer than two depths", "choose another curve");
        } else if (turns > 0) {
            problem(
                    place,
                    "repeats itself or turns back in " + turns + " rows, first at " + turned + " " + column.unit(),
                    "sort the log and keep one row for each depth");
        }
        return z;
    }

    /** Rounding of units must not move a row across the edge of a block. */
    private static double micrometres(double metres) {
        return Math.rint(metres * 1e6) / 1e6;
    }

    private void mean(
            Curve kind,
            Optional<LasCurve> curve,
            Optional<TableColumn> column,
            double[] z,
            DoublePredicate counts,
            TreeMap<Long, double[]> means) {
        if (curve.isEmpty()) {
            return;
        }
        TableColumn stated = column.orElseThrow();
        String place = DATA + ", curve " + stated.heading();
        unit(curve.get(), stated, kind.measure);
        double factor = Quantity.of(1, stated.unit()).si(stated.heading(), kind.measure);
        double[] depth = new double[z.length];
        double[] value = new double[z.length];
        int n = 0;
        int bad = 0;
        int firstBad = -1;
        for (int row = 0; row < z.length; row++) {
            OptionalDouble reading = curve.get().number(row);
            if (Double.isNaN(z[row]) || reading.isEmpty() || !counts.test(row)) {
                continue;
            }
            double si = reading.getAsDouble() * factor;
            if (si < kind.lowest || si > kind.highest) {
                firstBad = bad++ == 0 ? row : firstBad;
                continue;
            }
            depth[n] = z[row];
            value[n++] = si;
        }
        if (n + bad == 0) {
            problem(
                    place,
                    "has no readings"
                            + (kind == Curve.DENSITY || columns.shale().isEmpty() ? "" : " in shale"),
                    "choose another curve, or check the null value and the cut-off");
            return;
        }
        if (bad > 0 && !bad(kind, stated, curve.get(), place, new Bad(bad, n, firstBad, z))) {
            return;
        }
        depth = Arrays.copyOf(depth, n);
        value = Arrays.copyOf(value, n);
        if (depth[0] > depth[n - 1]) {
            reverse(depth);
            reverse(value);
        }
        boolean[] apart = spikes(kind, stated, depth, value);
        TreeMap<Long, double[]> sums = new TreeMap<>();
        for (int i = 0; i < n; i++) {
            if (!apart[i]) {
                double[] sum = sums.computeIfAbsent((long) Math.floor(depth[i] / columns.step()), b -> new double[2]);
                sum[0] += kind == Curve.RESISTIVITY ? Math.log(value[i]) : value[i];
                sum[1]++;
            }
        }
        sums.forEach((block, sum) -> {
            double mean = sum[0] / sum[1];
            means.computeIfAbsent(block, b -> new double[] {Double.NaN, Double.NaN, Double.NaN})[kind.ordinal()] =
                    kind == Curve.RESISTIVITY ? Math.exp(mean) : mean;
        });
        gaps(kind, stated, depth);
    }

    private record Bad(int count, int good, int first, double[] depths) {}

    /** Whether the rest may be used. */
    private boolean bad(Curve kind, TableColumn stated, LasCurve curve, String place, Bad bad) {
        Quantity lowest = shown(kind.lowest, stated, kind);
        Quantity highest = shown(kind.highest, stated, kind);
        Wording text = Wording.of(
                "has " + curve.number(bad.first()).getAsDouble() + " " + stated.unit() + " at {}, where " + kind.title
                        + " is " + number(lowest.value()) + " to " + number(highest.value()) + " " + stated.unit()
                        + (bad.count() > 1 ? "; " + bad.count() + " readings in all" : ""),
                Amount.of(bad.depths()[bad.first()], Measure.DEPTH));
        if (columns.badLeftOut() && bad.count() * 10 <= bad.count() + bad.good()) {
            warnings.add(new Warning(shown, text.within("curve " + stated.heading() + " ", "; left out.")));
            return true;
        }
        problems.add(new DataFileFault.Problem(
                shown,
                0,
                place,
                text,
                Wording.of(
                        columns.badLeftOut()
                                ? "that is more than one in ten: check curve and unit"
                                : "check curve and unit, or state bad_readings: leave_out")));
        return false;
    }

    private static Quantity shown(double si, TableColumn column, Curve kind) {
        double factor = Quantity.of(1, column.unit()).si(column.heading(), kind.measure);
        return Quantity.of(si / factor, column.unit());
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4g", value)
                .replaceAll("(\\.\\d*?)0+$", "$1")
                .replaceAll("\\.$", "");
    }

    /** Which readings stand apart from their neighbours and are not to count. */
    private boolean[] spikes(Curve kind, TableColumn stated, double[] depth, double[] value) {
        double[] scaled = Arrays.stream(value).map(kind::scaled).toArray();
        List<Spikes.Apart> found = Spikes.aroundMedian(scaled, kind.spike);
        boolean[] leftOut = new boolean[value.length];
        String what = columns.spikesCount() ? "It counts" : "It is left out";
        for (Spikes.Apart spike : found.subList(0, Math.min(TOLD, found.size()))) {
            warnings.add(new Warning(
                    shown,
                    Wording.of(
                            "curve " + stated.heading() + " of " + site.name()
                                    + " has {} at {} where its neighbours in depth have {}: perhaps a spike. " + what
                                    + ".",
                            Amount.of(value[spike.index()], kind.measure),
                            Amount.of(depth[spike.index()], Measure.DEPTH),
                            Amount.of(kind.unscaled(spike.expected()), kind.measure))));
        }
        if (found.size() > TOLD) {
            warnings.add(new Warning(
                    shown,
                    Wording.of(
                            "curve " + stated.heading() + " of " + site.name() + " has " + (found.size() - TOLD)
                                    + " more readings that stand apart, down to {}; they "
                                    + (columns.spikesCount() ? "count." : "are left out."),
                            Amount.of(depth[found.get(found.size() - 1).index()], Measure.DEPTH))));
        }
        if (!columns.spikesCount()) {
            found.forEach(spike -> leftOut[spike.index()] = true);
        }
        return leftOut;
    }

    private void gaps(Curve kind, TableColumn stated, double[] depth) {
        for (int i = 1; i < depth.length; i++) {
            if (depth[i] - depth[i - 1] > GAP) {
                warnings.add(new Warning(
                        shown,
                        Wording.of(
                                "curve " + stated.heading() + " of " + site.name() + " has no reading"
                                        + (kind == Curve.DENSITY
                                                        || columns.shale().isEmpty()
                                                ? ""
                                                : " in shale")
                                        + " from {} to {}; values between are taken straight from one to the other.",
                                Amount.of(depth[i - 1], Measure.DEPTH),
                                Amount.of(depth[i], Measure.DEPTH))));
            }
        }
    }

    // --- Register

    private void tell(List<WellLog.Block> blocks, LasFile las) {
        columns.density().ifPresent(c -> tell(Curve.DENSITY, c, las, blocks));
        columns.slowness().ifPresent(c -> tell(Curve.SLOWNESS, c, las, blocks));
        columns.resistivity().ifPresent(c -> tell(Curve.RESISTIVITY, c, las, blocks));
    }

    private void tell(Curve kind, TableColumn stated, LasFile las, List<WellLog.Block> blocks) {
        List<WellLog.Block> read =
                blocks.stream().filter(b -> value(b, kind).isPresent()).toList();
        if (read.isEmpty()) {
            return;
        }
        double least = read.stream()
                .mapToDouble(b -> value(b, kind).getAsDouble())
                .min()
                .getAsDouble();
        double most = read.stream()
                .mapToDouble(b -> value(b, kind).getAsDouble())
                .max()
                .getAsDouble();
        String summary = read.size() + " blocks of " + number(columns.step()) + " m from "
                + number(read.get(0).verticalDepth()) + " to "
                + number(read.get(read.size() - 1).verticalDepth()) + " m below the datum, "
                + number(shown(least, stated, kind).value()) + " to "
                + number(shown(most, stated, kind).value()) + " " + stated.unit();
        register.add(new InputValue(
                "offset_evidence.logs[" + site.name() + "]." + stated.heading(),
                summary,
                shown,
                las.curve(stated.heading()).definition().line(),
                Optional.of(new Source(shown, "curve " + stated.heading()))));
    }

    private static OptionalDouble value(WellLog.Block block, Curve kind) {
        return switch (kind) {
            case DENSITY -> block.density();
            case SLOWNESS -> block.slowness();
            case RESISTIVITY -> block.resistivity();
        };
    }

    private static void reverse(double[] values) {
        for (int i = 0, j = values.length - 1; i < j; i++, j--) {
            double swapped = values[i];
            values[i] = values[j];
            values[j] = swapped;
        }
    }
}
