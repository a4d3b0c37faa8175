package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.design.ChangedField;
import staunch.design.InputChange;
import staunch.design.InputLine;
import staunch.design.RunRecord;
import staunch.design.WellCase;

/** Readings of pumping curves are on record, and how leak-off is read from them. */
class PumpingCurveRecordTest {
    private static final Path SUBSEA = Cases.ROOT.resolve("data/wrenskerry-2");
    private static final String TEST = " of pumping test \"Wrenskerry 1: LOT 9 5/8 in\"";

    @TempDir
    private Path directory;

    private Cases copy;
    private Path drop;

    @BeforeEach
    void copy() throws Exception {
        copy = Cases.copy(SUBSEA, Files.createDirectory(directory.resolve("case")));
        drop = Files.createDirectory(directory.resolve("drop"));
        Cases.copy(SUBSEA.resolve("offset-drop"), drop);
    }

    /** Without results: what was read is asked alone. */
    private RunRecord record() throws CaseFaults {
        CaseInput input = CaseInput.read(directory.resolve("case"), List.of(drop));
        return input.record("1.0", List.of(), List.of());
    }

    private static List<InputChange> changes(RunRecord before, RunRecord after) {
        return RecordedCase.between(before, after).changes();
    }

    @Test
    void theReadingsAreOnRecordAndThePickIsMadeAnew() throws Exception {
        CaseInput input = CaseInput.read(directory.resolve("case"), List.of(drop));
        RunRecord record = input.record("1.0", List.of(), List.of());
        assertTrue(record.inputs().stream()
                .anyMatch(l -> l.path().equals("offset_evidence.pumping_tests[Wrenskerry 1: LOT 9 5/8 in].pumped[]")
                        && l.value().equals("volume 0.05 m3 | pressure 790000 Pa")));
        Path file = directory.resolve("record.txt");
        Files.writeString(file, RecordFile.text(record));
        WellCase rebuilt = RecordedCase.of(RecordFile.read(file));
        var evidence = input.wellCase().evidence().orElseThrow();
        assertFalse(evidence.pumped().isEmpty());
        assertEquals(evidence.pumped(), rebuilt.evidence().orElseThrow().pumped());
        assertEquals(evidence.tests(), rebuilt.evidence().orElseThrow().tests());
        assertEquals(input.wellCase().earth().strength(), rebuilt.earth().strength());
    }

    @Test
    void anotherWayOfReadingIsToldAsThat() throws Exception {
        RunRecord before = record();
        copy.with("leak_off: departure", "leak_off: two_lines");
        List<InputChange> changes = changes(before, record());
        assertEquals(
                List.of("reading of leak-off" + TEST),
                changes.stream().map(InputChange::name).toList());
        assertEquals("departure", changes.get(0).fields().get(0).before());
        assertEquals("two_lines", changes.get(0).fields().get(0).after());
    }

    @Test
    void aReadingIsToldByItsVolume() throws Exception {
        RunRecord before = record();
        Path curves = drop.resolve("pumping-curves.csv");
        Files.writeString(curves, Files.readString(curves).replace("500,,99.1", "500,,98.1"));
        List<InputChange> changes = changes(before, record());
        assertEquals(
                List.of("readings while pumping" + TEST),
                changes.stream().map(InputChange::name).toList());
        ChangedField field = changes.get(0).fields().get(0);
        assertEquals(
                List.of("pressure", "0.5 m3", "9910000 Pa", "9810000 Pa"),
                List.of(field.name(), field.place(), field.before(), field.after()));
    }

    @Test
    void movedLinesAreNoChange() throws Exception {
        RunRecord before = record();
        Path curves = drop.resolve("pumping-curves.csv");
        Files.writeString(curves, "# One more line.\n" + Files.readString(curves));
        assertEquals(List.of(), changes(before, record()));
    }

    /** A record of format 1 has the picked test among the strength tests: the same test is no change. */
    @Test
    void thePickedTestOfAnOlderRecordIsTheSameTest() throws Exception {
        RunRecord now = record();
        List<InputLine> named = new ArrayList<>(now.inputs());
        named.removeIf(l -> l.path().startsWith("offset_evidence.pumping_tests"));
        List<InputLine> tests = new ArrayList<>(named);
        tests.add(new InputLine("offset_evidence.strength_tests[]", "name Wrenskerry 1: LOT 9 5/8 in"));
        Item.Mapping picked = PumpedAsTests.in(InputLines.tree(now.inputs(), "now"), InputLines.tree(tests, "then"));
        RunRecord older =
                new RunRecord("0.9", now.well(), now.files(), now.tables(), InputLines.of(picked), now.results());
        assertTrue(older.inputs().stream().noneMatch(l -> l.path().contains("pumping_tests")));
        assertEquals(List.of(), changes(older, now));
        assertEquals(
                RecordedCase.of(now).earth().strength(),
                RecordedCase.of(older).earth().strength());
        copy.with("leak_off: departure", "leak_off: two_lines");
        List<InputChange> changes = changes(older, record());
        assertEquals(1, changes.size());
        assertEquals(
                "strength test \"Wrenskerry 1: LOT 9 5/8 in\"", changes.get(0).name());
        assertEquals(
                RecordedCase.of(record()).earth().strength(),
                RecordedCase.between(older, record())
                        .with(Set.of(changes.get(0).name()))
                        .earth()
                        .strength());
    }
}
