package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.control.Circulation;
import staunch.control.CirculationMethod;
import staunch.control.CirculationPlan;
import staunch.control.CirculationPoint;
import staunch.control.CirculationPoint.Phase;
import staunch.control.CirculationSchedule;
import staunch.control.KillSheet;
import staunch.control.MigrationPoint;
import staunch.control.PressureSchedule;
import staunch.influx.GasColumn;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.well.StringGeometry;

class OperationsLawTest {
    private static final double G = Physics.GRAVITY;

    @Provide
    Arbitrary<AnySection> sections() {
        return AnySection.any();
    }

    private static CirculationSchedule run(
            AnySection section, Wells wells, CirculationMethod method, double volume, double above) {
        Model model = wells.model();
        Kick kick = model.kick(Kick.Scenario.DRILLED, section.bottom());
        DrilledHole hole = model.hole(section.bottom());
        return Circulation.run(new CirculationPlan(
                hole.grid(),
                GasColumn.fine(model.gas().orElseThrow(), wells.temperature()),
                model.mudColumn().orElseThrow(),
                method,
                new CirculationPlan.Pressures(kick.formationPressure(), kick.formationPressure() + above, 0),
                volume,
                hole.stringVolume(),
                new CirculationPlan.Pump(0.01, OptionalDouble.empty()),
                new double[] {section.shoe()},
                new OperationLimits(wells.input(), model).lines(),
                d -> hole.frictionAbove(d, true),
                CirculationPlan.USUAL_STEPS));
    }

    /**
     * Bottom-hole pressure is held and no gas is lost on the way, seen by an independent integration: from the bottom up
     * through kill mud, mud, gas and mud to the choke.
     */
    @Property(tries = 20, seed = "1")
    void bottomHolePressureIsHeldAndMassIsKept(
            @ForAll("sections") AnySection section,
            @ForAll CirculationMethod method,
            @ForAll @DoubleRange(min = 0.5, max = 8) double volume,
            @ForAll @DoubleRange(min = 0, max = 2e6) double above) {
        Wells wells = section.wells();
        Model model = wells.model();
        DrilledHole hole = model.hole(section.bottom());
        double formation = model.kick(Kick.Scenario.DRILLED, section.bottom()).formationPressure();
        GasReference reference = new GasReference(section, wells, model.gas().orElseThrow());
        double zBottom = reference.vertical(section.bottom());
        double kill = (formation - Physics.ATMOSPHERE) / (G * zBottom);
        CirculationSchedule schedule = run(section, wells, method, volume, above);
        double mass = reference.mass(hole.grid().topOfVolume(section.bottom(), volume), section.bottom(), formation);
        assertEquals(mass, schedule.influxMass(), 1e-10 * mass);
        int rising = 0;
        for (CirculationPoint point : schedule.points()) {
            if (point.phase() != Phase.INFLUX_RISING && point.phase() != Phase.INFLUX_LEAVING) {
                continue;
            }
            double lower = point.gasBottom().getAsDouble();
            double killVolume =
                    method == CirculationMethod.WAIT_AND_WEIGHT ? Math.max(0, point.pumped() - hole.stringVolume()) : 0;
            double front = hole.grid().topOfVolume(section.bottom(), Math.min(killVolume, point.pumped()));
            double atLower = formation
                    + above
                    - G
                            * (kill * (zBottom - reference.vertical(front))
                                    + section.mud() * (reference.vertical(front) - reference.vertical(lower)));
            double top = point.gasTop().getAsDouble();
            GasReference.Top gas = reference.upTo(top, lower, atLower);
            if (point.chokePressure() > 0) {
                assertEquals(formation + above, point.bottomHolePressure(), 1e-6);
                double choke = gas.pressure() - Physics.ATMOSPHERE - G * section.mud() * reference.vertical(top);
                assertEquals(choke, point.chokePressure(), 1);
            }
            if (point.phase() == Phase.INFLUX_RISING) {
                assertEquals(mass, gas.mass(), 1e-10 * mass);
                rising++;
            }
        }
        assertTrue(rising > 10);
    }

