package staunch.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;
import staunch.design.WellCase;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.WellEnvelope;
import staunch.present.Fixtures;
import staunch.units.UnitSystem;

class ChartsTest {
    private static final UnitSystem FIELD = UnitSystem.FIELD;

    private static List<Figure> all(UnitSystem units) {
        WellCase wellCase = Fixtures.wellCase();
        WellEnvelope envelope = Fixtures.envelope();
        List<Figure> figures = new ArrayList<>();
        figures.add(Charts.schematic(wellCase, envelope, units));
        figures.add(Charts.pressureWindow(wellCase, envelope, units));
        for (SectionEnvelope section : envelope.sections()) {
            figures.add(Charts.pressureWindow(wellCase, section, units));
            figures.add(Charts.toleranceAlongSection(section, units));
            figures.add(Charts.volumeAgainstIntensity(section, units));
            figures.add(Charts.maaspAgainstMud(section, units));
            figures.add(Charts.marginWhileCirculating(section, units));
        }
        return figures;
    }

    private static List<ChartImage> drawn(UnitSystem units) {
        return all(units).stream()
                .filter(ChartImage.class::isInstance)
                .map(ChartImage.class::cast)
                .toList();
    }

    private static String svg(Figure figure) {
        return assertInstanceOf(ChartImage.class, figure).svg();
    }

    @Test
    void equalDataGiveEqualBytes() throws Exception {
        List<ChartImage> once = drawn(FIELD);
        List<ChartImage> again = drawn(FIELD);
        for (int i = 0; i < once.size(); i++) {
            assertEquals(once.get(i).svg(), again.get(i).svg());
            assertEquals(once.get(i).svg(), once.get(i).svg());
        }
        assertArrayEquals(once.get(0).png(), again.get(0).png());
        assertEquals(
                2 * once.get(0).width(),
                ImageIO.read(new ByteArrayInputStream(once.get(0).png())).getWidth());
    }

    @Test
    void everyDrawingIsWellFormedAndSaysWhatItShows() throws Exception {
        for (UnitSystem units : List.of(FIELD, UnitSystem.METRIC, UnitSystem.MIXED, UnitSystem.SI)) {
            for (ChartImage chart : drawn(units)) {
                String svg = chart.svg();
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
                assertTrue(svg.startsWith("<svg "), "no prolog, so that it can stand in a page");
                assertTrue(svg.contains("<desc id=\"" + chart.name() + "-desc\">"));
                assertTrue(chart.html().startsWith("<img ") && chart.html().contains(" alt=\""));
                assertFalse(svg.contains("NaN"), chart.title());
            }
        }
    }

    @Test
    void idsDifferBetweenTheChartsOfAPage() {
        Set<String> seen = new HashSet<>();
        for (ChartImage chart : drawn(FIELD)) {
            Matcher ids = Pattern.compile(" id=\"([^\"]+)\"").matcher(chart.svg());
            while (ids.find()) {
                assertTrue(seen.add(ids.group(1)), ids.group(1));
            }
        }
    }

    @Test
    void depthGrowsDownwards() {
        String svg = svg(Charts.toleranceAlongSection(Fixtures.holding(), FIELD));
        assertTrue(textHeight(svg, "4000") < textHeight(svg, "8000"), "4000 ft stands above 8000 ft");
        String upright = svg(Charts.maaspAgainstMud(Fixtures.holding(), FIELD));
        assertTrue(textHeight(upright, "1000") > textHeight(upright, "5000"), "1000 psi stands below 5000 psi");
    }

    private static double textHeight(String svg, String text) {
        Matcher m = Pattern.compile("y=\"([\\d.]+)\"[^>]*>" + text + "</text>").matcher(svg);
        assertTrue(m.find(), text);
        return Double.parseDouble(m.group(1));
    }

    @Test
    void aDashedCurveIsOnePath() {
        String svg = svg(Charts.toleranceAlongSection(Fixtures.failing(), FIELD));
        Matcher dashed = Pattern.compile("<path [^>]*stroke-dasharray:8,4[^>]*>|<path d=\"[^\"]+\"[^>]*dasharray:8,4")
                .matcher(svg);
        int paths = 0;
        while (dashed.find()) {
            paths++;
        }
        assertEquals(2, paths, "the swabbed curve, broken once where it is not assessed");
    }

    @Test
    void stretchesWithoutAVolumeAreSaidInWords() {
        String svg = svg(Charts.toleranceAlongSection(Fixtures.failing(), FIELD));
        assertTrue(svg.contains(">swabbed: not assessed<"), "lane of the swabbed kick");
        assertTrue(svg.contains(">drilled: none, "), "lane of the drilled kick, wrapped");
        String curve = svg(Charts.volumeAgainstIntensity(Fixtures.holding(), FIELD));
        assertTrue(curve.contains(">no limit<"));
    }

    @Test
    void whatHasNoDataIsNotDrawnAndSaysWhy() {
        NotDrawn diverter = assertInstanceOf(NotDrawn.class, Charts.toleranceAlongSection(Fixtures.notShutIn(), FIELD));
        assertEquals("there are no depths with a result: not shut in: drilled on a diverter", diverter.reason());
        NotDrawn unlimited =
                assertInstanceOf(NotDrawn.class, Charts.volumeAgainstIntensity(Fixtures.unlimited(), FIELD));
        assertTrue(unlimited.altText().contains("no limit"), unlimited.altText());
        assertInstanceOf(NotDrawn.class, Charts.maaspAgainstMud(Fixtures.notAssessed(), FIELD));
        assertInstanceOf(NotDrawn.class, Charts.marginWhileCirculating(Fixtures.notAssessed(), FIELD));
    }

    @Test
    void axesNameTheirUnitsAndDatum() {
        String svg = svg(Charts.pressureWindow(Fixtures.wellCase(), Fixtures.holding(), UnitSystem.METRIC));
        assertTrue(svg.contains(">Equivalent mud weight from rotary table [kg/m³ EMW]<"));
        assertTrue(svg.contains(">True vertical depth below rotary table [m]<"));
        assertTrue(svg.contains(">leak-off test<"));
    }

    @Test
    void aPagesColoursRuleAnInlineDrawing() {
        ChartImage chart = drawn(FIELD).get(0);
        assertTrue(chart.svg().contains("rgb(31,41,51)"));
        assertFalse(chart.inlineSvg().contains("rgb(31,41,51)"));
        assertTrue(chart.inlineSvg().contains("currentColor"));
    }

    @Test
    void ticksAreRound() {
        Axis axis = new Axis("x", 0, 0.95);
        assertEquals(List.of(0.0, 0.25, 0.5, 0.75), axis.ticks(4));
        assertEquals("0.25", axis.label(0.25, 4));
        assertEquals("−100", new Axis("x", -250, 100).label(-100, 5));
    }
}
