package staunch.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.units.InputFault;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.well.Datum;

class PressurePredictionLawTest {
    /** Pressures here are below 200 MPa; a double holds them to 3e-8 Pa, a few operations to 1e-6. */
    private static final double ROUNDING = 1e-6;

    private static final StressState NORMAL = new StressState(60e6, 30e6);

    private static Datum sea(double elevation, double water) {
        return new Datum("rotary table", elevation, new Datum.AtSea(water, true));
    }

    @Test
    void onTheNormalTrendPorePressureIsHydrostatic() {
        for (PorePressureMethod method : PorePressureMethod.values()) {
            assertEquals(NORMAL.porePressure(), method.pressure(NORMAL, 1), ROUNDING);
            PressureEstimate exact = method.estimate(NORMAL, 1, 0);
            assertEquals(exact.low(), exact.high());
        }
        assertEquals(NORMAL.porePressure(), PorePressureMethod.byEquivalentDepth(60e6, NORMAL), ROUNDING, "own depth");
    }

    @Property(tries = 200, seed = "1")
    void porePressureLiesBetweenHydrostaticAndOverburdenAndFallsWithTheRatio(
            @ForAll @DoubleRange(min = 0.4, max = 0.99) double ratio) {
        for (PorePressureMethod method : PorePressureMethod.values()) {
            double pressure = method.pressure(NORMAL, ratio);
            assertTrue(pressure > NORMAL.porePressure() && pressure < NORMAL.overburden());
            assertTrue(method.pressure(NORMAL, ratio * 1.01) < pressure);
        }
        assertTrue(
                PorePressureMethod.EATON_SONIC.pressure(NORMAL, ratio)
                        > PorePressureMethod.EATON_RESISTIVITY.pressure(NORMAL, ratio),
                "the greater exponent");
    }

    @Property(tries = 100, seed = "1")
    void aCalibratedExponentMeetsTheMeasuredPressure(
            @ForAll @DoubleRange(min = 0.4, max = 0.9) double ratio,
            @ForAll @DoubleRange(min = 0.5, max = 5) double exponent) {
        PorePressureMethod method = PorePressureMethod.EATON_SONIC;
        double measured = method.pressure(NORMAL, ratio, exponent);
        // ln r of 0.9 is −0.105: rounding of the pressures is enlarged tenfold.
        assertEquals(exponent, method.calibrate(NORMAL, measured, ratio), 1e-6);
    }

    @Test
    void theUncertaintyOfTheRatioWidensTheEstimate() {
        PressureEstimate e = PorePressureMethod.EATON_RESISTIVITY.estimate(NORMAL, 0.8, 0.1);
        assertEquals(PorePressureMethod.EATON_RESISTIVITY.pressure(NORMAL, 0.72), e.high(), ROUNDING);
        assertEquals(PorePressureMethod.EATON_RESISTIVITY.pressure(NORMAL, 0.88), e.low(), ROUNDING);
    }

    @Test
    void outsideTheirRangesMethodsRefuse() {
        assertThrows(RangeFault.class, () -> PorePressureMethod.EATON_SONIC.pressure(NORMAL, 0.39));
        assertThrows(RangeFault.class, () -> PorePressureMethod.EATON_RESISTIVITY.pressure(NORMAL, 1.26));
        assertThrows(RangeFault.class, () -> PorePressureMethod.byEquivalentDepth(59e6, NORMAL));
        assertThrows(RangeFault.class, () -> new StressState(30e6, 31e6));
        assertThrows(RangeFault.class, () -> NORMAL.ratioOf(29e6));
        assertThrows(RangeFault.class, () -> NORMAL.strengthAt(2.01));
        assertThrows(RangeFault.class, () -> NORMAL.equivalentNormalDepth(2999));
        assertThrows(RangeFault.class, () -> new NormalPressure(sea(25, 100), 1030).at(24.9));
    }

