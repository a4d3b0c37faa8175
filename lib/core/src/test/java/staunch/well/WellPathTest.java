package staunch.well;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import staunch.units.InputFault;
import staunch.units.RangeFault;

class WellPathTest {
    @Test
    void aSurveyThatBeginsBelowTheDatumLeavesItVertically() {
        WellPath path = Surveys.degrees(500, 0, 0, 800, 30, 45);
        assertTrue(path.tieInAssumed());
        assertEquals(500, path.verticalDepth(500), 1e-12);
        assertEquals(250, path.verticalDepth(250), 1e-12);
        assertEquals(2, path.stations().size());
        assertFalse(Surveys.degrees(0, 0, 0, 100, 2, 0).tieInAssumed());
    }

    @Test
    void theTieInBendsEvenlyToAnInclinedFirstStation() {
        // A quarter of the dogleg at a quarter of the way; a circle of radius 300/(π/6).
        WellPath path = Surveys.degrees(300, 30, 0);
        double radius = 300 / (Math.PI / 6);
        assertEquals(Math.toRadians(7.5), path.inclination(75), 1e-12);
        assertEquals(radius * Math.sin(Math.toRadians(7.5)), path.verticalDepth(75), 1e-9);
        assertEquals(radius * (1 - Math.cos(Math.toRadians(7.5))), path.north(75), 1e-9);
    }

    @Test
    void insideAnArcTheInclinationFollowsTheArc() {
        WellPath path = Surveys.degrees(0, 0, 0, 900, 90, 0);
        assertEquals(Math.toRadians(45), path.inclination(450), 1e-12);
        assertEquals(Math.PI / 2 / 900, path.doglegSeverity(450), 1e-15);
        // Not the straight line between the stations: sin 45° of the radius.
        assertEquals(900 / (Math.PI / 2) * Math.sin(Math.PI / 4), path.verticalDepth(450), 1e-9);
    }

    @Test
    void aToeUpWellTurnsWhereItRunsLevel() {
        WellPath path = Surveys.degrees(0, 0, 0, 1000, 60, 90, 1600, 120, 90, 2000, 120, 90);
        double[] nodes = path.nodesBetween(0, 2000);
        assertArrayEquals(new double[] {1000, 1300, 1600}, nodes, 1e-9);
        double deepest = path.verticalDepth(1300);
        assertTrue(path.verticalDepth(1290) < deepest && path.verticalDepth(1310) < deepest);
        assertEquals(0, path.verticalRate(1300), 1e-12);
        assertEquals(-0.5, path.verticalRate(1800), 1e-12);
        assertEquals(Math.toRadians(120), path.greatestInclination(), 1e-12);
        double z = path.verticalDepth(1200);
        assertArrayEquals(new double[] {1200, 1400}, path.measuredDepthsAt(z, 0, 2000), 1e-7);
        assertArrayEquals(new double[] {1400}, path.measuredDepthsAt(z, 1250, 2000), 1e-7);
        assertEquals(0, path.measuredDepthsAt(deepest + 1, 0, 2000).length);
    }

    @Test
    void faultsNameWhatIsWrong() {
        assertEquals(
                "survey has two stations at measured depth 100.0 m; keep one of them",
                assertThrows(InputFault.class, () -> Surveys.degrees(0, 0, 0, 100, 1, 0, 100, 2, 0))
                        .getMessage());
        assertEquals(
                "survey has measured depth 50.0 m after 100.0 m; sort its stations downwards",
                assertThrows(InputFault.class, () -> Surveys.degrees(0, 0, 0, 100, 1, 0, 50, 2, 0))
                        .getMessage());
        assertEquals(
                "survey has no station; give at least one",
                assertThrows(InputFault.class, () -> WellPath.of(List.of())).getMessage());
        assertEquals(
                "survey turns by half a turn between 100.0 m and 200.0 m; check inclination and azimuth of these"
                        + " stations",
                assertThrows(InputFault.class, () -> Surveys.degrees(0, 0, 0, 100, 90, 0, 200, 90, 180))
                        .getMessage());
        WellPath path = WellPath.vertical(3000);
        assertEquals(
                "measured depth asked of the well path 3100 m is outside 0 m to 3000 m; extend the survey in the case",
                assertThrows(RangeFault.class, () -> path.verticalDepth(3100)).getMessage());
        assertThrows(RangeFault.class, () -> path.verticalDepth(Double.NaN));
        assertThrows(RangeFault.class, () -> path.extendedTo(2000));
        assertThrows(RangeFault.class, () -> WellPath.vertical(0));
        assertThrows(InputFault.class, () -> path.nodesBetween(200, 100));
    }

    @Test
    void extendingToTheEndIsThePathItself() {
        WellPath path = WellPath.vertical(3000);
        assertEquals(path, path.extendedTo(3000));
        assertEquals(3500, path.extendedTo(3500).verticalDepth(3500), 1e-9);
    }
}
