package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static staunch.units.Quantities.m3;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import staunch.control.Bullheading;
import staunch.control.CirculationPoint;
import staunch.control.FlowingMud;
import staunch.control.Hydraulics;
import staunch.control.LineBore;
import staunch.control.MigrationCurve;
import staunch.control.MigrationPoint;
import staunch.envelope.KickOperations.WatchedDepth;
import staunch.envelope.OperationsPlan.InfluxChoice;
import staunch.limit.GasSeparator;
import staunch.limit.PressureEquipment;
import staunch.limit.PressureRating;
import staunch.units.Fault;
import staunch.units.Physics;
import staunch.well.Datum;
import staunch.well.WellPath;

class OperationsEvaluatorTest {
    static final OperationsPlan FULL = OperationsPlan.NONE
            .withSurfaceLines(m3(1.5))
            .withYielding(new OperationsPlan.Yielding(
                    OptionalDouble.of(4.5e-10), OptionalDouble.of(1.5e-10), OptionalDouble.empty(), Optional.of(true)))
            .withVolumetric(new OperationsPlan.Volumetric(OptionalDouble.of(1e6), OptionalDouble.of(7e5)))
            .withBullheading(new OperationsPlan.Bullhead(OptionalDouble.empty(), OptionalDouble.of(2e6)));

    private static SectionOperations evaluate(Wells wells) {
        return OperationsEvaluator.evaluate(wells.input());
    }

    private static KickOperations.Followed drilled(Wells wells) {
        return assertInstanceOf(KickOperations.Followed.class, evaluate(wells).drilled());
    }

    static Wells full() {
        return Wells.standard()
                .required(3)
                .ready(FULL)
                .equipment(Wells.rated(69e6)
                        .with(Optional.of(new PressureRating("pump", 34e6, Optional.empty())), Optional.empty()));
    }

    @Test
    void followsTheRequiredVolumeThroughEveryOperation() {
        KickOperations.Followed course = drilled(full());
        assertEquals(3, course.volume());
        assertEquals("required tolerance", course.volumeBasis());
        assertEquals(60 * Physics.GRAVITY * Wells.BOTTOM, course.shutIn().drillPipePressure(), 1e-6);
        assertTrue(course.shutIn().casingPressure() > course.shutIn().drillPipePressure());
        assertEquals(
                List.of("BOP stack", "shoe"),
                course.watched().stream().map(WatchedDepth::name).toList());
        CirculationOutcome.Computed drillers = assertInstanceOf(CirculationOutcome.Computed.class, course.drillers());
        CirculationOutcome.Computed weighted =
                assertInstanceOf(CirculationOutcome.Computed.class, course.waitAndWeight());
        assertEquals(0.008, drillers.pumpRate());
        double choke = drillers.schedule().greatestChokePressure().chokePressure();
        assertTrue(choke >= weighted.schedule().greatestChokePressure().chokePressure());
        MigrationOutcome.Computed migration = assertInstanceOf(MigrationOutcome.Computed.class, course.migration());
        assertEquals(3, migration.courses().size());
        assertTrue(migration.shareOfRigidRise() < 1);
        assertTrue(migration
                        .earliestRigid()
                        .orElseThrow()
                        .moment()
                        .orElseThrow()
                        .time()
                <= migration.earliest().orElseThrow().moment().orElseThrow().time());
        assertInstanceOf(VolumetricOutcome.Computed.class, course.volumetric());
        assertInstanceOf(
                LubricationOutcome.Computed.class,
                course.lubrication(),
                () -> course.lubrication().toString());
        assertInstanceOf(BullheadingOutcome.Computed.class, course.bullheading());
        KillSheetOutcome.Computed sheet = assertInstanceOf(KillSheetOutcome.Computed.class, course.killSheet());
        assertEquals(
                course.shutIn().drillPipePressure(),
                sheet.sheet().input().shutIn().drillPipePressure());
    }

