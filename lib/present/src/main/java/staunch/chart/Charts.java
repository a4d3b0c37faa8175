package staunch.chart;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import staunch.chart.Palette.Dash;
import staunch.chart.Plot.Look;
import staunch.design.SectionChange;
import staunch.design.SectionQuantity;
import staunch.design.Sensitivity;
import staunch.design.ShoeSearch;
import staunch.design.ShoeStretch;
import staunch.design.ShoeWindow;
import staunch.design.WellCase;
import staunch.earth.EquivalentZero;
import staunch.earth.Standing;
import staunch.earth.StrengthTest;
import staunch.earth.WeakZone;
import staunch.envelope.DepthPoint;
import staunch.envelope.InfluxMargin;
import staunch.envelope.IntensityPoint;
import staunch.envelope.Kick;
import staunch.envelope.Maasp;
import staunch.envelope.PressureWindow;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SurfaceLimit;
import staunch.envelope.Tolerance;
import staunch.envelope.WellEnvelope;
import staunch.fluid.Mud;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** Every chart of a review, in chosen units. */
public final class Charts {
    /** A section may start a little below the shoe above it, m. */
    private static final double RAT_HOLE = 20;

    private Charts() {}

    /** Casing strings and hole sections of the design that was evaluated, with each section's verdict. */
    public static Figure schematic(WellCase wellCase, WellEnvelope envelope, UnitSystem units) {
        return new Schematic(wellCase, envelope, units).image();
    }

    /** Pore pressure, mud and strength of one section as equivalent mud weight against vertical depth. */
    public static Figure pressureWindow(WellCase wellCase, SectionEnvelope section, UnitSystem units) {
        return window(
                name("window", section),
                "Pressure window, " + section.plan().name(),
                wellCase,
                List.of(section),
                units,
                new Beside("", p -> {}));
    }

    /** Pore pressure, mud and strength of all sections as equivalent mud weight against vertical depth. */
    public static Figure pressureWindow(WellCase wellCase, WellEnvelope envelope, UnitSystem units) {
        return window(
                "window-well",
                "Pressure window of the well",
                wellCase,
                envelope.sections(),
                units,
                new Beside("", p -> {}));
    }

    /**
     * The pressure window of the well with the depths, hatched beside it, at which the shoe of each string may stand.
     *
     * @param envelope of the design that was searched
     * @param search of the same design
     */
    public static Figure shoeWindows(WellCase wellCase, WellEnvelope envelope, ShoeSearch search, UnitSystem units) {
        StringBuilder words = new StringBuilder();
        List<ShoeWindow> searched =
                search.windows().stream().filter(w -> w.notSearched().isEmpty()).toList();
        for (ShoeWindow window : searched) {
            String where = window.allowed().stream().map(s -> depths(s, units)).collect(Collectors.joining(", "));
            words.append(" Shoe of ")
                    .append(window.string())
                    .append(where.isEmpty() ? " allowed nowhere." : " allowed at " + where + " TVD.");
        }
        return window(
                "shoe-windows",
                "Where the shoes may stand, " + search.design(),
                wellCase,
                envelope.sections(),
                units,
                new Beside(words.toString(), plot -> {
                    for (int i = 0; i < searched.size(); i++) {
                        ShoeWindow window = searched.get(i);
                        for (ShoeStretch s : window.allowed()) {
                            plot.stretch(
                                    i,
                                    units.fromSi(s.fromVertical(), Measure.DEPTH),
                                    units.fromSi(s.toVertical(), Measure.DEPTH),
                                    window.string() + ": " + depths(s, units),
                                    LOOKS.get(i % LOOKS.size()).color());
                        }
                    }
                }));
    }

    private static String depths(ShoeStretch stretch, UnitSystem units) {
        return units.text(stretch.fromVertical(), Measure.DEPTH, RoundingMode.CEILING) + " – "
                + units.text(stretch.toVertical(), Measure.DEPTH, RoundingMode.FLOOR);
    }

