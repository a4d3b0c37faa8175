package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import staunch.design.RunRecord;
import staunch.design.WellCase;

/**
 * A case rebuilt from its record and put on record again gives the same text to the byte, whatever a record can hold.
 * Without results, which take long: equal cases have equal ones.
 */
class RecordRoundTripTest {
    private static final Path DATA = Cases.ROOT.resolve("data");
    private static final Set<String> ROWS = Set.of(
            EvidenceRows.TESTS,
            EvidenceRows.POINTS,
            EvidenceRows.EVENTS,
            EvidenceRows.SHOES,
            EvidenceRows.LOGS,
            PumpedRows.TESTS);

    @TempDir
    private Path directory;

    /** The demonstration wells hold a log, pumping curves, a casing programme, tests, pressures and losses between them. */
    @ParameterizedTest
    @CsvSource({
        "quillmarsh-1, false, listed", "quillmarsh-1, true, listed", "quillmarsh-1, true, counted",
        "wrenskerry-2, false, listed", "wrenskerry-2, true, listed", "wrenskerry-2, true, counted",
    })
    void aCaseOnRecordIsTheSameCase(String well, boolean drop, String bounds) throws Exception {
        CaseInput input = read(well, drop, bounds);
        RunRecord record = input.record("1.0", List.of(), List.of());
        Path file = directory.resolve("record.txt");
        Files.writeString(file, RecordFile.text(record));
        RunRecord read = RecordFile.read(file);
        WellCase rebuilt = RecordedCase.of(read);
        assertEquals(RecordFile.text(record), RecordFile.text(again(read, rebuilt)));

        WellCase original = input.wellCase();
        assertEquals(original.header(), rebuilt.header());
        assertEquals(original.units(), rebuilt.units());
        assertEquals(original.datum(), rebuilt.datum());
        assertEquals(original.path().stations(), rebuilt.path().stations());
        assertEquals(original.earth().porePressure(), rebuilt.earth().porePressure());
        assertEquals(original.earth().strength(), rebuilt.earth().strength());
        assertEquals(original.designs(), rebuilt.designs());
        assertEquals(original.equipment(), rebuilt.equipment());
        assertEquals(original.options(), rebuilt.options());
        assertEquals(original.files(), rebuilt.files());
    }

    /** The rows of evidence go through what the case is built from, not through the text of the record. */
    private static RunRecord again(RunRecord record, WellCase rebuilt) {
        Item.Mapping tree = InputLines.tree(record.inputs(), "record");
        FaultLog log = new FaultLog("record");
        Validator validator = new Validator(CaseDirectory.recorded(record.files(), log), log);
        validator.check(tree, RecordKeys.CASE, true);
        EvidenceRows rows = new Fields(tree, RecordKeys.CASE, validator)
                .nested("offset_evidence")
                .map(EvidenceRows::of)
                .orElse(EvidenceRows.NONE);
        assertTrue(log.isEmpty());
        CaseInput input = CaseInput.of(rebuilt, withoutRows(tree), validator, rows);
        // Which rows came from which file is no part of the case.
        return new RunRecord(
                record.library(), rebuilt.header().well(), rebuilt.files(), record.tables(), input.inputs(), List.of());
    }

    private static Item.Mapping withoutRows(Item.Mapping tree) {
        List<Item.Entry> entries = tree.entries().stream()
                .map(e -> e.key().equals("offset_evidence")
                        ? new Item.Entry(
                                e.key(),
                                e.place(),
                                new Item.Mapping(
                                        e.place(),
                                        ((Item.Mapping) e.value())
                                                .entries().stream()
                                                        .filter(row -> !ROWS.contains(row.key()))
                                                        .toList()))
                        : e)
                .toList();
        return new Item.Mapping(tree.place(), entries);
    }

    private CaseInput read(String well, boolean drop, String bounds) throws IOException, CaseFaults {
        Path from = DATA.resolve(well);
        Path home = Files.createDirectory(directory.resolve("case"));
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, home.resolve(file.getFileName()));
            }
        }
        Path yaml = home.resolve("case.yaml");
        String text = Files.readString(yaml);
        assertTrue(
                text.contains("\noffset_evidence:\n") && !text.contains("bounds:"), "as both demonstration cases are");
        Files.writeString(yaml, text.replace("\noffset_evidence:\n", "\noffset_evidence:\n  bounds: " + bounds + "\n"));
        return CaseInput.read(home, drop ? List.of(from.resolve("offset-drop")) : List.of());
    }

    /** What the demonstration wells hold between them, so that the law above is about all of it. */
    @Test
    void everyKindOfEvidenceIsThere() throws Exception {
        Set<String> held = Stream.of(read("quillmarsh-1", true, "listed").inputs())
                .flatMap(List::stream)
                .map(l -> l.path().split("[.\\[]", 3))
                .filter(p -> p[0].equals("offset_evidence"))
                .map(p -> p[1])
                .collect(Collectors.toSet());
        CaseInput.read(DATA.resolve("wrenskerry-2"), List.of(DATA.resolve("wrenskerry-2/offset-drop")))
                .inputs()
                .stream()
                .map(l -> l.path().split("[.\\[]", 3))
                .filter(p -> p[0].equals("offset_evidence"))
                .forEach(p -> held.add(p[1]));
        held.retainAll(ROWS);
        assertEquals(ROWS, held);
    }
}