    /** Bottom-hole pressure never leaves the window that the case sets for it, neither by bleeding nor by pumping. */
    @Test
    void lubricationStaysInTheWindow() {
        KickOperations.Followed course = drilled(full());
        VolumetricOutcome.Computed volumetric = (VolumetricOutcome.Computed) course.volumetric();
        LubricationOutcome.Computed lubrication = (LubricationOutcome.Computed) course.lubrication();
        double end = volumetric.table().end().bottomHolePressure();
        assertTrue(end > volumetric.lowest() + 1e4, "it ends inside the window, so that gas is bled first");
        assertEquals(course.kick().formationPressure() + 1e6, lubrication.bottomHolePressure(), 1);
        assertTrue(
                lubrication.table().startPressure() < volumetric.table().end().surfacePressure());
        lubrication
                .table()
                .steps()
                .forEach(s -> assertTrue(s.bottomHolePeak() <= course.kick().formationPressure() + 1.7e6 + 1));
    }

    /** The first moment of the circulation and of the migration is the closed well, less what is held above it. */
    @Test
    void everyCourseBeginsAtShutIn() {
        KickOperations.Followed course = drilled(full());
        double casing = course.shutIn().casingPressure();
        MigrationOutcome.Computed migration = (MigrationOutcome.Computed) course.migration();
        assertEquals(casing, migration.courses().get(0).points().get(0).surfacePressure(), 1);
        CirculationPoint start = ((CirculationOutcome.Computed) course.drillers())
                .schedule()
                .points()
                .get(0);
        assertEquals(casing, start.chokePressure(), 1);
        assertEquals(course.shutIn().gasTop(), start.gasTop().getAsDouble(), 1e-6);
    }

    @Test
    void namesWhatIsMissing() {
        KickOperations.Followed course = drilled(Wells.standard().required(3).equipment(Wells.rated(69e6)));
        assertEquals(
                "section: slow circulation rate, or operations: kill rate",
                assertInstanceOf(NotAssessed.class, course.drillers()).missing());
        assertEquals(
                "operations: volumetric: safety margin",
                assertInstanceOf(NotAssessed.class, course.volumetric()).missing());
        assertInstanceOf(NotAssessed.class, course.lubrication());
        assertInstanceOf(NotAssessed.class, course.bullheading());
        assertEquals(
                "section: pump output",
                assertInstanceOf(NotAssessed.class, course.killSheet()).missing());
        MigrationOutcome.Computed migration = assertInstanceOf(MigrationOutcome.Computed.class, course.migration());
        double yielding = ((MigrationOutcome.Computed) drilled(full()).migration()).shareOfRigidRise();
        assertTrue(migration.shareOfRigidRise() > yielding, "nothing is known to give way");
    }

    @Test
    void anInfluxLargerThanTheAnnulusIsNotAssessed() {
        OperationsPlan large = withInflux(new InfluxChoice.Given(150));
        NotAssessed not = assertInstanceOf(
                NotAssessed.class, evaluate(full().ready(large)).drilled());
        assertTrue(not.reason().contains("volume"), not.reason());
    }

    static OperationsPlan withInflux(InfluxChoice choice) {
        return FULL.withInflux(choice);
    }

    @Test
    void theToleranceItselfLeavesNoMargin() {
        KickOperations.Followed course = drilled(full().ready(withInflux(new InfluxChoice.AtTolerance())));
        CirculationOutcome.Computed drillers = (CirculationOutcome.Computed) course.drillers();
        CirculationPoint closest = drillers.schedule().leastMargin().orElseThrow();
        assertEquals(0, closest.closest().orElseThrow().margin(), 30);
    }

    @Test
    void aSubseaStackAsksForChokeLineAndFriction() {
        Datum floater = new Datum("rotary table", 25, new Datum.AtSea(1000, true));
        Wells subsea = full().datum(floater).equipment(Wells.rated(103e6, 103e6, 1025, 0.0762));
        CirculationOutcome.Computed drillers = assertInstanceOf(
                CirculationOutcome.Computed.class, drilled(subsea).drillers());
        assertTrue(drillers.chokeLineFriction() > 0, "computed from the readings of the mud");
        assertEquals(
                "equipment: riser",
                assertInstanceOf(NotAssessed.class, drilled(subsea).killSheet()).missing());
    }

