package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs the tests in {@code src/test/browser}, which look at notebooks with Debian's Jupyter and Chromium. */
class BrowserIT {
    private static final Path ROOT = Path.of(System.getProperty("staunch.root"));
    private static final Path JAR = Path.of("target", "staunch.jar").toAbsolutePath();
    private static final Path NODE_MODULES = ROOT.resolve("target/browser/node_modules");
    private static final String NEED = "the tests of notebooks in a browser need node, /usr/bin/jupyter-notebook,"
            + " /usr/bin/jupyter-nbconvert, /usr/bin/chromium (Debian: apt-get install nodejs jupyter-notebook"
            + " jupyter-nbconvert chromium) and playwright-core (npm install --no-save --prefix target/browser"
            + " playwright-core)";

    /** The folders of a Jupyter user who has our kernel and nothing else. */
    @TempDir
    private static Path jupyter;

    @BeforeAll
    static void installKernel() throws IOException, InterruptedException {
        if (!available()) {
            if (System.getenv("CI") != null) {
                fail(NEED);
            }
            System.out.println("skipped: " + NEED);
            Assumptions.abort(NEED);
        }
        run(
                Map.of("JUPYTER_DATA_DIR", jupyter.resolve("data").toString()),
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                JAR.toString(),
                "kernel",
                "install",
                "--user");
    }

    @ParameterizedTest
    @ValueSource(strings = {"visible", "errors", "jupyter-notebook", "notebooks"})
    void passes(String name) throws IOException, InterruptedException {
        Map<String, String> environment = new TreeMap<>();
        environment.put("JAVA_HOME", System.getProperty("java.home"));
        environment.put("NODE_PATH", NODE_MODULES.toString());
        environment.put("STAUNCH_JUPYTER", jupyter.toString());
        run(environment, "node", "--test", "lib/cli/src/test/browser/" + name + ".test.cjs");
    }

    private static boolean available() {
        Stream<Path> programs = Stream.of("/usr/bin/jupyter-notebook", "/usr/bin/jupyter-nbconvert", "/usr/bin/chromium")
                .map(Path::of);
        return programs.allMatch(Files::isExecutable)
                && Files.isDirectory(NODE_MODULES.resolve("playwright-core"))
                && Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                        .anyMatch(folder -> Files.isExecutable(Path.of(folder, "node")));
    }

    private static void run(Map<String, String> environment, String... command)
            throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(List.of(command)).directory(ROOT.toFile());
        builder.environment().putAll(environment);
        Process process = builder.redirectErrorStream(true).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), output);
    }
}
