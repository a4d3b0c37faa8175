package staunch.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import staunch.units.InputFault;
import staunch.units.RangeFault;
import staunch.well.WellPath;

class ProfilesTest {
    private static final PressureProfile STEPPED =
            PressureProfile.of(new double[] {1000, 2000, 2000, 3000}, new double[] {10e6, 20e6, 30e6, 40e6});

    @Test
    void pressureIsLinearBetweenPointsAndHasTwoSidesAtAStep() {
        assertEquals(15e6, STEPPED.above(1500), 1e-6);
        assertEquals(15e6, STEPPED.below(1500), 1e-6);
        assertEquals(20e6, STEPPED.above(2000), 1e-6);
        assertEquals(30e6, STEPPED.below(2000), 1e-6);
        assertEquals(20e6, STEPPED.lowestAt(2000), 1e-6);
        assertEquals(30e6, STEPPED.highestAt(2000), 1e-6);
        assertEquals(10e6, STEPPED.lowestAt(1000), 1e-6);
        assertEquals(40e6, STEPPED.lowestAt(3000), 1e-6);
    }

    @Test
    void aProfileIsNeverExtended() {
        assertThrows(RangeFault.class, () -> STEPPED.lowestAt(999.99));
        assertThrows(RangeFault.class, () -> STEPPED.highestAt(3000.01));
        assertTrue(STEPPED.covers(3000));
        assertFalse(STEPPED.covers(3000.01));
        // Rounding of a unit conversion or of the path does not leave the profile; its end value counts there.
        assertTrue(STEPPED.covers(3000 + 5e-7));
        assertFalse(STEPPED.covers(3000 + 2e-6));
        assertEquals(STEPPED.below(3000), STEPPED.below(3000 + 5e-7), 0);
        assertEquals(STEPPED.above(3000), STEPPED.highestAt(3000 + 5e-7), 0);
    }

    @Test
    void aProfileOfOnePointHoldsThereAlone() {
        PressureProfile point = PressureProfile.of(new double[] {1000}, new double[] {10e6});
        assertEquals(10e6, point.lowestAt(1000), 0);
        assertThrows(RangeFault.class, () -> point.lowestAt(1001));
    }

    @Test
    void profileFaults() {
        assertThrows(InputFault.class, () -> PressureProfile.of(new double[] {}, new double[] {}));
        assertThrows(InputFault.class, () -> PressureProfile.of(new double[] {1, 2}, new double[] {2e5}));
        assertThrows(InputFault.class, () -> PressureProfile.of(new double[] {2, 1}, new double[] {2e5, 2e5}));
        assertThrows(InputFault.class, () -> PressureProfile.of(new double[] {1, 1, 1}, new double[] {2e5, 3e5, 4e5}));
        assertThrows(RangeFault.class, () -> PressureProfile.of(new double[] {1}, new double[] {Double.NaN}));
    }

    @Test
    void estimatesMayTouchButNotCross() {
        PressureProfile likely = Rocks.profile(1000, 1200, 3000, 1300);
        Optional<PressureProfile> lower = Optional.of(Rocks.profile(1000, 1200, 3000, 1250));
        Optional<PressureProfile> higher = Optional.of(Rocks.profile(1000, 1250, 2000, 1190, 3000, 1400));
        assertEquals(likely, new Range(likely, lower, Optional.empty()).highOrLikely());
        InputFault fault = assertThrows(InputFault.class, () -> new Range(likely, lower, higher));
        assertEquals(
                "pressure profile has a likely estimate above its high estimate at vertical depth 2000 m; exchange them"
                        + " or check the values there",
                fault.getMessage());
    }

    @Test
    void porePressureAlongHoleTakesTheHigherSideAndNamesItsGaps() {
        PressureAlongHole along =
                PressureAlongHole.of(STEPPED, WellPath.vertical(4000), new OpenHole("shoe", 500, 3500, 0));
        assertEquals(List.of(new Gap(500, 1000, 500, 1000), new Gap(3000, 3500, 3000, 3500)), along.gaps());
        assertEquals(30e6, along.highestAt(WellPath.vertical(4000), 2000).orElseThrow(), 1e-3);
        assertTrue(along.highestAt(WellPath.vertical(4000), 700).isEmpty());
        assertEquals(4, along.nodes().size());
        OpenHole point = new OpenHole("shoe", 2000, 2000, 0);
        assertEquals(
                30e6,
                PressureAlongHole.of(STEPPED, WellPath.vertical(4000), point)
                        .nodes()
                        .get(0)
                        .pressure(),
                1e-3);
    }

    @Test
    void geothermalBeginsAtTheMudline() {
        TemperatureProfile t = TemperatureProfile.geothermal(new TemperatureProfile.Point(500, 277.15), 0.03, 4000);
        assertEquals(277.15, t.at(100), 1e-9);
        assertEquals(277.15, t.at(500), 1e-9);
        assertEquals(277.15 + 0.03 * 1000, t.at(1500), 1e-9);
        assertThrows(RangeFault.class, () -> t.at(4001));
        assertTrue(TemperatureProfile.isothermal(300).covers(9000));
    }
}
