package staunch.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;
import staunch.control.SlowCirculation;
import staunch.envelope.BullheadingOutcome;
import staunch.envelope.CirculationOutcome;
import staunch.envelope.KickOperations;
import staunch.envelope.LubricationOutcome;
import staunch.envelope.MigrationOutcome;
import staunch.envelope.VolumetricOutcome;
import staunch.present.Fixtures;
import staunch.present.KillSheets;
import staunch.units.UnitSystem;

class OperationChartsTest {
    private static final String SECTION = "8 1/2 in";
    private static final KickOperations.Followed KICK =
            (KickOperations.Followed) Fixtures.operations().get(3).drilled();
    private static final List<CirculationOutcome.Computed> RUNS =
            List.of((CirculationOutcome.Computed) KICK.drillers(), (CirculationOutcome.Computed) KICK.waitAndWeight());
    private static final MigrationOutcome.Computed MIGRATION = (MigrationOutcome.Computed) KICK.migration();

    private static List<Figure> all(UnitSystem units) {
        VolumetricOutcome.Computed volumetric = (VolumetricOutcome.Computed) KICK.volumetric();
        return List.of(
                OperationCharts.chokePressure(SECTION, RUNS, units),
                OperationCharts.watchedPressure(SECTION, RUNS, 1, OptionalDouble.of(4.5e7), units),
                OperationCharts.closestLimit(SECTION, RUNS.get(0), units),
                OperationCharts.closestLimit(SECTION, RUNS.get(1), units),
                OperationCharts.pitGain(SECTION, RUNS, units),
                OperationCharts.gasRate(SECTION, RUNS, units),
                OperationCharts.migration(SECTION, MIGRATION, units),
                OperationCharts.volumetricCasing(SECTION, volumetric, units),
                OperationCharts.volumetricBottomHole(SECTION, volumetric, units),
                OperationCharts.lubricateAndBleed(
                        SECTION, ((LubricationOutcome.Computed) KICK.lubrication()).table(), units),
                OperationCharts.bullheading(SECTION, (BullheadingOutcome.Computed) KICK.bullheading(), units),
                OperationCharts.pressureSchedule(SECTION, KillSheets.atSurface(), units),
                OperationCharts.friction(
                        SECTION,
                        KillSheets.friction(),
                        List.of(new SlowCirculation(0.008, OptionalDouble.empty(), OptionalDouble.of(4e5))),
                        units));
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
        assertTrue(svg(all(UnitSystem.FIELD).get(0)).contains("second circulation, kill mud<"));
        String weighted = svg(OperationCharts.chokePressure(SECTION, RUNS.subList(1, 2), UnitSystem.FIELD));
        assertFalse(weighted.contains("second circulation"));
    }

    @Test
    void theClosestLimitIsNamed() {
        var least = RUNS.get(0).schedule().leastMargin().orElseThrow().closest().orElseThrow();
        Figure figure = OperationCharts.closestLimit(SECTION, RUNS.get(0), UnitSystem.FIELD);
        assertTrue(svg(figure).contains(">" + least.name() + "<"));
        assertTrue(svg(figure).contains(">limit reached<"));
        assertTrue(figure.altText().contains(least.name()));
    }

    @Test
    void theFirstLimitOfEachRateIsNamedWithItsTime() {
        Figure figure = OperationCharts.migration(SECTION, MIGRATION, UnitSystem.FIELD);
        var first = MIGRATION.earliest().orElseThrow();
        String said = first.name() + " after "
                + UnitSystem.FIELD.duration(first.moment().orElseThrow().time());
        assertTrue(svg(figure).contains(">fast: " + said + "<"), said);
        assertTrue(figure.altText().contains("fast, 6000 ft/h: " + said), figure.altText());
        assertTrue(OperationCharts.migration(SECTION, MIGRATION, UnitSystem.METRIC)
                .altText()
                .contains("fast, 1829 m/h: "));
    }

    @Test
    void whatHasNoDataIsNotDrawnAndSaysWhy() {
        Figure none = OperationCharts.chokePressure(SECTION, List.of(), UnitSystem.FIELD);
        assertEquals(
                "no circulation is assessed",
                assertInstanceOf(NotDrawn.class, none).reason());
        assertInstanceOf(
                NotDrawn.class,
                OperationCharts.watchedPressure(SECTION, List.of(), 0, OptionalDouble.empty(), UnitSystem.FIELD));
    }
}