    /** The line's friction is that of the hydraulics with the kill mud in it, and the pump and the manifold bear it beyond the stack. */
    @Test
    void bullheadingASubseaWellPumpsAgainstItsLine() {
        Datum floater = new Datum("rotary table", 25, new Datum.AtSea(1000, true));
        PressureRating pump = new PressureRating("pump", 69e6, Optional.empty());
        Wells subsea = full().datum(floater)
                .equipment(Wells.rated(103e6, 69e6, 1025, 0.0762).with(Optional.of(pump), Optional.empty()));
        BullheadingOutcome.Computed pumped = assertInstanceOf(
                BullheadingOutcome.Computed.class, drilled(subsea).bullheading());
        FlowingMud mud = new FlowingMud(
                pumped.killDensity(), AnnularLosses.mud(subsea.input().plan()).flow());
        assertTrue(mud.density() > AnnularLosses.mud(subsea.input().plan()).density(), "the kill mud is heavier");
        double line = Hydraulics.lineLoss(new LineBore(1025, 0.0762), mud, pumped.rate());
        assertEquals(line, pumped.lineFriction(), 1e-6 * line);
        double stack = pumped.stages().stream()
                .mapToDouble(Bullheading.Stage::pumpPressure)
                .max()
                .orElseThrow();
        double rest = pumped.pump().limit().pressure() - 69e6;
        assertEquals(stack + rest + line, pumped.pump().load(), 1);
        assertEquals(stack + rest + line, load(pumped, "manifold"), 1);
        assertEquals(stack + rest, load(pumped, "stack"), 1);
        Wells unknown = full().datum(floater)
                .equipment(new PressureEquipment(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        Optional.of(pump),
                        Optional.empty()));
        assertEquals(
                "equipment: choke line: inside diameter",
                assertInstanceOf(NotAssessed.class, drilled(unknown).bullheading())
                        .missing());
    }

    private static double load(BullheadingOutcome.Computed pumped, String name) {
        return pumped.loads().stream()
                .filter(l -> l.limit().name().equals(name))
                .mapToDouble(Bullheading.Load::load)
                .max()
                .orElseThrow(() -> new AssertionError(pumped.loads().toString()));
    }

    @Test
    void theSeparatorIsLoadedByTheGreatestGasRate() {
        GasSeparator separator = new GasSeparator(
                "separator",
                OptionalDouble.of(3),
                OptionalDouble.of(60),
                OptionalDouble.of(0.2),
                OptionalDouble.empty(),
                Optional.empty());
        Wells wells = full();
        SectionInput input = wells.input();
        KickOperations.Followed course = drilled(
                full().equipment(input.equipment().with(input.equipment().mudPump(), Optional.of(separator))));
        SurfaceGasOutcome.Computed gas = assertInstanceOf(SurfaceGasOutcome.Computed.class, course.surfaceGas());
        assertTrue(gas.rate() > 0.008, "gas expands on its way to the choke");
        SurfaceGasOutcome.Separator loaded = assertInstanceOf(SurfaceGasOutcome.Separator.class, gas.separator());
        assertEquals(Wells.MUD * Physics.GRAVITY * 3, loaded.mudLeg(), 1e-6);
        SurfaceGasOutcome.Computed without =
                (SurfaceGasOutcome.Computed) drilled(full()).surfaceGas();
        assertEquals(
                "equipment: gas separator",
                assertInstanceOf(NotAssessed.class, without.separator()).missing());
    }

