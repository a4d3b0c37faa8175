package staunch.chart;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.knowm.xchart.style.markers.SeriesMarkers;
import staunch.chart.Palette.Dash;
import staunch.chart.Plot.Look;
import staunch.control.Bullheading;
import staunch.control.CirculationMethod;
import staunch.control.CirculationPoint;
import staunch.control.CirculationSchedule;
import staunch.control.KillSheet;
import staunch.control.LubricateAndBleed;
import staunch.control.MigrationCurve;
import staunch.control.MigrationOutlook;
import staunch.control.MigrationPoint;
import staunch.control.PressureLimit;
import staunch.control.PressureSchedule;
import staunch.control.VolumetricMethod;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.UnitSystem;

/** Operations on a shut-in well as charts in chosen units. Every chart is given the name of the section it belongs to. */
public final class OperationCharts {
    /** A limit stands still on the surface gauge where its pressure runs along with the gauge's, Pa. */
    private static final double ALONG = 100;

    private static final List<Look> METHODS = List.of(
            Look.line(Palette.VERMILLION, Dash.SOLID),
            Look.line(Palette.BLUE, Dash.DASHED),
            Look.line(Palette.GREEN, Dash.DASH_DOT));
    private static final List<Look> LIMITS = List.of(
            Look.line(Palette.VERMILLION, Dash.SOLID),
            Look.line(Palette.BLUE, Dash.DASHED),
            Look.line(Palette.GREEN, Dash.DASH_DOT),
            Look.line(Palette.ORANGE, Dash.LONG),
            Look.line(Palette.PURPLE, Dash.SHORT),
            Look.line(Palette.SKY, Dash.DOTTED),
            Look.line(Palette.INK, Dash.DASHED));

    private OperationCharts() {}

    /**
     * A circulation that a chart shows.
     *
     * @param method by which it was run
     * @param schedule what came out
     */
    public record Run(CirculationMethod method, CirculationSchedule schedule) {
        String title() {
            return method == CirculationMethod.DRILLERS ? "driller's method" : "wait and weight";
        }
    }

    /**
     * A limit at the surface gauge.
     *
     * @param name what it protects
     * @param pressure Pa gauge
     */
    public record GaugeLimit(
            String name,
            @Si(value = "Pa", kind = Kind.GAUGE) double pressure) {}

    /** Choke pressure against the volume pumped, the limits of the surface beside it. */
    public static Figure chokePressure(String section, List<Run> runs, List<GaugeLimit> limits, UnitSystem units) {
        Curves curves = new Curves("Choke pressure while circulating out, " + section, units);
        runs.forEach(r -> curves.add(r, CirculationPoint::chokePressure));
        limits.forEach(l -> curves.level(
                l.pressure(), l.name() + " " + units.text(l.pressure(), Measure.PRESSURE_GAUGE, RoundingMode.FLOOR)));
        String peaks = runs.stream()
                .map(r -> r.title() + " "
                        + units.text(
                                r.schedule().greatestChokePressure().chokePressure(),
                                Measure.PRESSURE_GAUGE,
                                RoundingMode.CEILING))
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
        return curves.image(
                name("choke", section),
                new Shown("Choke pressure", Measure.PRESSURE_GAUGE, true),
                "Choke pressure against the volume pumped. Highest: " + peaks + ".");
    }