    /** Swings of the inputs of a section about its margin, the greatest on top. */
    public static Figure tornado(Sensitivity sensitivity, UnitSystem units) {
        return TornadoChart.of(sensitivity, units);
    }

    /** What is drawn beside a pressure window, and the words for it. */
    private record Beside(String words, Consumer<Plot> drawing) {}

    /** Drilled and swabbed tolerance with the bit at each depth of the section, against the criteria. */
    public static Figure toleranceAlongSection(SectionEnvelope section, UnitSystem units) {
        String title = "Tolerance over depth, " + section.plan().name();
        List<DepthPoint> points = section.alongSection();
        if (points.size() < 2) {
            return new NotDrawn(
                    title,
                    "there are no depths with a result: " + section.verdict().statement(units));
        }
        List<Double> volumes = new ArrayList<>();
        points.forEach(p -> Stream.of(p.drilled(), p.swabbed())
                .forEach(t -> volume(t).ifPresent(v -> volumes.add(units.fromSi(v, Measure.VOLUME)))));
        if (volumes.isEmpty()) {
            return new NotDrawn(
                    title,
                    "no depth has a finite tolerance; at section TD drilled "
                            + summary(section.drilled().tolerance(), units) + ", swabbed "
                            + summary(section.swabbed().tolerance(), units));
        }
        required(section).values().forEach(v -> volumes.add(units.fromSi(v, Measure.VOLUME)));
        Axis across = Axis.fromZero("Tolerance of the formation [" + label(units, Measure.VOLUME) + "]", volumes);
        Axis depth = new Axis(
                "Bit and influx depth MD [" + label(units, Measure.DEPTH) + "]",
                units.fromSi(points.get(0).measuredDepth(), Measure.DEPTH),
                units.fromSi(points.get(points.size() - 1).measuredDepth(), Measure.DEPTH));
        Plot plot = Plot.downwards(name("tolerance", section), across, depth);
        tolerance(plot, new Scenario("drilled", 0, DRILLED), points, DepthPoint::drilled, units);
        tolerance(plot, new Scenario("swabbed", 1, SWABBED), points, DepthPoint::swabbed, units);
        required(section)
                .forEach((what, v) -> plot.cross(
                        units.fromSi(v, Measure.VOLUME),
                        "required " + what + " " + units.text(v, Measure.VOLUME, RoundingMode.CEILING)));
        return plot.image(
                title,
                "Kick tolerance against measured depth of bit and influx, depth downwards, from "
                        + units.text(points.get(0).measuredDepth(), Measure.DEPTH) + " to "
                        + units.text(points.get(points.size() - 1).measuredDepth(), Measure.DEPTH)
                        + ". At section TD: drilled "
                        + summary(section.drilled().tolerance(), units) + "; swabbed "
                        + summary(section.swabbed().tolerance(), units) + ".");
    }

