package staunch.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import staunch.chart.Charts;
import staunch.chart.Figure;
import staunch.design.Attribution;
import staunch.design.Cause;
import staunch.design.ChangedField;
import staunch.design.InputChange;
import staunch.design.Rerun;
import staunch.design.ResultValue;
import staunch.design.RunRecord;
import staunch.design.SectionChange;
import staunch.design.SectionQuantity;
import staunch.design.SectionResult;
import staunch.design.WellCase;
import staunch.envelope.Verdict;
import staunch.present.Fixtures;
import staunch.report.RerunPage;
import staunch.report.ResultHtml;
import staunch.units.InputFault;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** Two runs made up by hand, so that each number shown can be told from its place. */
class RerunTablesTest {
    private static final String MUD = "mud of section \"8 1/2 in\"";
    private static final String TEST = "strength test \"LOT\"";

    private static SectionResult result(Verdict.Outcome outcome, double volume) {
        return new SectionResult(
                "Base",
                "8 1/2 in",
                new Verdict(outcome, outcome.title(), "the shoe"),
                Arrays.stream(SectionQuantity.values())
                        .map(q -> q == SectionQuantity.DRILLED_TOLERANCE
                                ? new ResultValue(q, q.measure(), OptionalDouble.of(volume), "limited at the shoe")
                                : new ResultValue(q, q.measure(), OptionalDouble.empty(), "not assessed"))
                        .toList());
    }

    private static Attribution.Share share(String cause, double alone, double inSequence) {
        return new Attribution.Share(
                cause,
                Measure.VOLUME,
                OptionalDouble.of(alone),
                OptionalDouble.of(inSequence),
                "limited at the shoe",
                "limited at the shoe");
    }

    private static SectionChange section() {
        Attribution attribution = new Attribution(
                SectionQuantity.DRILLED_TOLERANCE,
                Measure.VOLUME,
                OptionalDouble.of(3),
                List.of(share(TEST, 5, 5), share(MUD, -1.5, -2)),
                OptionalDouble.of(-0.5),
                OptionalDouble.of(0));
        return new SectionChange(
                "Base",
                "8 1/2 in",
                Optional.of(result(Verdict.Outcome.FAILS, 3.258)),
                Optional.of(result(Verdict.Outcome.HOLDS, 6.258)),
                List.of(
                        new SectionChange.Effect(TEST, Verdict.Outcome.HOLDS, Verdict.Outcome.HOLDS),
                        new SectionChange.Effect(MUD, Verdict.Outcome.FAILS, Verdict.Outcome.HOLDS)),
                List.of(attribution));
    }

    private static Cause cause(String name, ChangedField... fields) {
        InputChange change = new InputChange(name, InputChange.Kind.INPUT, List.of(fields));
        return new Cause(name, InputChange.Kind.INPUT, List.of(change), "");
    }

    private static Rerun rerun() {
        Cause test = cause(
                TEST,
                new ChangedField("tvd", "", "", "3000 m", Optional.of(Measure.DEPTH)),
                new ChangedField("pressure", "", "", "50000 kPaa", Optional.of(Measure.PRESSURE_ABSOLUTE)));
        Cause mud =
                cause(MUD, new ChangedField("density", "", "1500 kg/m3", "1560 kg/m3", Optional.of(Measure.DENSITY)));
        return new Rerun("Invented", List.of(test, mud), List.of(section()), "", "");
    }

    @Test
    void theAnswerNamesTheFlipAndItsCause() {
        assertEquals("One verdict flips: 8 1/2 in (Base), fails → holds.", RerunWords.answer(rerun()));
        assertEquals("Turned by " + TEST + " alone.", RerunWords.turnedBy(section()));
        assertTrue(RerunWords.answer(new Rerun("Invented", List.of(), List.of(), "", ""))
                .startsWith("Nothing changed"));
    }

    /** A renamed section is gone under its old name and new under the other: the answer says so whatever else changed. */
    @Test
    void theAnswerNamesSectionsThatOneRunHas() {
        SectionChange gone =
                new SectionChange("Base", "6 in", section().before(), Optional.empty(), List.of(), List.of());
        SectionChange added = new SectionChange(
                "Base", "6 in hole", Optional.empty(), section().after(), List.of(), List.of());
        Rerun flipped = new Rerun("Invented", rerun().causes(), List.of(section(), gone, added), "", "");
        assertEquals(
                "One verdict flips: 8 1/2 in (Base), fails → holds. Only the earlier run has 6 in (Base). Only the later run"
                        + " has 6 in hole (Base).",
                RerunWords.answer(flipped));
        Rerun unflipped = new Rerun("Invented", rerun().causes(), List.of(added), "", "");
        assertTrue(
                RerunWords.answer(unflipped).endsWith(" Only the later run has 6 in hole (Base)."),
                RerunWords.answer(unflipped));
    }

    /** Page, export and display name what is not compared, as the terminal does. */
    @Test
    void whatIsNotComparedIsNamedWhereverTheChangesAre() {
        String open = "design \"Early liner\" of the later case, which neither run evaluated";
        Rerun rerun = new Rerun("Invented", rerun().causes(), rerun().sections(), "", open);
        RunRecord before = new RunRecord("1", "Invented", List.of(), List.of(), List.of(), List.of());
        WellCase wellCase = Fixtures.wellCase("Invented");
        ResultTable exported = table(RerunBook.of(wellCase, before, rerun, UnitSystem.FIELD), "Left open");
        assertTrue(exported.text().contains("Early liner"), exported.text());
        assertTrue(RerunBook.of(wellCase, before, rerun(), UnitSystem.FIELD).stream()
                .noneMatch(t -> t.name().equals("Left open")));
        assertTrue(RerunPage.html(wellCase, before, rerun, UnitSystem.FIELD).contains("which neither run evaluated"));
    }