    /**
     * Pressure at a watched depth against the volume pumped, its limit beside it.
     *
     * @param section name of the section
     * @param runs to show
     * @param watched index of the depth
     * @param limit there
     * @param units to show
     */
    public static Figure watchedPressure(
            String section, List<Run> runs, int watched, PressureLimit limit, UnitSystem units) {
        Curves curves = new Curves("Pressure while circulating out, " + limit.name() + ", " + section, units);
        runs.forEach(r -> curves.add(r, p -> p.watched()[watched]));
        curves.level(
                limit.pressure(),
                "limit " + units.text(limit.pressure(), Measure.PRESSURE_ABSOLUTE, RoundingMode.FLOOR));
        String peaks = runs.stream()
                .map(r -> r.title() + " "
                        + units.text(
                                r.schedule().greatestWatched().get(watched).watched()[watched],
                                Measure.PRESSURE_ABSOLUTE,
                                RoundingMode.CEILING))
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
        return curves.image(
                name("watched-" + watched, section),
                new Shown("Pressure at " + limit.name(), Measure.PRESSURE_ABSOLUTE, false),
                "Pressure at " + limit.name() + " against the volume pumped. Highest: " + peaks + "; limit "
                        + units.text(limit.pressure(), Measure.PRESSURE_ABSOLUTE, RoundingMode.FLOOR) + ".");
    }

    /** What is left to each limit while circulating out by one method: the lowest curve is the limit closest then. */
    public static Figure margins(String section, Run run, List<PressureLimit> limits, UnitSystem units) {
        Curves curves = new Curves("Margin to each limit, " + run.title() + ", " + section, units);
        for (int i = 0; i < limits.size(); i++) {
            int k = i;
            PressureLimit limit = limits.get(i);
            curves.add(
                    limit.name(),
                    LIMITS.get(i % LIMITS.size()),
                    run.schedule(),
                    p -> limit.pressure() - p.watched()[k]);
        }
        curves.level(0, "limit reached");
        return curves.image(
                name("margins-" + run.method().name().toLowerCase(Locale.ROOT).replace('_', '-'), section),
                new Shown("Left to the limit", Measure.PRESSURE_DIFFERENCE, true),
                "What is left to each limit against the volume pumped: "
                        + String.join(
                                ", ", limits.stream().map(PressureLimit::name).toList()) + ".");
    }

    /** Pit gain against the volume pumped. */
    public static Figure pitGain(String section, List<Run> runs, UnitSystem units) {
        Curves curves = new Curves("Pit gain while circulating out, " + section, units);
        runs.forEach(r -> curves.add(r, CirculationPoint::gasVolume));
        return curves.image(
                name("gain", section),
                new Shown("Pit gain", Measure.VOLUME, true),
                "Pit gain against the volume pumped: it grows as the gas expands, and falls as the gas leaves.");
    }

    /** Gas rate at the choke against the volume pumped. */
    public static Figure gasRate(String section, List<Run> runs, UnitSystem units) {
        Curves curves = new Curves("Gas rate at the choke, " + section, units);
        runs.forEach(r -> curves.add(r, CirculationPoint::gasRate));
        return curves.image(
                name("gas-rate", section),
                new Shown("Gas rate", Measure.GAS_RATE, true),
                "Gas rate at the choke against the volume pumped: none until the gas arrives.");
    }

