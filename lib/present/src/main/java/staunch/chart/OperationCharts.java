package staunch.chart;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.knowm.xchart.style.markers.SeriesMarkers;
import staunch.chart.Palette.Dash;
import staunch.chart.Plot.Look;
import staunch.control.Bullheading;
import staunch.control.CirculationMethod;
import staunch.control.CirculationPoint;
import staunch.control.CirculationSchedule;
import staunch.control.ClosestLimit;
import staunch.control.FrictionCurve;
import staunch.control.KillSheet;
import staunch.control.LubricateAndBleed;
import staunch.control.MigrationPoint;
import staunch.control.PressureSchedule;
import staunch.control.SlowCirculation;
import staunch.control.VolumetricMethod;
import staunch.envelope.BullheadingOutcome;
import staunch.envelope.CirculationOutcome;
import staunch.envelope.MigrationOutcome;
import staunch.envelope.VolumetricOutcome;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.UnitSystem;

/** Operations on a shut-in well as charts in chosen units. Every chart is given the name of the section it belongs to. */
public final class OperationCharts {
    private static final String NO_RUN = "no circulation is assessed";

    private static final List<Look> METHODS = List.of(
            Look.marked(Palette.VERMILLION, Dash.SOLID, SeriesMarkers.CIRCLE),
            Look.marked(Palette.BLUE, Dash.DASHED, SeriesMarkers.SQUARE),
            Look.marked(Palette.GREEN, Dash.DASH_DOT, SeriesMarkers.TRIANGLE_UP));
    private static final List<Look> LIMITS = List.of(
            Look.marked(Palette.VERMILLION, Dash.SOLID, SeriesMarkers.CIRCLE),
            Look.marked(Palette.BLUE, Dash.DASHED, SeriesMarkers.SQUARE),
            Look.marked(Palette.GREEN, Dash.DASH_DOT, SeriesMarkers.TRIANGLE_UP),
            Look.marked(Palette.ORANGE, Dash.LONG, SeriesMarkers.DIAMOND),
            Look.marked(Palette.PURPLE, Dash.SHORT, SeriesMarkers.TRIANGLE_DOWN),
            Look.marked(Palette.SKY, Dash.DOTTED, SeriesMarkers.PLUS),
            Look.marked(Palette.INK, Dash.DASHED, SeriesMarkers.CROSS));

    private OperationCharts() {}

    /** Choke pressure against the volume pumped. */
    public static Figure chokePressure(String section, List<CirculationOutcome.Computed> runs, UnitSystem units) {
        Curves curves = new Curves("Choke pressure while circulating out, " + section, units);
        runs.forEach(r -> curves.add(r, CirculationPoint::chokePressure));
        return curves.image(
                name("choke", section),
                new Shown("Choke pressure", Measure.PRESSURE_GAUGE, true),
                "Choke pressure against the volume pumped. Highest: "
                        + peaks(
                                runs,
                                r -> units.text(
                                        r.schedule().greatestChokePressure().chokePressure(),
                                        Measure.PRESSURE_GAUGE,
                                        RoundingMode.CEILING))
                        + ".");
    }

