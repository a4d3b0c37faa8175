package staunch.chart;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.knowm.xchart.style.markers.SeriesMarkers;
import staunch.chart.Palette.Dash;
import staunch.chart.Plot.Look;
import staunch.earth.LeakOffPick;
import staunch.earth.LogPressure;
import staunch.earth.LogProperty;
import staunch.earth.OffsetEvidence;
import staunch.earth.PressurePoint;
import staunch.earth.PumpingTest;
import staunch.units.EquivalentDensity;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** Charts of offset evidence. */
public final class EvidenceCharts {
    private EvidenceCharts() {}

    /** Pressure against volume of a pumping test, with the line of its build-up and what was picked. */
    public static Figure pumpingTest(LeakOffPick pick, UnitSystem units) {
        PumpingTest test = pick.test();
        List<PumpingTest.Pumped> rows = test.pumped();
        double[] volumes = values(rows, r -> units.fromSi(r.volume(), Measure.VOLUME));
        double[] pressures = values(rows, r -> units.fromSi(r.pressure(), Measure.PRESSURE_GAUGE));
        List<Double> up = new ArrayList<>();
        for (double p : pressures) {
            up.add(p);
        }
        double last = volumes[volumes.length - 1];
        Axis across = new Axis("Volume pumped [" + units.label(Measure.VOLUME) + "]", 0, last > 0 ? 1.05 * last : 1);
        Axis upwards = Axis.fromZero("Pressure at the gauge [" + units.label(Measure.PRESSURE_GAUGE) + "]", up);
        Plot plot = Plot.upwards(
                "pumping-" + test.name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-"), across, upwards);
        plot.curve("readings", Look.marked(Palette.BLUE, Dash.SOLID, SeriesMarkers.CIRCLE), volumes, pressures);
        line(plot, "line of the build-up", pick.buildUp(), Look.line(Palette.INK, Dash.DASHED), upwards.max(), units);
        String shown = units.text(pick.pressure(), Measure.PRESSURE_GAUGE, RoundingMode.FLOOR);
        String outcome;
        if (pick instanceof LeakOffPick.Picked picked) {
            picked.after()
                    .ifPresent(after -> line(
                            plot,
                            "line after leak-off",
                            after,
                            Look.line(Palette.GREEN, Dash.DOTTED),
                            upwards.max(),
                            units));
            plot.highlight(
                    "leak-off " + shown,
                    Look.marksOnly(Palette.VERMILLION, SeriesMarkers.DIAMOND),
                    new double[] {units.fromSi(picked.volume(), Measure.VOLUME)},
                    new double[] {units.fromSi(picked.pressure(), Measure.PRESSURE_GAUGE)});
            outcome = "Leak-off at " + shown + " and "
                    + units.with(Measure.VOLUME, units.symbol(Measure.VOLUME), 2)
                            .text(picked.volume(), Measure.VOLUME)
                    + ".";
        } else {
            outcome = "No leak-off up to " + shown + ".";
        }
        plot.level(units.fromSi(pick.pressure(), Measure.PRESSURE_GAUGE), shown);
        return plot.image("Pumping test " + test.name(), "Pressure at the gauge against volume pumped. " + outcome);
    }

    /** The curve that pore pressure is read from against vertical depth, with its normal trend. */
    public static Figure log(OffsetEvidence.Log log, UnitSystem units) {
        String title = "Log of " + log.well();
        if (log.pressure().isEmpty()) {
            return new NotDrawn(title, "no way to read pore pressure from it is stated");
        }
        LogPressure pressure = log.pressure().get();
        LogProperty property = pressure.method().property();
        List<LogPressure.Row> rows = pressure.rows();
        double[] z = values(rows, r -> units.fromSi(r.verticalDepth(), Measure.DEPTH));
        double[] readings =
                values(rows, r -> units.fromSi(log.log().reading(property, r.verticalDepth()), property.measure()));
        double[] normal = values(
                rows,
                r -> units.fromSi(
                        property.normal(log.log().reading(property, r.verticalDepth()), r.ratio()),
                        property.measure()));
        Axis across = Axis.around(
                capital(property.title()) + " of shale [" + units.label(property.measure()) + "]",
                DoubleStream.concat(Arrays.stream(readings), Arrays.stream(normal))
                        .boxed()
                        .toList());
        Plot plot = Plot.downwards(name("log-", log), across, depth(log, z, units));
        plot.curve(property.title(), Look.line(Palette.BLUE, Dash.SOLID), readings, z);
        plot.curve("normal trend", Look.line(Palette.INK, Dash.DASHED), normal, z);
        return plot.image(
                title,
                capital(property.title()) + " of shale, averaged in blocks, and its normal trend against true vertical"
                        + " depth, depth downwards, from "
                        + units.text(rows.get(0).verticalDepth(), Measure.DEPTH)
                        + " to " + units.text(rows.get(rows.size() - 1).verticalDepth(), Measure.DEPTH) + ".");
    }

    /** Pore pressure from a log against vertical depth, with overburden, fracture pressure and what was measured. */
    public static Figure logPressure(OffsetEvidence evidence, OffsetEvidence.Log log, UnitSystem units) {
        String title = "Pore pressure from the log of " + log.well();
        if (log.pressure().isEmpty()) {
            return new NotDrawn(title, "no way to read it is stated");
        }
        List<LogPressure.Row> rows = log.pressure().get().rows();
        double[] z = values(rows, r -> units.fromSi(r.verticalDepth(), Measure.DEPTH));
        List<Drawn> drawn = new ArrayList<>();
        drawn.add(new Drawn(
                "pore pressure",
                Look.line(Palette.BLUE, Dash.SOLID),
                equivalents(rows, r -> r.pressure().likely(), units),
                z));
        drawn.add(new Drawn(
                "low pore pressure",
                Look.line(Palette.SKY, Dash.DOTTED),
                equivalents(rows, r -> r.pressure().low(), units),
                z));
        drawn.add(new Drawn(
                "high pore pressure",
                Look.line(Palette.VERMILLION, Dash.DASHED),
                equivalents(rows, r -> r.pressure().high(), units),
                z));
        log.fracture()
                .ifPresent(f -> drawn.add(new Drawn(
                        "fracture pressure",
                        Look.line(Palette.PURPLE, Dash.DASH_DOT),
                        f.rows().stream()
                                .mapToDouble(r -> equivalent(r.pressure().likely(), r.verticalDepth(), units))
                                .toArray(),
                        z)));
        if (!log.overburden().isEmpty()) {
            drawn.add(new Drawn(
                    "overburden",
                    Look.line(Palette.INK, Dash.SOLID),
                    log.overburden().stream()
                            .mapToDouble(w -> equivalent(w.overburden().likely(), w.verticalDepth(), units))
                            .toArray(),
                    log.overburden().stream()
                            .mapToDouble(w -> units.fromSi(w.verticalDepth(), Measure.DEPTH))
                            .toArray()));
        }
        List<PressurePoint> points = evidence.points().stream()
                .filter(p -> p.well().equals(log.well()))
                .map(OffsetEvidence.Point::point)
                .toList();
        if (!points.isEmpty()) {
            drawn.add(new Drawn(
                    "measured",
                    Look.marksOnly(Palette.VERMILLION, SeriesMarkers.DIAMOND),
                    points.stream()
                            .mapToDouble(p -> equivalent(p.pressure(), p.verticalDepth(), units))
                            .toArray(),
                    points.stream()
                            .mapToDouble(p -> units.fromSi(p.verticalDepth(), Measure.DEPTH))
                            .toArray()));
        }
        Axis across = Axis.around(
                "Equivalent mud weight from its own datum [" + units.label(Measure.EQUIVALENT_DENSITY) + "]",
                drawn.stream()
                        .flatMapToDouble(d -> Arrays.stream(d.x()))
                        .boxed()
                        .toList());
        double[] depths =
                drawn.stream().flatMapToDouble(d -> Arrays.stream(d.y())).toArray();
        Plot plot = Plot.downwards(name("log-pressure-", log), across, depth(log, depths, units));
        drawn.forEach(d -> plot.curve(d.label(), d.look(), d.x(), d.y()));
        LogPressure.Row last = rows.get(rows.size() - 1);
        return plot.image(
                title,
                "Equivalent mud weight of pore pressure by "
                        + log.pressure().get().method().title()
                        + ", likely with low and high, against true vertical depth, depth downwards. At "
                        + units.text(last.verticalDepth(), Measure.DEPTH) + ": "
                        + units.text(
                                EquivalentDensity.of(last.pressure().likely(), last.verticalDepth()),
                                Measure.EQUIVALENT_DENSITY)
                        + ".");
    }

    private record Drawn(String label, Look look, double[] x, double[] y) {}

    private static double[] equivalents(
            List<LogPressure.Row> rows, ToDoubleFunction<LogPressure.Row> pressure, UnitSystem units) {
        return values(rows, r -> equivalent(pressure.applyAsDouble(r), r.verticalDepth(), units));
    }

    private static double equivalent(double pressure, double verticalDepth, UnitSystem units) {
        return units.fromSi(EquivalentDensity.of(pressure, verticalDepth), Measure.EQUIVALENT_DENSITY);
    }

    private static Axis depth(OffsetEvidence.Log log, double[] shown, UnitSystem units) {
        double top = Arrays.stream(shown).min().orElse(0);
        double bottom = Arrays.stream(shown).max().orElse(1);
        double room = 0.04 * (bottom - top);
        return new Axis(
                "True vertical depth below the datum of " + log.well() + " [" + units.label(Measure.DEPTH) + "]",
                Math.max(0, top - room),
                bottom + room);
    }

    private static String name(String before, OffsetEvidence.Log log) {
        return before + log.well().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static <T> double[] values(List<T> rows, ToDoubleFunction<T> of) {
        return rows.stream().mapToDouble(of).toArray();
    }

    /** The line from where it begins to where it leaves the plot. */
    private static void line(
            Plot plot, String label, LeakOffPick.StraightLine line, Look look, double highest, UnitSystem units) {
        double from = line.fromVolume();
        double to = line.toVolume();
        double beyond = to + (to - from);
        double end = units.fromSi(line.at(beyond), Measure.PRESSURE_GAUGE) <= highest ? beyond : to;
        plot.curve(
                label,
                look,
                new double[] {units.fromSi(from, Measure.VOLUME), units.fromSi(end, Measure.VOLUME)},
                new double[] {
                    units.fromSi(line.at(from), Measure.PRESSURE_GAUGE),
                    units.fromSi(line.at(end), Measure.PRESSURE_GAUGE)
                });
    }
}
