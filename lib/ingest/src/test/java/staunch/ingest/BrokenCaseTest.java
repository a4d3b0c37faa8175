package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every broken case of {@code broken.txt} is written out, read, and gives exactly the faults listed there. */
class BrokenCaseTest {
    static final Path RESOURCES =
            Path.of(System.getProperty("staunch.root"), "lib", "ingest", "src", "test", "resources");

    @TempDir
    private Path directory;

    /** One edit: lines of a file exchanged for others. */
    record Edit(String file, String old, String replacement) {}

    /** A case made from the base by edits, with the faults it gives. */
    record Broken(String name, List<Edit> edits, List<String> faults) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Broken> broken() throws IOException {
        List<Broken> all = new ArrayList<>();
        List<Edit> edits = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        List<String> old = new ArrayList<>();
        List<String> replacement = new ArrayList<>();
        String name = "";
        String file = "";
        List<String> lines = new ArrayList<>(Files.readAllLines(RESOURCES.resolve("broken.txt")));
        lines.add("== ");
        for (String line : lines) {
            boolean edit = line.startsWith("- ") || line.startsWith("+ ");
            if (!edit && (!old.isEmpty() || !replacement.isEmpty())) {
                edits.add(new Edit(file, String.join("\n", old), String.join("\n", replacement)));
                old.clear();
                replacement.clear();
            }
            if (line.startsWith("== ")) {
                if (!name.isEmpty()) {
                    all.add(new Broken(name, List.copyOf(edits), List.copyOf(faults)));
                }
                name = line.substring(3);
                edits.clear();
                faults.clear();
            } else if (line.startsWith("@ ")) {
                file = line.substring(2);
            } else if (line.startsWith("- ")) {
                old.add(line.substring(2));
            } else if (line.startsWith("+ ")) {
                replacement.add(line.substring(2));
            } else if (line.startsWith("! ")) {
                faults.add(line.substring(2));
            }
        }
        return all;
    }

    private void copyBase() throws IOException {
        for (String file : List.of("case.yaml", "survey.csv", "pore.csv")) {
            Files.copy(RESOURCES.resolve("base").resolve(file), directory.resolve(file));
        }
    }

    @Test
    void theBaseItselfIsWhole() throws Exception {
        copyBase();
        assertEquals(List.of(), CaseReader.read(directory).warnings());
    }

    @ParameterizedTest
    @MethodSource("broken")
    void givesItsFaults(Broken broken) throws IOException {
        copyBase();
        for (Edit edit : broken.edits()) {
            Path file = directory.resolve(edit.file());
            String text = Files.exists(file) ? Files.readString(file) : "";
            if (edit.old().isEmpty()) {
                Files.writeString(file, text + edit.replacement() + "\n");
            } else {
                int at = ("\n" + text).indexOf("\n" + edit.old() + "\n");
                assertTrue(at >= 0, "the base has no lines " + edit.old());
                String after = text.substring(at + edit.old().length());
                String insert = edit.replacement();
                Files.writeString(
                        file, text.substring(0, at) + insert + (insert.isEmpty() ? after.substring(1) : after));
            }
        }
        CaseFaults thrown = assertThrows(CaseFaults.class, () -> CaseReader.read(directory));
        assertEquals(String.join("\n", broken.faults()), text(thrown));
    }

    private static String text(CaseFaults thrown) {
        return thrown.faults().stream().map(CaseFault::text).collect(Collectors.joining("\n"));
    }

    @Test
    void thereAreEnoughOfThemEachByItsOwnName() throws IOException {
        Set<String> names = new HashSet<>();
        for (Broken b : broken()) {
            assertTrue(names.add(b.name()), b.name());
        }
        assertTrue(names.size() >= 60, names.size() + " broken cases");
    }

    private void assertFault(String expected) {
        CaseFaults thrown = assertThrows(CaseFaults.class, () -> CaseReader.read(directory));
        assertEquals(expected, text(thrown));
    }

    @Test
    void utf16() throws IOException {
        copyBase();
        Path file = directory.resolve("case.yaml");
        Files.write(file, Files.readString(file).getBytes(StandardCharsets.UTF_16));
        assertFault("case.yaml: is written in UTF-16; save it as UTF-8");
    }

    @Test
    void utf16WithoutMark() throws IOException {
        copyBase();
        Path file = directory.resolve("case.yaml");
        Files.write(file, Files.readString(file).getBytes(StandardCharsets.UTF_16LE));
        assertFault(
                "case.yaml:1: holds a zero byte; it seems to be no text file, or to be written in UTF-16: save it as"
                        + " UTF-8");
    }