    /** Tolerance of a drilled kick at section TD against its intensity. */
    public static Figure volumeAgainstIntensity(SectionEnvelope section, UnitSystem units) {
        String title = "Volume against intensity, " + section.plan().name();
        List<IntensityPoint> points = section.volumeAgainstIntensity();
        if (points.size() < 2) {
            return new NotDrawn(
                    title, "there is no curve: " + summary(section.drilled().tolerance(), units));
        }
        List<Double> volumes = new ArrayList<>();
        points.forEach(p -> volume(p.tolerance()).ifPresent(v -> volumes.add(units.fromSi(v, Measure.VOLUME))));
        if (volumes.isEmpty()) {
            return new NotDrawn(
                    title,
                    "no intensity has a finite tolerance: "
                            + summary(points.get(0).tolerance(), units));
        }
        section.drilled().required().ifPresent(v -> volumes.add(units.fromSi(v, Measure.VOLUME)));
        double[] xs = points.stream()
                .mapToDouble(p -> units.fromSi(p.intensity(), Measure.DENSITY_DIFFERENCE))
                .toArray();
        Axis across = new Axis(
                "Kick intensity above static mud [" + label(units, Measure.DENSITY_DIFFERENCE) + "]",
                xs[0],
                xs[xs.length - 1]);
        Axis up = Axis.fromZero("Tolerance of the formation [" + label(units, Measure.VOLUME) + "]", volumes);
        Plot plot = Plot.upwards(name("intensity", section), across, up);
        double[] ys = points.stream()
                .mapToDouble(p -> volume(p.tolerance()).isPresent()
                        ? units.fromSi(volume(p.tolerance()).getAsDouble(), Measure.VOLUME)
                        : Double.NaN)
                .toArray();
        plot.curve("drilled kick at section TD", DRILLED, xs, ys);
        for (Runs.Run run :
                Runs.of(points.stream().map(IntensityPoint::tolerance).toList())) {
            double[] edges = run.edges(xs);
            plot.stretch(0, edges[0], edges[1], run.words(), Palette.MUTED);
        }
        section.drilled()
                .required()
                .ifPresent(v -> plot.level(
                        units.fromSi(v, Measure.VOLUME),
                        "required " + units.text(v, Measure.VOLUME, RoundingMode.CEILING)));
        section.plan()
                .criteria()
                .map(c -> c.kickIntensity())
                .filter(i -> i.isPresent() && within(across, units.fromSi(i.getAsDouble(), Measure.DENSITY_DIFFERENCE)))
                .ifPresent(i -> plot.cross(
                        units.fromSi(i.getAsDouble(), Measure.DENSITY_DIFFERENCE),
                        "criterion intensity " + units.text(i.getAsDouble(), Measure.DENSITY_DIFFERENCE)));
        return plot.image(
                title,
                "Kick tolerance at section TD against kick intensity; it falls as intensity grows. "
                        + section.drilled().verdict().statement(units) + ".");
    }

    /** Every assessed component of MAASP against mud weight, the lowest one drawn wide. */
    public static Figure maaspAgainstMud(SectionEnvelope section, UnitSystem units) {
        String title = "MAASP against mud weight, " + section.plan().name();
        List<Maasp> maasps = section.maaspAgainstMud();
        Map<String, double[]> byComponent = new LinkedHashMap<>();
        for (int i = 0; i < maasps.size(); i++) {
            for (SurfaceLimit limit : maasps.get(i).components()) {
                if (limit.pressure().isPresent()) {
                    double[] ys = byComponent.computeIfAbsent(key(limit), k -> empty(maasps.size()));
                    ys[i] = units.fromSi(limit.pressure().getAsDouble(), Measure.PRESSURE_GAUGE);
                }
            }
        }
        if (maasps.size() < 2 || byComponent.isEmpty()) {
            return new NotDrawn(title, "no component is assessed over a range of mud weights");
        }
        List<Double> pressures = new ArrayList<>();
        byComponent.values().forEach(ys -> {
            for (double y : ys) {
                if (!Double.isNaN(y)) {
                    pressures.add(y);
                }
            }
        });
        double[] xs = maasps.stream()
                .mapToDouble(m -> units.fromSi(m.mudDensity(), Measure.DENSITY))
                .toArray();
        Axis across = new Axis("Mud weight [" + label(units, Measure.DENSITY) + "]", xs[0], xs[xs.length - 1]);
        Axis up = Axis.fromZero("Surface pressure [" + label(units, Measure.PRESSURE_GAUGE) + "]", pressures);
        Plot plot = Plot.upwards(name("maasp", section), across, up);
        double[] lowest = empty(maasps.size());
        for (int i = 0; i < xs.length; i++) {
            OptionalDouble p =
                    maasps.get(i).lowest().map(SurfaceLimit::pressure).orElse(OptionalDouble.empty());
            lowest[i] = p.isPresent() ? units.fromSi(p.getAsDouble(), Measure.PRESSURE_GAUGE) : Double.NaN;
        }
        boolean atMost = maasps.stream().anyMatch(Maasp::atMost);
        plot.highlight(
                atMost ? "lowest of those assessed (at most)" : "lowest surface limit",
                Look.line(Palette.YELLOW, Dash.SOLID).width(9f),
                xs,
                lowest);
        int i = 0;
        for (Map.Entry<String, double[]> component : byComponent.entrySet()) {
            plot.curve(component.getKey(), LOOKS.get(i++ % LOOKS.size()), xs, component.getValue());
        }
        section.plan()
                .mud()
                .map(Mud::density)
                .filter(d -> within(across, units.fromSi(d, Measure.DENSITY)))
                .ifPresent(d -> plot.cross(
                        units.fromSi(d, Measure.DENSITY), "mud of the section " + units.text(d, Measure.DENSITY)));
        return plot.image(
                title,
                "Greatest allowed surface pressure against mud weight, one line per component: "
                        + String.join(", ", byComponent.keySet()) + ".");
    }

