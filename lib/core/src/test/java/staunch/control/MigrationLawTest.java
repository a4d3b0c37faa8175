package staunch.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.earth.TemperatureProfile;
import staunch.fluid.Gas;
import staunch.fluid.GasComposition;
import staunch.fluid.IdealGas;
import staunch.fluid.RealGas;
import staunch.influx.FixedRiseRate;
import staunch.influx.MigrationBracket;
import staunch.influx.SlipLaw;
import staunch.influx.TaylorBubble;
import staunch.influx.YieldStressSuspension;
import staunch.units.InputFault;
import staunch.units.RangeFault;
import staunch.units.Source;
import staunch.well.Annulus;
import staunch.well.AnnulusGeometry;
import staunch.well.DrillString;
import staunch.well.StringComponent;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

class MigrationLawTest {
    static final Gas IDEAL = new IdealGas(0.018);
    static final Gas REAL = RealGas.of(GasComposition.sweet(0.65));
    private static final TemperatureProfile WARM =
            TemperatureProfile.of(new double[] {0, 5000}, new double[] {290, 440});
    private static final ClosedWell.WellMud MUD = new ClosedWell.WellMud(1300, 0.02, 1300);
    private static final double HYDROSTATIC = 101_325 + 9.80665 * 1300 * 3000;
    static final SlipLaw SLOW = new FixedRiseRate("slow", 0.1, new Source("test", ""));

    /** One bore and one pipe from surface to 3000 m. */
    static final Annulus UNIFORM = Annulus.of(new AnnulusGeometry(
            List.of(KillWells.casing(0, 3000, 0.2159)),
            List.of(),
            new DrillString(List.of(new StringComponent("drill pipe", 100, 0.127, 0.1086))),
            3000,
            0,
            3000));

    static ClosedWell well(Annulus annulus, Gas gas, ClosedWell.Yielding yielding, double volume) {
        TemperatureProfile temperature = gas == IDEAL ? TemperatureProfile.isothermal(330) : WARM;
        return new ClosedWell(
                WellPath.vertical(3000),
                annulus,
                gas,
                temperature,
                MUD,
                new ClosedWell.Influx(HYDROSTATIC + 2e6, volume),
                yielding,
                List.of());
    }

    private static ClosedWell.Yielding yielding(double compressibility) {
        return new ClosedWell.Yielding(compressibility, 0, false, 0);
    }

    /** Where nothing yields, and neither temperature nor bore change, gas carries its pressure up. */
    @Property(tries = 20, seed = "1")
    void incompressibleWellsCarryBottomHolePressureUpByTheMudColumn(
            @ForAll @DoubleRange(min = 0.5, max = 12) double volume) {
        ClosedWell well = well(UNIFORM, IDEAL, ClosedWell.Yielding.RIGID, volume);
        MigrationCurve curve = Migration.run(well, SLOW);
        assertEquals(MigrationCurve.Ending.TOP, curve.ending());
        for (MigrationPoint p : curve.points()) {
            assertEquals(Migration.carriedUp(well, p.lowerEnd()), p.bottomHolePressure(), 1);
            assertEquals(volume, p.gasVolume(), 1e-8);
            assertEquals((3000 - p.lowerEnd()) / 0.1, p.time(), 1e-6);
        }
        MigrationPoint last = curve.points().get(curve.points().size() - 1);
        assertEquals(0, last.upperEnd(), 1e-5);
    }

    /** The difference to the rigid well falls with the compressibility, in proportion at last. */
    @Property(tries = 10, seed = "1")
    void theCompressibleRiseTendsToTheRigidOne(@ForAll @DoubleRange(min = 1, max = 8) double volume) {
        double rigid = bottomHoleAtMiddle(0, volume);
        double before = rigid - bottomHoleAtMiddle(1e-9, volume);
        assertTrue(before > 1e5);
        for (double c = 1e-10; c > 1e-13; c /= 10) {
            double difference = rigid - bottomHoleAtMiddle(c, volume);
            assertTrue(difference > 0 && difference < before);
            before = difference;
        }
        double small = rigid - bottomHoleAtMiddle(1e-13, volume);
        double half = rigid - bottomHoleAtMiddle(5e-14, volume);
        assertEquals(2, small / half, 0.01);
    }

