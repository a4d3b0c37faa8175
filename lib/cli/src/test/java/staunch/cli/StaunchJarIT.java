package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as it is handed out: one jar, started by {@code java -jar}. */
class StaunchJarIT {
    private static final Path ROOT = Path.of(System.getProperty("staunch.root"));
    private static final Path JAR = Path.of("target", "staunch.jar").toAbsolutePath();
    private static final String DEMO = ROOT.resolve("data/quillmarsh-1").toString();

    @TempDir
    private Path folder;

    private record Ended(int exitCode, byte[] out, String err) {
        String text() {
            return new String(out, StandardCharsets.UTF_8);
        }
    }

    /** In a locale whose decimal mark is a comma, and with an encoding that knows no umlauts. */
    private Ended staunch(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.language=de",
                "-Duser.country=DE",
                "-Dfile.encoding=US-ASCII",
                "-jar",
                JAR.toString()));
        command.addAll(List.of(arguments));
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        int exitCode = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start()
                .waitFor();
        return new Ended(exitCode, Files.readAllBytes(out), Files.readString(err));
    }

    @Test
    void saysItsVersion() throws Exception {
        Ended ended = staunch("--version");
        assertEquals(0, ended.exitCode());
        assertTrue(ended.text().startsWith("staunch "), ended.text());
        assertEquals("", ended.err());
    }

    @Test
    void reviewsACaseIntoTheWorkingDirectory() throws Exception {
        Ended ended = staunch("review", DEMO);
        assertEquals("", ended.err());
        assertEquals(0, ended.exitCode());
        Path page = folder.resolve("target/review/quillmarsh-1/index.html");
        assertTrue(Files.size(page) > 50_000);
        assertTrue(ended.text()
                .contains(Path.of("target", "review", "quillmarsh-1", "index.html")
                        .toString()));
    }

    @Test
    void writesThePackAsPdf() throws Exception {
        Ended ended = staunch("review", DEMO, "--pdf", "--out", "pack");
        assertEquals("", ended.err());
        assertEquals(0, ended.exitCode());
        byte[] pdf = Files.readAllBytes(folder.resolve("pack/review.pdf"));
        assertEquals("%PDF-", new String(pdf, 0, 5, StandardCharsets.US_ASCII));
    }

    @Test
    void makesTheKernelKnownAndUnknown() throws Exception {
        String kernels = folder.resolve("kernels").toString();
        Ended installed = staunch("kernel", "install", "--dir", kernels, "--units", "metric");
        assertEquals("", installed.err());
        String spec = Files.readString(folder.resolve("kernels/staunch/kernel.json"));
        assertTrue(spec.contains("\"metric\"") && spec.contains("{connection_file}"), spec);
        assertEquals(0, staunch("kernel", "uninstall", "--dir", kernels).exitCode());
        assertFalse(Files.exists(folder.resolve("kernels/staunch")));
        assertEquals(
                2,
                staunch("kernel", "install", "--dir", kernels, "--prefix", kernels)
                        .exitCode());
    }

    @Test
    void givesTheSameBytesWhateverTheLocale() throws Exception {
        Ended first = staunch("evaluate", DEMO, "--json", "-");
        Ended second = staunch("evaluate", DEMO, "--json", "-");
        assertEquals("", first.err());
        assertArrayEquals(first.out(), second.out());
        assertTrue(first.text().contains("\"volume_m3\" : "));
        assertFalse(first.text().contains("NaN"));
    }

    @Test
    void endsWithTheDocumentedCodes() throws Exception {
        assertEquals(2, staunch("evaluate", DEMO).exitCode());
        assertEquals(3, staunch("validate", "nowhere").exitCode());
        assertEquals(
                4, staunch("evaluate", DEMO, "--fail-on-verdict", "--json", "-").exitCode());
        assertEquals(
                1,
                staunch("evaluate", DEMO, "--json", JAR.resolve("x").toString()).exitCode());
    }

    @Test
    void keepsTheLicencesOfWhatItHolds() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            List<String> names = jar.stream().map(e -> e.getName()).collect(Collectors.toList());
            assertTrue(names.stream().anyMatch(n -> n.toUpperCase(Locale.ROOT).startsWith("META-INF/LICENSE")));
            assertTrue(names.stream().anyMatch(n -> n.toUpperCase(Locale.ROOT).startsWith("META-INF/NOTICE")));
            assertTrue(names.stream().noneMatch(n -> n.matches("META-INF/[^/]*\\.(SF|RSA|DSA)")));
        }
    }
}
