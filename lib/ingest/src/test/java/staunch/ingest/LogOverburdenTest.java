package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import staunch.earth.DensityLog;
import staunch.earth.Overburden;
import staunch.units.Physics;
import staunch.units.Source;
import staunch.well.Datum;

/** A public log, from the file to the overburden. */
class LogOverburdenTest {
    private static final Path FILE = Path.of("src", "test", "resources", "las", "Wellington_KGS-1-32-wDST2_LASv3.las");

    @Test
    void bulkDensityOfALogWeighsWhatItsRowsSay() throws DataFileFault, IOException {
        LasFile las = LasReader.read(FILE);
        assertEquals("F", las.curve("DEPT").unit());
        assertEquals("g/cc", las.curve("RHOB").unit());
        List<Double> depths = new ArrayList<>();
        List<Double> densities = new ArrayList<>();
        for (int row = 0; row < las.rows(); row++) {
            double depth = las.curve("DEPT").number(row).orElseThrow() * 0.3048;
            las.curve("RHOB").number(row).ifPresent(rho -> {
                depths.add(depth);
                densities.add(rho * 1000);
            });
        }
        double[] z = depths.stream().mapToDouble(d -> d).toArray();
        double[] rho = densities.stream().mapToDouble(d -> d).toArray();
        Datum datum = new Datum("kelly bushing", 1272 * 0.3048, new Datum.OnLand(13 * 0.3048));
        Overburden overburden = new Overburden(datum, 1025, new Overburden.MeanDensity(2200, 100));
        double bottom = z[z.length - 1];
        double found = overburden
                .along(DensityLog.of(z, rho, 25, new Source("Wellington KGS 1-32", "RHOB")))
                .likely()
                .lowestAt(bottom);

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
}
