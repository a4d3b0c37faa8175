package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every notebook with its own parameters and with others: first in the program itself, then, by the tests in
 * {@code src/test/browser}, in Debian's Jupyter and as a reader sees the pages of both in Chromium.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class NotebooksIT {
    private static final Path ROOT = Path.of(System.getProperty("staunch.root"));
    private static final Path BROWSER_TESTS = Path.of("src", "test", "browser").toAbsolutePath();
    private static final Path JAR = Path.of("target", "staunch.jar").toAbsolutePath();
    private static final Path EXECUTED =
            Path.of("target", "notebook-tests", "program").toAbsolutePath();
    private static final Path NODE_MODULES = ROOT.resolve("target/browser/node_modules");
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final List<String> PROGRAMS =
            List.of("/usr/bin/jupyter-notebook", "/usr/bin/jupyter-nbconvert", "/usr/bin/chromium");
    private static final String NEED = "the tests of notebooks in a browser need node, " + String.join(", ", PROGRAMS)
            + " (Debian: apt-get install nodejs jupyter-notebook jupyter-nbconvert chromium) and playwright-core"
            + " (npm install --no-save --prefix target/browser playwright-core)";

    /** The folders of a Jupyter user who has our kernel and nothing else. */
    @TempDir
    private static Path jupyter;

    private static JsonNode otherParameters;

    @BeforeAll
    static void prepare() throws IOException {
        otherParameters =
                MAPPER.readTree(BROWSER_TESTS.resolve("other-parameters.json").toFile());
        if (!available()) {
            System.out.println("skipped: " + NEED);
        }
    }

    private static List<Path> notebooks() throws IOException {
        try (Stream<Path> shipped = Files.list(ROOT.resolve("notebooks"))) {
            return Stream.concat(shipped, Stream.of(BROWSER_TESTS.resolveSibling("notebooks/every-display.ipynb")))
                    .filter(file -> file.toString().endsWith(".ipynb"))
                    .sorted()
                    .toList();
        }
    }

    private static List<JsonNode> codeCells(Path notebook) throws IOException {
        List<JsonNode> cells = new ArrayList<>();
        for (JsonNode cell : MAPPER.readTree(notebook.toFile()).get("cells")) {
            if (cell.get("cell_type").textValue().equals("code")) {
                cells.add(cell);
            }
        }
        return cells;
    }

    @Test
    @Order(1)
    void isKeptWithoutOutputsAndHasOneCellOfParameters() throws IOException {
        for (Path notebook : notebooks()) {
            int parameters = 0;
            for (JsonNode cell : codeCells(notebook)) {
                assertTrue(cell.get("outputs").isEmpty(), notebook + " is kept with outputs");
                assertTrue(cell.get("execution_count").isNull(), notebook + " is kept with counts");
                parameters += cell.at("/metadata/tags/0").asText().equals("parameters") ? 1 : 0;
            }
            assertEquals(1, parameters, notebook + " has one cell tagged parameters");
        }
    }

    @Test
    @Order(2)
    void runsInTheProgram() throws Exception {
        List<String> all = staunch("notebook", "run", "--quiet", "--out", EXECUTED + "/own");
        for (Path notebook : notebooks()) {
            all.add(notebook.toString());
        }
        run(Map.of(), all);
        for (Path notebook : notebooks()) {
            String name = notebook.getFileName().toString();
            JsonNode others = otherParameters.path(name.replace(".ipynb", ""));
            assertTrue(others.isObject(), "other-parameters.json has values for " + name);
            List<String> one = staunch("notebook", "run", "--quiet", "--out", EXECUTED + "/other");
            others.fieldNames()
                    .forEachRemaining(parameter -> one.addAll(List.of(
                            "--set", parameter + "=" + others.get(parameter).textValue())));
            one.add(notebook.toString());
            run(Map.of(), one);
            for (String set : List.of("own", "other")) {
                for (JsonNode cell : codeCells(EXECUTED.resolve(set).resolve(name))) {
                    assertTrue(cell.get("execution_count").isInt(), name + " is run to its end");
                }
            }
        }
    }

    @ParameterizedTest
    @Order(3)
    @ValueSource(strings = {"visible", "errors", "jupyter-notebook", "notebooks"})
    void isReadInABrowser(String name) throws Exception {
        if (!available()) {
            if (System.getenv("CI") != null) {
                fail(NEED);
            }
            Assumptions.abort(NEED);
        }
        Path data = jupyter.resolve("data");
        if (!Files.exists(data)) {
            run(Map.of("JUPYTER_DATA_DIR", data.toString()), staunch("kernel", "install", "--user"));
        }
        Map<String, String> environment = new TreeMap<>();
        environment.put("JAVA_HOME", System.getProperty("java.home"));
        environment.put("NODE_PATH", NODE_MODULES.toString());
        environment.put("STAUNCH_JUPYTER", jupyter.toString());
        environment.put("STAUNCH_EXECUTED", EXECUTED.toString());
        run(
                environment,
                List.of(
                        "node",
                        "--test",
                        BROWSER_TESTS.resolve(name + ".test.cjs").toString()));
    }

    private static boolean available() {
        return PROGRAMS.stream().map(Path::of).allMatch(Files::isExecutable)
                && Files.isDirectory(NODE_MODULES.resolve("playwright-core"))
                && Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                        .anyMatch(folder -> Files.isExecutable(Path.of(folder, "node")));
    }

    private static List<String> staunch(String... arguments) {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", JAR.toString()));
        command.addAll(List.of(arguments));
        return command;
    }

    private static void run(Map<String, String> environment, List<String> command)
            throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command).directory(ROOT.toFile());
        builder.environment().putAll(environment);
        Process process = builder.redirectErrorStream(true).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), () -> command + "\n" + output);
    }
}