    @Property(tries = 200, seed = "1")
    void theDrillingExponentRisesWhereRockDrillsSlowerUnderMoreWeight(
            @ForAll @DoubleRange(min = 0.1, max = 20) double millimetres,
            @ForAll @DoubleRange(min = 0.5, max = 4) double speed,
            @ForAll @DoubleRange(min = 2e4, max = 4e5) double weight,
            @ForAll @DoubleRange(min = 0.15, max = 0.6) double bit) {
        double rate = millimetres / 1000;
        double exponent = new DrillingExponent(rate, speed, weight, bit).asDrilled();
        assertTrue(exponent > 0);
        assertTrue(new DrillingExponent(rate / 1.1, speed, weight, bit).asDrilled() > exponent);
        assertTrue(new DrillingExponent(rate, speed * 1.1, weight, bit).asDrilled() > exponent);
        assertTrue(new DrillingExponent(rate, speed, weight * 1.1, bit).asDrilled() > exponent);
        assertTrue(DrillingExponent.corrected(exponent, 1030, 1400) < exponent);
        assertEquals(exponent, DrillingExponent.corrected(exponent, 1030, 1030), 1e-12 * exponent);
    }

    @Test
    void aDrillingExponentOutsideItsRangesIsRefused() {
        assertThrows(RangeFault.class, () -> new DrillingExponent(0, 2, 1e5, 0.2));
        assertThrows(RangeFault.class, () -> new DrillingExponent(0.002, 2, 6.1e5, 0.2));
        assertThrows(RangeFault.class, () -> new DrillingExponent(0.15, 1, 1e5, 0.2), "0.15 m in one turn");
        assertThrows(RangeFault.class, () -> DrillingExponent.corrected(1.5, 1300, 1400));
    }

    @Property(tries = 100, seed = "1")
    void aStressRatioAndItsStrengthAreInverse(@ForAll @DoubleRange(min = 0.06, max = 1) double ratio) {
        assertEquals(ratio, NORMAL.ratioOf(NORMAL.strengthAt(ratio)), 1e-12);
        double poisson = StressState.poissonOfRatio(ratio);
        assertEquals(ratio, StressState.ratioOfPoisson(poisson), 1e-12);
        double depth = 3000;
        double eaton = RockEstimates.eatonFractureGradient(60e6 / depth, 30e6 / depth, poisson);
        assertEquals(eaton * depth, NORMAL.strengthAt(ratio), 1e-6 * 60e6, "Eaton's gradient times depth");
    }

    @Property(tries = 100, seed = "1")
    void aTrendFindsWhatItWasMadeOf(
            @ForAll @DoubleRange(min = 0.5, max = 200) double surface,
            @ForAll @DoubleRange(min = 0.02, max = 1) double slopePerKilometre,
            @ForAll @DoubleRange(min = 501, max = 4999) double depth) {
        double slope = slopePerKilometre / 1000;
        double[] h = {500, 900, 1500, 2200};
        double[] y = new double[h.length];
        for (int i = 0; i < h.length; i++) {
            y[i] = surface * Math.exp(slope * h[i]);
        }
        NormalTrend trend = NormalTrend.fit(h, y, 5000);
        assertEquals(surface * Math.exp(slope * depth), trend.at(depth), 1e-9 * trend.at(depth));
        assertEquals(0, trend.scatter(), 1e-10);
        // The inverse divides an error of the logarithm, 1e-14, by a slope of 2e-5.
        assertEquals(depth, trend.depthOf(trend.at(depth)), 1e-6);
    }

    @Test
    void aTrendIsNotCarriedBeyondItsRange() {
        NormalTrend trend = NormalTrend.fit(new double[] {500, 1000, 1500}, new double[] {1, 1.2, 1.5}, 4000);
        assertThrows(RangeFault.class, () -> trend.at(499));
        assertThrows(RangeFault.class, () -> trend.at(4001));
        assertThrows(RangeFault.class, () -> trend.depthOf(0.5));
        assertThrows(InputFault.class, () -> NormalTrend.fit(new double[] {1, 2}, new double[] {1, 2}, 10));
        assertThrows(InputFault.class, () -> NormalTrend.fit(new double[] {5, 5, 5}, new double[] {1, 2, 3}, 10));
        NormalTrend flat = NormalTrend.fit(new double[] {500, 1000, 1500}, new double[] {1, 1, 1}, 4000);
        assertThrows(InputFault.class, () -> flat.depthOf(1));
    }

