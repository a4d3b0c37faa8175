package staunch.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;
import staunch.chart.OperationCharts.GaugeLimit;
import staunch.chart.OperationCharts.Run;
import staunch.control.Bullheading;
import staunch.control.CirculationMethod;
import staunch.control.MigrationOutlook;
import staunch.control.PressureLimit;
import staunch.control.VolumetricMethod;
import staunch.present.OperationFixtures;
import staunch.units.UnitSystem;

class OperationChartsTest {
    private static final String SECTION = "8 1/2 in";
    private static final List<Run> RUNS =
            List.of(run(CirculationMethod.DRILLERS), run(CirculationMethod.WAIT_AND_WEIGHT));
    private static final List<PressureLimit> LIMITS = OperationFixtures.limits();
    private static final VolumetricMethod.Plan VOLUMETRIC = OperationFixtures.volumetricPlan();

    private static Run run(CirculationMethod method) {
        return new Run(method, OperationFixtures.schedule(method));
    }

    private static List<Figure> all(UnitSystem units) {
        VolumetricMethod.Table table = VolumetricMethod.run(VOLUMETRIC);
        Bullheading.Plan bullheading = OperationFixtures.bullheadingPlan();
        return List.of(
                OperationCharts.chokePressure(SECTION, RUNS, List.of(new GaugeLimit("casing", 2.5e7)), units),
                OperationCharts.watchedPressure(SECTION, RUNS, 1, LIMITS.get(1), units),
                OperationCharts.margins(SECTION, RUNS.get(0), LIMITS, units),
                OperationCharts.margins(SECTION, RUNS.get(1), LIMITS, units),
                OperationCharts.pitGain(SECTION, RUNS, units),
                OperationCharts.gasRate(SECTION, RUNS, units),
                OperationCharts.migration(
                        SECTION, OperationFixtures.outlook(), Optional.of(OperationFixtures.rigidOutlook()), units),
                OperationCharts.volumetricCasing(SECTION, table, units),
                OperationCharts.volumetricBottomHole(SECTION, VOLUMETRIC, table, units),
                OperationCharts.lubricateAndBleed(SECTION, OperationFixtures.lubricateAndBleed(), units),
                OperationCharts.bullheading(SECTION, bullheading, Bullheading.run(bullheading), units),
                OperationCharts.pressureSchedule(SECTION, OperationFixtures.killSheet(), units));
    }

    private static String svg(Figure figure) {
        return assertInstanceOf(ChartImage.class, figure).svg();
    }

    @Test
    void everyDrawingIsWellFormedAndEqualDataGiveEqualBytes() throws Exception {
        for (UnitSystem units : List.of(UnitSystem.FIELD, UnitSystem.METRIC, UnitSystem.SI)) {
            List<Figure> once = all(units);
            List<Figure> again = all(units);
            Set<String> ids = new HashSet<>();
            for (int i = 0; i < once.size(); i++) {
                String svg = svg(once.get(i));
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
                assertEquals(svg, svg(again.get(i)));
                assertFalse(svg.contains("NaN"), once.get(i).title());
                assertFalse(once.get(i).altText().isBlank());
                Matcher id = Pattern.compile(" id=\"([^\"]+)\"").matcher(svg);
                while (id.find()) {
                    assertTrue(ids.add(id.group(1)), id.group(1));
                }
            }
        }
    }

    @Test
    void axesNameTheirUnits() {
        assertTrue(svg(all(UnitSystem.FIELD).get(0)).contains(">Choke pressure [psi gauge]<"));
        assertTrue(svg(all(UnitSystem.METRIC).get(0)).contains(">Pumped since the start [m³]<"));
        assertTrue(svg(all(UnitSystem.FIELD).get(5)).contains(">Gas rate [MMscf/d]<"));
        assertTrue(svg(all(UnitSystem.METRIC).get(6)).contains(">Time since shut-in [h]<"));
    }

    @Test
    void theSecondCirculationFollowsTheFirst() {
        String svg = svg(all(UnitSystem.FIELD).get(0));
        assertTrue(svg.contains(">second circulation, kill mud<"));
        String weighted = svg(OperationCharts.chokePressure(SECTION, RUNS.subList(1, 2), List.of(), UnitSystem.FIELD));
        assertFalse(weighted.contains("second circulation"));
    }

    @Test
    void theFirstLimitOfEachRateIsNamedWithItsTime() {
        MigrationOutlook outlook = OperationFixtures.outlook();
        Figure figure = OperationCharts.migration(SECTION, outlook, Optional.empty(), UnitSystem.FIELD);
        double time = outlook.earliest().orElseThrow().reached().orElseThrow().time();
        String said = outlook.earliest().orElseThrow().limit().name() + " after " + UnitSystem.FIELD.duration(time);
        assertTrue(svg(figure).contains(">fast: " + said + "<"), said);
        assertTrue(figure.altText().contains("fast, 100 ft/min: " + said), figure.altText());
        assertFalse(svg(figure).contains("rigid"));
    }

    @Test
    void whatHasNoDataIsNotDrawnAndSaysWhy() {
        Figure none = OperationCharts.chokePressure(SECTION, List.of(), List.of(), UnitSystem.FIELD);
        assertEquals(
                "no circulation is assessed",
                assertInstanceOf(NotDrawn.class, none).reason());
    }
}
