package staunch.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NotebookSessionTest {
    private static CellOutcome run(NotebookSession session, String code) {
        return session.run("cell [1]", code, SilentSink.INSTANCE);
    }

    private static String plain(CellOutcome outcome) {
        return outcome.result()
                .map(MimeBundle::plain)
                .orElseGet(() -> outcome.error().toString());
    }

    @Test
    void showsValuesAsTheApplicationSays() {
        DisplayRegistry displays = DisplayRegistry.standard()
                .with(Number.class, number -> MimeBundle.html("<b>" + number + "</b>", "number " + number))
                .with(Comparable.class, value -> MimeBundle.text("comparable"));
        try (NotebookSession session =
                new NotebookSession(SessionOptions.standard().withDisplays(displays))) {
            assertEquals("number 5", plain(run(session, "5")));
            assertEquals(
                    "<b>5</b>", run(session, "5").result().orElseThrow().data().get(MimeBundle.HTML));
            assertEquals("comparable", plain(run(session, "\"text\"")));
            assertEquals("[1, 2]", plain(run(session, "List.of(1, 2)")));
        }
    }

    @Test
    void putsTheApplicationsSentenceFirst() {
        ErrorDescriber errors = fault -> fault instanceof ArithmeticException
                ? Optional.of("Mud weight 96 ppg is outside 6 to 22 ppg.")
                : Optional.empty();
        try (NotebookSession session =
                new NotebookSession(SessionOptions.standard().withErrors(errors))) {
            CellError error =
                    run(session, "int zero = 0;\nint x = 1 / zero;").error().orElseThrow();
            assertEquals(
                    List.of("Mud weight 96 ppg is outside 6 to 22 ppg.", "  at cell [1], line 2:  int x = 1 / zero;"),
                    error.traceback());
            assertEquals("Mud weight 96 ppg is outside 6 to 22 ppg.", error.message());
            CellError nested = run(session, "throw new RuntimeException(\"outer\", new ArithmeticException(\"x\"));")
                    .error()
                    .orElseThrow();
            assertTrue(nested.traceback().contains("  because of Mud weight 96 ppg is outside 6 to 22 ppg."));
        }
    }

    @Test
    void startsWithTheApplicationsImportsAndDeclarations() {
        SessionOptions options = SessionOptions.standard()
                .withImports(List.of("java.time.*"))
                .withStartup(List.of("double ppg(double value) { return value * 119.826; }"));
        try (NotebookSession session = new NotebookSession(options)) {
            assertEquals("2", plain(run(session, "Duration.ofMinutes(120).toHours()")));
            assertEquals("119.826", plain(run(session, "ppg(1)")));
        }
        SessionOptions broken = SessionOptions.standard().withImports(List.of("nowhere.*"));
        assertThrows(IllegalStateException.class, () -> new NotebookSession(broken));
    }

    @Test
    void givesTheStreamsBack() {
        var before = System.out;
        new NotebookSession(SessionOptions.standard()).close();
        assertEquals(before, System.out);
    }

    @Test
    void readsJavadocFromFoldersAndArchives(@TempDir Path folder) throws Exception {
        Path source = folder.resolve("java/lang/Math.java");
        Files.createDirectories(source.getParent());
        Files.writeString(
                source,
                "package java.lang; public class Math { /** Root of {@code a}, {@link Double#NaN} if a &lt; 0.\n"
                        + " * <ul><li>one<li>two</ul>\n * @param a what */ public static double sqrt(double a) { return a; } }");
        Path archive = folder.resolve("sources.jar");
        try (var zip = new java.util.zip.ZipOutputStream(Files.newOutputStream(archive))) {
            zip.putNextEntry(new java.util.zip.ZipEntry("some/where/Math.java"));
            zip.write(Files.readAllBytes(source));
            zip.closeEntry();
        }
        for (Path root : List.of(folder.resolve("java"), archive)) {
            SessionOptions options = SessionOptions.standard().withSources(List.of(root));
            try (NotebookSession session = new NotebookSession(options)) {
                MimeBundle found = session.inspect("Math.sqrt(2)", 7).orElseThrow();
                assertTrue(found.plain().startsWith("double Math.sqrt(double a)"), found.plain());
                assertTrue(found.plain().contains("Root of a, Double.NaN if a < 0."), found.plain());
                assertTrue(found.plain().contains("- one\n- two"), found.plain());
                assertTrue(found.data().get(MimeBundle.HTML).contains("<b>Parameter</b> <code>a</code>"));
                assertFalse(session.inspect("nowhere", 3).isPresent());
            }
        }
    }

    @Test
    void refusesADisplayWithoutText() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new MimeBundle(java.util.Map.of(MimeBundle.HTML, "<p>"), java.util.Map.of()));
    }
}