    /**
     * Surface pressure of a well that is left closed, at each rate of the bracket, with the first limit that each reaches.
     *
     * @param section name of the section
     * @param outlook of the well
     * @param rigid bound of the same well, in the same order; empty where it is not shown
     * @param units to show
     */
    public static Figure migration(
            String section, MigrationOutlook outlook, Optional<MigrationOutlook> rigid, UnitSystem units) {
        UnitSystem shown = units.inHours();
        String title = "Surface pressure of the closed well, " + section;
        double end = lastTime(outlook);
        if (end <= 0) {
            return new NotDrawn(title, "the gas does not rise");
        }
        List<Double> pressures = new ArrayList<>();
        List<Drawn> drawn = new ArrayList<>();
        for (int i = 0; i < outlook.curves().size(); i++) {
            MigrationCurve curve = outlook.curves().get(i);
            drawn.add(rise(curve, curve.title(), METHODS.get(i % METHODS.size()), end, shown));
        }
        rigid.map(r -> r.curves().get(r.curves().size() - 1))
                .ifPresent(c -> drawn.add(
                        rise(c, "rigid well, " + c.title(), Look.line(Palette.ORANGE, Dash.DOTTED), end, shown)));
        drawn.forEach(d -> Arrays.stream(d.y).forEach(pressures::add));
        List<GaugeLimit> still = standingLimits(outlook.curves().get(0));
        still.forEach(l -> pressures.add(shown.fromSi(l.pressure(), Measure.PRESSURE_GAUGE)));
        Axis across =
                new Axis("Time since shut-in [" + shown.label(Measure.TIME) + "]", 0, shown.fromSi(end, Measure.TIME));
        Axis up = Axis.fromZero("Surface pressure [" + shown.label(Measure.PRESSURE_GAUGE) + "]", pressures);
        Plot plot = Plot.upwards(name("migration", section), across, up);
        drawn.forEach(d -> plot.curve(d.label, d.look, d.x, d.y));
        still.forEach(l -> plot.level(
                shown.fromSi(l.pressure(), Measure.PRESSURE_GAUGE),
                l.name() + " " + shown.text(l.pressure(), Measure.PRESSURE_GAUGE, RoundingMode.FLOOR)));
        List<MigrationPoint> marks = new ArrayList<>();
        StringBuilder alt = new StringBuilder("Surface pressure against time since shut-in. First limit reached:");
        for (MigrationCurve curve : outlook.curves()) {
            curve.earliest()
                    .ifPresentOrElse(
                            first -> {
                                MigrationPoint at = first.reached().orElseThrow();
                                marks.add(at);
                                String words = first.limit().name() + " after " + units.duration(at.time());
                                plot.cross(
                                        shown.fromSi(at.time(), Measure.TIME),
                                        curve.title().split(",")[0] + ": " + words);
                                alt.append(' ')
                                        .append(curve.title())
                                        .append(": ")
                                        .append(words)
                                        .append(';');
                            },
                            () -> alt.append(' ').append(curve.title()).append(": none;"));
        }
        if (!marks.isEmpty()) {
            plot.curve(
                    "first limit reached",
                    Look.marksOnly(Palette.INK, SeriesMarkers.DIAMOND),
                    marks.stream()
                            .mapToDouble(p -> shown.fromSi(p.time(), Measure.TIME))
                            .toArray(),
                    marks.stream()
                            .mapToDouble(p -> shown.fromSi(p.surfacePressure(), Measure.PRESSURE_GAUGE))
                            .toArray());
        }
        alt.setCharAt(alt.length() - 1, '.');
        return plot.image(title, alt.toString());
    }

    /** Far enough to see every first crossing; to the end where some rate reaches no limit. */
    private static double lastTime(MigrationOutlook outlook) {
        double last = 0;
        for (MigrationCurve curve : outlook.curves()) {
            double end = curve.points().get(curve.points().size() - 1).time();
            last = Math.max(
                    last,
                    curve.earliest()
                            .map(l -> Math.min(
                                    end, 1.25 * l.reached().orElseThrow().time()))
                            .orElse(end));
        }
        return last;
    }

