package staunch.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import staunch.units.InputFault;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.well.WellPath;

class ExposedStrengthTest {
    private static final WellPath VERTICAL = WellPath.vertical(4000);
    private static final OpenHole HOLE = new OpenHole("shoe of 9 5/8 in", 2000, 3000, 1e6);
    private static final Range PREDICTED = Range.of(Rocks.profile(1000, 1700, 4000, 1900));

    private static ExposedStrength low(Optional<Range> strength, List<StrengthTest> tests, List<WeakZone> zones) {
        return ExposedStrength.of(Rocks.earth(strength, tests, zones), VERTICAL, HOLE, ExposedStrength.Estimate.LOW);
    }

    /** Nodes in words: depth, equivalent density and name, both in whole units. */
    private static String words(ExposedStrength strength) {
        return strength.nodes().stream()
                .map(n -> Math.round(n.measuredDepth()) + " "
                        + Math.round((n.strength() - Physics.ATMOSPHERE) / Physics.GRAVITY / n.verticalDepth()) + " "
                        + n.name())
                .collect(Collectors.joining("; "));
    }

    private static double predicted(double z) {
        return PREDICTED.likely().lowestAt(z);
    }

    @Test
    void withoutATestTheShoeIsPredicted() {
        ExposedStrength s = low(Optional.of(PREDICTED), List.of(), List.of());
        assertTrue(s.complete());
        assertEquals(2, s.nodes().size());
        assertEquals("shoe of 9 5/8 in", s.nodes().get(0).name());
        assertEquals("predicted strength, likely estimate", s.nodes().get(0).basis());
        assertEquals(predicted(2000), s.shoe().orElseThrow().strength(), 1e-3);
        assertEquals(predicted(2000) - 1e6, s.shoe().orElseThrow().limit(), 1e-3);
        assertEquals("open hole", s.nodes().get(1).name());
        assertEquals(predicted(2400), s.lowestAt(VERTICAL, 2400).orElseThrow().strength(), 1e-3);
        assertTrue(s.lowestAt(VERTICAL, 3100).isEmpty());
    }

    @Test
    void theLowEstimateCountsUnlessTheLikelyIsChosen() {
        PressureProfile lower = Rocks.profile(1000, 1600, 4000, 1800);
        Optional<Range> range = Optional.of(new Range(PREDICTED.likely(), Optional.of(lower), Optional.empty()));
        ExposedStrength s = low(range, List.of(), List.of());
        assertEquals(lower.lowestAt(2000), s.shoe().orElseThrow().strength(), 1e-3);
        assertEquals("predicted strength, low estimate", s.shoe().orElseThrow().basis());
        ExposedStrength likely = ExposedStrength.of(
                Rocks.earth(range, List.of(), List.of()), VERTICAL, HOLE, ExposedStrength.Estimate.LIKELY);
        assertEquals(predicted(2000), likely.shoe().orElseThrow().strength(), 1e-3);
    }

    @Test
    void theTestOfTheShoeCountsDownToItsOwnDepthAndNoDeeper() {
        ExposedStrength s = low(
                Optional.of(Range.of(Rocks.profile(1000, 1700, 4000, 1700))),
                List.of(Rocks.test("LOT 1", 2020, 1850, Standing.LEAK_OFF)),
                List.of());
        assertEquals(
                "2000 1850 shoe of 9 5/8 in; 2020 1850 open hole; 2020 1700 open hole; 3000 1700 open hole", words(s));
        assertEquals("leak-off test \"LOT 1\"", s.nodes().get(0).basis());
        assertEquals(
                Rocks.pressure(1850, 2010),
                s.lowestAt(VERTICAL, 2010).orElseThrow().strength(),
                1e-2);
        assertEquals(
                Rocks.pressure(1700, 2020),
                s.lowestAt(VERTICAL, 2020).orElseThrow().strength(),
                1e-2);
    }

    @Test
    void aTestMoreThanThirtyMetresBelowTheShoeIsAPoint() {
        List<StrengthTest> tests = List.of(
                Rocks.test("deep", 2031, 1600, Standing.LEAK_OFF),
                Rocks.test("strong", 2500, 2100, Standing.EXTENDED_LEAK_OFF));
        ExposedStrength s = low(Optional.of(Range.of(Rocks.profile(1000, 1700, 4000, 1700))), tests, List.of());
        assertEquals(
                "2000 1700 shoe of 9 5/8 in; 2031 1700 open hole; 2031 1600 leak-off test \"deep\"; 2031 1700 open"
                        + " hole; 2500 1700 open hole; 2500 2100 extended leak-off test \"strong\"; 2500 1700 open"
                        + " hole; 3000 1700 open hole",
                words(s));
        assertEquals(
                Rocks.pressure(1600, 2031),
                s.lowestAt(VERTICAL, 2031).orElseThrow().strength(),
                1e-2);
        assertEquals(
                Rocks.pressure(1700, 2500),
                s.lowestAt(VERTICAL, 2500).orElseThrow().strength(),
                1e-2);
    }