    /** Margins at the shoe and at the weakest depth while the influx of the criteria is circulated past them. */
    public static Figure marginWhileCirculating(SectionEnvelope section, UnitSystem units) {
        String title = "Margin while circulating out, " + section.plan().name();
        List<InfluxMargin> margins =
                section.margins().stream().filter(m -> m.path().size() > 1).toList();
        if (margins.isEmpty()) {
            return new NotDrawn(
                    title, "no displacement was assessed: " + section.verdict().statement(units));
        }
        List<Double> values = new ArrayList<>();
        List<Double> depths = new ArrayList<>();
        for (InfluxMargin margin : margins) {
            for (InfluxMargin.Point p : margin.path()) {
                values.add(units.fromSi(p.shoeMargin(), Measure.PRESSURE_DIFFERENCE));
                values.add(units.fromSi(p.leastMargin(), Measure.PRESSURE_DIFFERENCE));
                depths.add(units.fromSi(p.gasTop(), Measure.DEPTH));
            }
        }
        double shoe = units.fromSi(section.plan().topDepth(), Measure.DEPTH);
        depths.add(shoe);
        Axis across = Axis.fromZero(
                "Margin to the limit [" + label(units, Measure.PRESSURE_DIFFERENCE) + "], breaks below zero", values);
        Axis down = new Axis(
                "Top of the influx MD [" + label(units, Measure.DEPTH) + "]",
                depths.stream().min(Comparator.naturalOrder()).orElseThrow(),
                depths.stream().max(Comparator.naturalOrder()).orElseThrow());
        Plot plot = Plot.downwards(name("margin", section), across, down);
        for (InfluxMargin margin : margins) {
            boolean drilled = margin.scenario() == Kick.Scenario.DRILLED;
            String what = (drilled ? "drilled " : "swabbed ")
                    + units.text(margin.volume(), Measure.VOLUME, RoundingMode.CEILING);
            double[] tops = margin.path().stream()
                    .mapToDouble(p -> units.fromSi(p.gasTop(), Measure.DEPTH))
                    .toArray();
            plot.curve(
                    what + ", weakest depth",
                    drilled ? DRILLED : SWABBED,
                    values(margin, InfluxMargin.Point::leastMargin, units),
                    tops);
            plot.curve(
                    what + ", shoe",
                    drilled ? Look.line(Palette.ORANGE, Dash.DOTTED) : Look.line(Palette.SKY, Dash.DASH_DOT),
                    values(margin, InfluxMargin.Point::shoeMargin, units),
                    tops);
        }
        plot.shoe(shoe, "shoe " + units.text(section.plan().topDepth(), Measure.DEPTH) + " MD");
        plot.cross(0, "zero margin");
        StringBuilder alt = new StringBuilder("Pressure margin against measured depth of the top of the influx.");
        for (InfluxMargin margin : margins) {
            alt.append(" Least margin, ")
                    .append(margin.scenario().title())
                    .append(": ")
                    .append(units.text(margin.least(), Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR))
                    .append(", ")
                    .append(margin.stage().moment().title())
                    .append('.');
        }
        return plot.image(title, alt.toString());
    }

