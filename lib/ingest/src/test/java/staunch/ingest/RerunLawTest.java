package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.design.Attribution;
import staunch.design.Cause;
import staunch.design.ChangedCase;
import staunch.design.InputChange;
import staunch.design.InputLine;
import staunch.design.Progress;
import staunch.design.Rerun;
import staunch.design.RunRecord;
import staunch.design.SectionChange;
import staunch.design.SectionQuantity;
import staunch.envelope.Verdict;
import staunch.units.InputFault;

/** What must hold whenever two runs are held against each other. */
class RerunLawTest {
    private static final Path LAND = Cases.ROOT.resolve("data/quillmarsh-1");

    @TempDir
    private Path directory;

    private Cases copy;

    @BeforeEach
    void copy() throws IOException {
        copy = Cases.copy(LAND, directory);
    }

    private RunRecord changed() throws CaseFaults {
        return Runs.record(directory, "Base");
    }

    private static RunRecord base;

    @BeforeAll
    static void before() throws CaseFaults {
        base = Runs.record(LAND, "Base");
    }

    private static RunRecord base() {
        return base;
    }

    private static List<String> names(Rerun rerun) {
        return rerun.causes().stream().map(Cause::name).toList();
    }

    @Test
    void aRunAgainstItselfHasNothingChanged() throws Exception {
        Rerun rerun = Runs.rerun(base(), base());
        assertTrue(rerun.nothingChanged());
        assertTrue(rerun.sections().stream().allMatch(s -> s.attributions().isEmpty()));
    }

    @Test
    void otherUnitsAndOtherWordsAreNoChange() throws Exception {
        OtherUnits.metric(LAND, directory);
        copy.with("revision: B", "revision: C");
        assertTrue(Runs.rerun(base(), changed()).nothingChanged());
    }

    @Test
    void sharesSumToTheTotalWithinTheRemainder() throws Exception {
        copy.with("strength: 14.25 ppg", "strength: 14.75 ppg")
                .with("density: 13.0 ppg", "density: 13.2 ppg")
                .with("gravity: 0.65", "gravity: 0.7")
                .with("definition: whole_displacement", "definition: on_bottom");
        Rerun rerun = Runs.whole(base(), changed());
        assertEquals(
                List.of(
                        "weak zone \"Burdock sand\"",
                        "gas of every section",
                        "mud of section \"8 1/2 in\"",
                        "method: definition of kick tolerance"),
                names(rerun));
        int summed = 0;
        for (SectionChange section : rerun.sections()) {
            for (Attribution a : section.attributions()) {
                if (a.total().isPresent() && a.remainderAlone().isPresent()) {
                    assertEquals(
                            a.total().getAsDouble(),
                            sum(
                                    a.shares().stream()
                                            .map(Attribution.Share::alone)
                                            .toList(),
                                    a.remainderAlone()),
                            1e-6);
                    assertEquals(
                            a.total().getAsDouble(),
                            sum(
                                    a.shares().stream()
                                            .map(Attribution.Share::inSequence)
                                            .toList(),
                                    a.remainderInSequence()),
                            1e-6);
                    assertEquals(0, a.remainderInSequence().getAsDouble(), 1e-6, "a sequence leaves nothing over");
                    summed++;
                }
            }
        }
        assertTrue(summed > 50, summed + " attributions");
        Attribution margin = rerun.section("Base", "8 1/2 in")
                .attribution(SectionQuantity.DRILLED_MARGIN)
                .orElseThrow();
        assertTrue(margin.remainderAlone().getAsDouble() != 0, "these causes act together too");
    }

    private static double sum(List<OptionalDouble> shares, OptionalDouble remainder) {
        return shares.stream().mapToDouble(OptionalDouble::getAsDouble).sum() + remainder.getAsDouble();
    }

