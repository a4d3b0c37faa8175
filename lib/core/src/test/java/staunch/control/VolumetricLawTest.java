package staunch.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.units.RangeFault;
import staunch.well.Annulus;

class VolumetricLawTest {
    /** Pa; the edges of the window are solved for to the tolerance of the lower end, 1e-7 m, some milli-pascals. */
    private static final double EDGE = 0.1;

    private static VolumetricMethod.Plan plan(
            Annulus annulus, ClosedWell.Yielding yielding, double volume, double working) {
        ClosedWell well = MigrationLawTest.well(annulus, MigrationLawTest.REAL, yielding, volume);
        return new VolumetricMethod.Plan(well, MigrationLawTest.SLOW, 7e5, working);
    }

    /** From the moment the window is reached, bottom-hole pressure never leaves it. */
    @Property(tries = 15, seed = "1")
    void bottomHolePressureStaysInTheWindow(
            @ForAll @DoubleRange(min = 1, max = 6) double volume,
            @ForAll @DoubleRange(min = 3e5, max = 2e6) double working,
            @ForAll @DoubleRange(min = 0, max = 1) double soft) {
        VolumetricMethod.Plan plan = plan(
                KillWells.annulus(3000, 0),
                new ClosedWell.Yielding(1e-9 * soft, 3e-10 * soft, true, 0),
                volume,
                working);
        VolumetricMethod.Table table = VolumetricMethod.run(plan);
        double formation = plan.well().influx().formationPressure();
        double lowest = formation + plan.safety();
        double highest = lowest + plan.working();
        boolean inside = false;
        double before = 0;
        for (MigrationPoint p : table.points()) {
            inside = inside || p.bottomHolePressure() >= lowest;
            assertTrue(p.bottomHolePressure() <= highest + EDGE, () -> p + " above " + highest);
            double least = inside ? lowest : formation;
            assertTrue(p.bottomHolePressure() >= least - EDGE, () -> p + " below " + least);
            assertTrue(p.time() >= before);
            before = p.time();
        }
        assertTrue(inside);
        assertEquals(0, table.shortfall(), 0);
        assertEquals(MigrationCurve.Ending.TOP, table.ending());
        assertEquals(0, table.end().upperEnd(), 1e-4);
    }

    /** Casing pressure does not move while mud is bled; what is bled adds up; gas expands by what was bled. */
    @Test
    void mudIsBledAtConstantCasingPressure() {
        VolumetricMethod.Table table =
                VolumetricMethod.run(plan(MigrationLawTest.UNIFORM, ClosedWell.Yielding.RIGID, 3, 7e5));
        double casing = 0;
        double total = 0;
        for (VolumetricMethod.Step s : table.steps()) {
            if (s.action() == VolumetricMethod.Action.BLEED) {
                assertEquals(casing, s.end().surfacePressure(), EDGE);
                assertTrue(s.bled() > 0);
            } else {
                assertEquals(0, s.bled(), 0);
            }
            casing = s.end().surfacePressure();
            total += s.bled();
            assertEquals(total, s.totalBled(), 1e-12);
            assertEquals(3 + total, s.end().gasVolume(), 1e-6);
        }
        assertTrue(table.steps().size() >= 10, () -> table.steps().size() + " steps");
    }

    /** In one bore with rigid mud the bleed is the hand volume: the weight of the gas does not change. */
    @Property(tries = 10, seed = "1")
    void inOneBoreTheBleedIsTheHandVolume(@ForAll @DoubleRange(min = 3e5, max = 2e6) double working) {
        VolumetricMethod.Plan plan = new VolumetricMethod.Plan(
                MigrationLawTest.well(MigrationLawTest.UNIFORM, MigrationLawTest.IDEAL, ClosedWell.Yielding.RIGID, 3),
                MigrationLawTest.SLOW,
                7e5,
                working);
        double hand = MigrationFormulas.volumeOfPressure(
                working, 1300, MigrationLawTest.UNIFORM.area(0), HydrostaticConstant.EXACT);
        List<VolumetricMethod.Step> steps = VolumetricMethod.run(plan).steps();
        for (VolumetricMethod.Step s : steps.subList(0, steps.size() - 1)) {
            if (s.action() == VolumetricMethod.Action.BLEED) {
                assertEquals(hand, s.bled(), 1e-6 * hand);
            }
        }
    }

