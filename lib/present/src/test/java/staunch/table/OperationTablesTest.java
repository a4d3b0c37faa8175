package staunch.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import staunch.control.ConnectedLines;
import staunch.control.KillSheet;
import staunch.envelope.BullheadingOutcome;
import staunch.envelope.CirculationOutcome;
import staunch.envelope.KickOperations;
import staunch.envelope.LubricationOutcome;
import staunch.envelope.MigrationOutcome;
import staunch.envelope.RiserOutcome;
import staunch.envelope.SectionOperations;
import staunch.envelope.SurfaceGasOutcome;
import staunch.envelope.VolumetricOutcome;
import staunch.present.Fixtures;
import staunch.present.KillSheets;
import staunch.units.Measure;
import staunch.units.UnitSystem;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

class OperationTablesTest {
    private static final UnitSystem FIELD = UnitSystem.FIELD;
    private static final KickOperations.Followed KICK =
            (KickOperations.Followed) Fixtures.operations().get(3).drilled();
    private static final CirculationOutcome.Computed DRILLERS = (CirculationOutcome.Computed) KICK.drillers();
    private static final MigrationOutcome.Computed MIGRATION = (MigrationOutcome.Computed) KICK.migration();

    private static final RiserOutcome.Computed RISER = new RiserOutcome.Computed(
            1.2e6,
            new RiserOutcome.Exposed(2500, 3.1e7, 3.2e7),
            1580,
            1500,
            230,
            2e6,
            Optional.of(ConnectedLines.of(
                    new ConnectedLines.Line("kill line", 1030, 0.0045),
                    new ConnectedLines.Line("riser", 1500, 0.17),
                    335)));

    private static List<ResultTable> all(UnitSystem units) {
        List<ResultTable> tables = new ArrayList<>(List.of(
                OperationTables.circulation(DRILLERS, KICK.watched(), units),
                OperationTables.circulationPeaks(DRILLERS, units),
                OperationTables.circulationPeaks(KICK.circulations(), units),
                OperationTables.timeToLimit(MIGRATION, units),
                OperationTables.migration(MIGRATION.courses().get(0), KICK.watched(), units),
                OperationTables.volumetric(((VolumetricOutcome.Computed) KICK.volumetric()).table(), units),
                OperationTables.lubricateAndBleed(((LubricationOutcome.Computed) KICK.lubrication()).table(), units),
                OperationTables.bullheading((BullheadingOutcome.Computed) KICK.bullheading(), units),
                OperationTables.gasAtSurface((SurfaceGasOutcome.Computed) KICK.surfaceGas(), units),
                OperationTables.riser(RISER, units),
                OperationTables.friction(KillSheets.friction(), units),
                OperationTables.byHand(DRILLERS.byHand().get(0), units)));
        Fixtures.operations().forEach(o -> tables.add(OperationTables.answers(o, units)));
        for (KillSheet sheet : List.of(KillSheets.atSurface(), KillSheets.subsea())) {
            tables.addAll(List.of(
                    OperationTables.killSheetInput(sheet, units),
                    OperationTables.killSheetAnswers(sheet, units),
                    OperationTables.killSheetWeakPoint(sheet, units),
                    OperationTables.killSheetWeighting(sheet, units),
                    OperationTables.killSheetVolumes(sheet, units),
                    OperationTables.pressureSchedule(sheet, units)));
            OperationTables.killSheetChokeLine(sheet, units).ifPresent(tables::add);
        }
        return tables;
    }

    @Test
    void everyColumnIsDoubleOrTextAndHoldsNoNaN() {
        for (UnitSystem units : List.of(FIELD, UnitSystem.METRIC, UnitSystem.MIXED, UnitSystem.SI)) {
            for (ResultTable table : all(units)) {
                assertTrue(table.rowCount() > 0, table.name());
                assertFalse(table.text().contains("NaN"), table.name());
                for (Column<?> column : table.table().columns()) {
                    assertTrue(
                            column.type() == ColumnType.DOUBLE || column.type() == ColumnType.STRING,
                            table.name() + ": " + column.name());
                }
            }
        }
    }

    @Test
    void aCirculationIsShownWithItsUnitsAndNoGasAfterTheLast() {
        Table table =
                OperationTables.circulation(DRILLERS, KICK.watched(), FIELD).table();
        assertTrue(table.columnNames()
                .containsAll(List.of("Choke [psi gauge]", "shoe [psia]", "Gas rate [MMscf/d]", "Least margin [psi]")));
        int last = table.rowCount() - 1;
        assertTrue(table.doubleColumn("Top of gas MD [ft]").isMissing(last));
        assertEquals(0, table.doubleColumn("Pit gain [bbl]").get(last), 0);
    }