    /** An influx of exactly the tolerance loads the formation to its limit and no further, wherever that is. */
    @Property(tries = 60, seed = "1")
    void theToleranceLeavesNoMargin(
            @ForAll("sections") AnySection section,
            @ForAll CirculationMethod method,
            @ForAll @DoubleRange(min = 0, max = 1e6) double above) {
        Wells wells = section.wells().burst(3.9e8).overbalance(above).options(MethodOptions.DEFAULT.withMethod(method));
        Model model = wells.model();
        Kick kick = model.kick(Kick.Scenario.DRILLED, section.bottom());
        Tolerance tolerance = model.tolerance(kick, model.hole(section.bottom()));
        Assume.that(tolerance instanceof Tolerance.Finite finite
                && finite.volume() > 0.01
                && finite.stage().moment() != Stage.Moment.SHUT_IN);
        Tolerance.Finite finite = (Tolerance.Finite) tolerance;
        CirculationPoint closest = run(section, wells, method, finite.volume(), above)
                .leastMargin()
                .orElseThrow();
        double limit = finite.weakPoint().limit();
        assertEquals(
                0,
                closest.closest().orElseThrow().margin(),
                1e-6 * limit,
                () -> finite + " " + closest.closest() + " " + closest.phase() + " " + closest.gasTop());
    }

    /**
     * The pressures that the kill sheet gives for the drill pipe hold the bottom-hole pressure that the circulation of
     * wait-and-weight holds, within what rounding the kill mud up adds.
     */
    @Property(tries = 30, seed = "1")
    void theKillSheetHoldsWhatTheCirculationHolds(@ForAll("sections") AnySection section) {
        Wells wells = section.wells().ready(OperationsPlan.NONE).required(2);
        KickOperations.Followed course = assertInstanceOf(
                KickOperations.Followed.class,
                OperationsEvaluator.evaluate(wells.input()).drilled());
        assertInstanceOf(KillSheetOutcome.Computed.class, course.killSheet());
        assertInstanceOf(CirculationOutcome.Computed.class, course.waitAndWeight());
        KillSheet sheet = ((KillSheetOutcome.Computed) course.killSheet()).sheet();
        CirculationSchedule schedule = ((CirculationOutcome.Computed) course.waitAndWeight()).schedule();
        StringGeometry string = sheet.input().annulus().string();
        double bit = sheet.input().path().verticalDepth(section.bottom());
        double slow = 4e6;
        double rounding = G * (sheet.killDensity() - sheet.balancingDensity()) * bit;
        for (CirculationPoint point : schedule.points()) {
            double inString = Math.min(point.pumped(), string.insideVolume());
            double front = string.depthReached(inString);
            double z = sheet.input().path().verticalDepth(front);
            double share = lengthAbove(string, front) / section.bottom();
            double drillPipe = pressure(sheet.schedule(), inString);
            double loss = slow * (1 + (sheet.killDensity() / section.mud() - 1) * share);
            double bottom =
                    Physics.ATMOSPHERE + drillPipe - loss + G * (sheet.killDensity() * z + section.mud() * (bit - z));
            assertTrue(bottom >= point.bottomHolePressure() - 1, "never below what is to be held");
            // Between lines of the schedule pressure is linear in strokes, which on an arc adds a little.
            assertTrue(bottom <= point.bottomHolePressure() + rounding + arc(sheet));
        }
    }

    private static double pressure(PressureSchedule schedule, double pumped) {
        return schedule.pressureAfter(pumped);
    }

    private static double lengthAbove(StringGeometry string, double front) {
        return front - string.top(0);
    }

    /** How far linear reading between lines may lie off the curve. */
    private static double arc(KillSheet sheet) {
        return 0.02 * sheet.input().shutIn().drillPipePressure() + 1;
    }