    /** Numbers of the export are those of the attribution, with remainder and total, in the units chosen. */
    @Test
    void theExportSharesOutTheWholeChange() {
        RunRecord before = new RunRecord("1", "Invented", List.of(), List.of(), List.of(), List.of());
        List<ResultTable> book = RerunBook.of(Fixtures.wellCase("Invented"), before, rerun(), UnitSystem.METRIC);
        assertEquals("Flipped verdicts", book.get(0).name());
        String parts = table(book, "Causes of changes, volume").text();
        for (String number : List.of("5.00", "-1.50", "-2.00", "-0.50", "3.00")) {
            assertTrue(parts.replace('−', '-').contains(number), parts);
        }
        String values = table(book, "Changed values, volume").text();
        assertTrue(values.contains("3.26") && values.contains("6.26"), values);
        assertTrue(table(book, "Changed inputs").text().contains("1500 kg/m³"), "the mud before");
    }

    private static ResultTable table(List<ResultTable> book, String name) {
        return book.stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void valuesStandBeforeAndAfterInTheUnitsChosen() {
        String row = RerunTables.sections(rerun(), UnitSystem.METRIC).html();
        assertTrue(row.contains("fails → holds") && row.contains("3.25 m³ → 6.25 m³"), row);
        String field = RerunTables.values(section(), UnitSystem.FIELD).text();
        // 3 m³ at 0.158987294928 m³ a barrel (NIST SP 811).
        assertTrue(field.contains("+18.9 bbl"), field);
    }

    @Test
    void sharesRemainderAndTotalStandBelowEachOther() {
        var table = RerunTables.attribution(section(), SectionQuantity.DRILLED_TOLERANCE, UnitSystem.METRIC)
                .table();
        assertEquals(
                List.of(TEST, MUD, "remainder", "total"),
                table.stringColumn("Cause").asList());
        double[] alone = table.doubleColumn("Alone [m³]").asDoubleArray();
        assertEquals(alone[3], alone[0] + alone[1] + alone[2], 1e-12);
        assertThrows(
                InputFault.class,
                () -> RerunTables.attribution(section(), SectionQuantity.SHOE_MARGIN, UnitSystem.METRIC));
    }

    @Test
    void causesWithoutAPartShareOneLine() {
        SectionChange whole = section();
        List<Attribution.Share> shares =
                new ArrayList<>(whole.attributions().get(0).shares());
        List<SectionChange.Effect> effects = new ArrayList<>(whole.effects());
        for (String idle : List.of("survey", "datum")) {
            shares.add(share(idle, 0, 0));
            effects.add(new SectionChange.Effect(idle, Verdict.Outcome.FAILS, Verdict.Outcome.HOLDS));
        }
        shares.add(share("drill string", 0, 0));
        effects.add(new SectionChange.Effect("drill string", Verdict.Outcome.HOLDS, Verdict.Outcome.HOLDS));
        Attribution a = whole.attributions().get(0);
        SectionChange more = new SectionChange(
                whole.design(),
                whole.section(),
                whole.before(),
                whole.after(),
                effects,
                List.of(new Attribution(
                        a.quantity(), a.measure(), a.total(), shares, a.remainderAlone(), a.remainderInSequence())));
        assertEquals(
                List.of(TEST, MUD, "drill string", "2 other causes, no part", "remainder", "total"),
                RerunTables.attribution(more, SectionQuantity.DRILLED_TOLERANCE, UnitSystem.METRIC)
                        .table()
                        .stringColumn("Cause")
                        .asList(),
                "what turns the verdict is never left out");
    }

    /** EMW of 49 898.675 kPa gauge over 3000 m of 9.80665 m/s²: 1696.1 kg/m³. */
    @Test
    void causesTellTheirValues() {
        String text = RerunTables.causes(rerun(), UnitSystem.METRIC).html();
        assertTrue(text.contains("1500 kg/m³ → 1560 kg/m³"), text);
        assertTrue(text.contains("new: tvd 3000 m") && text.contains("1696 kg/m³ EMW"), text);
    }

    @Test
    void barsCarrySignsAndUnits() {
        Figure figure = Charts.attribution(section(), SectionQuantity.DRILLED_TOLERANCE, UnitSystem.METRIC);
        assertTrue(figure.altText().contains(MUD + ": alone −1.50 m³, in sequence −2.00 m³"), figure.altText());
        assertTrue(figure.html().contains("img"));
        assertTrue(Charts.attribution(section(), SectionQuantity.SHOE_MARGIN, UnitSystem.METRIC)
                .html()
                .contains("did not change"));
    }

    @Test
    void cardsAnswerFirst() {
        String text = ResultHtml.card(rerun(), UnitSystem.FIELD).orElseThrow().text();
        assertTrue(text.indexOf("One verdict flips") < text.indexOf("Governing"), text);
        assertFalse(ResultHtml.card(section(), UnitSystem.FIELD)
                .orElseThrow()
                .html()
                .isEmpty());
    }
}