    @Test
    void aWellThatLosesFiltrateIsAFault() {
        assertThrows(
                RangeFault.class,
                () -> plan(MigrationLawTest.UNIFORM, new ClosedWell.Yielding(0, 0, false, 1e-5), 3, 7e5));
    }

    /** Pumping stays in the window, gas only leaves, and each step lowers the casing pressure by the mud less the gas. */
    @Property(tries = 15, seed = "1")
    void lubricationHoldsTheWindowAndGetsTheGasOut(
            @ForAll @DoubleRange(min = 400, max = 1500) double level,
            @ForAll @DoubleRange(min = 3e5, max = 1.5e6) double window) {
        ClosedWell well =
                MigrationLawTest.well(MigrationLawTest.UNIFORM, MigrationLawTest.IDEAL, ClosedWell.Yielding.RIGID, 3);
        double held = 4.2e7;
        LubricateAndBleed.Table table = LubricateAndBleed.run(
                new LubricateAndBleed.Plan(well, level, held, window, new LubricateAndBleed.Lubricant(1400, 1, 0.2)));
        double area = MigrationLawTest.UNIFORM.area(0);
        double casing = table.startPressure();
        double mass = Double.POSITIVE_INFINITY;
        double pumped = 0;
        for (LubricateAndBleed.Step s : table.steps()) {
            assertTrue(s.bottomHolePeak() <= held + window + 1);
            assertTrue(s.pumped() > 0 && s.pumped() <= 1);
            assertTrue(s.afterPumping() > s.afterBleeding());
            assertTrue(s.gasMass() < mass);
            pumped += s.pumped();
            assertEquals(pumped, s.totalPumped(), 1e-9);
            assertEquals(level * area - pumped, s.gasVolume(), 1e-9);
            if (mass < Double.POSITIVE_INFINITY && s.afterBleeding() > 0) {
                double mud = MigrationFormulas.pressureOfVolume(1400, s.pumped(), area, HydrostaticConstant.EXACT);
                double gas = 9.80665 * (mass - s.gasMass()) / area;
                assertEquals(casing - mud + gas, s.afterBleeding(), 1);
            }
            casing = s.afterBleeding();
            mass = s.gasMass();
        }
        assertTrue(table.ending() != LubricateAndBleed.Ending.TOO_MANY_STEPS);
    }

    /**
     * From the step's own numbers: the stack has the casing pressure; section TD the peak; the shoe below the gas the peak
     * less the mud between, by the density of the mud that stands there.
     */
    @Property(tries = 30, seed = "1")
    void lubricationIsHeldAgainstEveryLimitAtItsHighest(@ForAll @DoubleRange(min = 400, max = 1500) double level) {
        ClosedWell bare =
                MigrationLawTest.well(MigrationLawTest.UNIFORM, MigrationLawTest.IDEAL, ClosedWell.Yielding.RIGID, 3);
        double shoe = 2000;
        double halfWay = 0.5 * level;
        LubricateAndBleed.Table table = lubricated(bare, level);
        double peak = table.steps().stream()
                .mapToDouble(LubricateAndBleed.Step::bottomHolePeak)
                .max()
                .orElseThrow();
        double casing = table.steps().stream()
                .mapToDouble(LubricateAndBleed.Step::afterPumping)
                .max()
                .orElseThrow();
        assertTrue(table.closest().isEmpty());
        double g = 9.80665;
        assertEquals(6e7 - peak, margin(bare, level, new PressureLimit("TD", 3000, 6e7)), 1e-3);
        assertEquals(
                5e7 - (peak - g * 1300 * (3000 - shoe)),
                margin(bare, level, new PressureLimit("shoe", shoe, 5e7)),
                1e-3);
        assertEquals(4e7 - casing, margin(bare, level, ClosedWell.surfaceLimit("stack", 4e7, bare)), 1);
        // From the first step on the lubricated mud stands just above where the gas ended.
        assertEquals(
                5e7 - (peak - g * (1300 * (3000 - level) + 1400 * 0.1)),
                margin(bare, level, new PressureLimit("casing", level - 0.1, 5e7)),
                1e-3);
        double inside = 5e7 - margin(bare, level, new PressureLimit("casing", halfWay, 5e7));
        double heaviest = peak - g * (1300 * (3000 - level) + 1400 * (level - halfWay));
        assertTrue(inside >= heaviest - 1, "mud weighs more than the gas that it takes the place of");
    }