    /** The reference is the case as a person would have changed it by hand, read and evaluated by itself. */
    @Test
    void oneChangeAloneIsTheCaseWithThatChange() throws Exception {
        copy.with("strength: 14.25 ppg", "strength: 14.75 ppg").with("density: 13.0 ppg", "density: 13.2 ppg");
        Rerun rerun = Runs.rerun(base(), changed());
        copy.with("density: 13.2 ppg", "density: 13.0 ppg");
        RunRecord one = changed();
        double expected = value(one) - value(base());
        Attribution tolerance = rerun.section("Base", "8 1/2 in")
                .attribution(SectionQuantity.DRILLED_TOLERANCE)
                .orElseThrow();
        assertEquals(expected, tolerance.shares().get(0).alone().getAsDouble(), 1e-9);
    }

    private static double value(RunRecord record) {
        return record.results().stream()
                .filter(r -> r.section().equals("8 1/2 in"))
                .findFirst()
                .orElseThrow()
                .value(SectionQuantity.DRILLED_TOLERANCE)
                .value()
                .getAsDouble();
    }

    @Test
    void aVerdictThatFlipsComesFirstWithItsCause() throws Exception {
        copy.with("strength: 14.25 ppg", "strength: 14.75 ppg").with("pump_output: 0.103 bbl", "pump_output: 0.1 bbl");
        Rerun rerun = Runs.rerun(base(), changed());
        SectionChange first = rerun.sections().get(0);
        assertEquals("8 1/2 in", first.section());
        assertTrue(first.flips());
        assertEquals(1, rerun.flips().size());
        assertEquals(Verdict.Outcome.HOLDS, first.effects().get(0).alone());
        assertEquals(Verdict.Outcome.FAILS, first.effects().get(1).alone(), "the pump's output turns no verdict");
        assertFalse(rerun.section("Base", "17 1/2 in").changed());
    }

    /** What follows an influx is shared out like the rest; a pump stroke is the volume over its output. */
    @Test
    void whatFollowsAnInfluxHasItsCausesToo() throws Exception {
        copy.with("pump_output: 0.103 bbl", "pump_output: 0.1 bbl").with("density: 13.0 ppg", "density: 13.2 ppg");
        Rerun rerun = Runs.whole(base(), changed());
        SectionChange section = rerun.section("Base", "8 1/2 in");
        Attribution strokes =
                section.attribution(SectionQuantity.DRILLED_STROKES_TO_BIT).orElseThrow();
        double before = section.before()
                .orElseThrow()
                .value(SectionQuantity.DRILLED_STROKES_TO_BIT)
                .value()
                .getAsDouble();
        assertEquals(0, strokes.shares().get(1).alone().getAsDouble(), "mud moves no stroke");
        assertEquals(before * 0.03, strokes.shares().get(0).alone().getAsDouble(), 0.051 * 1.03);
        Attribution kill = section.attribution(SectionQuantity.DRILLED_KILL_MUD).orElseThrow();
        assertEquals(0, kill.shares().get(0).alone().getAsDouble(), "nor does the pump's output the kill mud");
        // 0.2 ppg at 119.826427 kg/m³ a ppg (NIST SP 811): the intensity counts from the mud.
        assertEquals(0.2 * 119.826427, kill.shares().get(1).alone().getAsDouble(), 0.01);
        assertFalse(rerun.notCompared().contains("influx"));
    }

    @Test
    void theEnvelopeAloneCanBeSharedOut() throws Exception {
        copy.with("density: 13.0 ppg", "density: 13.2 ppg");
        Rerun rerun = Runs.rerun(base(), changed());
        SectionChange section = rerun.section("Base", "8 1/2 in");
        assertTrue(section.attribution(SectionQuantity.DRILLED_TOLERANCE).isPresent());
        assertTrue(section.differing().contains(SectionQuantity.DRILLED_SHORTEST_WAIT));
        assertTrue(
                section.difference(SectionQuantity.DRILLED_SHORTEST_WAIT)
                        .value()
                        .isPresent(),
                "old and new are shown");
        assertTrue(section.attribution(SectionQuantity.DRILLED_SHORTEST_WAIT).isEmpty());
    }

    @Test
    void aStudyIsHeldAgainstARecordInOneCall() throws Exception {
        copy.with("strength: 14.25 ppg", "strength: 14.75 ppg");
        Rerun one = CaseInput.read(directory).against(base(), "1.0", Progress.SILENT);
        assertEquals(Runs.whole(base(), changed()), one);
        assertEquals("8 1/2 in", one.flips().get(0).section());
    }