    /** What can be circulated to surface loads casing or equipment to its rating and no further, by either method. */
    @Property(tries = 30, seed = "1")
    void theSurfaceLimitedToleranceLeavesNoMargin(
            @ForAll CirculationMethod method, @ForAll @DoubleRange(min = 8e6, max = 20e6) double rating) {
        Wells wells = Wells.standard()
                .burst(3.9e8)
                .strength(0, 2600, 9000, 2600)
                .equipment(Wells.rated(rating))
                .options(MethodOptions.DEFAULT.withMethod(method));
        SectionInput input = wells.input();
        Model model = wells.model();
        Kick kick = model.kick(Kick.Scenario.DRILLED, Wells.BOTTOM);
        Tolerance.Finite finite = assertInstanceOf(
                Tolerance.Finite.class,
                model.circulatedToSurface(kick, Wells.BOTTOM).tolerance());
        DrilledHole hole = model.hole(Wells.BOTTOM);
        CirculationSchedule schedule = Circulation.run(new CirculationPlan(
                hole.grid(),
                GasColumn.fine(model.gas().orElseThrow(), wells.temperature()),
                model.mudColumn().orElseThrow(),
                method,
                new CirculationPlan.Pressures(kick.formationPressure(), kick.formationPressure(), 0),
                finite.volume(),
                hole.stringVolume(),
                new CirculationPlan.Pump(0.01, OptionalDouble.empty()),
                new double[0],
                new OperationLimits(input, model).lines(),
                d -> 0,
                CirculationPlan.USUAL_STEPS));
        double margin =
                schedule.leastMargin().orElseThrow().closest().orElseThrow().margin();
        assertEquals(0, margin, 1e-6 * rating);
        assertEquals(rating, schedule.greatestChokePressure().chokePressure(), 1e-6 * rating);
    }

    /** Whatever the section, each operation comes to a result of finite numbers or to a reason. */
    @Property(tries = 25, seed = "1")
    void everySectionComesToNumbersOrReasons(
            @ForAll("sections") AnySection section, @ForAll @DoubleRange(min = 0.5, max = 60) double volume) {
        Wells wells = section.wells()
                .ready(OperationsEvaluatorTest.withInflux(new OperationsPlan.InfluxChoice.Given(volume)))
                .equipment(OperationsEvaluatorTest.full().input().equipment());
        KickOperations operations = OperationsEvaluator.evaluate(wells.input()).drilled();
        if (operations instanceof NotAssessed not) {
            assertTrue(volume > 8, not.reason());
            return;
        }
        KickOperations.Followed course = (KickOperations.Followed) operations;
        if (course.drillers() instanceof CirculationOutcome.Computed drillers) {
            for (CirculationPoint point : drillers.schedule().points()) {
                assertTrue(Double.isFinite(point.chokePressure()) && Double.isFinite(point.gasRate()));
                assertTrue(point.gasRate() >= 0 && point.chokePressure() >= -1e-6);
                assertTrue(Double.isFinite(point.closest().orElseThrow().margin()));
            }
        }
        if (course.migration() instanceof MigrationOutcome.Computed migration) {
            for (MigrationOutcome.Course one : migration.courses()) {
                double time = 0;
                for (MigrationPoint point : one.points()) {
                    assertTrue(point.time() >= time && Double.isFinite(point.surfacePressure()));
                    time = point.time();
                }
            }
        }
    }

    @Test
    void aPumpThatStandsIsAFault() {
        RangeFault fault = assertThrows(RangeFault.class, () -> new CirculationPlan.Pump(0, OptionalDouble.empty()));
        assertTrue(fault.getMessage().startsWith("pump rate"), fault.getMessage());
    }

    @Test
    void killMudAboveTheStrengthLeavesANegativeMargin() {
        Wells wells = Wells.standard()
                .strength(0, 1590, 9000, 1590)
                .ready(OperationsPlan.NONE)
                .required(1);
        KickOperations.Followed course = (KickOperations.Followed)
                OperationsEvaluator.evaluate(wells.input()).drilled();
        KillSheet sheet = ((KillSheetOutcome.Computed) course.killSheet()).sheet();
        assertTrue(sheet.killDensity() > 1590);
        assertTrue(!sheet.weakPoint().holdsKillMud());
        CirculationOutcome.Computed drillers = (CirculationOutcome.Computed) course.drillers();
        assertTrue(!drillers.holds());
        assertTrue(drillers.schedule().points().stream()
                .allMatch(p -> p.closest().orElseThrow().margin() < 0));
    }
}