    @Property(tries = 100, seed = "1")
    void aConstantDensityIsAStraightOverburden(
            @ForAll @DoubleRange(min = 1300, max = 3000) double density,
            @ForAll @DoubleRange(min = 1, max = 3000) double water) {
        Datum datum = sea(25, water);
        double ground = datum.groundOrSeabedDepth();
        Overburden overburden = new Overburden(datum, 1025, new Overburden.MeanDensity(density, 50));
        DensityLog log = DensityLog.of(
                new double[] {ground + 310, ground + 700, ground + 2000},
                new double[] {density, density, density},
                20,
                Rocks.SOURCE);
        Range range = overburden.along(log);
        double z = ground + 1234;
        double sea = Physics.ATMOSPHERE + 1025 * Physics.GRAVITY * water;
        double expected = sea + density * Physics.GRAVITY * 1234;
        double spread = Physics.GRAVITY * (310 * 50 + (1234 - 310) * 20);
        assertEquals(sea, range.likely().lowestAt(ground), ROUNDING);
        assertEquals(expected, range.likely().lowestAt(z), 1e-5);
        assertEquals(expected - spread, range.lowOrLikely().lowestAt(z), 1e-5);
        assertEquals(expected + spread, range.highOrLikely().lowestAt(z), 1e-5);
        assertEquals(expected, overburden.withoutLog(ground + 2000).likely().lowestAt(z), 1e-5);
    }

    @Test
    void aLogOfACompactingSedimentGivesItsClosedForm() {
        Datum datum = new Datum("rotary table", 300, new Datum.OnLand(9));
        RockEstimates.Sediment sediment = new RockEstimates.Sediment(0.6, 2000, 2650, 1030);
        double[] z = new double[1001];
        double[] density = new double[z.length];
        for (int i = 0; i < z.length; i++) {
            double below = 500 + 2.5 * i;
            z[i] = 9 + below;
            double porosity = 0.6 * Math.exp(-below / 2000);
            density[i] = 2650 - (2650 - 1030) * porosity;
        }
        Overburden overburden = new Overburden(datum, 1025, new Overburden.Compacting(sediment, 0));
        PressureProfile stress =
                overburden.along(DensityLog.of(z, density, 0, Rocks.SOURCE)).likely();
        double expected = Physics.ATMOSPHERE + sediment.overburden(3000);
        // Trapezoidal rule over 2500 m: g (b − a) h² ρ'' / 12, with ρ'' = 1620 · 0.6 / 2000² at most.
        assertEquals(expected, stress.lowestAt(3009), 9.81 * 2500 * 2.5 * 2.5 * 1620 * 0.6 / 4e6 / 12);
    }

    @Test
    void theAirGapWeighsNothing() {
        double[] density = {2000, 2300};
        double stress = Double.NaN;
        for (double elevation : new double[] {10, 25, 60}) {
            Datum datum = sea(elevation, 300);
            double ground = datum.groundOrSeabedDepth();
            DensityLog log = DensityLog.of(new double[] {ground, ground + 3000}, density, 0, Rocks.SOURCE);
            double deep = new Overburden(datum, 1025, new Overburden.MeanDensity(2000, 0))
                    .along(log)
                    .likely()
                    .lowestAt(ground + 3000);
            stress = Double.isNaN(stress) ? deep : stress;
            assertEquals(stress, deep, ROUNDING * 10);
            assertEquals(
                    Physics.ATMOSPHERE + 1030 * Physics.GRAVITY * 3300,
                    new NormalPressure(datum, 1030).at(ground + 3000),
                    ROUNDING);
        }
    }

    @Test
    void aDensityLogIsCheckedBeforeItIsUsed() {
        String fault = assertThrows(
                        InputFault.class,
                        () -> DensityLog.of(
                                new double[] {100, 200, 200}, new double[] {2000, 2000, 2000}, 0, Rocks.SOURCE))
                .getMessage();
        assertTrue(fault.contains("has vertical depth 200.0 m after 200.0 m"), fault);
        assertThrows(
                RangeFault.class,
                () -> DensityLog.of(new double[] {100, 200}, new double[] {2000, 2.3}, 0, Rocks.SOURCE));
        DensityLog high = DensityLog.of(new double[] {100, 200}, new double[] {2000, 2000}, 0, Rocks.SOURCE);
        Overburden overburden = new Overburden(sea(25, 300), 1025, new Overburden.MeanDensity(2000, 0));
        assertThrows(InputFault.class, () -> overburden.along(high));
    }
}
