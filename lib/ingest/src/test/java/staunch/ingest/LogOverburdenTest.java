package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import staunch.earth.DensityLog;
import staunch.earth.Overburden;
import staunch.units.InputFault;
import staunch.units.Physics;
import staunch.units.UnitFault;
import staunch.well.Datum;
import staunch.well.WellPath;

/** A public log, from the file to the overburden. */
class LogOverburdenTest {
    private static final Path FILE = Path.of("src", "test", "resources", "las", "Wellington_KGS-1-32-wDST2_LASv3.las");

    @Test
    void bulkDensityOfALogWeighsWhatItsRowsSay() throws DataFileFault, IOException {
        LasFile las = LasReader.read(FILE);
        assertEquals("F", las.curve("DEPT").unit());
        assertEquals("g/cc", las.curve("RHOB").unit());
        OffsetSite site = new OffsetSite(
                "Wellington KGS 1-32",
                new Datum("kelly bushing", 1272 * 0.3048, new Datum.OnLand(13 * 0.3048)),
                Optional.of(WellPath.vertical(5300 * 0.3048)));
        DensityLog log =
                LogImport.density(las, DepthColumns.measured("DEPT", "ft"), new TableColumn("RHOB", "sg"), site, 25);
        double[] z = log.depths();
        Overburden overburden = new Overburden(site.datum(), 1025, new Overburden.MeanDensity(2200, 100));
        double found = overburden.along(log).likely().lowestAt(z[z.length - 1]);

        // The rows stand 0.5 ft apart: the plain sum of the readings, the ends by half, straight from the text.
        double sum = 0;
        double first = Double.NaN;
        double last = Double.NaN;
        boolean data = false;
        for (String line : Files.readAllLines(FILE)) {
            if (line.startsWith("~")) {
                data = line.startsWith("~ASCII");
            } else if (data && !line.isBlank() && !line.startsWith("#")) {
                double value = Double.parseDouble(line.split(",")[11].strip());
                if (value != -999.25) {
                    first = Double.isNaN(first) ? value : first;
                    last = value;
                    sum += value;
                }
            }
        }
        double logged = (sum - (first + last) / 2) * 1000 * 0.5 * 0.3048 * Physics.GRAVITY;
        double above = 2200 * Physics.GRAVITY * (z[0] - 13 * 0.3048);
        assertEquals(Physics.ATMOSPHERE + above + logged, found, 1e-9 * found);
    }

    @Test
    void aLogIsTurnedRoundAndItsUnitsAreChecked() throws DataFileFault {
        LasFile las = LasReader.read(FILE.resolveSibling("sample.las"));
        OffsetSite site = new OffsetSite("A", new Datum("rotary table", 300, new Datum.OnLand(5)), Optional.empty());
        DepthColumns depth = DepthColumns.vertical("DEPT", "m", DepthColumns.Level.GROUND);
        DensityLog log = LogImport.density(las, depth, new TableColumn("RHOB", "kg/m3"), site, 0);
        assertArrayEquals(new double[] {1674.75, 1674.875, 1675}, log.depths());
        assertArrayEquals(new double[] {2550, 2550, 2550}, log.densities());
        assertThrows(UnitFault.class, () -> LogImport.density(las, depth, new TableColumn("RHOB", "US/M"), site, 0));
        assertThrows(InputFault.class, () -> LogImport.density(las, depth, new TableColumn("RHOZ", "kg/m3"), site, 0));
        assertThrows(
                InputFault.class,
                () -> LogImport.density(
                        las, DepthColumns.measured("DEPT", "m"), new TableColumn("RHOB", "kg/m3"), site, 0));
    }
}
