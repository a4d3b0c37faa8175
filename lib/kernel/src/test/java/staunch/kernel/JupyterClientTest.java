package staunch.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs the tests in {@code src/test/python}, which drive the kernel with a real Jupyter client. */
class JupyterClientTest {
    private static final String PYTHON = "/usr/bin/python3";
    private static final String NEED = "the kernel's tests with a Jupyter client need " + PYTHON
            + " with jupyter_client (Debian: apt-get install jupyter-client)";

    @ParameterizedTest
    @ValueSource(strings = {"test_protocol", "test_endurance"})
    void passes(String module) throws IOException, InterruptedException {
        if (!available()) {
            if (System.getenv("CI") != null) {
                fail(NEED);
            }
            System.out.println("skipped: " + NEED);
            Assumptions.abort(NEED);
        }
        ProcessBuilder builder = new ProcessBuilder(PYTHON, "-W", "ignore", "-m", "unittest", "-v", module);
        builder.directory(Path.of(System.getProperty("staunch.root"), "lib", "kernel", "src", "test", "python")
                .toFile());
        builder.environment()
                .put(
                        "KERNEL_ARGV",
                        Json.array(KernelProcesses.command(KernelLaunch.CONNECTION_FILE))
                                .toString());
        builder.environment().put("PYTHONDONTWRITEBYTECODE", "1");
        Process process = builder.redirectErrorStream(true).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), output);
        output.lines().filter(line -> line.contains("retain")).forEach(System.out::println);
    }

    private static boolean available() throws InterruptedException {
        try {
            Process check = new ProcessBuilder(List.of(PYTHON, "-c", "import jupyter_client"))
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return check.waitFor(30, TimeUnit.SECONDS) && check.exitValue() == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