    @Test
    void aTestRecordedAtTheShoeCountsThereOnly() {
        ExposedStrength s = low(
                Optional.of(Range.of(Rocks.profile(1000, 1700, 4000, 1700))),
                List.of(Rocks.test("LOT", 1999.2, 1650, Standing.LEAK_OFF)),
                List.of());
        assertEquals("2000 1650 shoe of 9 5/8 in; 2000 1700 open hole; 3000 1700 open hole", words(s));
        assertEquals(Rocks.pressure(1650, 2000), s.shoe().orElseThrow().strength(), 1e-2);
    }

    @Test
    void leakOffComesBeforeIntegrityTestAndThatBeforePrediction() {
        StrengthTest predicted = Rocks.test("offset", 2003, 1500, Standing.PREDICTED);
        StrengthTest weakPassed = Rocks.test("FIT 1", 2003, 1600, Standing.INTEGRITY_TEST);
        StrengthTest passed = Rocks.test("FIT 2", 2005, 1650, Standing.INTEGRITY_TEST);
        StrengthTest leak = Rocks.test("LOT 1", 2004, 1750, Standing.LEAK_OFF);
        StrengthTest lowerLeak = Rocks.test("XLOT", 2004, 1720, Standing.EXTENDED_LEAK_OFF);
        assertEquals("offset", shoe(predicted));
        assertEquals("FIT 1", shoe(predicted, weakPassed));
        assertEquals("FIT 2", shoe(predicted, weakPassed, passed));
        assertEquals("LOT 1", shoe(predicted, weakPassed, passed, leak));
        assertEquals("XLOT", shoe(leak, lowerLeak, passed));
        ExposedStrength s = low(Optional.empty(), List.of(passed), List.of());
        assertEquals(
                "formation integrity test \"FIT 2\" (a lower bound)",
                s.shoe().orElseThrow().basis());
    }

    private static String shoe(StrengthTest... tests) {
        String basis = low(Optional.empty(), List.of(tests), List.of())
                .shoe()
                .orElseThrow()
                .basis();
        return basis.substring(basis.indexOf('"') + 1, basis.lastIndexOf('"'));
    }

    @Test
    void withoutAProfileOnlyTheShoeIsKnown() {
        ExposedStrength s = low(Optional.empty(), List.of(Rocks.test("LOT", 2003, 1750, Standing.LEAK_OFF)), List.of());
        assertFalse(s.complete());
        assertFalse(s.unknown());
        assertEquals("2000 1750 shoe of 9 5/8 in; 2003 1750 open hole", words(s));
        assertEquals(1, s.gaps().size());
        assertEquals(2003, s.gaps().get(0).from(), 1e-6);
        assertEquals(3000, s.gaps().get(0).to(), 1e-6);
        assertTrue(s.lowestAt(VERTICAL, 2500).isEmpty());
    }

    @Test
    void nothingIsKnownWithoutTestAndProfile() {
        ExposedStrength s = low(Optional.empty(), List.of(), List.of());
        assertTrue(s.unknown());
        assertTrue(s.shoe().isEmpty());
        assertEquals(List.of(new Gap(2000, 3000, 2000, 3000)), s.gaps());
    }

    @Test
    void depthsOutsideTheProfileAreNamed() {
        ExposedStrength s = low(Optional.of(Range.of(Rocks.profile(2200, 1700, 2800, 1700))), List.of(), List.of());
        assertEquals("2200 1700 open hole; 2800 1700 open hole", words(s));
        assertEquals(List.of(new Gap(2000, 2200, 2000, 2200), new Gap(2800, 3000, 2800, 3000)), s.gaps());
        assertTrue(s.shoe().isEmpty());
        assertTrue(s.lowestAt(VERTICAL, 2100).isEmpty());
    }

    @Test
    void aWeakZoneLowersTheProfileAndNeverRaisesIt() {
        ExposedStrength s = low(
                Optional.of(Range.of(Rocks.profile(1000, 1700, 4000, 1700))),
                List.of(),
                List.of(Rocks.zone("depleted sand", 2400, 2450, 1500), Rocks.zone("hard sand", 2600, 2650, 1900)));
        assertEquals(
                "2000 1700 shoe of 9 5/8 in; 2400 1700 open hole; 2400 1500 depleted sand; 2450 1500 depleted sand;"
                        + " 2450 1700 open hole; 2600 1700 open hole; 2650 1700 open hole; 3000 1700 open hole",
                words(s));
    }

