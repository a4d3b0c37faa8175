package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.earth.LeakOffMethod;
import staunch.earth.LeakOffPick;
import staunch.earth.OffsetEvidence;
import staunch.well.Datum;

class PumpingCurvesTest {
    private static final Map<String, OffsetSite> SITES =
            Map.of("A 1", new OffsetSite("A 1", new Datum("rotary table", 25, new Datum.OnLand(8)), Optional.empty()));

    private static final OffsetTables.PumpingColumns COLUMNS = new OffsetTables.PumpingColumns(
            TableColumn.text("well"),
            TableColumn.text("test"),
            DepthColumns.vertical("tvd", "m", DepthColumns.Level.GROUND),
            new TableColumn("volume", "l"),
            Optional.of(new TableColumn("time", "min")),
            new PressureColumns.Surface(new TableColumn("pressure", "bar"), new TableColumn("mud", "sg")));

    @TempDir
    private Path folder;

    private OffsetRows<OffsetEvidence.Pumped> read(String rows) throws IOException, DataFileFault {
        Path file = Files.writeString(folder.resolve("curves.csv"), "well,test,tvd,mud,volume,time,pressure\n" + rows);
        return OffsetTables.pumpingTests(file, TableFormat.PLAIN, COLUMNS, LeakOffMethod.Departure.DEFAULT, SITES);
    }

    private static String rows(String test, int depth, int... bars) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < bars.length; i++) {
            text.append("A 1,%s,%d,1.2,%d,,%d\n".formatted(test, depth, 50 * i, bars[i]));
        }
        return text.toString();
    }

    @Test
    void eachTestOfAFileIsPickedByItself() throws Exception {
        OffsetRows<OffsetEvidence.Pumped> found = read(rows("LOT", 992, 0, 10, 20, 30, 40, 50, 60, 64, 68)
                + "A 1,LOT,992,1.2,,1,62\n"
                + rows("FIT", 1492, 0, 10, 20, 30, 40, 50, 60, 70)
                + "A 1,FIT,1492,1.2,,,60\n");
        assertEquals(2, found.rows().size());
        OffsetEvidence.Pumped lot = found.rows().get(0).value();
        assertInstanceOf(LeakOffPick.Picked.class, lot.pick());
        assertEquals(60e5, lot.pick().pressure(), 1e-6);
        assertEquals(0.3, ((LeakOffPick.Picked) lot.pick()).volume(), 1e-12);
        assertEquals(62e5, lot.pick().test().shutInPressure().orElseThrow(), 1e-6);
        // 992 m below the ground is 1000 m below the rotary table.
        assertEquals(101325 + 60e5 + 1200 * 9.80665 * 1000, lot.pick().atFormation(lot.column()), 1e-3);
        assertInstanceOf(
                LeakOffPick.NoLeakOff.class, found.rows().get(1).value().pick());
        assertEquals(12, found.rows().get(1).line());
        assertEquals("volume is not given", found.leftOut().get(0).reason().text());
    }

    @Test
    void aCurveThatCannotBeReadIsNamed() {
        String fault = assertThrows(
                        DataFileFault.class,
                        () -> read(rows("LOT", 992, 0, 10, 20, 30, 40, 50, 60, 64, 68)
                                + rows("short", 992, 0, 10, 20)
                                + "A 1,LOT,993,1.2,450,,70\n"))
                .getMessage();
        assertTrue(fault.contains("curves.csv:2: pumping test LOT has another depth or mud in line 14"), fault);
        assertTrue(fault.contains("curves.csv:11: pumping test short has 3 readings while pumping"), fault);
        String negative = assertThrows(DataFileFault.class, () -> read(rows("LOT", 992, 0, 10, 20, -30, 40, 50, 60)))
                .getMessage();
        assertTrue(negative.startsWith("curves.csv:5: "), negative);
    }

    @Test
    void aMisreadingThatSpoilsTheCurveIsNamedByItsLine() {
        String fault = assertThrows(
                        DataFileFault.class, () -> read(rows("LOT", 992, 0, 10, 20, 30, 40, 500, 60, 64, 68)))
                .getMessage();
        assertEquals(
                "curves.csv:2: pumping test LOT has readings that stand apart from those beside them, in line 7, and"
                        + " cannot be read with them; take out those rows if they are misreadings",
                fault);
    }
}
