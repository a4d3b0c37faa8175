package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
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
}