    /**
     * Pressure at a watched depth against the volume pumped, its limit beside it.
     *
     * @param section name of the section
     * @param runs to show
     * @param watched index of the depth
     * @param limit at that depth, Pa absolute, where there is one
     * @param units to show
     */
    public static Figure watchedPressure(
            String section,
            List<CirculationOutcome.Computed> runs,
            int watched,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) OptionalDouble limit,
            UnitSystem units) {
        if (runs.isEmpty()) {
            return new NotDrawn("Pressure while circulating out, " + section, NO_RUN);
        }
        String where = runs.get(0).peaks().get(watched).where().name();
        Curves curves = new Curves("Pressure while circulating out, " + where + ", " + section, units);
        runs.forEach(r -> curves.add(r, p -> p.watched()[watched]));
        limit.ifPresent(l -> curves.level(l, "limit " + units.text(l, Measure.PRESSURE_ABSOLUTE, RoundingMode.FLOOR)));
        return curves.image(
                name("watched-" + watched, section),
                new Shown("Pressure, " + where, Measure.PRESSURE_ABSOLUTE, false),
                "Pressure at " + where + " against the volume pumped. Highest: "
                        + peaks(
                                runs,
                                r -> units.text(
                                        r.peaks().get(watched).pressure(),
                                        Measure.PRESSURE_ABSOLUTE,
                                        RoundingMode.CEILING))
                        + ".");
    }

    /** What is left to the limit that is closest at each moment, by which one it is. */
    public static Figure closestLimit(String section, CirculationOutcome.Computed run, UnitSystem units) {
        String title = "Margin to the closest limit, " + title(run) + ", " + section;
        Set<String> names = new LinkedHashSet<>();
        run.schedule().points().forEach(p -> p.closest().ifPresent(c -> names.add(c.name())));
        if (names.isEmpty()) {
            return new NotDrawn(title, "no limit is known");
        }
        Curves curves = new Curves(title, units);
        int i = 0;
        for (String limit : names) {
            curves.add(
                    limit,
                    LIMITS.get(i++ % LIMITS.size()),
                    run.schedule(),
                    p -> p.closest()
                            .filter(c -> c.name().equals(limit))
                            .map(ClosestLimit::margin)
                            .orElse(Double.NaN));
        }
        curves.level(0, "limit reached");
        ClosestLimit least =
                run.schedule().leastMargin().orElseThrow().closest().orElseThrow();
        return curves.image(
                name("closest-" + run.method().name().toLowerCase(Locale.ROOT).replace('_', '-'), section),
                new Shown("Left to the limit", Measure.PRESSURE_DIFFERENCE, true),
                "What is left to the limit closest at each moment against the volume pumped: "
                        + String.join(", ", names) + ". Least: "
                        + units.text(least.margin(), Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR) + ", "
                        + least.name() + ".");
    }

    /** Pit gain against the volume pumped. */
    public static Figure pitGain(String section, List<CirculationOutcome.Computed> runs, UnitSystem units) {
        Curves curves = new Curves("Pit gain while circulating out, " + section, units);
        runs.forEach(r -> curves.add(r, CirculationPoint::gasVolume));
        return curves.image(
                name("gain", section),
                new Shown("Pit gain", Measure.VOLUME, true),
                "Pit gain against the volume pumped: it grows as the gas expands, and falls as the gas leaves.");
    }

    /** Gas rate at the choke against the volume pumped. */
    public static Figure gasRate(String section, List<CirculationOutcome.Computed> runs, UnitSystem units) {
        Curves curves = new Curves("Gas rate at the choke, " + section, units);
        runs.forEach(r -> curves.add(r, CirculationPoint::gasRate));
        return curves.image(
                name("gas-rate", section),
                new Shown("Gas rate", Measure.GAS_RATE, true),
                "Gas rate at the choke against the volume pumped: none until the gas arrives.");
    }

    private static String peaks(
            List<CirculationOutcome.Computed> runs, Function<CirculationOutcome.Computed, String> peak) {
        return String.join(
                ", ", runs.stream().map(r -> title(r) + " " + peak.apply(r)).toList());
    }

    private static String title(CirculationOutcome.Computed run) {
        return run.method() == CirculationMethod.DRILLERS ? "driller's method" : "wait and weight";
    }

    /**
     * Surface pressure of a well that is left closed, at each rate of the bracket, with the first limit that each reaches and
     * the fastest rate in a rigid well beside it.
     */
    public static Figure migration(String section, MigrationOutcome.Computed migration, UnitSystem units) {
        UnitSystem shown = units.inHours();
        String title = "Surface pressure of the closed well, " + section;
        double end = lastTime(migration.courses());
        if (end <= 0) {
            return new NotDrawn(title, "the gas does not rise");
        }
        List<Drawn> drawn = new ArrayList<>();
        for (int i = 0; i < migration.courses().size(); i++) {
            MigrationOutcome.Course course = migration.courses().get(i);
            drawn.add(rise(course, course.rate(units), METHODS.get(i % METHODS.size()), end, shown));
        }
        MigrationOutcome.Course rigid = migration.rigid().get(migration.rigid().size() - 1);
        drawn.add(rise(rigid, "rigid well, " + rigid.rate(units), Look.line(Palette.ORANGE, Dash.DOTTED), end, shown));
        List<Double> pressures = new ArrayList<>();
        drawn.forEach(d -> Arrays.stream(d.y).forEach(pressures::add));
        double maasp = migration.formationMaasp().orElse(-1);
        if (maasp > 0) {
            pressures.add(shown.fromSi(maasp, Measure.PRESSURE_GAUGE));
        }
        Plot plot = Plot.upwards(
                name("migration", section),
                new Axis("Time since shut-in [" + shown.label(Measure.TIME) + "]", 0, shown.fromSi(end, Measure.TIME)),
                Axis.fromZero("Surface pressure [" + shown.label(Measure.PRESSURE_GAUGE) + "]", pressures));
        drawn.forEach(d -> plot.curve(d.label, d.look, d.x, d.y));
        if (maasp > 0) {
            plot.level(
                    shown.fromSi(maasp, Measure.PRESSURE_GAUGE),
                    "formation MAASP " + shown.text(maasp, Measure.PRESSURE_GAUGE, RoundingMode.FLOOR)
                            + ", void once gas is above the weak point");
        }
        StringBuilder alt = new StringBuilder("Surface pressure against time since shut-in. First limit reached:");
        List<MigrationPoint> marks = new ArrayList<>();
        for (MigrationOutcome.Course course : migration.courses()) {
            course.earliest()
                    .ifPresentOrElse(
                            first -> {
                                MigrationPoint at = first.moment().orElseThrow();
                                marks.add(at);
                                String words = first.name() + " after " + units.duration(at.time());
                                plot.cross(
                                        shown.fromSi(at.time(), Measure.TIME),
                                        course.rate(units).split(",")[0] + ": " + words);
                                alt.append(' ')
                                        .append(course.rate(units))
                                        .append(": ")
                                        .append(words)
                                        .append(';');
                            },
                            () -> alt.append(' ').append(course.rate(units)).append(": none;"));
        }
        if (!marks.isEmpty()) {
            plot.highlight(
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
    private static double lastTime(List<MigrationOutcome.Course> courses) {
        double last = 0;
        for (MigrationOutcome.Course course : courses) {
            double end = course.points().get(course.points().size() - 1).time();
            last = Math.max(
                    last,
                    course.earliest()
                            .map(l -> Math.min(
                                    end, 1.25 * l.moment().orElseThrow().time()))
                            .orElse(end));
        }
        return last;
    }

    private static Drawn rise(MigrationOutcome.Course course, String label, Look look, double end, UnitSystem units) {
        List<MigrationPoint> points = course.points();
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

    /** Casing pressure of the volumetric method against time. */
    public static Figure volumetricCasing(String section, VolumetricOutcome.Computed volumetric, UnitSystem units) {
        return inTime(
                new TimeChart("volumetric-casing", "Casing pressure, volumetric method", section),
                volumetric.table(),
                new Shown("Casing pressure", Measure.PRESSURE_GAUGE, true),
                MigrationPoint::surfacePressure,
                List.of(),
                units);
    }

    /** Bottom-hole pressure of the volumetric method against time, inside its window. */
    public static Figure volumetricBottomHole(String section, VolumetricOutcome.Computed volumetric, UnitSystem units) {
        return inTime(
                new TimeChart("volumetric-bottom", "Bottom-hole pressure, volumetric method", section),
                volumetric.table(),
                new Shown("Bottom-hole pressure", Measure.PRESSURE_ABSOLUTE, false),
                MigrationPoint::bottomHolePressure,
                List.of(
                        new Level(volumetric.lowest(), "lower end of the window"),
                        new Level(volumetric.highest(), "upper end of the window")),
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
    public static Figure bullheading(String section, BullheadingOutcome.Computed bullheading, UnitSystem units) {
        double[] x = bullheading.stages().stream()
                .mapToDouble(s -> units.fromSi(s.pumped(), Measure.VOLUME))
                .toArray();
        double[] y = bullheading.stages().stream()
                .mapToDouble(s -> units.fromSi(s.pumpPressure(), Measure.PRESSURE_GAUGE))
                .toArray();
        double highest = bullheading.stages().stream()
                .mapToDouble(Bullheading.Stage::pumpPressure)
                .max()
                .orElseThrow();
        double pumpLimit = highest + bullheading.pump().margin();
        List<Double> all = new ArrayList<>(List.of(units.fromSi(pumpLimit, Measure.PRESSURE_GAUGE)));
        Arrays.stream(y).forEach(all::add);
        Axis across = new Axis("Mud pumped [" + units.label(Measure.VOLUME) + "]", x[0], x[x.length - 1]);
        Axis up = Axis.fromZero("Pump pressure [" + units.label(Measure.PRESSURE_GAUGE) + "]", all);
        Bullheading.Load governing = bullheading.governing();
        return Plot.upwards(name("bullheading", section), across, up)
                .curve("pump pressure", METHODS.get(0), x, y)
                .level(
                        units.fromSi(pumpLimit, Measure.PRESSURE_GAUGE),
                        "pump limit " + units.text(pumpLimit, Measure.PRESSURE_GAUGE, RoundingMode.FLOOR))
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

    /**
     * Friction of annulus and choke line against the pump rate, measured losses beside the computed.
     *
     * @param section name of the section
     * @param curve computed
     * @param measured slow circulating rates, of which those with a choke-line loss are marked
     * @param units to show
     */
    public static Figure friction(
            String section, FrictionCurve curve, List<SlowCirculation> measured, UnitSystem units) {
        double[] x = rates(curve.points().stream().mapToDouble(FrictionCurve.Point::rate), units);
        double[] annulus = losses(curve.points().stream().mapToDouble(FrictionCurve.Point::annulus), units);
        List<Double> all = new ArrayList<>();
        Arrays.stream(annulus).forEach(all::add);
        List<FrictionCurve.Point> withLine =
                curve.points().stream().filter(p -> p.chokeLine().isPresent()).toList();
        double[] line = losses(withLine.stream().mapToDouble(p -> p.chokeLine().getAsDouble()), units);
        Arrays.stream(line).forEach(all::add);
        List<SlowCirculation> marked =
                measured.stream().filter(m -> m.chokeLineFriction().isPresent()).toList();
        double[] marks =
                losses(marked.stream().mapToDouble(m -> m.chokeLineFriction().getAsDouble()), units);
        Arrays.stream(marks).forEach(all::add);
        Plot plot = Plot.upwards(
                        name("friction", section),
                        new Axis("Pump rate [" + units.label(Measure.FLOW_RATE) + "]", 0, x[x.length - 1]),
                        Axis.fromZero("Friction [" + units.label(Measure.PRESSURE_DIFFERENCE) + "]", all))
                .curve("annulus, computed", METHODS.get(0), x, annulus);
        if (line.length > 0) {
            plot.curve(
                    "choke line, computed",
                    METHODS.get(1),
                    rates(withLine.stream().mapToDouble(FrictionCurve.Point::rate), units),
                    line);
        }
        if (marks.length > 0) {
            plot.highlight(
                    "choke line, measured",
                    Look.marksOnly(Palette.INK, SeriesMarkers.DIAMOND),
                    rates(marked.stream().mapToDouble(SlowCirculation::rate), units),
                    marks);
        }
        return plot.image(
                "Friction against pump rate, " + section,
                "Friction of the annulus" + (line.length > 0 ? " and of the choke line" : "") + " against the pump rate"
                        + (marks.length > 0 ? ", measured losses marked." : "."));
    }

    private static double[] rates(DoubleStream si, UnitSystem units) {
        return si.map(v -> units.fromSi(v, Measure.FLOW_RATE)).toArray();
    }

    private static double[] losses(DoubleStream si, UnitSystem units) {
        return si.map(v -> units.fromSi(v, Measure.PRESSURE_DIFFERENCE)).toArray();
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

        void add(CirculationOutcome.Computed run, ToDoubleFunction<CirculationPoint> value) {
            add(title(run), METHODS.get(series.size() % METHODS.size()), run.schedule(), value);
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
                return new NotDrawn(title, NO_RUN);
            }
            List<Double> all = new ArrayList<>();
            double end = 0;
            for (Series s : series) {
                s.values.stream().filter(Double::isFinite).forEach(v -> all.add(units.fromSi(v, what.measure)));
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
                plot.cross(
                        units.fromSi(secondStarts, Measure.VOLUME), "driller's method: second circulation, kill mud");
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
