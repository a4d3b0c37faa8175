package staunch.well;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class WellPathLawTest {
    /** Rounding of some hundred additions of numbers up to 5000 m. */
    private static final double ROUNDING = 1e-8;

    @Provide
    Arbitrary<WellPath> paths() {
        return Surveys.any();
    }

    @Property(tries = 300, seed = "1")
    void aSurveySplitAnywhereChangesNothing(
            @ForAll("paths") WellPath path,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double share,
            @ForAll @DoubleRange(min = 0, max = 1) double asked) {
        double md = share * path.end();
        double azimuth = azimuth(path, md);
        List<SurveyStation> stations = new ArrayList<>(path.stations());
        if (stations.stream().anyMatch(s -> Math.abs(s.measuredDepth() - md) < 1e-3)) {
            return;
        }
        stations.add(new SurveyStation(md, path.inclination(md), azimuth));
        stations.sort(Comparator.comparingDouble(SurveyStation::measuredDepth));
        WellPath split = WellPath.of(stations);
        double at = asked * path.end();
        assertEquals(path.verticalDepth(at), split.verticalDepth(at), 1e-6, "vertical depth");
        assertEquals(path.north(at), split.north(at), 1e-6, "north");
        assertEquals(path.east(at), split.east(at), 1e-6, "east");
        assertEquals(path.verticalRate(at), split.verticalRate(at), 1e-6, "rate");
    }

    /** Direction from differences of position: known to about 1e-9, which a split turns into less than 1e-6 m. */
    private static double azimuth(WellPath path, double md) {
        double h = 1e-3;
        double above = Math.max(0, md - h);
        double below = Math.min(path.end(), md + h);
        double north = path.north(below) - path.north(above);
        double east = path.east(below) - path.east(above);
        double azimuth = Math.atan2(east, north);
        return azimuth < 0 ? azimuth + 2 * Math.PI : azimuth;
    }

    @Property(tries = 200, seed = "1")
    void depthIsTheIntegralOfItsRate(@ForAll("paths") WellPath path) {
        // Simpson's rule on each arc: error of order (dogleg / parts)^4, below 1e-7 of the length for 200 parts.
        double[] nodes = nodes(path);
        double sum = 0;
        for (int i = 1; i < nodes.length; i++) {
            int parts = 200;
            double h = (nodes[i] - nodes[i - 1]) / parts;
            // The rate jumps nowhere, so that the value at a station belongs to both arcs.
            double s = path.verticalRate(nodes[i - 1]) + path.verticalRate(nodes[i]);
            for (int k = 1; k < parts; k++) {
                s += (k % 2 == 1 ? 4 : 2) * path.verticalRate(nodes[i - 1] + k * h);
            }
            sum += s * h / 3;
            assertEquals(sum, path.verticalDepth(nodes[i]), 1e-6 * nodes[i]);
        }
    }

    @Property(tries = 200, seed = "1")
    void aStepAlongHoleIsNeverShorterThanTheChord(
            @ForAll("paths") WellPath path,
            @ForAll @DoubleRange(min = 0, max = 1) double a,
            @ForAll @DoubleRange(min = 0, max = 1) double b) {
        double from = a * path.end();
        double to = b * path.end();
        double chord = Math.hypot(
                Math.hypot(path.north(to) - path.north(from), path.east(to) - path.east(from)),
                path.verticalDepth(to) - path.verticalDepth(from));
        assertTrue(chord <= Math.abs(to - from) + ROUNDING);
    }

    @Property(tries = 200, seed = "1")
    void verticalDepthIsMonotoneBetweenNodes(@ForAll("paths") WellPath path) {
        double[] nodes = nodes(path);
        for (int i = 1; i < nodes.length; i++) {
            double previous = path.verticalDepth(nodes[i - 1]);
            double sign = Math.signum(path.verticalDepth(nodes[i]) - previous);
            for (int k = 1; k <= 20; k++) {
                double next = path.verticalDepth(nodes[i - 1] + k * (nodes[i] - nodes[i - 1]) / 20);
                assertTrue(sign * (next - previous) >= -ROUNDING);
                previous = next;
            }
        }
    }

    @Property(tries = 200, seed = "1")
    void everyMeasuredDepthOfAVerticalDepthIsFound(
            @ForAll("paths") WellPath path, @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        double md = share * path.end();
        double z = path.verticalDepth(md);
        double[] found = path.measuredDepthsAt(z, 0, path.end());
        double nearest = Double.POSITIVE_INFINITY;
        for (double f : found) {
            assertEquals(z, path.verticalDepth(f), ROUNDING);
            nearest = Math.min(
                    nearest, Math.abs(path.verticalDepth(f) - z) + Math.abs(f - md) * Math.abs(path.verticalRate(md)));
        }
        // Near a level stretch the measured depth is loosely determined; its vertical depth is not.
        assertTrue(nearest < 1e-4, "nearest " + nearest);
    }

    @Property(tries = 100, seed = "1")
    void aVerticalSurveyIsTheVerticalWell(
            @ForAll @DoubleRange(min = 100, max = 9000) double end,
            @ForAll @DoubleRange(min = 0, max = 6.28) double azimuth,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        WellPath surveyed = WellPath.of(List.of(
                new SurveyStation(0, 0, azimuth),
                new SurveyStation(0.3 * end, 0, 0),
                new SurveyStation(end, 0, azimuth)));
        double md = share * end;
        assertEquals(md, surveyed.verticalDepth(md), 1e-12 * end);
        assertEquals(0, surveyed.north(md), 0);
        assertEquals(0, surveyed.east(md), 0);
        assertEquals(1, surveyed.verticalRate(md), 0);
        assertEquals(md, WellPath.vertical(end).verticalDepth(md), 0);
    }

    @Property(tries = 100, seed = "1")
    void extendingKeepsWhatIsThere(
            @ForAll("paths") WellPath path, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        WellPath longer = path.extendedTo(path.end() + 500);
        double md = share * path.end();
        assertEquals(path.verticalDepth(md), longer.verticalDepth(md), 0);
        assertEquals(
                path.verticalDepth(path.end()) + 500 * Math.cos(path.inclination(path.end())),
                longer.verticalDepth(longer.end()),
                ROUNDING);
    }

    @Property(tries = 100, seed = "1")
    void noPointIsSteeperThanTheGreatestInclination(
            @ForAll("paths") WellPath path, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        assertTrue(path.inclination(share * path.end()) <= path.greatestInclination() + 1e-9);
    }

    private static double[] nodes(WellPath path) {
        double[] inside = path.nodesBetween(0, path.end());
        double[] all = new double[inside.length + 2];
        System.arraycopy(inside, 0, all, 1, inside.length);
        all[all.length - 1] = path.end();
        for (int i = 1; i < all.length; i++) {
            assertTrue(all[i] > all[i - 1]);
        }
        assertArrayEquals(inside, path.nodesBetween(0, path.end()));
        return all;
    }
}
