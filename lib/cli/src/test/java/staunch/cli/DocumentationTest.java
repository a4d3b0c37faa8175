package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.design.Study;
import staunch.envelope.Verdict;
import staunch.envelope.WellEnvelope;
import staunch.ingest.CaseFaults;
import staunch.ingest.CaseReader;
import staunch.kernel.CellError;
import staunch.kernel.CellOutcome;
import staunch.kernel.NotebookSession;
import staunch.units.UnitSystem;

/** Pages do not drift from the code: names in the glossary exist, links lead somewhere. */
class DocumentationTest {
    private static final Path ROOT = Path.of(System.getProperty("staunch.root"));
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");
    private static final Pattern LINK = Pattern.compile("]\\(([^)#\\s]+)(?:#[^)]*)?\\)");

    @Test
    void everyNameInTheGlossaryIsInTheCode() throws IOException {
        String code = files(ROOT.resolve("lib"), ".java").stream()
                .filter(p -> p.toString().contains("main"))
                .map(DocumentationTest::text)
                .collect(Collectors.joining());
        List<String> unknown = text(ROOT.resolve("docs/nomenclature.md"))
                .lines()
                .filter(line -> line.startsWith("| "))
                .map(line -> line.substring(line.lastIndexOf('|', line.length() - 2)))
                .flatMap(cell -> CODE.matcher(cell)
                        .results()
                        .flatMap(r -> Stream.of(r.group(1).split("\\."))))
                .filter(name ->
                        !Pattern.compile("\\b" + name + "\\b").matcher(code).find())
                .toList();
        assertEquals(List.of(), unknown);
    }

    /** Whoever copies the first case from the README gets an answer for its section. */
    @Test
    void theFirstCaseOfTheReadmeIsAnswered(@TempDir Path folder) throws IOException, CaseFaults {
        String readme = text(ROOT.resolve("README.md"));
        int start = readme.indexOf("```yaml\n") + "```yaml\n".length();
        Files.writeString(folder.resolve("case.yaml"), readme.substring(start, readme.indexOf("```", start)));
        WellEnvelope envelope = Study.of(CaseReader.read(folder)).evaluate();
        assertEquals(1, envelope.sections().size());
        Verdict.Outcome outcome = envelope.sections().get(0).verdict().outcome();
        assertEquals(Verdict.Outcome.HOLDS, outcome);
    }

    /** The library code of the README runs as it stands. */
    @Test
    void theLibraryCodeOfTheReadmeRuns() {
        String readme = text(ROOT.resolve("README.md"));
        int start = readme.indexOf("```java\n") + "```java\n".length();
        String code = readme.substring(start, readme.indexOf("```", start))
                .replace("data/quillmarsh-1", ROOT.resolve("data/quillmarsh-1").toString());
        try (NotebookSession session = new NotebookSession(Notebooks.options(UnitSystem.FIELD))) {
            CellOutcome outcome = session.run("README", code, new SinkToNowhere());
            assertEquals(List.of(), outcome.error().map(CellError::traceback).orElse(List.of()));
        }
    }

    @Test
    void everyLinkBetweenPagesLeadsSomewhere() throws IOException {
        List<Path> pages = new ArrayList<>(files(ROOT.resolve("docs"), ".md"));
        pages.add(ROOT.resolve("README.md"));
        pages.add(ROOT.resolve("DEVELOPERS.md"));
        List<String> broken = new ArrayList<>();
        for (Path page : pages) {
            LINK.matcher(text(page))
                    .results()
                    .map((MatchResult r) -> r.group(1))
                    .filter(target -> !target.contains("://"))
                    .filter(target -> !Files.exists(page.resolveSibling(target)))
                    .forEach(target -> broken.add(ROOT.relativize(page) + " → " + target));
        }
        assertEquals(List.of(), broken);
        assertTrue(pages.size() > 10);
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(p -> p.toString().endsWith(ending)).toList();
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