    private static double bottomHoleAtMiddle(double compressibility, double volume) {
        MigrationCurve curve = Migration.run(well(UNIFORM, REAL, yielding(compressibility), volume), SLOW);
        return curve.points().stream()
                .filter(p -> Math.abs(p.lowerEnd() - 1500) < 1e-9)
                .findFirst()
                .orElseThrow()
                .bottomHolePressure();
    }

    /** Rigid is the upper bound of every pressure, whatever yields. */
    @Property(tries = 20, seed = "1")
    void rigidIsTheUpperBound(
            @ForAll @DoubleRange(min = 1, max = 8) double volume,
            @ForAll @DoubleRange(min = 0, max = 1) double compressible,
            @ForAll @DoubleRange(min = 0, max = 1) double loss) {
        ClosedWell well = well(
                KillWells.annulus(3000, 0),
                REAL,
                new ClosedWell.Yielding(1e-9 * compressible, 5e-10, true, 1e-5 * loss),
                volume);
        List<MigrationPoint> soft = Migration.run(well, SLOW).points();
        List<MigrationPoint> hard = Migration.run(well.rigid(), SLOW).points();
        for (MigrationPoint p : soft) {
            hard.stream()
                    .filter(q -> q.lowerEnd() == p.lowerEnd())
                    .forEach(q -> assertTrue(p.bottomHolePressure() <= q.bottomHolePressure() + 1e-3));
        }
    }

    /**
     * The balance of a bubble of ideal gas is the published relation with c_k = 1/p, and c_m less the share (ρ_m − ρ_g) g
     * h/p by which the mud above is lifted as the gas grows longer. The compressibility is
     * stated at the pressure at rest at surface, the relation takes it where the gas is. It leaves out that mud which passes
     * the gas is compressed by the weight of the gas; 0.1 % is the finite rise.
     */
    @Property(tries = 20, seed = "1")
    void theShareOfTheRigidRiseIsThatOfJohnsonAndTarvin(
            @ForAll @DoubleRange(min = 1, max = 5) double volume,
            @ForAll @DoubleRange(min = 1, max = 10) double tenths) {
        double c = 1e-10 * tenths;
        ClosedWell well = well(UNIFORM, IDEAL, yielding(c), volume);
        double bottom = well.influx().formationPressure();
        double height = volume / UNIFORM.area(0);
        double gas = IDEAL.density(bottom, 330);
        double pressure = bottom - 0.5 * 9.80665 * height * gas;
        double longer = (1300 - gas) * 9.80665 * height / pressure;
        double there = c / (1 + c * (bottom - 101_325)) * (1 - longer);
        double published = new MigrationFormulas.Compliance(volume, 1 / pressure, UNIFORM.volume() - volume, there)
                .shareOfRigidRise();
        double passing = (1 - published) * volume / UNIFORM.volume() * gas / 1300;
        assertEquals(published, Migration.shareOfRigidRise(well), passing + 0.001 * published);
    }

    /**
     * In a rigid well the gauge rises by the mud gradient less what cooling takes off: a small bubble of ideal gas at constant
     * volume loses p/T for each kelvin (Gay-Lussac), so that the share is 1 − (p/T) (dT/dz)/(ρ g).
     */
    @Property(tries = 20, seed = "1")
    void coolingTakesOffTheShareOfTheRigidRise(@ForAll @DoubleRange(min = 0, max = 0.03) double perMetre) {
        ClosedWell well = new ClosedWell(
                WellPath.vertical(3000),
                UNIFORM,
                IDEAL,
                TemperatureProfile.of(new double[] {0, 3000}, new double[] {380 - 3000 * perMetre, 380}),
                MUD,
                new ClosedWell.Influx(HYDROSTATIC + 2e6, 0.05),
                ClosedWell.Yielding.RIGID,
                List.of());
        double share = 1 - well.influx().formationPressure() / 380 * perMetre / (1300 * 9.80665);
        assertEquals(share, Migration.shareOfRigidRise(well), 2e-3);
    }