    /** Shares of each cause in the change of one result between two runs. */
    public static Figure attribution(SectionChange section, SectionQuantity quantity, UnitSystem units) {
        return section.attribution(quantity)
                .map(a -> new AttributionChart(section, a, units).image())
                .orElseGet(() -> new NotDrawn(
                        "What changed " + quantity.title() + " of " + section.section() + ", design "
                                + section.design(),
                        "it did not change, or nothing is attributed"));
    }

    private static final Look DRILLED = Look.marked(Palette.VERMILLION, Dash.SOLID, SeriesMarkers.CIRCLE);
    private static final Look SWABBED = Look.marked(Palette.BLUE, Dash.DASHED, SeriesMarkers.SQUARE);
    private static final List<Look> LOOKS = List.of(
            Look.line(Palette.VERMILLION, Dash.SOLID),
            Look.line(Palette.BLUE, Dash.DASHED),
            Look.line(Palette.GREEN, Dash.DASH_DOT),
            Look.line(Palette.ORANGE, Dash.LONG),
            Look.line(Palette.PURPLE, Dash.SHORT),
            Look.line(Palette.SKY, Dash.DOTTED),
            Look.line(Palette.INK, Dash.DASHED));
    private static final Map<Standing, Marker> TEST_MARKERS = Map.of(
            Standing.LEAK_OFF, SeriesMarkers.DIAMOND,
            Standing.INTEGRITY_TEST, SeriesMarkers.TRIANGLE_UP,
            Standing.EXTENDED_LEAK_OFF, SeriesMarkers.SQUARE,
            Standing.PREDICTED, SeriesMarkers.CIRCLE);

    private record Scenario(String title, int lane, Look look) {}

    /** A pressure of the window with its look. */
    private record WindowCurve(String title, Look look, Function<PressureWindow.Point, OptionalDouble> pressure) {}

    private static final List<WindowCurve> WINDOW_CURVES = List.of(
            new WindowCurve(
                    "pore pressure, likely",
                    Look.line(Palette.SKY, Dash.DASHED),
                    PressureWindow.Point::porePressureLikely),
            new WindowCurve(
                    "pore pressure, high",
                    Look.marked(Palette.BLUE, Dash.SOLID, SeriesMarkers.SQUARE),
                    PressureWindow.Point::porePressureHigh),
            new WindowCurve("mud", Look.line(Palette.GREEN, Dash.LONG).width(3.5f), PressureWindow.Point::mudPressure),
            new WindowCurve("limit", Look.line(Palette.INK, Dash.DOTTED), PressureWindow.Point::limit),
            new WindowCurve(
                    "strength, low",
                    Look.marked(Palette.VERMILLION, Dash.SOLID, SeriesMarkers.CIRCLE),
                    PressureWindow.Point::strengthLow),
            new WindowCurve(
                    "strength, likely",
                    Look.line(Palette.ORANGE, Dash.DASH_DOT),
                    PressureWindow.Point::strengthLikely));

