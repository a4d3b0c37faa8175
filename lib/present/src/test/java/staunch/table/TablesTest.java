package staunch.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import staunch.design.CasingDesign;
import staunch.earth.EquivalentZero;
import staunch.envelope.SectionEnvelope;
import staunch.present.Fixtures;
import staunch.units.UnitSystem;
import staunch.units.Warning;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

class TablesTest {
    private static final UnitSystem FIELD = UnitSystem.FIELD;

    private static List<ResultTable> all(UnitSystem units) {
        SectionEnvelope holds = Fixtures.holding();
        var design = Fixtures.wellCase().designs().get(0);
        return List.of(
                Tables.sectionSummary(Fixtures.envelope(), units),
                Tables.verdicts(Fixtures.envelope(), units),
                Tables.kicks(holds, units),
                Tables.influxes(holds, units),
                Tables.pressureWindow(holds, units),
                Tables.windowVerdicts(Fixtures.envelope(), units),
                Tables.toleranceAlongSection(holds, units),
                Tables.volumeAgainstIntensity(holds, units),
                Tables.maasp(holds.maasp().orElseThrow(), units),
                Tables.maaspAgainstMud(holds, units),
                Tables.maaspComponentsAgainstMud(holds, units),
                Tables.influxMargins(holds, units),
                Tables.displacement(holds.margins().get(0), units),
                Tables.handCalculation(holds.drilled().hand().orElseThrow(), units),
                Tables.assumptions(holds, units),
                Tables.warnings(holds.warnings(), units),
                Tables.casingProgramme(design, units),
                Tables.holeProgramme(design, units),
                Tables.criteria(design, units),
                Tables.strengthTests(
                        Fixtures.wellCase().earth(),
                        EquivalentZero.of(
                                EquivalentZero.Place.DATUM, Fixtures.wellCase().datum()),
                        units),
                Tables.openHole(holds.plan(), units),
                Tables.drillString(holds.plan(), units),
                Tables.sectionInputs(holds.plan(), units),
                Tables.methods(Fixtures.envelope().options(), units),
                Tables.comparison(Fixtures.comparison(), units),
                Tables.comparisonSideBySide(Fixtures.comparison(), units),
                Tables.dominance(Fixtures.comparison(), units),
                Tables.steel(Fixtures.comparison(), units));
    }

    @Test
    void everyColumnIsDoubleOrText() {
        for (UnitSystem units : List.of(FIELD, UnitSystem.METRIC, UnitSystem.MIXED, UnitSystem.SI)) {
            for (ResultTable table : all(units)) {
                assertTrue(table.rowCount() > 0, table.name());
                for (Column<?> column : table.table().columns()) {
                    assertTrue(
                            column.type() == ColumnType.DOUBLE || column.type() == ColumnType.STRING,
                            table.name() + ": " + column.name());
                }
            }
        }
    }

    @Test
    void numbersAreKeptUnroundedAndShownRoundedDown() {
        Table table = Tables.sectionSummary(Fixtures.envelope(), FIELD).table();
        assertEquals(58.27, table.doubleColumn("Drilled tolerance [bbl]").get(2), 1e-9);
        assertEquals("58.2", table.doubleColumn("Drilled tolerance [bbl]").getString(2));
        assertEquals("-85", table.doubleColumn("Drilled margin [psi]").getString(3), "−84.2 psi towards breaking");
    }