    /** Where the gauge falls at first, no rate can be told from it. */
    @Test
    void aGaugeThatDoesNotRiseTellsNoRate() {
        ClosedWell well = new ClosedWell(
                WellPath.vertical(3000),
                UNIFORM,
                IDEAL,
                TemperatureProfile.of(new double[] {0, 2900, 3000}, new double[] {290, 360, 380}),
                MUD,
                new ClosedWell.Influx(HYDROSTATIC + 2e6, 0.5),
                ClosedWell.Yielding.RIGID,
                List.of());
        assertTrue(Migration.shareOfRigidRise(well) < 0);
        InputFault fault = assertThrows(
                InputFault.class, () -> Migration.riseRateOf(well, new MigrationFormulas.PressureRise(1e5, 600)));
        assertTrue(fault.getMessage().contains("does not rise"), fault.getMessage());
    }

    /** A string pressed inside and outside alike does not grow: with incompressible mud an open one changes nothing. */
    @Test
    void theComplianceOfTheHoleIsNotThatOfTheString() {
        List<MigrationPoint> closed = Migration.run(
                        well(UNIFORM, REAL, new ClosedWell.Yielding(0, 1e-9, false, 0), 3), SLOW)
                .points();
        List<MigrationPoint> open = Migration.run(
                        well(UNIFORM, REAL, new ClosedWell.Yielding(0, 1e-9, true, 0), 3), SLOW)
                .points();
        assertEquals(closed.size(), open.size());
        for (int i = 0; i < open.size(); i++) {
            assertEquals(closed.get(i).bottomHolePressure(), open.get(i).bottomHolePressure(), 1);
        }
    }

    /**
     * In a soft well the pressure at a depth peaks as the top of the gas arrives there and falls while the gas passes. A limit
     * just below the peak is reached, one just above is not.
     */
    @Property(tries = 20, seed = "1")
    void aLimitAtThePeakOfACurveIsFound(@ForAll @DoubleRange(min = 900, max = 2400) double depth) {
        ClosedWell soft = well(UNIFORM, IDEAL, new ClosedWell.Yielding(5e-10, 2e-9, false, 0), 3);
        PressureLimit far = new PressureLimit("shoe", depth, 3.9e8);
        List<MigrationPoint> points =
                Migration.run(soft.watching(List.of(far)), SLOW).points();
        MigrationPoint peak = points.stream()
                .filter(p -> p.lowerEnd() >= depth)
                .reduce((a, b) -> b.watched(0) > a.watched(0) ? b : a)
                .orElseThrow();
        assertEquals(depth, peak.upperEnd(), 1e-4);
        MigrationPoint passed =
                points.stream().filter(p -> p.lowerEnd() <= depth).findFirst().orElseThrow();
        assertTrue(passed.watched(0) < peak.watched(0));
        MigrationPoint reached = crossing(soft, depth, peak.watched(0) - 10).orElseThrow();
        assertTrue(reached.lowerEnd() >= peak.lowerEnd());
        assertEquals(peak.lowerEnd(), reached.lowerEnd(), 1);
        assertEquals(peak.watched(0) - 10, reached.watched(0), 1);
        assertTrue(crossing(soft, depth, peak.watched(0) + 10)
                .filter(p -> p.lowerEnd() > passed.lowerEnd())
                .isEmpty());
    }

    private static Optional<MigrationPoint> crossing(ClosedWell well, double depth, double limit) {
        return Migration.run(well.watching(List.of(new PressureLimit("shoe", depth, limit))), SLOW)
                .limits()
                .get(0)
                .reached();
    }

