package staunch.chart;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.knowm.xchart.style.markers.SeriesMarkers;
import staunch.chart.Palette.Dash;
import staunch.chart.Plot.Look;
import staunch.earth.LeakOffPick;
import staunch.earth.PumpingTest;
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

    private static double[] values(List<PumpingTest.Pumped> rows, ToDoubleFunction<PumpingTest.Pumped> of) {
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