    @Test
    void burstRatingThatCountsIsShownWithItsBasis() {
        Table given = Tables.casingProgramme(Fixtures.wellCase().designs().get(0), FIELD)
                .table();
        assertEquals(
                "burst rating of the case", given.stringColumn("Rating from").get(2));
        CasingInterval interval = new CasingInterval(
                0,
                1000,
                0.244475,
                0.2204974,
                Optional.of("L-80"),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0);
        CasingString string = new CasingString(
                "9 5/8 in casing",
                List.of(interval),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Table computed = Tables.casingProgramme(
                        new CasingDesign(
                                "One",
                                List.of(string),
                                Fixtures.wellCase().designs().get(0).sections()),
                        FIELD)
                .table();
        assertEquals(
                "internal yield pressure by API formula for grade L80",
                computed.stringColumn("Rating from").get(0));
        assertEquals(
                6870, computed.doubleColumn("Burst rating [psi]").get(0), 5, "as printed to tens of psi for 47 lb/ft");
    }

    @Test
    void porePressureIsShownRoundedUpAndStrengthDown() {
        Table table = Tables.pressureWindow(Fixtures.holding(), FIELD).table();
        var pore = table.doubleColumn("Pore pressure high EMW [ppg EMW]");
        var strength = table.doubleColumn("Strength low EMW [ppg EMW]");
        for (int row = 0; row < table.rowCount(); row++) {
            assertTrue(Double.parseDouble(pore.getString(row)) >= pore.get(row) - 1e-9);
            assertTrue(Double.parseDouble(strength.getString(row)) <= strength.get(row) + 1e-9);
        }
    }

    @Test
    void formatsSurviveFilteringAndSorting() {
        Table table = Tables.toleranceAlongSection(Fixtures.holding(), FIELD).table();
        Table finite = table.where(table.doubleColumn("Drilled tolerance [bbl]").isNotMissing())
                .sortDescendingOn("Depth MD [ft]");
        assertEquals("58.2", finite.doubleColumn("Drilled tolerance [bbl]").getString(0));
        assertEquals("8600", finite.doubleColumn("Depth MD [ft]").getString(0));
    }

    @Test
    void everyKindOfToleranceHasItsWordsAndOnlyAFiniteOneANumber() {
        Table table = Tables.sectionSummary(Fixtures.envelope(), FIELD).table();
        List<String> outcomes = table.stringColumn("Drilled outcome").asList();
        assertEquals("not shut in: drilled on a diverter", outcomes.get(0));
        assertEquals("no limit: the influx may fill the open hole (391.2 bbl)", outcomes.get(1));
        assertEquals("limited at 13 3/8 in shoe, top of the influx at the weak point (3000 ft TVD)", outcomes.get(2));
        assertEquals(
                "not assessed: there is no strength below the 7 in shoe (missing: earth.strength)", outcomes.get(4));
        for (int row : new int[] {0, 1, 4}) {
            assertTrue(table.doubleColumn("Drilled tolerance [bbl]").isMissing(row));
        }
        Table curve = Tables.volumeAgainstIntensity(Fixtures.failing(), FIELD).table();
        int last = curve.rowCount() - 1;
        assertTrue(curve.doubleColumn("Tolerance [bbl]").isMissing(last));
        assertEquals(
                "no tolerance left: fails on intensity alone at depleted sand (9703 ft TVD), 550 psi short",
                curve.stringColumn("Outcome").get(last));
    }

    @Test
    void aComponentWithoutAValueSaysWhy() {
        Table table =
                Tables.maasp(Fixtures.failing().maasp().orElseThrow(), FIELD).table();
        int row = table.rowCount() - 1;
        assertTrue(table.doubleColumn("Surface pressure [psi gauge]").isMissing(row));
        assertEquals(
                "not assessed: no rating in the case (equipment.choke-line.rating)",
                table.stringColumn("Remark").get(row));
        assertEquals(
                "formation MAASP; lowest of those assessed",
                table.stringColumn("Remark").get(0));
    }

    @Test
    void theWellsVerdictNamesEverySection() {
        assertEquals(
                "8 1/2 in hole fails; 6 in hole is not assessed; 17 1/2 in hole and 12 1/4 in hole hold (formation only);"
                        + " 26 in hole is not shut in.",
                ResultWords.verdict(Fixtures.envelope().sections()));
    }

    @Test
    void designsStandSideBySide() {
        Table table = Tables.comparisonSideBySide(Fixtures.comparison(), FIELD).table();
        assertEquals(List.of("Section", "Quantity", "base design", "Section'"), table.columnNames());
        Table third = table.where(table.stringColumn("Section").isEqualTo("12 1/4 in hole"));
        assertEquals("drilled kick", third.stringColumn("Quantity").get(1));
        assertEquals("58.2 bbl", third.stringColumn("base design").get(1));
        Table last = table.where(table.stringColumn("Section").isEqualTo("6 in hole"));
        assertEquals("no such section", last.stringColumn("Section'").get(0));
        Table top = table.where(table.stringColumn("Section").isEqualTo("26 in hole"));
        assertEquals(
                List.of("from – to MD", "verdict"), top.stringColumn("Quantity").asList());
    }

    @Test
    void comparedNumbersAreKeptUnrounded() {
        Table table = Tables.comparison(Fixtures.comparison(), FIELD).table();
        Table third = table.where(table.stringColumn("Section").isEqualTo("12 1/4 in hole"));
        assertEquals(2, third.rowCount());
        assertEquals(58.27, third.doubleColumn("Drilled tolerance [bbl]").get(0), 1e-9);
        assertEquals("58.2", third.doubleColumn("Drilled tolerance [bbl]").getString(0));
    }

    @Test
    void dominanceIsToldInWords() {
        Table table = Tables.dominance(Fixtures.comparison(), FIELD).table();
        assertEquals("neither", table.stringColumn("Dominates").get(2));
        assertEquals(
                "neither dominates: base design and Section are equal",
                table.stringColumn("Statement").get(2));
    }

    @Test
    void htmlEscapesWhatCasesSay() {
        String html = Tables.warnings(List.of(new Warning("<script>", "a & b \"c\" 'd'")), FIELD)
                .html();
        assertTrue(html.contains("&lt;script&gt;"), html);
        assertTrue(html.contains("a &amp; b &quot;c&quot; &#39;d&#39;"), html);
        assertFalse(html.contains("<script>"));
    }

    @Test
    void longTablesTellWhatTheyLeaveOut() {
        ResultTable table = Tables.toleranceAlongSection(Fixtures.holding(), FIELD);
        assertTrue(table.html(10).contains("… 191 more rows"));
        assertTrue(table.text(10).endsWith("… 191 more rows\n"));
        ResultTable thin = table.thinned(11);
        assertEquals(11, thin.rowCount());
        assertEquals(3000.0, thin.table().doubleColumn("Depth MD [ft]").get(0), 1e-9);
        assertEquals(8600.0, thin.table().doubleColumn("Depth MD [ft]").get(10), 1e-9);
        assertTrue(thin.caption().endsWith("11 of 201 rows shown."));
    }

    @Test
    void textAlignsNumbersToTheRightUnderTheirUnits() {
        String text = Tables.openHole(Fixtures.holding().plan(), FIELD).text();
        assertEquals("""
                From MD  To MD  Diameter
                   [ft]   [ft]      [in]
                -------  -----  --------
                   3000   8600    12.250
                """, text);
    }

    @Test
    void controlCharactersCannotBreakATerminal() {
        String text = Tables.warnings(List.of(new Warning("a\u001b[2Jb", "c\nd")), FIELD)
                .text();
        assertFalse(text.contains("\u001b"));
        assertTrue(text.contains("c d"));
    }

    @Test
    void aHyphenBeforeANumberIsAMinusAndNoOther() {
        assertEquals("−61 at L-80, 13-3/8 (−0.5)", TableHtml.minus("-61 at L-80, 13-3/8 (-0.5)"));
    }

    @Test
    void aWideTableOfFewRowsIsTurned() {
        ResultTable wide = Tables.sectionSummary(Fixtures.envelope(), UnitSystem.FIELD);
        String turned = wide.htmlToFit(60);
        assertTrue(turned.contains("<th scope=\"row\""), "each quantity heads a row");
        assertTrue(turned.contains("MASP <span class=\"unit\" style=\"white-space:nowrap\">[psi gauge]</span>"));
        assertFalse(wide.html().contains("<th scope=\"row\""));
        ResultTable narrow = Tables.windowVerdicts(Fixtures.envelope(), UnitSystem.FIELD);
        assertEquals(narrow.html(60), narrow.htmlToFit(60));
    }

    @Test
    void equivalentDensitiesNameTheirZero() {
        ResultTable window = Tables.pressureWindow(Fixtures.holding(), UnitSystem.FIELD);
        assertTrue(window.caption().contains("(EMW) from rotary table"));
    }

    @Test
    void maspIsRoundedUpAndItsMarginDown() {
        String html = Tables.maspChecks(Fixtures.holding().masp().orElseThrow(), UnitSystem.FIELD)
                .html();
        assertTrue(html.contains(">5181<"), html);
        assertTrue(html.contains(">−181<"), html);
    }
}
