package staunch.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import staunch.units.Physics;
import staunch.well.Annulus;
import staunch.well.DrillString;
import staunch.well.StringComponent;
import staunch.well.StringGeometry;
import staunch.well.WellPath;

class KillSheetLawTest {
    private static final double SLOW_PRESSURE = 5e6;

    static KillSheetInput input(WellPath path, double shutInPressure, double step, StringFriction friction) {
        Annulus annulus = KillWells.annulus(3000, 0);
        return new KillSheetInput(
                path,
                annulus,
                1250,
                new KillSheetInput.ShutIn(shutInPressure, shutInPressure + 1.5e6, 3),
                new KillSheetInput.Pump(
                        0.016,
                        0.8,
                        new SlowCirculation(0.008, OptionalDouble.of(SLOW_PRESSURE), OptionalDouble.empty())),
                new KillSheetInput.OpenHoleLimit("shoe", 2000, 4e7),
                new KillSheetInput.KillMud(step, 0, 150, 4200),
                Optional.empty(),
                new KillSheetInput.Options(HydrostaticConstant.EXACT, friction, 40));
    }

    /**
     * Simulates the pump: the drill-pipe pressure of the schedule, the columns in the string and the friction behind and
     * ahead of the front. Bottom-hole pressure starts at the formation pressure and gains with depth what rounding up added,
     * no more. The simulation takes the same sharing of friction, which no well tells.
     */
    @Property(tries = 100, seed = "1")
    void theScheduleHoldsBottomHolePressureWithinTheRounding(
            @ForAll @DoubleRange(min = 200, max = 2000) double kickOff,
            @ForAll @DoubleRange(min = 0, max = 90) double inclination,
            @ForAll @DoubleRange(min = 5e5, max = 8e6) double shutIn,
            @ForAll @DoubleRange(min = 0.1, max = 20) double step) {
        WellPath path = KillWells.deviated(kickOff, inclination);
        for (StringFriction friction : StringFriction.values()) {
            KillSheetInput input = input(path, shutIn, step, friction);
            KillSheet sheet = KillSheet.of(input);
            StringGeometry string = input.annulus().string();
            double bit = path.verticalDepth(3000);
            double rounding = sheet.killDensity() - sheet.balancingDensity();
            assertTrue(rounding >= -1e-6 * step && rounding < step);
            for (PressureSchedule.Step s : sheet.schedule().steps()) {
                double front = s.frontMeasuredDepth();
                double vertical = path.verticalDepth(front);
                double column = Physics.GRAVITY * (sheet.killDensity() * vertical + 1250 * (bit - vertical));
                double share = friction.shareAbove(string, front);
                double loss = SLOW_PRESSURE * (sheet.killDensity() / 1250 * share + 1 - share);
                double bottom = s.pressure() + column - loss;
                double expected = sheet.formationPressure() + Physics.GRAVITY * rounding * vertical;
                assertEquals(expected, bottom, 1e-3);
            }
        }
    }

    /** What the front has passed is what was pumped; the last step is the bit at the final circulating pressure. */
    @Property(tries = 50, seed = "1")
    void volumesStrokesAndEndsAgree(
            @ForAll @DoubleRange(min = 0, max = 80) double inclination,
            @ForAll @DoubleRange(min = 5e5, max = 8e6) double shutIn) {
        KillSheet sheet =
                KillSheet.of(input(KillWells.deviated(700, inclination), shutIn, 5, StringFriction.BY_LENGTH));
        StringGeometry string = sheet.input().annulus().string();
        List<PressureSchedule.Step> steps = sheet.schedule().steps();
        for (PressureSchedule.Step s : steps) {
            if (s.pumped() >= 0.8) {
                double inside = Math.min(s.pumped() - 0.8, string.insideVolume());
                assertEquals(s.frontMeasuredDepth(), string.depthReached(inside), 1e-6);
            }
            assertEquals(s.pumped(), s.strokes() * 0.016, 1e-9);
            assertEquals(s.pressure(), sheet.schedule().pressureAfter(s.pumped()), 1e-6);
        }
        PressureSchedule.Step first = steps.get(0);
        PressureSchedule.Step last = steps.get(steps.size() - 1);
        assertEquals(sheet.initialCirculatingPressure(), first.pressure(), 1e-6);
        assertEquals(sheet.initialCirculatingPressure(), first.straightLine(), 1e-6);
        assertEquals(sheet.finalCirculatingPressure(), last.pressure(), 1e-6);
        assertEquals(sheet.finalCirculatingPressure(), last.straightLine(), 1e-6);
        assertEquals(3000, last.frontMeasuredDepth(), 1e-9);
        double all = sheet.legs().stream().mapToDouble(KillSheet.Leg::volume).sum();
        Annulus annulus = sheet.input().annulus();
        assertEquals(0.8 + annulus.stringVolume() + annulus.volume(), all, 1e-9);
        assertEquals(annulus.volume(), sheet.bottomsUpVolume(), 1e-9);
    }