    private static LubricateAndBleed.Table lubricated(ClosedWell well, double level) {
        return LubricateAndBleed.run(
                new LubricateAndBleed.Plan(well, level, 4.2e7, 1e6, new LubricateAndBleed.Lubricant(1400, 1, 0.2)));
    }

    private static double margin(ClosedWell well, double level, PressureLimit limit) {
        ClosestLimit closest =
                lubricated(well.watching(List.of(limit)), level).closest().orElseThrow();
        assertEquals(limit.name(), closest.name());
        return closest.margin();
    }

    /** The start by hand: an isothermal ideal gas column and mud above it; the end: mud and kill mud alone. */
    @Test
    void bullheadingStartsAndEndsAsByHand() {
        ClosedWell well =
                MigrationLawTest.well(MigrationLawTest.UNIFORM, MigrationLawTest.IDEAL, ClosedWell.Yielding.RIGID, 3);
        double formation = well.influx().formationPressure();
        double injection = formation + 3e6;
        PressureLimit shoe = new PressureLimit("shoe", 2000, 4e7);
        Bullheading.Outcome outcome =
                Bullheading.run(new Bullheading.Plan(well.watching(List.of(shoe)), injection, 1500, 1e6, 3e7));
        double area = MigrationLawTest.UNIFORM.area(0);
        double perMetre = 9.80665 * 0.018 / (8.31446261815324 * 330);
        double height = 3 / area;
        // m g/A is the pressure difference over the gas, before and after it is compressed.
        double weight = formation * (1 - Math.exp(-perMetre * height));
        double compressed = -Math.log(1 - weight / injection) / perMetre;
        Bullheading.Stage first = outcome.stages().get(0);
        assertEquals(area * (height - compressed), first.pumped(), 1e-6);
        double kill = first.pumped() / area;
        double top = injection - weight - 9.80665 * (1300 * (3000 - compressed - kill) + 1500 * kill) + 1e6;
        assertEquals(top - 101_325, first.pumpPressure(), 1);
        Bullheading.Stage last = outcome.stages().get(outcome.stages().size() - 1);
        assertEquals(3, last.pumped(), 1e-9);
        double columns = 9.80665 * (1300 * (3000 - 3 / area) + 1500 * 3 / area);
        assertEquals(injection - columns + 1e6 - 101_325, last.pumpPressure(), 1);
        assertTrue(outcome.feasible());
        for (int i = 1; i < outcome.stages().size(); i++) {
            Bullheading.Stage a = outcome.stages().get(i - 1);
            Bullheading.Stage b = outcome.stages().get(i);
            assertTrue(b.pumpPressure() < a.pumpPressure());
            assertTrue(b.watched()[0] <= a.watched()[0]);
        }
        assertEquals(first.watched()[0], outcome.loads().get(0).load(), 0);
    }

    @Test
    void aShoeThatBreaksFirstMakesBullheadingInfeasible() {
        ClosedWell well =
                MigrationLawTest.well(MigrationLawTest.UNIFORM, MigrationLawTest.REAL, ClosedWell.Yielding.RIGID, 3);
        PressureLimit shoe = new PressureLimit("shoe", 2000, 101_325 + 9.80665 * 1400 * 2000);
        Bullheading.Outcome outcome = Bullheading.run(new Bullheading.Plan(
                well.watching(List.of(shoe)), well.influx().formationPressure() + 5e6, 1500, 1e6, 3e7));
        assertEquals("shoe", outcome.governing().limit().name());
        assertTrue(!outcome.feasible());
    }
}
