package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import staunch.earth.PumpingTest;
import staunch.units.Source;
import staunch.units.UnitSystem;

class SpikesTest {
    private static final double[] AT =
            IntStream.range(0, 20).mapToDouble(i -> 10.0 * i).toArray();

    private static double[] line(double slope) {
        return IntStream.range(0, 20).mapToDouble(i -> 100 + slope * AT[i]).toArray();
    }

    @Test
    void aValueOffALevelOrALineIsFoundWithWhatItsNeighboursLetExpect() {
        double[] level = line(0);
        level[7] += 50;
        assertEquals(List.of(new Spikes.Apart(7, 100)), Spikes.aroundMedian(level, 10));
        double[] rising = line(3);
        double straight = rising[7];
        rising[7] -= 50;
        List<Spikes.Apart> found = Spikes.aroundLine(AT, rising, 10);
        assertEquals(1, found.size());
        assertEquals(7, found.get(0).index());
        // An exact line has the same least squares without the spike: an independent library says where the value was.
        SimpleRegression others = new SimpleRegression();
        IntStream.range(0, 20).filter(i -> i != 7).forEach(i -> others.addData(AT[i], rising[i]));
        assertEquals(others.predict(AT[7]), found.get(0).expected(), 1e-9);
        assertEquals(straight, found.get(0).expected(), 1e-9);
    }

    @Test
    void neitherABendNorAStepNorNoiseNorADifferenceThatDoesNotCountIsOne() {
        double[] bend = line(3);
        for (int i = 11; i < 20; i++) {
            bend[i] = bend[10] + 0.4 * (AT[i] - AT[10]);
        }
        assertEquals(List.of(), Spikes.aroundLine(AT, bend, 0.1));
        double[] step = line(0);
        for (int i = 10; i < 20; i++) {
            step[i] += 60;
        }
        assertEquals(List.of(), Spikes.aroundLine(AT, step, 10));
        assertEquals(List.of(), Spikes.aroundMedian(step, 10));
        double[] small = line(3);
        small[7] += 9;
        assertEquals(List.of(), Spikes.aroundLine(AT, small, 10));
        Random noise = new Random(1);
        double[] rough = line(3);
        for (int i = 0; i < 20; i++) {
            rough[i] += 12 * (2 * noise.nextDouble() - 1);
        }
        assertEquals(List.of(), Spikes.aroundLine(AT, rough, 10));
    }

    @Test
    void readingsAtOnePlaceAndShortSeriesAreNotJudged() {
        double[] same = new double[7];
        double[] values = {1, 1, 1, 900, 1, 1, 1};
        assertEquals(List.of(), Spikes.aroundLine(same, values, 1));
        assertEquals(List.of(), Spikes.aroundLine(new double[0], new double[0], 1));
        assertEquals(List.of(), Spikes.aroundMedian(new double[] {1, 900, 1}, 1));
    }

    /** Invented: 10 bar for every 50 l up to 100 bar, then 2 bar for every 50 l; 80 bar with the pump stopped, falling. */
    private static PumpingTest test(int spiked, double bar, int shutIn, double after) {
        List<PumpingTest.Pumped> pumped = new ArrayList<>();
        for (int i = 0; i <= 15; i++) {
            double rising = i <= 10 ? 10.0 * i : 100 + 2.0 * (i - 10);
            pumped.add(new PumpingTest.Pumped(0.05 * i, (i == spiked ? bar : rising) * 1e5));
        }
        List<PumpingTest.ShutIn> stopped = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            stopped.add(new PumpingTest.ShutIn(60 * (i + 1), (i == shutIn ? after : 80 + 10.0 / (i + 1)) * 1e5));
        }
        return new PumpingTest("LOT", pumped, stopped, new Source("invented", ""));
    }

    private static List<String> said(PumpingTest test) {
        return Spikes.ofPumping("curves.csv", "A 1", test).stream()
                .map(w -> w.text(UnitSystem.METRIC))
                .toList();
    }

    @Test
    void aMisreadingOfAPumpingCurveIsSaidWithVolumeAndPressures() {
        assertEquals(Collections.emptyList(), said(test(-1, 0, -1, 0)));
        for (double bar : new double[] {80, 0, 600}) {
            List<String> said = said(test(6, bar, -1, 0));
            assertEquals(1, said.size(), said.toString());
            assertEquals(
                    "A 1: LOT has %.1f bar at 0.3 m³ pumped where the readings beside it let expect 60.0 bar: perhaps a"
                                    .formatted(bar)
                            + " misreading. It counts; take its row out if it is one.",
                    said.get(0));
        }
        List<String> stopped = said(test(-1, 0, 3, 130));
        assertEquals(1, stopped.size(), stopped.toString());
    }
}