    private static Figure window(
            String name,
            String title,
            WellCase wellCase,
            List<SectionEnvelope> sections,
            UnitSystem units,
            Beside beside) {
        record Drawn(WindowCurve curve, double[] x, double[] y) {}
        EquivalentZero zero = sections.get(0).window().equivalentDensityFrom();
        List<Drawn> drawn = new ArrayList<>();
        List<Double> across = new ArrayList<>();
        List<Double> depths = new ArrayList<>();
        for (WindowCurve curve : WINDOW_CURVES) {
            List<double[]> points = new ArrayList<>();
            for (SectionEnvelope section : sections) {
                for (PressureWindow.Point p : section.window().points()) {
                    OptionalDouble emw = equivalent(zero, curve.pressure.apply(p), p.verticalDepth(), units);
                    double depth = units.fromSi(p.verticalDepth(), Measure.DEPTH);
                    points.add(new double[] {emw.orElse(0), emw.isPresent() ? depth : Double.NaN});
                    emw.ifPresent(across::add);
                    depths.add(depth);
                }
                points.add(new double[] {0, Double.NaN});
            }
            if (points.stream().anyMatch(p -> !Double.isNaN(p[1]))) {
                drawn.add(new Drawn(
                        curve,
                        points.stream().mapToDouble(p -> p[0]).toArray(),
                        points.stream().mapToDouble(p -> p[1]).toArray()));
            }
        }
        if (drawn.isEmpty()) {
            return new NotDrawn(title, "the case gives no pressures over this depth");
        }
        double top = depths.stream().min(Comparator.naturalOrder()).orElseThrow();
        double bottom = depths.stream().max(Comparator.naturalOrder()).orElseThrow();
        List<StrengthTest> tests = wellCase.earth().tests().stream()
                .filter(t -> t.verticalDepth() >= units.toSi(top, Measure.DEPTH) - RAT_HOLE
                        && t.verticalDepth() <= units.toSi(bottom, Measure.DEPTH))
                .toList();
        tests.forEach(t -> equivalent(zero, OptionalDouble.of(t.pressure()), t.verticalDepth(), units)
                .ifPresent(across::add));
        double room = 0.02 * (bottom - top);
        Axis value = Axis.around(
                "Equivalent mud weight from " + zero.name() + " [" + label(units, Measure.EQUIVALENT_DENSITY) + "]",
                across);
        Axis depth = new Axis(
                "True vertical depth below " + wellCase.datum().name() + " [" + label(units, Measure.DEPTH) + "]",
                Math.max(0, top - room),
                bottom + room);
        Plot plot = Plot.downwards(name, value, depth);
        drawn.forEach(d -> plot.curve(d.curve.title, d.curve.look, d.x, d.y));
        for (Standing standing : Standing.values()) {
            List<StrengthTest> some =
                    tests.stream().filter(t -> t.standing() == standing).toList();
            if (!some.isEmpty()) {
                plot.curve(
                        standing.title(),
                        Look.marksOnly(Palette.PURPLE, TEST_MARKERS.get(standing)),
                        some.stream()
                                .mapToDouble(
                                        t -> equivalent(zero, OptionalDouble.of(t.pressure()), t.verticalDepth(), units)
                                                .orElse(0))
                                .toArray(),
                        some.stream()
                                .mapToDouble(t -> units.fromSi(t.verticalDepth(), Measure.DEPTH))
                                .toArray());
            }
        }
        for (SectionEnvelope section : sections) {
            if (section.shoeVerticalDepth().isEmpty()) {
                continue;
            }
            double shoe = section.shoeVerticalDepth().getAsDouble();
            double at = units.fromSi(shoe, Measure.DEPTH);
            String where = section.plan().name() + ", " + units.text(shoe, Measure.DEPTH);
            if (startsAtShoe(wellCase, section)) {
                plot.shoe(at, "shoe above " + where);
            } else {
                plot.level(at, "top of " + where);
            }
        }
        for (WeakZone zone : wellCase.earth().weakZones()) {
            double at = units.fromSi(zone.topVerticalDepth(), Measure.DEPTH);
            if (at > top && at < bottom) {
                plot.level(at, "weak zone " + zone.name() + ", " + units.text(zone.topVerticalDepth(), Measure.DEPTH));
            }
        }
        beside.drawing().accept(plot);
        String shown = String.join(", ", drawn.stream().map(d -> d.curve.title).toList());
        return plot.image(
                title,
                "Equivalent mud weight from " + zero.name() + " against true vertical depth, depth downwards: " + shown
                        + ". "
                        + (sections.size() == 1
                                ? sections.get(0).window().verdict().statement(units) + "."
                                : "")
                        + beside.words().stripLeading());
    }

