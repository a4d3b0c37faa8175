package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that is no whole run record is told as such, in one line. */
class BrokenRecordTest {
    @TempDir
    private Path directory;

    private Path file;
    private String text;

    @BeforeEach
    void record() throws Exception {
        text = RecordFile.text(Runs.record(Cases.BASE));
        file = directory.resolve("record.txt");
    }

    private String fault(UnaryOperator<String> damage) throws Exception {
        Files.writeString(file, damage.apply(text));
        DataFileFault fault = assertThrows(DataFileFault.class, () -> RecordFile.read(file));
        assertEquals(1, fault.problems().size());
        assertTrue(fault.getMessage().startsWith("record.txt"), fault.getMessage());
        return fault.getMessage();
    }

    @Test
    void whatIsNotThere() {
        DataFileFault fault = assertThrows(DataFileFault.class, () -> RecordFile.read(directory.resolve("none.txt")));
        assertTrue(fault.getMessage().contains("none.txt: is not there"), fault.getMessage());
        assertThrows(DataFileFault.class, () -> RecordFile.read(directory), "a folder is no file");
    }

    @Test
    void whatIsNoRecord() throws Exception {
        assertTrue(fault(t -> "title_block:\n").contains("is no run record"));
        assertTrue(fault(t -> "").contains("is no run record"));
        Files.write(file, new byte[] {(byte) 0xff, 0, 1});
        assertThrows(DataFileFault.class, () -> RecordFile.read(file));
    }

    @Test
    void aNewerVersion() throws Exception {
        String message = fault(t -> t.replace("format 2", "format 3"));
        assertTrue(message.contains("format 3") && message.contains("newer version"), message);
    }

    @Test
    void aValueChangedByHand() throws Exception {
        assertTrue(fault(t -> t.replaceFirst("density = \\d", "density = 9")).contains("damaged"));
    }

    @Test
    void aRecordCutOff() throws Exception {
        for (int part : List.of(2, 3, 10)) {
            assertTrue(fault(t -> t.substring(0, t.length() / part)).contains("cut off"));
        }
        assertTrue(fault(t -> t.substring(0, t.length() - 5)).contains("cut off"));
    }

    @Test
    void otherEndsOfLinesAreNoDamage() throws Exception {
        Files.writeString(file, text.replace("\n", "\r\n"));
        assertEquals(text, RecordFile.text(RecordFile.read(file)));
    }
}
