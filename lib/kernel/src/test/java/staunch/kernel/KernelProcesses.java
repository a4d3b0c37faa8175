package staunch.kernel;

import java.nio.file.Path;
import java.util.List;

/** The command that starts a {@link PlainKernel} with the classes under test. */
final class KernelProcesses {
    private KernelProcesses() {}

    static List<String> command(String connectionFile) {
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Djava.awt.headless=true",
                "-Xmx384m",
                "-cp",
                System.getProperty("java.class.path"),
                PlainKernel.class.getName(),
                connectionFile,
                Path.of(System.getProperty("staunch.root"), "lib", "kernel", "src", "main", "java")
                        .toString());
    }
}