    /** In a vertical well with one bore the straight line is exact. */
    @Property(tries = 30, seed = "1")
    void inAVerticalWellOfOneBoreTheStraightLineIsRight(@ForAll @DoubleRange(min = 5e5, max = 8e6) double shutIn) {
        Annulus annulus = KillWells.annulus(
                new DrillString(List.of(new StringComponent("drill pipe", 100, 0.127, 0.1086))), 3000, 0, 3000);
        KillSheetInput tapered = input(WellPath.vertical(3000), shutIn, 5, StringFriction.BY_LENGTH);
        KillSheet sheet = KillSheet.of(new KillSheetInput(
                tapered.path(),
                annulus,
                tapered.mudDensity(),
                tapered.shutIn(),
                tapered.pump(),
                tapered.weakPoint(),
                tapered.killMud(),
                tapered.subsea(),
                tapered.options()));
        assertEquals(0, sheet.schedule().greatestUnderbalance(), 1e-6);
        assertEquals(0, sheet.schedule().greatestOverbalance(), 1e-6);
    }

    /** The extremes found lie at or beyond those of a fine scan, and no scan finds more. */
    @Property(tries = 30, seed = "1")
    void theGreatestUnderbalanceIsFound(
            @ForAll @DoubleRange(min = 200, max = 1500) double kickOff,
            @ForAll @DoubleRange(min = 20, max = 90) double inclination) {
        KillSheetInput input = input(KillWells.deviated(kickOff, inclination), 4e6, 5, StringFriction.BY_LENGTH);
        PressureSchedule coarse = new PressureSchedule.Builder(input, 1400).build(1);
        PressureSchedule fine = new PressureSchedule.Builder(input, 1400).build(500);
        assertEquals(fine.greatestUnderbalance(), coarse.greatestUnderbalance(), 1e-3);
        assertEquals(fine.greatestOverbalance(), coarse.greatestOverbalance(), 1e-3);
        double scanned = fine.steps().stream()
                .mapToDouble(PressureSchedule.Step::underbalance)
                .max()
                .orElseThrow();
        assertTrue(coarse.greatestUnderbalance() >= scanned - 1e-3);
    }

    /** Kill mud in place of the old mud lowers what may stand at surface by exactly its heavier column. */
    @Property(tries = 50, seed = "1")
    void maaspFallsByTheHeavierColumn(@ForAll @DoubleRange(min = 5e5, max = 8e6) double shutIn) {
        KillSheet sheet = KillSheet.of(input(WellPath.vertical(3000), shutIn, 5, StringFriction.BY_LENGTH));
        KillSheet.WeakPointCheck check = sheet.weakPoint();
        double heavier = Physics.GRAVITY * (sheet.killDensity() - 1250) * 2000;
        assertEquals(check.maasp() - heavier, check.maaspKilled(), 1e-6);
        assertEquals(check.maaspKilled(), check.margin(), 1e-6);
    }

    /** Mass and volume balance of weighting up. */
    @Property(tries = 100, seed = "1")
    void weightingUpConservesMassAndVolume(
            @ForAll @DoubleRange(min = 1, max = 400) double volume,
            @ForAll @DoubleRange(min = 1000, max = 1500) double from,
            @ForAll @DoubleRange(min = 1500, max = 2300) double to) {
        KillFormulas.Weighting w = KillFormulas.weighting(volume, new KillFormulas.DensityChange(from, to, 4200));
        assertEquals(to * (volume + w.volumeIncrease()), from * volume + w.mass(), 1e-6);
    }
}