    @Test
    void whereZoneAndProfileCrossThereIsANode() {
        PressureProfile profile = Rocks.profile(1000, 1800, 4000, 1650);
        double meet = 2600;
        double zone = (profile.lowestAt(meet) - Physics.ATMOSPHERE) / Physics.GRAVITY / meet;
        ExposedStrength s =
                low(Optional.of(Range.of(profile)), List.of(), List.of(Rocks.zone("zone", 2000, 3000, zone)));
        // One for each basis.
        assertEquals(
                2,
                s.nodes().stream()
                        .filter(n -> Math.abs(n.verticalDepth() - meet) < 1e-6)
                        .count());
        for (double z = 2000; z <= 3000; z += 50) {
            assertEquals(
                    Math.min(profile.lowestAt(z), Rocks.pressure(zone, z)),
                    s.lowestAt(VERTICAL, z).orElseThrow().strength(),
                    1e-2);
        }
    }

    @Test
    void aZoneWithoutHeightIsAPoint() {
        ExposedStrength s = low(
                Optional.of(Range.of(Rocks.profile(1000, 1700, 4000, 1700))),
                List.of(),
                List.of(Rocks.zone("fault", 2500, 2500, 1400)));
        assertEquals(
                "2000 1700 shoe of 9 5/8 in; 2500 1700 open hole; 2500 1400 fault; 2500 1700 open hole; 3000 1700"
                        + " open hole",
                words(s));
    }

    @Test
    void aStepOfTheProfileGivesBothSides() {
        PressureProfile profile = Rocks.profile(1000, 1800, 2500, 1800, 2500, 1600, 4000, 1600);
        ExposedStrength s = low(Optional.of(Range.of(profile)), List.of(), List.of());
        assertEquals(
                "2000 1800 shoe of 9 5/8 in; 2500 1800 open hole; 2500 1600 open hole; 3000 1600 open hole", words(s));
    }

    @Test
    void aToeUpHoleMeetsAZoneTwice() {
        // Down to level at about 2237 m vertical, then up again.
        WellPath path = Rocks.path(0, 0, 1600, 0, 2600, 90, 2800, 100, 4000, 100);
        double top = path.verticalDepth(2400);
        double deepest = path.verticalDepth(2600);
        ExposedStrength s = ExposedStrength.of(
                Rocks.earth(
                        Optional.of(Range.of(Rocks.profile(1000, 1700, 4000, 1700))),
                        List.of(),
                        List.of(Rocks.zone("sand", top, 0.5 * (top + deepest), 1500))),
                path,
                new OpenHole("shoe", 2000, 4000, 0),
                ExposedStrength.Estimate.LOW);
        assertEquals(
                "2000 1700 shoe; 2400 1700 open hole; 2400 1500 sand; 2459 1500 sand; 2459 1700 open hole; 2600 1700"
                        + " open hole; 2789 1700 open hole; 2789 1500 sand; 2800 1500 sand; 2879 1500 sand; 2879 1700"
                        + " open hole; 4000 1700 open hole",
                words(s));
        // The turn itself is a node: strength is linear in vertical depth between nodes.
        assertTrue(s.nodes().stream().anyMatch(n -> Math.abs(n.verticalDepth() - deepest) < 1e-6));
    }

    @Test
    void theTestOfTheShoeDoesNotFollowALevelHole() {
        WellPath path = Rocks.path(0, 0, 1000, 0, 2000, 90, 4000, 90);
        double z = path.verticalDepth(2000);
        ExposedStrength s = ExposedStrength.of(
                Rocks.earth(Optional.empty(), List.of(Rocks.test("LOT", z + 3, 1800, Standing.LEAK_OFF)), List.of()),
                path,
                new OpenHole("shoe", 2000, 4000, 0),
                ExposedStrength.Estimate.LOW);
        assertEquals(1, s.gaps().size());
        assertEquals(2100, s.gaps().get(0).from(), 1e-6);
    }

    @Test
    void aHoleThatEndsAtTheShoeHasTheShoeAlone() {
        OpenHole none = new OpenHole("shoe", 2000, 2000, 0);
        EarthModel earth = Rocks.earth(Optional.of(PREDICTED), List.of(), List.of());
        ExposedStrength s = ExposedStrength.of(earth, VERTICAL, none, ExposedStrength.Estimate.LOW);
        assertEquals(1, s.nodes().size());
        assertTrue(s.complete());
        assertEquals(predicted(2000), s.shoe().orElseThrow().strength(), 1e-3);
        EarthModel empty = Rocks.earth(Optional.empty(), List.of(), List.of());
        assertTrue(ExposedStrength.of(empty, VERTICAL, none, ExposedStrength.Estimate.LOW)
                .unknown());
    }

    @Test
    void faults() {
        assertThrows(InputFault.class, () -> new OpenHole("shoe", 3000, 2000, 0));
        assertThrows(RangeFault.class, () -> new OpenHole("shoe", 2000, 3000, -1));
        EarthModel earth = Rocks.earth(Optional.of(PREDICTED), List.of(), List.of());
        assertThrows(
                RangeFault.class,
                () -> ExposedStrength.of(earth, WellPath.vertical(2500), HOLE, ExposedStrength.Estimate.LOW));
    }
}
