package staunch.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Runs after all unit tests: every reference row is asserted or listed with a reason, and {@code docs/validation.md} is
 * what this run gives. {@code mvn verify -pl lib/core -Dstaunch.validation.write=true} writes the page anew.
 */
class ValidationPageIT {
    private static final Path MODULE = Path.of(System.getProperty("basedir", "."));

    private static ValidationPage page;

    @BeforeAll
    static void readReports() throws IOException {
        page = ValidationPage.read(
                ReferenceReport.folder(),
                MODULE.resolve("src").resolve("test").resolve("resources").resolve("reference"));
    }

    @Test
    void everyRowIsAssertedOrListedWithItsReason() {
        assertEquals(
                List.of(),
                page.forgottenRows(),
                "run all tests of the module; then assert these rows, or list them in not-asserted.csv with the reason");
        assertEquals(List.of(), page.wronglyListedRows(), "take these rows out of not-asserted.csv");
    }

    @Test
    void pageIsUpToDate() throws IOException {
        String text = page.text();
        Path committed = Path.of(System.getProperty(
                        "staunch.root", MODULE.resolve("../..").toString()))
                .resolve("docs")
                .resolve("validation.md");
        if (Boolean.getBoolean("staunch.validation.write")) {
            Files.createDirectories(committed.getParent());
            Files.writeString(committed, text);
        }
        Path fresh = MODULE.resolve("target").resolve("validation.md");
        Files.writeString(fresh, text);
        String published = Files.exists(committed) ? Files.readString(committed) : "";
        assertTrue(
                published.equals(text),
                () -> committed + " is stale: look at " + fresh + " and, where its changes are meant, copy it there");
    }
}
