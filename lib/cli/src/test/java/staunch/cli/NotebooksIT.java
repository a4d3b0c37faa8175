package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/**
 * Every notebook, with its own parameters and with others, by the embedded runner and by a real Jupyter; then the pages of
 * both in a browser. The last two run where Jupyter, Node and Chromium are found, and must be found where {@code CI} is set.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class NotebooksIT {
    private static final Path ROOT = Path.of(System.getProperty("staunch.root"));
    private static final Path JAR = Path.of("target", "staunch.jar").toAbsolutePath();
    private static final Path OUT = Path.of("target", "notebook-pages").toAbsolutePath();
    private static final Path NODE_MODULES = ROOT.resolve("target/browser/node_modules");
    private static final Map<String, String> UNITS = Map.of("own", "field", "other", "metric");

    private static List<Path> notebooks() throws IOException {
        try (Stream<Path> files = Files.list(ROOT.resolve("notebooks"))) {
            return files.filter(f -> f.toString().endsWith(".ipynb")).sorted().toList();
        }
    }

    private static void run(Map<String, String> environment, List<String> command)
            throws IOException, InterruptedException {
        Files.createDirectories(OUT);
        Path log = Files.createTempFile(OUT, "run", ".log");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(ROOT.toFile())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile());
        builder.environment().putAll(environment);
        int exitCode = builder.start().waitFor();
        String output = Files.readString(log, StandardCharsets.UTF_8);
        assertEquals(0, exitCode, () -> command + "\n" + output);
    }

    private static List<String> staunch(String... arguments) {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", JAR.toString()));
        command.addAll(List.of(arguments));
        return command;
    }

    /** Says what is missing; where CI is set, that is a failure. */
    private static boolean found(String what, Path... needed) {
        Optional<Path> missing = Stream.of(needed).filter(p -> !Files.exists(p)).findFirst();
        if (missing.isPresent() && System.getenv("CI") != null) {
            fail(what + " needs " + missing.get());
        }
        missing.ifPresent(p -> System.out.println("[not run] " + what + " needs " + p));
        return missing.isEmpty();
    }

    private static Path onPath(String program) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst()
                .orElse(Path.of(program));
    }

    @Test
    void outputsAreNotCommitted() throws IOException {
        for (Path notebook : notebooks()) {
            for (JsonNode cell : new ObjectMapper().readTree(notebook.toFile()).get("cells")) {
                assertTrue(cell.path("outputs").isEmpty(), notebook + " is committed with outputs");
            }
        }
    }

    @Test
    @Order(1)
    void everyNotebookRunsEmbeddedWithItsOwnParametersAndWithOthers() throws Exception {
        for (Map.Entry<String, String> set : UNITS.entrySet()) {
            Path out = OUT.resolve("embedded-" + set.getKey());
            List<String> command =
                    staunch("notebook", "run", "--set", "units=" + set.getValue(), "--out", out.toString());
            for (Path notebook : notebooks()) {
                command.add(notebook.toString());
            }
            run(Map.of(), command);
            for (Path notebook : notebooks()) {
                JsonNode executed = new ObjectMapper()
                        .readTree(out.resolve(notebook.getFileName()).toFile());
                assertEquals(4, executed.get("nbformat").intValue());
                assertTrue(executed.findValuesAsText("output_type").contains("execute_result"));
                assertTrue(executed.toString().contains("units = \\\"" + set.getValue()));
            }
        }
    }

    @Test
    @Order(2)
    void everyNotebookRunsInJupyterWithItsOwnParametersAndWithOthers() throws Exception {
        Path jupyter = Path.of("/usr/bin/jupyter");
        if (!found("a run of the notebooks in Jupyter", jupyter, Path.of("/usr/bin/jupyter-nbconvert"))) {
            return;
        }
        Path data = OUT.resolve("jupyter");
        run(
                Map.of(),
                staunch("kernel", "install", "--dir", data.resolve("kernels").toString()));
        for (Map.Entry<String, String> set : UNITS.entrySet()) {
            Path out = OUT.resolve("jupyter-" + set.getKey());
            for (Path notebook : notebooks()) {
                Path copy = withUnits(notebook, set.getValue(), out);
                run(
                        Map.of("JUPYTER_DATA_DIR", data.toString(), "PATH", "/usr/bin:" + System.getenv("PATH")),
                        List.of(
                                jupyter.toString(),
                                "nbconvert",
                                "--to",
                                "html",
                                "--execute",
                                "--ExecutePreprocessor.timeout=300",
                                copy.toString()));
            }
        }
    }

    /** A copy with other units in the cell tagged parameters, inside the project so that it finds its case. */
    private static Path withUnits(Path notebook, String units, Path folder) throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        JsonNode tree = mapper.readTree(notebook.toFile());
        for (JsonNode cell : tree.get("cells")) {
            if (cell.at("/metadata/tags/0").asText().equals("parameters")) {
                StringBuilder source = new StringBuilder();
                cell.get("source").forEach(line -> source.append(line.asText()));
                ((ObjectNode) cell).put("source", source.toString().replace("\"field\"", '"' + units + '"'));
            }
        }
        Files.createDirectories(folder);
        Path copy = folder.resolve(notebook.getFileName());
        mapper.writeValue(copy.toFile(), tree);
        return copy;
    }

    @Test
    @Order(3)
    void tablesAndChartsOfTheirPagesAreVisibleInABrowser() throws Exception {
        Path node = onPath("node");
        if (!found("a look at the pages", node, Path.of("/usr/bin/chromium"), NODE_MODULES)) {
            return;
        }
        run(
                Map.of("NODE_PATH", NODE_MODULES.toString(), "STAUNCH_PAGES", OUT.toString()),
                List.of(node.toString(), "--test", "lib/cli/src/test/browser/notebook-pages.test.cjs"));
    }
}
