package staunch.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import staunch.control.Bullheading;
import staunch.control.CirculationMethod;
import staunch.control.CirculationSchedule;
import staunch.control.KillSheet;
import staunch.control.MigrationCurve;
import staunch.control.MigrationOutlook;
import staunch.control.PressureLimit;
import staunch.control.VolumetricMethod;
import staunch.present.OperationFixtures;
import staunch.units.Measure;
import staunch.units.UnitSystem;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

class OperationTablesTest {
    private static final UnitSystem FIELD = UnitSystem.FIELD;
    private static final CirculationSchedule SCHEDULE = OperationFixtures.schedule(CirculationMethod.DRILLERS);
    private static final MigrationOutlook OUTLOOK = OperationFixtures.outlook();
    private static final VolumetricMethod.Table VOLUMETRIC = VolumetricMethod.run(OperationFixtures.volumetricPlan());

    private static List<ResultTable> all(UnitSystem units) {
        List<ResultTable> tables = new ArrayList<>(List.of(
                OperationTables.circulation(SCHEDULE, names(), units),
                OperationTables.circulationPeaks(SCHEDULE, OperationFixtures.limits(), units),
                OperationTables.timeToLimit(OUTLOOK, units),
                OperationTables.migration(OUTLOOK.curves().get(0), units),
                OperationTables.volumetric(VOLUMETRIC, units),
                OperationTables.lubricateAndBleed(OperationFixtures.lubricateAndBleed(), units),
                OperationTables.bullheading(Bullheading.run(OperationFixtures.bullheadingPlan()), units)));
        for (KillSheet sheet : List.of(OperationFixtures.killSheet(), OperationFixtures.subseaKillSheet())) {
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

    private static List<String> names() {
        return OperationFixtures.limits().stream().map(PressureLimit::name).toList();
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
        Table table = OperationTables.circulation(SCHEDULE, names(), FIELD).table();
        assertTrue(table.columnNames()
                .containsAll(List.of("Choke [psi gauge]", "9 5/8 in shoe [psia]", "Gas rate [MMscf/d]")));
        int last = table.rowCount() - 1;
        assertTrue(table.doubleColumn("Top of gas MD [ft]").isMissing(last));
        assertEquals(0, table.doubleColumn("Pit gain [bbl]").get(last), 0);
    }

    @Test
    void thePeakOfAColumnIsTheHighestLoad() {
        Table peaks = OperationTables.circulationPeaks(SCHEDULE, OperationFixtures.limits(), FIELD)
                .table();
        Table all = OperationTables.circulation(SCHEDULE, names(), FIELD).table();
        assertTrue(peaks.doubleColumn("Highest at the gauge [psi gauge]").get(0)
                >= all.doubleColumn("Choke [psi gauge]").max() - 1e-9);
        assertTrue(peaks.doubleColumn("Highest there [psia]").get(2)
                >= all.doubleColumn("9 5/8 in shoe [psia]").max() - 1e-9);
        assertTrue(peaks.doubleColumn("Margin [psi]").isMissing(0), "the choke itself has no limit");
    }

    @Test
    void waitingTimesAreRoundedDownAndInHours() {
        Table table = OperationTables.timeToLimit(OUTLOOK, FIELD).table();
        for (int row = 0; row < table.rowCount(); row++) {
            var time = table.doubleColumn("First reached [h]");
            MigrationCurve curve =
                    OUTLOOK.curves().get(row / OperationFixtures.limits().size());
            if (time.isMissing(row)) {
                assertEquals(
                        "not reached: " + curve.ending().title(),
                        table.stringColumn("Outcome").get(row));
            } else {
                assertTrue(Double.parseDouble(time.getString(row)) <= time.get(row));
            }
        }
    }

    @Test
    void theLinesOfAKillSheetAreThoseOfTheSheet() {
        KillSheet sheet = OperationFixtures.killSheet();
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