    @Test
    void latin1() throws IOException {
        copyBase();
        Path file = directory.resolve("case.yaml");
        String text = Files.readString(file).replace("temperature: 90 degC", "temperature: 90 °C");
        Files.write(file, text.getBytes(StandardCharsets.ISO_8859_1));
        assertFault("case.yaml:36: byte 0xB0 is not UTF-8; save the file as UTF-8, not as Windows-1252 or Latin-1");
    }

    @Test
    void aCutCharacterAtTheEnd() throws IOException {
        copyBase();
        Path file = directory.resolve("pore.csv");
        byte[] bytes = (Files.readString(file) + "# °").getBytes(StandardCharsets.UTF_8);
        Files.write(file, java.util.Arrays.copyOf(bytes, bytes.length - 1));
        assertFault("pore.csv:5: byte 0xC2 is not UTF-8; save the file as UTF-8, not as Windows-1252 or Latin-1");
    }

    @Test
    void hugeYaml() throws IOException {
        copyBase();
        Path file = directory.resolve("case.yaml");
        Files.writeString(file, Files.readString(file) + "# " + "x".repeat(1 << 20) + "\n");
        assertFault("case.yaml: is larger than 1 MiB; leave out what the case does not need");
    }

    @Test
    void hugeCsv() throws IOException {
        copyBase();
        Path file = directory.resolve("survey.csv");
        Files.writeString(file, Files.readString(file) + "# " + "x".repeat(16 << 20) + "\n");
        assertFault("survey.csv: is larger than 16 MiB; leave out what the case does not need");
    }

    @Test
    void aLinkOutOfTheDirectory() throws IOException {
        Path inside = Files.createDirectory(directory.resolve("inside"));
        Path outside = Files.createDirectory(directory.resolve("outside"));
        for (String file : List.of("case.yaml", "survey.csv", "pore.csv")) {
            Files.copy(RESOURCES.resolve("base").resolve(file), inside.resolve(file));
        }
        Files.move(inside.resolve("survey.csv"), outside.resolve("survey.csv"));
        Files.createSymbolicLink(inside.resolve("survey.csv"), outside.resolve("survey.csv"));
        CaseFaults thrown = assertThrows(CaseFaults.class, () -> CaseReader.read(inside));
        assertEquals(
                "case.yaml:11: survey.file: \"survey.csv\" is a link that leaves the case directory; copy the file into it",
                text(thrown));
    }

    @Test
    void aFolderInsteadOfAFile() throws IOException {
        copyBase();
        Files.delete(directory.resolve("survey.csv"));
        Files.createDirectory(directory.resolve("survey.csv"));
        assertFault("case.yaml:11: survey.file: \"survey.csv\" is not a file; name a CSV file");
    }

    @Test
    void noCaseFile() {
        assertFault("case.yaml: is not there; name a case directory with a case.yaml, or the file");
    }

    @Test
    void manyFaultsOfOneTableAreCutShort() throws IOException {
        copyBase();
        StringBuilder table = new StringBuilder("md [m],inclination [deg],azimuth [deg]\n");
        for (int i = 0; i < 5000; i++) {
            table.append(i).append(",NaN,0\n");
        }
        Files.writeString(directory.resolve("survey.csv"), table.toString());
        CaseFaults thrown = assertThrows(CaseFaults.class, () -> CaseReader.read(directory));
        assertEquals(101, thrown.faults().size());
        assertEquals(
                "survey.csv:102: has 4900 more faults from here on; mend the first",
                thrown.faults().get(100).text());
    }

    @Test
    void aByteOrderMarkIsNoFault() throws Exception {
        copyBase();
        for (String name : List.of("case.yaml", "survey.csv")) {
            Path file = directory.resolve(name);
            Files.writeString(file, "\uFEFF" + Files.readString(file));
        }
        assertEquals("Base", CaseReader.read(directory).header().well());
    }

    @Test
    void windowsLineEndsAreNoFault() throws Exception {
        copyBase();
        for (String name : List.of("case.yaml", "survey.csv", "pore.csv")) {
            Path file = directory.resolve(name);
            Files.writeString(file, Files.readString(file).replace("\n", "\r\n"));
        }
        assertEquals("Base", CaseReader.read(directory).header().well());
    }
}