    /** The first hole of a well has no shoe above it. */
    private static boolean startsAtShoe(WellCase wellCase, SectionEnvelope section) {
        double top = section.plan().topDepth();
        return wellCase.designs().stream()
                .flatMap(d -> d.strings().stream())
                .anyMatch(s -> Math.abs(s.shoeDepth() - top) < RAT_HOLE);
    }

    private static void tolerance(
            Plot plot,
            Scenario scenario,
            List<DepthPoint> points,
            Function<DepthPoint, Tolerance> which,
            UnitSystem units) {
        double[] xs = new double[points.size()];
        double[] ys = new double[points.size()];
        double[] depths = new double[points.size()];
        boolean any = false;
        for (int i = 0; i < points.size(); i++) {
            OptionalDouble volume = volume(which.apply(points.get(i)));
            depths[i] = units.fromSi(points.get(i).measuredDepth(), Measure.DEPTH);
            xs[i] = volume.isPresent() ? units.fromSi(volume.getAsDouble(), Measure.VOLUME) : 0;
            ys[i] = volume.isPresent() ? depths[i] : Double.NaN;
            any |= volume.isPresent();
        }
        if (any) {
            plot.curve(scenario.title + " kick", scenario.look, xs, ys);
        }
        for (Runs.Run run : Runs.of(points.stream().map(which).toList())) {
            double[] edges = run.edges(depths);
            plot.stretch(scenario.lane, edges[0], edges[1], scenario.title + ": " + run.words(), scenario.look.color());
        }
    }

    private static Map<String, Double> required(SectionEnvelope section) {
        Map<String, Double> required = new LinkedHashMap<>();
        OptionalDouble drilled = section.drilled().required();
        OptionalDouble swabbed = section.swabbed().required();
        if (drilled.isPresent() && drilled.equals(swabbed)) {
            required.put("drilled and swabbed", drilled.getAsDouble());
        } else {
            drilled.ifPresent(v -> required.put("drilled", v));
            swabbed.ifPresent(v -> required.put("swabbed", v));
        }
        return required;
    }

    private static double[] values(InfluxMargin margin, ToDoubleFunction<InfluxMargin.Point> which, UnitSystem units) {
        return margin.path().stream()
                .mapToDouble(p -> units.fromSi(which.applyAsDouble(p), Measure.PRESSURE_DIFFERENCE))
                .toArray();
    }

    private static OptionalDouble equivalent(
            EquivalentZero zero, OptionalDouble pressure, double verticalDepth, UnitSystem units) {
        OptionalDouble density =
                pressure.isPresent() ? zero.density(pressure.getAsDouble(), verticalDepth) : OptionalDouble.empty();
        return density.isPresent()
                ? OptionalDouble.of(units.fromSi(density.getAsDouble(), Measure.EQUIVALENT_DENSITY))
                : density;
    }

    private static OptionalDouble volume(Tolerance tolerance) {
        return tolerance instanceof Tolerance.Finite finite
                ? OptionalDouble.of(finite.volume())
                : OptionalDouble.empty();
    }

    private static String key(SurfaceLimit limit) {
        return limit.type() == SurfaceLimit.Type.FORMATION ? "formation: " + limit.name() : limit.name();
    }

    private static double[] empty(int size) {
        double[] values = new double[size];
        Arrays.fill(values, Double.NaN);
        return values;
    }

    private static boolean within(Axis axis, double value) {
        return value >= axis.min() && value <= axis.max();
    }

    private static String label(UnitSystem units, Measure measure) {
        return units.label(measure);
    }

    private static String name(String kind, SectionEnvelope section) {
        return kind + "-" + slug(section.plan().name());
    }

    /** A section's name as part of an id: names that differ only in signs would share ids on a page without the hash. */
    static String slug(String title) {
        String letters =
                title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return letters + "-" + Integer.toHexString(title.hashCode());
    }

    private static String summary(Tolerance tolerance, UnitSystem units) {
        return tolerance instanceof Tolerance.NotAssessed open
                ? "not assessed: " + open.reason(units)
                : tolerance.summary();
    }
}