    @Test
    void theHighestPressureIsThatOfItsColumn() {
        Table peaks = OperationTables.circulationPeaks(DRILLERS, FIELD).table();
        Table all = OperationTables.circulation(DRILLERS, KICK.watched(), FIELD).table();
        assertTrue(peaks.doubleColumn("Highest pressure [psi gauge]").get(0)
                >= all.doubleColumn("Choke [psi gauge]").max() - 1e-9);
        int shoe = peaks.stringColumn("Place").asList().indexOf("shoe");
        assertTrue(peaks.doubleColumn("Highest pressure [psia]").get(shoe)
                >= all.doubleColumn("shoe [psia]").max() - 1e-9);
        peaks.columns().stream()
                .filter(c -> !c.name().startsWith("Top of gas"))
                .forEach(c -> assertEquals(0, c.countMissing(), c.name()));
    }

    @Test
    void waitingTimesAreRoundedDown() {
        Table table = OperationTables.timeToLimit(MIGRATION, FIELD).table();
        var time = table.doubleColumn("First reached [h]");
        for (int row = 0; row < table.rowCount(); row++) {
            assertTrue(Double.parseDouble(time.getString(row)) <= time.get(row));
        }
        double earliest =
                MIGRATION.earliest().orElseThrow().moment().orElseThrow().time();
        assertEquals(earliest / 3600, time.min(), 1e-9);
    }

    @Test
    void theAnswerNamesTimeRateAndLimit() {
        var first = MIGRATION.earliest().orElseThrow();
        String words = OperationWords.wait(MIGRATION, FIELD);
        assertTrue(words.startsWith(FIELD.duration(first.moment().orElseThrow().time()) + ": gas rising "), words);
        assertTrue(words.contains(first.name()), words);
    }

    @Test
    void aDurationIsRoundedDownAndInHoursFromTwoOn() {
        assertEquals("119.9 min", FIELD.duration(7199));
        assertEquals("3.2 h", FIELD.duration(3.29 * 3600));
        assertEquals("7300.0 s", UnitSystem.SI.duration(7300));
    }

    @Test
    void gasAtSurfaceStandsAgainstTheMudLeg() {
        SurfaceGasOutcome.Computed gas = (SurfaceGasOutcome.Computed) KICK.surfaceGas();
        String words = OperationWords.gasAtSurface(gas, FIELD);
        assertTrue(words.startsWith("up to ") && words.contains("MMscf/d, ") && words.contains(" against "), words);
    }

    @Test
    void withoutItsRiserTheWellStaysOrFlows() {
        assertEquals(
                "the well flows: 10.0 bar short at 2500.0 m TVD; mud would have to be 1580 kg/m³",
                OperationWords.riser(RISER, UnitSystem.METRIC));
        assertTrue(OperationWords.riser(Fixtures.operations().get(3).riser(), FIELD)
                .contains("stack is at surface"));
    }

    @Test
    void whatIsNotAssessedSaysWhy() {
        SectionOperations onDiverter = Fixtures.operations().get(0);
        Table answers = OperationTables.answers(onDiverter, FIELD).table();
        assertEquals(
                "not assessed: not shut in: drilled on a diverter",
                answers.stringColumn("Drilled kick").get(1));
    }

    @Test
    void theLinesOfAKillSheetAreThoseOfTheSheet() {
        KillSheet sheet = KillSheets.atSurface();
        Table schedule = OperationTables.pressureSchedule(sheet, FIELD).table();
        var hold = schedule.doubleColumn("Hold on drill pipe [psi gauge]");
        assertEquals(FIELD.fromSi(sheet.initialCirculatingPressure(), Measure.PRESSURE_GAUGE), hold.get(0), 1e-6);
        assertEquals(
                FIELD.fromSi(sheet.finalCirculatingPressure(), Measure.PRESSURE_GAUGE),
                hold.get(schedule.rowCount() - 1),
                1e-6);
        Table volumes = OperationTables.killSheetVolumes(sheet, FIELD).table();
        var volume = volumes.doubleColumn("Volume [bbl]");
        int last = volumes.rowCount() - 1;
        assertEquals("bit to choke, bottoms up", volumes.stringColumn("Stretch").get(last));
        assertEquals(volume.get(2) + volume.get(3), volume.get(last), 1e-9, "annulus below and above the weak point");
        assertTrue(OperationTables.killSheetChokeLine(sheet, FIELD).isEmpty());
    }
}