    @Test
    void aDesignThatOnlyOneRunHasIsNamed() throws Exception {
        RunRecord both = Runs.record(LAND, "Base", "Early liner");
        Rerun rerun = Runs.rerun(both, base());
        assertTrue(rerun.nothingChanged());
        assertEquals("design \"Early liner\", which only the earlier run has", rerun.notCompared());
        assertEquals(
                "design \"Early liner\", which only the later run has",
                Runs.rerun(base(), both).notCompared());
        assertEquals(
                "design \"Early liner\" of the later case, which neither run evaluated",
                Runs.rerun(base(), base()).notCompared());
    }

    @Test
    void aShoeAndTheSectionBelowItAreOneCause() throws Exception {
        copy.with("shoe: 11580 ft", "shoe: 11500 ft")
                .with("from: 11580 ft", "from: 11500 ft")
                .with("density: 14.5 ppg", "density: 14.4 ppg");
        Rerun rerun = Runs.rerun(base(), changed());
        assertEquals(2, rerun.causes().size(), names(rerun).toString());
        Cause joint = rerun.causes().get(0);
        assertEquals("shoe of string \"7 in liner\" and top of section \"6 in\"", joint.name());
        assertTrue(
                joint.together().contains("no casing shoe stands at 11580 ft; the shoes stand at 120 ft, 3500 ft"),
                joint.together());
        assertEquals("mud of section \"6 in\"", rerun.causes().get(1).name());
    }

    @Test
    void anOffsetDropIsToldRowByRow() throws Exception {
        CaseInput input = CaseInput.read(LAND, List.of(LAND.resolve("offset-drop")));
        Rerun rerun = Runs.rerun(base(), Runs.record(input, "Base"));
        assertEquals(
                List.of(
                        "strength test \"Quillmarsh South 3: FIT 9 5/8 in\"",
                        "strength test \"Quillmarsh South 3: LOT 8 1/2 in\"",
                        "formation pressure \"Quillmarsh South 3: Burdock sand\"",
                        "formation pressure \"Quillmarsh South 3: Lower Bramblewort stringer\"",
                        "drilling event \"Quillmarsh South 3: Seepage in the Burdock sand\""),
                names(rerun));
        SectionChange flipped = rerun.flips().get(0);
        assertEquals("8 1/2 in", flipped.section());
        assertEquals(
                List.of(
                        Verdict.Outcome.FAILS,
                        Verdict.Outcome.HOLDS,
                        Verdict.Outcome.FAILS,
                        Verdict.Outcome.FAILS,
                        Verdict.Outcome.FAILS),
                flipped.effects().stream().map(SectionChange.Effect::alone).toList(),
                "the leak-off test in the sand turns the verdict");
    }

    @Test
    void theOrderOfDropsAndRowsDoesNotMatter() throws Exception {
        Path drop = LAND.resolve("offset-drop");
        List<Path> apart = new ArrayList<>();
        for (String file : List.of("leak-off.csv", "formation-pressure.csv", "losses.csv")) {
            Path folder = Files.createDirectory(directory.resolve(file.replace(".csv", "")));
            List<String> lines = new ArrayList<>(Files.readAllLines(drop.resolve(file)));
            Collections.reverse(lines.subList(2, lines.size()));
            Files.write(folder.resolve(file), lines);
            apart.add(folder);
        }
        RunRecord together = Runs.record(CaseInput.read(LAND, List.of(drop)), "Base");
        RunRecord one = Runs.record(CaseInput.read(LAND, apart), "Base");
        Collections.reverse(apart);
        RunRecord other = Runs.record(CaseInput.read(LAND, apart), "Base");
        assertEquals(one.inputs(), other.inputs());
        assertEquals(one.results(), other.results());
        assertEquals(together.results(), one.results());
        assertTrue(Runs.rerun(together, other).nothingChanged());
    }

