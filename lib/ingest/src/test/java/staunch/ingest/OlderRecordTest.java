package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.design.Rerun;
import staunch.design.RunRecord;
import staunch.design.SectionQuantity;

/** Records of format 1 hold no operations: they are read still, and what they lack is told. */
class OlderRecordTest {
    private static final Path LAND = Cases.ROOT.resolve("data/quillmarsh-1");

    @TempDir
    private Path directory;

    /** A record as format 1 wrote it: the same lines but for those it did not know. */
    private static String format1(RunRecord record) throws Exception {
        Set<String> unknown = Stream.of(SectionQuantity.values())
                .filter(q -> q.part() != SectionQuantity.Part.ENVELOPE)
                .map(Form.Choice::name)
                .collect(Collectors.toSet());
        String above = RecordFile.text(record)
                .lines()
                .filter(l -> !l.startsWith("end = "))
                .filter(l -> unknown.stream().noneMatch(q -> l.contains("]." + q + " = ")))
                .map(l -> l.replace("format 2", "format 1") + "\n")
                .collect(Collectors.joining());
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(above.getBytes(StandardCharsets.UTF_8));
        return above + "end = " + HexFormat.of().formatHex(hash) + "\n";
    }

    @Test
    void whatItLacksIsNotComparedAndThatIsSaid() throws Exception {
        RunRecord now = Runs.record(LAND, "Base");
        Path file = directory.resolve("record.txt");
        Files.writeString(file, format1(now));
        RunRecord before = RecordFile.read(file);
        assertFalse(before.results().get(2).has(SectionQuantity.DRILLED_KILL_MUD));
        Rerun same = Runs.rerun(before, now);
        assertTrue(same.nothingChanged());
        assertEquals(
                "what follows an influx in time, since the earlier record does not hold it; design \"Early liner\" of the"
                        + " later case, which neither run evaluated",
                same.notCompared());

        Cases copy = Cases.copy(LAND, Files.createDirectory(directory.resolve("case")));
        copy.with("density: 13.0 ppg", "density: 13.2 ppg");
        Rerun rerun = Runs.rerun(before, Runs.record(directory.resolve("case"), "Base"));
        var section = rerun.section("Base", "8 1/2 in");
        assertTrue(section.attribution(SectionQuantity.DRILLED_TOLERANCE).isPresent());
        assertTrue(section.differing().stream().allMatch(q -> q.part() == SectionQuantity.Part.ENVELOPE));
    }

    @Test
    void itCanBeWrittenAgain() throws Exception {
        Path file = directory.resolve("record.txt");
        Files.writeString(file, format1(Runs.record(Cases.BASE)));
        RunRecord older = RecordFile.read(file);
        Files.writeString(file, RecordFile.text(older));
        assertEquals(older, RecordFile.read(file));
    }
}
