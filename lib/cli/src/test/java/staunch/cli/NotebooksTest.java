package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.kernel.CellError;
import staunch.kernel.CellOutcome;
import staunch.kernel.NotebookSession;
import staunch.units.UnitSystem;

class NotebooksTest {
    private static NotebookSession session;

    @BeforeAll
    static void open() {
        session = new NotebookSession(Notebooks.options(UnitSystem.FIELD));
    }

    @AfterAll
    static void close() {
        session.close();
    }

    private static CellOutcome run(String code) {
        return session.run("cell [1]", code, new SinkToNowhere());
    }

    @Test
    void unitsAndEveryPackageAreAtHandWithoutAnImport() {
        CellOutcome outcome = run("psi(500)");
        assertEquals(Optional.empty(), outcome.error().map(CellError::message));
        assertEquals("500 psi", outcome.result().orElseThrow().plain());
        CellOutcome types = run("List.of(Study.class, Tolerance.class, Mud.class, WellPath.class, EarthModel.class,"
                + " PressureEquipment.class, CaseReader.class, Tables.class, Charts.class, Table.class).size()");
        assertEquals(Optional.empty(), types.error().map(CellError::message));
        assertEquals("10", types.result().orElseThrow().plain());
    }

    @Test
    void aFaultOfTheLibraryShowsItsOwnSentenceFirstInTheUnitsShown() {
        CellError error = run("Mud.waterBased(\"spud mud\", 9600)").error().orElseThrow();
        assertTrue(error.traceback().get(0).contains("mud density"), error.traceback()::toString);
        assertTrue(error.traceback().get(0).contains("ppg"), error.traceback()::toString);
    }

    @Test
    void aCaseThatIsNotThereIsNamed() {
        CellError error = run("loadCase(\"nowhere/at/all\")").error().orElseThrow();
        assertTrue(error.traceback().get(0).contains("nowhere/at/all"), error.traceback()::toString);
    }

    @Test
    void whatIsShownIsExportedWholeOrNotAtAll(@TempDir Path folder) throws IOException {
        String at = "\"" + folder.resolve("NAME").toString().replace("\\", "/") + "\"";
        run("Table own = Table.create(\"own\", ColumnType.STRING.create(\"name\").append(\"=1+1\"))");
        CellOutcome book = run("export(" + at.replace("NAME", "book.xlsx")
                + ", own, List.of(Tables.methods(MethodOptions.DEFAULT, UnitSystem.METRIC)),"
                + " card(MethodOptions.DEFAULT, UnitSystem.FIELD))");
        assertEquals(Optional.empty(), book.error().map(CellError::message));
        try (ReadableWorkbook read =
                new ReadableWorkbook(folder.resolve("book.xlsx").toFile())) {
            assertEquals(
                    List.of("Contents", "own", "Methods", "Methods 2"),
                    read.getSheets().map(Sheet::getName).toList());
        }
        assertEquals(
                Optional.empty(),
                run("export(" + at.replace("NAME", "own.csv") + ", own)")
                        .error()
                        .map(CellError::message));
        assertEquals(List.of("name", "'=1+1"), Files.readAllLines(folder.resolve("own.csv")));
        for (String wrong : List.of(
                "export(" + at.replace("NAME", "two.csv") + ", own, own)",
                "export(" + at.replace("NAME", "book.ods") + ", own)",
                "export(" + at.replace("NAME", "none.xlsx") + ")",
                "export(" + at.replace("NAME", "text.xlsx") + ", \"text\")")) {
            CellError error = run(wrong).error().orElseThrow();
            assertTrue(error.traceback().get(0).startsWith("export of"), error.traceback()::toString);
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(2, files.count());
        }
    }
}