    private static Drawn rise(MigrationCurve curve, String label, Look look, double end, UnitSystem units) {
        List<MigrationPoint> points = curve.points();
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            MigrationPoint p = points.get(i);
            if (p.time() <= end) {
                x.add(units.fromSi(p.time(), Measure.TIME));
                y.add(units.fromSi(p.surfacePressure(), Measure.PRESSURE_GAUGE));
                continue;
            }
            MigrationPoint before = points.get(i - 1);
            double share = (end - before.time()) / (p.time() - before.time());
            x.add(units.fromSi(end, Measure.TIME));
            y.add(units.fromSi(
                    before.surfacePressure() + share * (p.surfacePressure() - before.surfacePressure()),
                    Measure.PRESSURE_GAUGE));
            break;
        }
        return new Drawn(label, look, array(x), array(y));
    }

    /** Limits that are one pressure at the gauge all along: those that no gas passes. */
    private static List<GaugeLimit> standingLimits(MigrationCurve curve) {
        List<GaugeLimit> found = new ArrayList<>();
        for (int k = 0; k < curve.limits().size(); k++) {
            int limit = k;
            double first =
                    curve.points().get(0).watched(k) - curve.points().get(0).surfacePressure();
            boolean still = curve.points().stream()
                    .allMatch(p -> Math.abs(p.watched(limit) - p.surfacePressure() - first) < ALONG);
            if (still) {
                PressureLimit l = curve.limits().get(k).limit();
                found.add(new GaugeLimit(l.name(), l.pressure() - first));
            }
        }
        return found;
    }

    /** Casing pressure of the volumetric method against time. */
    public static Figure volumetricCasing(String section, VolumetricMethod.Table table, UnitSystem units) {
        return inTime(
                new TimeChart("volumetric-casing", "Casing pressure, volumetric method", section),
                table,
                new Shown("Casing pressure", Measure.PRESSURE_GAUGE, true),
                MigrationPoint::surfacePressure,
                List.of(),
                units);
    }

    /**
     * Bottom-hole pressure of the volumetric method against time, inside its window.
     *
     * @param section name of the section
     * @param plan that was run
     * @param table what came out
     * @param units to show
     */
    public static Figure volumetricBottomHole(
            String section, VolumetricMethod.Plan plan, VolumetricMethod.Table table, UnitSystem units) {
        double formation = plan.well().influx().formationPressure();
        double low = formation + plan.safety();
        return inTime(
                new TimeChart("volumetric-bottom", "Bottom-hole pressure, volumetric method", section),
                table,
                new Shown("Bottom-hole pressure", Measure.PRESSURE_ABSOLUTE, false),
                MigrationPoint::bottomHolePressure,
                List.of(
                        new Level(formation, "formation pressure"),
                        new Level(low, "lower end of the window"),
                        new Level(low + plan.working(), "upper end of the window")),
                units);
    }

    private record TimeChart(String kind, String title, String section) {}

    private record Level(double at, String label) {}

    private static Figure inTime(
            TimeChart chart,
            VolumetricMethod.Table table,
            Shown what,
            ToDoubleFunction<MigrationPoint> value,
            List<Level> levels,
            UnitSystem units) {
        UnitSystem shown = units.inHours();
        String title = chart.title + ", " + chart.section;
        if (table.end().time() <= 0) {
            return new NotDrawn(title, "the gas does not rise");
        }
        double[] x = table.points().stream()
                .mapToDouble(p -> shown.fromSi(p.time(), Measure.TIME))
                .toArray();
        double[] y = table.points().stream()
                .mapToDouble(p -> shown.fromSi(value.applyAsDouble(p), what.measure))
                .toArray();
        List<Double> all = new ArrayList<>();
        for (double v : y) {
            all.add(v);
        }
        levels.forEach(l -> all.add(shown.fromSi(l.at, what.measure)));
        Plot plot = Plot.upwards(
                name(chart.kind, chart.section),
                new Axis("Time since shut-in [" + shown.label(Measure.TIME) + "]", 0, x[x.length - 1]),
                what.axis(all, shown));
        plot.curve(what.title.toLowerCase(Locale.ROOT), METHODS.get(0), x, y);
        levels.forEach(l -> plot.level(shown.fromSi(l.at, what.measure), l.label));
        long bleeds = table.steps().stream()
                .filter(s -> s.action() == VolumetricMethod.Action.BLEED)
                .count();
        return plot.image(
                title,
                what.title + " against time since shut-in while the gas rises: " + bleeds
                        + " times mud is bled; it ends because "
                        + table.ending().title() + ".");
    }

    /** Casing pressure of lubricate and bleed against the mud pumped in: up while pumping, down while bleeding. */
    public static Figure lubricateAndBleed(String section, LubricateAndBleed.Table table, UnitSystem units) {
        String title = "Casing pressure, lubricate and bleed, " + section;
        if (table.steps().isEmpty()) {
            return new NotDrawn(title, table.ending().title());
        }
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        x.add(0.0);
        y.add(units.fromSi(table.startPressure(), Measure.PRESSURE_GAUGE));
        for (LubricateAndBleed.Step step : table.steps()) {
            x.add(units.fromSi(step.totalPumped(), Measure.VOLUME));
            y.add(units.fromSi(step.afterPumping(), Measure.PRESSURE_GAUGE));
            x.add(units.fromSi(step.totalPumped(), Measure.VOLUME));
            y.add(units.fromSi(step.afterBleeding(), Measure.PRESSURE_GAUGE));
        }
        Axis across = new Axis("Mud pumped in [" + units.label(Measure.VOLUME) + "]", 0, x.get(x.size() - 1));
        Axis up = Axis.fromZero("Casing pressure [" + units.label(Measure.PRESSURE_GAUGE) + "]", y);
        return Plot.upwards(name("lubricate", section), across, up)
                .curve("casing pressure", METHODS.get(0), array(x), array(y))
                .image(
                        title,
                        "Casing pressure against mud pumped in: "
                                + table.steps().size()
                                + " steps, each up while pumping and down while gas is bled; it ends because "
                                + table.ending().title() + ".");
    }

    /** Pump pressure of bullheading against the mud pumped. */
    public static Figure bullheading(
            String section, Bullheading.Plan plan, Bullheading.Outcome outcome, UnitSystem units) {
        double[] x = outcome.stages().stream()
                .mapToDouble(s -> units.fromSi(s.pumped(), Measure.VOLUME))
                .toArray();
        double[] y = outcome.stages().stream()
                .mapToDouble(s -> units.fromSi(s.pumpPressure(), Measure.PRESSURE_GAUGE))
                .toArray();
        double limit = units.fromSi(plan.pumpLimit(), Measure.PRESSURE_GAUGE);
        List<Double> all = new ArrayList<>(List.of(limit));
        for (double v : y) {
            all.add(v);
        }
        Axis across = new Axis("Mud pumped [" + units.label(Measure.VOLUME) + "]", x[0], x[x.length - 1]);
        Axis up = Axis.fromZero("Pump pressure [" + units.label(Measure.PRESSURE_GAUGE) + "]", all);
        Bullheading.Load governing = outcome.governing();
        return Plot.upwards(name("bullheading", section), across, up)
                .curve("pump pressure", METHODS.get(0), x, y)
                .level(limit, "pump limit " + units.text(plan.pumpLimit(), Measure.PRESSURE_GAUGE, RoundingMode.FLOOR))
                .image(
                        "Bullheading, " + section,
                        "Pump pressure against mud pumped. Least margin: "
                                + units.text(governing.margin(), Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR)
                                + ", " + governing.limit().name() + ".");
    }

    /** Drill-pipe pressure while kill mud goes to the bit: by true vertical depth, and the straight line beside it. */
    public static Figure pressureSchedule(String section, KillSheet sheet, UnitSystem units) {
        List<PressureSchedule.Step> steps = sheet.schedule().steps();
        double[] x = steps.stream().mapToDouble(PressureSchedule.Step::strokes).toArray();
        double[] needed = steps.stream()
                .mapToDouble(s -> units.fromSi(s.pressure(), Measure.PRESSURE_GAUGE))
                .toArray();
        double[] straight = steps.stream()
                .mapToDouble(s -> units.fromSi(s.straightLine(), Measure.PRESSURE_GAUGE))
                .toArray();
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            all.add(needed[i]);
            all.add(straight[i]);
        }
        Plot plot = Plot.upwards(
                        name("schedule", section),
                        new Axis("Strokes", 0, x[x.length - 1]),
                        Axis.fromZero("Drill-pipe pressure [" + units.label(Measure.PRESSURE_GAUGE) + "]", all))
                .curve("by true vertical depth", METHODS.get(0), x, needed)
                .curve("straight line", METHODS.get(1), x, straight);
        double missing = sheet.schedule().greatestUnderbalance();
        String said = units.text(missing, Measure.PRESSURE_DIFFERENCE, RoundingMode.CEILING);
        if (missing > 0) {
            plot.cross(sheet.schedule().underbalanceAt().strokes(), "straight line short by " + said);
        }
        return plot.image(
                "Drill-pipe pressure by strokes, " + section,
                "Drill-pipe pressure to hold by strokes while kill mud goes to the bit, from "
                        + units.text(sheet.initialCirculatingPressure(), Measure.PRESSURE_GAUGE) + " to "
                        + units.text(sheet.finalCirculatingPressure(), Measure.PRESSURE_GAUGE)
                        + ". The straight line falls short by up to " + said + ".");
    }

    private record Drawn(String label, Look look, double[] x, double[] y) {}

    /** A quantity on the upright axis. */
    private record Shown(String title, Measure measure, boolean fromZero) {
        Axis axis(List<Double> values, UnitSystem units) {
            String words = title + " [" + units.label(measure) + "]";
            return fromZero ? Axis.fromZero(words, values) : Axis.around(words, values);
        }
    }

    /** Curves of circulations against the volume pumped since the first stroke of the first circulation. */
    private static final class Curves {
        private record Series(String label, Look look, List<Double> pumped, List<Double> values) {}

        private final String title;
        private final UnitSystem units;
        private final List<Series> series = new ArrayList<>();
        private final List<Level> levels = new ArrayList<>();
        private double secondStarts = -1;

        Curves(String title, UnitSystem units) {
            this.title = title;
            this.units = units;
        }

        void add(Run run, ToDoubleFunction<CirculationPoint> value) {
            add(run.title(), METHODS.get(series.size() % METHODS.size()), run.schedule(), value);
        }

        void add(String label, Look look, CirculationSchedule schedule, ToDoubleFunction<CirculationPoint> value) {
            List<Double> pumped = new ArrayList<>();
            List<Double> values = new ArrayList<>();
            double before = 0;
            double last = 0;
            for (CirculationPoint p : schedule.points()) {
                if (p.pumped() < last) {
                    before += last;
                    secondStarts = before;
                }
                last = p.pumped();
                pumped.add(before + p.pumped());
                values.add(value.applyAsDouble(p));
            }
            series.add(new Series(label, look, pumped, values));
        }

        void level(double at, String label) {
            levels.add(new Level(at, label));
        }

        Figure image(String name, Shown what, String altText) {
            if (series.isEmpty()) {
                return new NotDrawn(title, "no circulation is assessed");
            }
            List<Double> all = new ArrayList<>();
            double end = 0;
            for (Series s : series) {
                s.values.forEach(v -> all.add(units.fromSi(v, what.measure)));
                end = Math.max(end, s.pumped.get(s.pumped.size() - 1));
            }
            levels.forEach(l -> all.add(units.fromSi(l.at, what.measure)));
            Plot plot = Plot.upwards(
                    name,
                    new Axis(
                            "Pumped since the start [" + units.label(Measure.VOLUME) + "]",
                            0,
                            units.fromSi(end, Measure.VOLUME)),
                    what.axis(all, units));
            for (Series s : series) {
                plot.curve(
                        s.label,
                        s.look,
                        s.pumped.stream()
                                .mapToDouble(v -> units.fromSi(v, Measure.VOLUME))
                                .toArray(),
                        s.values.stream()
                                .mapToDouble(v -> units.fromSi(v, what.measure))
                                .toArray());
            }
            levels.forEach(l -> plot.level(units.fromSi(l.at, what.measure), l.label));
            if (secondStarts > 0) {
                plot.cross(units.fromSi(secondStarts, Measure.VOLUME), "second circulation, kill mud");
            }
            return plot.image(title, altText);
        }
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(v -> v).toArray();
    }

    private static String name(String kind, String section) {
        return kind + "-" + Charts.slug(section);
    }
}