    @Test
    void anotherVersionIsACause() throws Exception {
        RunRecord before = base();
        RunRecord older =
                new RunRecord("0.9", before.well(), before.files(), before.tables(), before.inputs(), before.results());
        Rerun rerun = Runs.rerun(older, base());
        assertEquals(List.of("library 0.9 → 1.0"), names(rerun));
        assertEquals(InputChange.Kind.LIBRARY, rerun.causes().get(0).kind());
        assertFalse(rerun.nothingChanged());
    }

    @Test
    void anEarlierCaseThatThisVersionCannotReadIsNotAttributed() throws Exception {
        RunRecord before = base();
        List<InputLine> inputs = new ArrayList<>(before.inputs());
        inputs.add(new InputLine("equipment.wellhead.colour", "red"));
        RunRecord older =
                new RunRecord("0.9", before.well(), before.files(), before.tables(), inputs, before.results());
        copy.with("strength: 14.25 ppg", "strength: 14.75 ppg");
        Rerun rerun = Runs.rerun(older, changed());
        assertTrue(rerun.notAttributed().contains("colour"), rerun.notAttributed());
        assertEquals(1, rerun.flips().size(), "old and new values are shown all the same");
        assertTrue(rerun.sections().stream().allMatch(s -> s.attributions().isEmpty()));
        assertTrue(
                names(rerun).contains("weak zone \"Burdock sand\""),
                names(rerun).toString());
    }

    @Test
    void recordsOfTwoWellsAreNotHeldAgainstEachOther() throws Exception {
        RunRecord other = Runs.record(Cases.ROOT.resolve("data/wrenskerry-2"), "Base");
        InputFault fault = assertThrows(InputFault.class, () -> Runs.rerun(other, base()));
        assertTrue(fault.getMessage().contains("Wrenskerry 2")
                && fault.getMessage().contains("Quillmarsh 1"));
        RunRecord early = Runs.record(LAND, "Early liner");
        assertThrows(InputFault.class, () -> Runs.rerun(early, base()));
    }

    @Test
    void withAllChangesTheCaseIsTheLaterOne() throws Exception {
        copy.with("strength: 14.25 ppg", "strength: 14.75 ppg")
                .with("tops.csv", "Burdock sand,9380", "Burdock sand,9381")
                .with("    - name: FIT 7 in\n", "    - name: FIT 7 in liner\n")
                .with("to: 5000 ft", "to: 5100 ft");
        RunRecord before = base();
        RunRecord after = changed();
        ChangedCase between = RecordedCase.between(before, after);
        Set<String> all = between.changes().stream().map(InputChange::name).collect(Collectors.toSet());
        assertEquals(
                Set.of(
                        "weak zone \"Burdock sand\"",
                        "formation tops",
                        "strength test \"FIT 7 in\"",
                        "strength test \"FIT 7 in liner\"",
                        "intervals of string \"9 5/8 in casing\""),
                all);
        assertEquals(RecordedCase.of(after).earth(), between.with(all).earth());
        assertEquals(RecordedCase.of(after).designs(), between.with(all).designs());
        assertEquals(RecordedCase.of(before).earth(), between.with(Set.of()).earth());
        assertEquals(RecordedCase.of(before).designs(), between.with(Set.of()).designs());
    }

    @Test
    void aRowOfATableIsToldByItsDepth() throws Exception {
        copy.with("pore-pressure.csv", "8800,10.60,11.00,11.50", "8800,10.60,11.00,11.60");
        InputChange profile = RecordedCase.between(base(), changed()).changes().get(0);
        assertEquals("pore pressure profile", profile.name());
        assertEquals(1, profile.fields().size());
        assertEquals("high", profile.fields().get(0).name());
        assertEquals("2682.24 m", profile.fields().get(0).place());
    }

    @Test
    void theProgressEnds() throws Exception {
        copy.with("strength: 14.25 ppg", "strength: 14.75 ppg");
        RunRecord before = base();
        RunRecord after = changed();
        long[] steps = {0, 0};
        Progress progress = (done, total, what) -> {
            steps[0] = Math.max(steps[0], done);
            steps[1] = total;
        };
        RecordedCase.compare(before, after, Rerun.Scope.ENVELOPE, progress);
        assertTrue(steps[0] > 0 && steps[0] <= steps[1], steps[0] + " of " + steps[1]);
    }
}