    /** The quadratic of the handbooks is an explanation: it comes within a few per cent of the schedule, on either side. */
    @Test
    void theHandCalculationComesNearTheSchedule() {
        CirculationOutcome.Computed drillers =
                (CirculationOutcome.Computed) drilled(full()).drillers();
        assertEquals(
                List.of("shoe", "BOP stack"),
                drillers.byHand().stream().map(HandPressure::where).toList());
        for (HandPressure hand : drillers.byHand()) {
            assertEquals(hand.schedulePressure(), hand.pressure(), 0.1 * hand.schedulePressure());
        }
    }

    @Test
    void withoutTheRiserTheSeaStandsOnTheWell() {
        Datum floater = new Datum("rotary table", 25, new Datum.AtSea(1000, true));
        Wells subsea = full().datum(floater).equipment(Wells.rated(103e6, 103e6, 1025, 0.0762));
        RiserOutcome.Computed riser =
                assertInstanceOf(RiserOutcome.Computed.class, evaluate(subsea).riser());
        double g = Physics.GRAVITY;
        assertEquals(Wells.MUD * g * 1025 - 1025 * g * 1000, riser.lost(), 1e-3);
        double pressure = Physics.ATMOSPHERE + 1025 * g * 1000 + Wells.MUD * g * (Wells.SHOE - 1025);
        assertEquals(Wells.SHOE, riser.worst().verticalDepth(), 1e-6);
        assertEquals(pressure - Wells.pressure(1400, Wells.SHOE), riser.worst().margin(), 1e-3);
        assertTrue(riser.missing() > 0 == riser.worst().margin() < 0);
        assertInstanceOf(NotAssessed.class, evaluate(full()).riser());
    }

    @Test
    void gasLeftToRiseReachesTheTopOfTheAnnulus() {
        MigrationOutcome.Computed migration =
                (MigrationOutcome.Computed) drilled(full()).migration();
        for (MigrationOutcome.Course course : migration.courses()) {
            assertEquals(MigrationCurve.Ending.TOP, course.ending());
            MigrationPoint last = course.points().get(course.points().size() - 1);
            assertEquals(0, last.upperEnd(), 1e-3);
            assertEquals(
                    last.surfacePressure() + Physics.ATMOSPHERE,
                    last.watched(0),
                    1,
                    "the stack is at the surface gauge");
        }
        double slow = migration
                .courses()
                .get(0)
                .earliest()
                .orElseThrow()
                .moment()
                .orElseThrow()
                .time();
        double fast = migration
                .courses()
                .get(2)
                .earliest()
                .orElseThrow()
                .moment()
                .orElseThrow()
                .time();
        assertEquals(slow * (500.0 / 3600) / (100.0 / 60), fast, 1e-3 * fast, "the same rise at another rate");
    }

    @Test
    void aSurveyThatEndsAboveSectionTdIsAFault() {
        Fault fault = assertThrows(Fault.class, () -> evaluate(full().path(WellPath.vertical(Wells.BOTTOM - 100))));
        assertTrue(fault.getMessage().contains("depth"), fault.getMessage());
    }

    @Test
    void aChokeLineMuchLongerThanItsWayIsAWarning() {
        Datum floater = new Datum("rotary table", 25, new Datum.AtSea(1000, true));
        for (double length : new double[] {900, 4900}) {
            Wells subsea = full().datum(floater).equipment(Wells.rated(103e6, 103e6, length, 0.0762));
            assertTrue(evaluate(subsea).warnings().stream()
                    .anyMatch(w -> w.subject().equals("choke line")));
        }
        Wells usual = full().datum(floater).equipment(Wells.rated(103e6, 103e6, 1050, 0.0762));
        assertTrue(evaluate(usual).warnings().isEmpty());
    }

    @Test
    void noPipeInTheHoleLeavesTheClosedWellAlone() {
        KickOperations.Followed course = drilled(full().string());
        assertEquals(
                "section: string",
                assertInstanceOf(NotAssessed.class, course.drillers()).missing());
        assertInstanceOf(NotAssessed.class, course.killSheet());
        assertInstanceOf(MigrationOutcome.Computed.class, course.migration());
        assertInstanceOf(VolumetricOutcome.Computed.class, course.volumetric());
    }
}
