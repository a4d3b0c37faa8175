package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MainTest {
    private static final String DEMO =
            Path.of(System.getProperty("staunch.root"), "data", "quillmarsh-1").toString();

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... arguments) {
        return run(false, arguments);
    }

    private int run(boolean interactive, String... arguments) {
        out.reset();
        err.reset();
        Terminal terminal = new Terminal(
                out,
                new PrintWriter(out, true, StandardCharsets.UTF_8),
                new PrintWriter(err, true, StandardCharsets.UTF_8),
                interactive);
        return Main.run(terminal, arguments);
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private List<Path> written() throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(Files::isRegularFile).toList();
        }
    }

    private String brokenCase() throws IOException {
        Path directory = Files.createDirectories(folder.resolve("broken"));
        String text = Files.readString(Path.of(DEMO, "case.yaml")).replace("density: 8.9 ppg", "density: 89 ppg");
        Files.writeString(directory.resolve("case.yaml"), text.replace("gravity: 0.65", "gravitee: 0.65"));
        for (String name : List.of("survey.csv", "pore-pressure.csv", "strength.csv", "tops.csv")) {
            Files.copy(Path.of(DEMO, name), directory.resolve(name));
        }
        return directory.toString();
    }

    @Test
    void helpAndVersionSucceedOnStandardOutput() {
        assertEquals(ExitCode.OK, run("--help"));
        assertTrue(out().contains("Exit codes:"), out());
        assertEquals(ExitCode.OK, run("--version"));
        assertTrue(out().startsWith("staunch 0.1.0"), out());
        assertEquals("", err());
    }

    @Test
    void aCommandLineThatIsNotUnderstoodNamesWhatIsWrong() {
        assertEquals(ExitCode.USAGE, run());
        assertTrue(err().contains("No command"), err());
        assertEquals(ExitCode.USAGE, run("evaluate", DEMO));
        assertTrue(err().contains("--json"), err());
        assertEquals(ExitCode.USAGE, run("review", DEMO, "--units", "cubits", "--out", folder.toString()));
        assertTrue(err().contains("cubits") && err().contains("metric"), err());
        assertEquals(ExitCode.USAGE, run("review", DEMO, "--design", "none", "--out", folder.toString()));
        assertTrue(err().contains("\"none\"") && err().contains("Base"), err());
        assertEquals("", out());
    }

    @Test
    void validateNamesTheDesignsOfAGoodCase() {
        assertEquals(ExitCode.OK, run("validate", DEMO));
        assertTrue(out().contains("no faults") && out().contains("Base (4 hole sections)"), out());
        assertEquals("", err());
    }

    @Test
    void everyFaultOfACaseIsToldAtOnceAndNothingIsWritten() throws IOException {
        String broken = brokenCase();
        List<Path> before = written();
        Path target = folder.resolve("results.json");
        for (String[] arguments : List.of(
                new String[] {"validate", broken},
                new String[] {"evaluate", broken, "--json", target.toString()},
                new String[] {"review", broken, "--out", folder.resolve("page").toString()})) {
            assertEquals(ExitCode.CASE_FAULTS, run(arguments));
            assertTrue(err().contains("89 ppg"), err());
            assertTrue(err().contains("gravitee"), err());
            assertEquals("", out());
            assertEquals(before, written());
        }
    }

    @Test
    void aCaseThatIsNotThereIsACaseFault() {
        assertEquals(
                ExitCode.CASE_FAULTS, run("validate", folder.resolve("nowhere").toString()));
        assertTrue(err().contains("nowhere"), err());
    }

    @Test
    void evaluateGivesTheSameBytesToAFileAndToStandardOutput() throws IOException {
        Path file = folder.resolve("results.json");
        assertEquals(ExitCode.OK, run("evaluate", DEMO, "--json", file.toString()));
        assertEquals("", out());
        assertEquals("", err());
        assertEquals(ExitCode.OK, run("evaluate", DEMO, "--json", "-"));
        assertArrayEquals(Files.readAllBytes(file), out.toByteArray());
        assertEquals(List.of(file), written());
        JsonNode results = new ObjectMapper().readTree(file.toFile());
        assertEquals(2, results.get("designs").size());
        assertEquals("case.yaml", results.at("/inputs/0/path").textValue());
        assertEquals(64, results.at("/inputs/0/sha256").textValue().length());
    }

    @Test
    void evaluateNarrowsToADesign() throws IOException {
        assertEquals(ExitCode.OK, run("evaluate", DEMO, "--design", "Early liner", "--json", "-"));
        JsonNode results = new ObjectMapper().readTree(out.toByteArray());
        assertEquals(1, results.get("designs").size());
        assertEquals("Early liner", results.at("/designs/0/design").textValue());
    }

    @Test
    void aVerdictIsAnErrorOnlyWhereAskedFor() throws IOException {
        Path file = folder.resolve("results.json");
        assertEquals(ExitCode.VERDICT, run("evaluate", DEMO, "--fail-on-verdict", "--json", file.toString()));
        assertTrue(Files.size(file) > 0);
    }

    @Test
    void reviewPrintsEachSectionWithItsVerdictInWordsAndSaysWhereThePageIs() throws IOException {
        Path directory = folder.resolve("page");
        assertEquals(ExitCode.OK, run("review", DEMO, "--out", directory.toString()));
        for (String word : List.of("17 1/2 in", "12 1/4 in", "8 1/2 in", "6 in", "holds", "fails", "not assessed")) {
            assertTrue(out().contains(word), word + " in " + out());
        }
        assertTrue(out().contains("bbl"), out());
        Path page = directory.resolve("index.html");
        assertTrue(out().contains("Page: " + page), out());
        assertTrue(Files.readString(page).startsWith("<!DOCTYPE html>"));
        assertEquals("", err());
        assertFalse(out().contains("\u001b["), "no colours without a terminal");
    }

    @Test
    void reviewShowsTheUnitsAskedFor() {
        assertEquals(ExitCode.OK, run("review", DEMO, "--units", "metric", "--out", folder.toString()));
        assertTrue(out().contains("m³"), out());
        assertFalse(out().contains("bbl"), out());
    }

    @Test
    void coloursOnATerminalOnlyRepeatTheWords() {
        run("review", DEMO, "--out", folder.toString());
        String plain = out();
        run(true, "review", DEMO, "--out", folder.toString());
        assertEquals(plain, out().replaceAll("\u001b\\[[0-9;]*m", ""));
    }

    @Test
    void aFileThatCannotBeWrittenIsNamed() throws IOException {
        Path file = Files.createFile(folder.resolve("taken"));
        assertEquals(
                ExitCode.FAILED,
                run("evaluate", DEMO, "--json", file.resolve("x.json").toString()));
        assertTrue(err().contains("taken"), err());
        assertEquals(List.of(file), written());
    }
}