    /** The fast end of the bracket gives the headline, and a rate scales the time of a crossing. */
    @Test
    void theEarliestOfTheBracketIsTheHeadline() {
        ClosedWell well = well(KillWells.annulus(3000, 0), REAL, new ClosedWell.Yielding(5e-10, 2e-10, true, 0), 4);
        PressureLimit gauge = ClosedWell.surfaceLimit("casing", 6e6, well);
        PressureLimit shoe = new PressureLimit("shoe", 2000, 101_325 + 9.80665 * 1650 * 2000);
        MigrationOutlook outlook = Migration.bracket(well.watching(List.of(gauge, shoe)), MigrationBracket.PUBLISHED);
        MigrationCurve.LimitTime earliest = outlook.earliest().orElseThrow();
        MigrationCurve fast = outlook.curves().get(2);
        assertEquals(fast.earliest().orElseThrow(), earliest);
        double slowTime = outlook.curves()
                .get(0)
                .earliest()
                .orElseThrow()
                .reached()
                .orElseThrow()
                .time();
        // 100 ft/min against 500 ft/h.
        assertEquals(12 * earliest.reached().orElseThrow().time(), slowTime, 1);
    }

    @Test
    void aLimitReachedAtShutInIsReachedAtOnce() {
        ClosedWell well = well(UNIFORM, REAL, ClosedWell.Yielding.RIGID, 2);
        MigrationCurve curve = Migration.run(well.watching(List.of(ClosedWell.surfaceLimit("gauge", 1e6, well))), SLOW);
        assertEquals(0, curve.limits().get(0).reached().orElseThrow().time(), 0);
    }

    /** What the pressure tells is found again from a computed curve. */
    @Test
    void theRiseRateIsReadBackFromThePressure() {
        ClosedWell well = well(UNIFORM, REAL, new ClosedWell.Yielding(5e-10, 1e-9, false, 0), 3);
        List<MigrationPoint> points = Migration.run(well, SLOW).points();
        MigrationPoint a = points.get(0);
        MigrationPoint b = points.get(1);
        MigrationFormulas.PressureRise observed =
                new MigrationFormulas.PressureRise(b.surfacePressure() - a.surfacePressure(), b.time());
        // 60 m of rise against the rise over the first metre.
        assertEquals(0.1, Migration.riseRateOf(well, observed), 0.003);
        assertTrue(MigrationFormulas.apparentRiseRate(observed, 1300, HydrostaticConstant.EXACT) < 0.06);
    }

    @Test
    void gasMayBeHeldOrTrapped() {
        ClosedWell well = well(UNIFORM, REAL, ClosedWell.Yielding.RIGID, 2);
        MigrationCurve held =
                Migration.run(well, new YieldStressSuspension(TaylorBubble.ANNULUS_HASAN_KABIR, 10, 0.002));
        assertEquals(MigrationCurve.Ending.HELD, held.ending());
        assertEquals(1, held.points().size());
        WellPath up = WellPath.of(List.of(
                new SurveyStation(0, 0, 0),
                new SurveyStation(1000, 0, 0),
                new SurveyStation(2000, Math.toRadians(90), 0),
                new SurveyStation(2300, Math.toRadians(97), 0),
                new SurveyStation(3000, Math.toRadians(97), 0)));
        ClosedWell toe = new ClosedWell(
                up, UNIFORM, REAL, WARM, MUD, new ClosedWell.Influx(3e7, 2), ClosedWell.Yielding.RIGID, List.of());
        assertEquals(MigrationCurve.Ending.TRAPPED, Migration.run(toe, SLOW).ending());
    }

    @Test
    void anInfluxLargerThanTheAnnulusIsAFault() {
        assertEquals(
                "influx volume",
                assertThrows(RangeFault.class, () -> well(UNIFORM, REAL, ClosedWell.Yielding.RIGID, 1000))
                        .field());
    }
}
