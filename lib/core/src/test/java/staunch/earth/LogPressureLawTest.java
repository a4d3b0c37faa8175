package staunch.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.units.InputFault;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.units.Wording;
import staunch.well.Datum;

/** What must hold of pore pressure from a log, and of its way into a planned well. */
class LogPressureLawTest {
    private static final Datum THERE = new Datum("there", 23, new Datum.AtSea(296, false));
    private static final Datum HERE = new Datum("here", 25, new Datum.AtSea(310, true));
    private static final double GROUND = THERE.groundOrSeabedDepth();
    private static final NormalPressure NORMAL = new NormalPressure(THERE, 1030);
    private static final NormalPressure PLANNED = new NormalPressure(HERE, 1030);
    private static final double WINDOW = 200;
    private static final TrendChoice FITTED = new TrendChoice.Fitted(GROUND + 600, GROUND + 1200);
    private static final LogMethod SONIC =
            new LogMethod.Eaton(PorePressureMethod.EATON_SONIC, OptionalDouble.empty(), false);

    private static Range overburden(Datum datum, double uncertainty) {
        return new Overburden(datum, 1025, new Overburden.MeanDensity(2150, uncertainty))
                .withoutLog(datum.groundOrSeabedDepth() + 5000);
    }

    /** Sonic of 620 µs/m falling to 1/e over 4700 m, slower below 1200 m by a share that grows to the end. */
    private static WellLog log(double slower) {
        List<WellLog.Block> blocks = new ArrayList<>();
        for (int i = 0; i <= 240; i++) {
            double below = 605 + 10.0 * i;
            double more = 1 + slower * Math.max(0, below - 1200) / 1805;
            blocks.add(new WellLog.Block(
                    GROUND + below,
                    OptionalDouble.empty(),
                    OptionalDouble.of(620e-6 * Math.exp(-below / 4700) * more),
                    OptionalDouble.of(0.8 * Math.exp(below / 4000) / more)));
        }
        return new WellLog(blocks, Rocks.SOURCE);
    }

    private static LogPressure read(LogMethod method, WellLog log, double uncertainty, PressurePoint... points) {
        return LogPressure.of(
                method,
                FITTED,
                OptionalDouble.empty(),
                log,
                new LogPressure.Surroundings(NORMAL, overburden(THERE, uncertainty), List.of(points)));
    }

    @Property(tries = 50, seed = "1")
    void eatonIsTheFormulaItself(@ForAll @DoubleRange(min = 0.05, max = 0.8) double slower) {
        for (LogPressure.Row row : read(SONIC, log(slower), 0).rows()) {
            double z = row.verticalDepth();
            double s = overburden(THERE, 0).likely().lowestAt(z);
            double below = z - GROUND;
            double ratio = 1 / (1 + slower * Math.max(0, below - 1200) / 1805);
            double expected = s - (s - NORMAL.at(z)) * Math.pow(ratio, 3);
            assertEquals(expected, row.pressure().likely(), 10, "at " + z);
            assertEquals(ratio, row.ratio(), 1e-9);
        }
    }

    @Property(tries = 50, seed = "1")
    void theEquivalentDepthHasTheSameReadingAndTheSameEffectiveStress(
            @ForAll @DoubleRange(min = 0.02, max = 0.25) double slower) {
        for (LogProperty property : LogProperty.values()) {
            double length = property == LogProperty.SLOWNESS ? 4700 : 4000;
            LogPressure found = read(new LogMethod.EquivalentDepth(property), log(slower), 0);
            LogPressure.Row last = found.rows().get(found.rows().size() - 1);
            double z = last.verticalDepth();
            // Reading y₀ exp(∓h/λ) m equals that of the trend at h − λ ln m.
            double above = z - length * Math.log(1 + slower * (z - GROUND - 1200) / 1805);
            double expected = overburden(THERE, 0).likely().lowestAt(z)
                    - (overburden(THERE, 0).likely().lowestAt(above) - NORMAL.at(above));
            assertEquals(expected, last.pressure().likely(), 50);
        }
    }

    @Test
    void onTheTrendPressureIsHydrostaticAndNeverLess() {
        for (LogMethod method : List.of(SONIC, new LogMethod.EquivalentDepth(LogProperty.RESISTIVITY))) {
            for (double slower : new double[] {0, -0.1}) {
                for (LogPressure.Row row : read(method, log(slower), 30).rows()) {
                    assertEquals(NORMAL.at(row.verticalDepth()), row.pressure().low(), 100);
                    assertTrue(row.pressure().low() >= NORMAL.at(row.verticalDepth()) - 1e-6);
                }
            }
        }
    }

    @Test
    void aCalibratedExponentMeetsItsPointAndTheSpreadTakesInBoth() {
        double z = GROUND + 2500;
        double s = overburden(THERE, 0).likely().lowestAt(z);
        PressurePoint one = new PressurePoint("one", z, s - (s - NORMAL.at(z)) * 0.6, Quality.GOOD, Rocks.SOURCE);
        PressurePoint other = new PressurePoint("other", z, s - (s - NORMAL.at(z)) * 0.5, Quality.GOOD, Rocks.SOURCE);
        PressurePoint rejected = new PressurePoint("bad", z, s - 1e6, Quality.REJECTED, Rocks.SOURCE);
        PressurePoint high = new PressurePoint("high", GROUND + 300, 1e7, Quality.GOOD, Rocks.SOURCE);
        LogMethod calibrated = new LogMethod.Eaton(PorePressureMethod.EATON_SONIC, OptionalDouble.of(2.5), true);
        LogPressure single = read(calibrated, log(0.4), 0, one, rejected);
        assertEquals(one.pressure(), single.profile().likely().lowestAt(z), 2e4, "between blocks 10 m apart");
        LogPressure both = read(calibrated, log(0.4), 0, other, one, high);
        assertEquals(both, read(calibrated, log(0.4), 0, one, other, high), "the order makes no difference");
        assertEquals(2, both.exponent().orElseThrow().points());
        assertEquals(
                List.of("high: the log has no shale near it"),
                both.uncalibrated().stream().map(Wording::text).toList());
        assertTrue(both.profile().lowOrLikely().lowestAt(z) <= one.pressure() + 2e4);
        assertTrue(both.profile().highOrLikely().lowestAt(z) >= other.pressure() - 2e4);
        assertEquals(2.5, read(calibrated, log(0.4), 0).exponent().orElseThrow().likely(), "until there is a point");
    }

    @Test
    void overburdenWidensThePressureAndReadingsBeyondBeliefHaveNone() {
        LogPressure.Row exact = read(SONIC, log(0.4), 0).rows().get(240);
        LogPressure.Row spread = read(SONIC, log(0.4), 50).rows().get(240);
        assertEquals(exact.pressure().likely(), spread.pressure().likely());
        double more = 50 * Physics.GRAVITY * 3005 * (1 - Math.pow(exact.ratio(), 3));
        assertEquals(exact.pressure().high() + more, spread.pressure().high(), 10);
        assertEquals(exact.pressure().low() - more, spread.pressure().low(), 10);
        LogPressure wild = read(SONIC, log(1.7), 0);
        assertTrue(wild.unread().size() > 5);
        assertTrue(
                wild.unread().get(0).reason().text().startsWith("ratio of the log to its normal trend 0.39"),
                wild.unread().get(0).reason().text());
        assertEquals(241, wild.rows().size() + wild.unread().size());
    }

    @Test
    void aTrendThatCannotBeIsRefused() {
        WellLog log = log(0.4);
        LogPressure.Surroundings well = new LogPressure.Surroundings(NORMAL, overburden(THERE, 0), List.of());
        TrendChoice deep = new TrendChoice.Fitted(GROUND + 4000, GROUND + 4500);
        assertThrows(InputFault.class, () -> LogPressure.of(SONIC, deep, OptionalDouble.empty(), log, well));
        WellLog rising = log(2);
        TrendChoice lower = new TrendChoice.Fitted(GROUND + 1500, GROUND + 2000);
        assertThrows(InputFault.class, () -> LogPressure.of(SONIC, lower, OptionalDouble.empty(), rising, well));
        assertThrows(
                RangeFault.class,
                () -> LogPressure.of(SONIC, new TrendChoice.Given(620, 4700, 0), OptionalDouble.empty(), log, well));
        // The trend that the log was made of, stated.
        LogPressure given =
                LogPressure.of(SONIC, new TrendChoice.Given(620e-6, 4700, 0), OptionalDouble.empty(), log, well);
        assertEquals(
                read(SONIC, log, 0).profile().likely().lowestAt(GROUND + 3000),
                given.profile().likely().lowestAt(GROUND + 3000),
                10);
        assertThrows(InputFault.class, () -> new TrendChoice.Fitted(10, 10));
        assertThrows(
                InputFault.class,
                () -> new LogMethod.Eaton(PorePressureMethod.EATON_DRILLING_EXPONENT, OptionalDouble.empty(), false));
    }

    // --- Into the planned well

    private static OffsetWell well(
            String name, double uncertainty, boolean common, Optional<LogPressure> log, PressurePoint... points) {
        Range overburden = overburden(THERE, uncertainty);
        PressureProfile pore = NORMAL.profile(GROUND, GROUND + 5000);
        double z = GROUND + 1800;
        StressState state = new StressState(overburden.likely().lowestAt(z), pore.lowestAt(z));
        StrengthTest test = new StrengthTest(
                "t", z, state.strengthAt(0.7), Standing.LEAK_OFF, OptionalDouble.empty(), Rocks.SOURCE);
        return new OffsetWell(
                name,
                1000,
                NORMAL,
                overburden,
                Range.of(pore),
                List.of(test),
                List.of(points),
                List.of(),
                new OffsetWell.Logged(common, log, List.of()));
    }

    private static EvidenceTransfer.Result apply(
            EvidenceUse use, LogUse logs, double uncertainty, List<OffsetWell> wells) {
        OffsetTransfer transfer = new OffsetTransfer(new DepthMatching.BelowMudline(), WINDOW, 5000, 0.1, 2e6);
        double ground = HERE.groundOrSeabedDepth();
        EarthModel predicted = new EarthModel(
                Optional.of(Range.of(PLANNED.profile(ground, ground + 4000))),
                Optional.of(Range.of(PressureProfile.of(
                        new double[] {ground, ground + 4000}, new double[] {PLANNED.at(ground), 9e7}))),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of());
        return new EvidenceTransfer(transfer, use, use, false, logs, BoundUse.LISTED)
                .apply(predicted, PLANNED, overburden(HERE, uncertainty), wells, Set.of());
    }

    @Test
    void anErrorOfACommonSedimentMostlyCancelsAndOthersAddUp() {
        OffsetEvidence.Test none =
                test(apply(EvidenceUse.ADJUSTED, LogUse.COMPARED, 0, List.of(well("A", 0, true, Optional.empty()))));
        assertEquals(none.strength(), none.low());
        assertEquals(none.strength(), none.high());
        OffsetEvidence.Test common =
                test(apply(EvidenceUse.ADJUSTED, LogUse.COMPARED, 50, List.of(well("A", 50, true, Optional.empty()))));
        OffsetEvidence.Test own =
                test(apply(EvidenceUse.ADJUSTED, LogUse.COMPARED, 50, List.of(well("A", 50, false, Optional.empty()))));
        assertEquals(none.strength(), common.strength());
        double error = 50 * Physics.GRAVITY * 1800;
        assertTrue(common.high() - common.low() < 0.05 * error, "the same sediment at the same depth below the seabed");
        // dF = K dS here and about K dS, of the other sign, there.
        assertEquals(4 * 0.7 * error, own.high() - own.low(), 0.2 * error);
        Range strength = apply(
                        EvidenceUse.ADJUSTED, LogUse.COMPARED, 50, List.of(well("A", 50, false, Optional.empty())))
                .earth()
                .strength()
                .orElseThrow();
        assertEquals(own.low(), strength.lowOrLikely().lowestAt(own.verticalDepth()), 1);
        assertEquals(own.high(), strength.highOrLikely().lowestAt(own.verticalDepth()), 1);
    }

    private static OffsetEvidence.Test test(EvidenceTransfer.Result result) {
        return result.evidence().tests().get(0);
    }

    /** A loss below the last pore pressure of its well tells no ratio, which is no fault of its pressure. */
    @Test
    void aLossBeyondWhatIsKnownOfItsWellSaysSo() {
        OffsetWell plain = well("A", 0, false, Optional.empty());
        DrillingEvent loss = new DrillingEvent("deep", DrillingEvent.Type.LOSS, GROUND + 3000, 6.5e7, Rocks.SOURCE);
        OffsetWell well = new OffsetWell(
                "A",
                1000,
                NORMAL,
                plain.overburden(),
                Range.of(NORMAL.profile(GROUND, GROUND + 2500)),
                plain.tests(),
                List.of(),
                List.of(loss),
                plain.logged());
        assertEquals(
                List.of("A: deep lies where the overburden or pore pressure of its own well is not given"),
                apply(EvidenceUse.ADJUSTED, LogUse.COMPARED, 0, List.of(well))
                        .evidence()
                        .leftOut());
    }

    /** A high pore pressure above the leak-off of its own well is bounded by it: the rock held that much. */
    @Test
    void aHighPorePressureAboveTheLeakOffLeavesNoRatio() {
        OffsetEvidence.Test carried =
                test(apply(EvidenceUse.ADJUSTED, LogUse.COMPARED, 0, List.of(withSpread(0, false, 0.9))));
        double z = carried.verticalDepth();
        assertEquals(PLANNED.at(z), carried.low(), 1, "F = P + 0 (S - P)");
        assertEquals(
                PLANNED.at(z) + 0.7 * (overburden(HERE, 0).likely().lowestAt(z) - PLANNED.at(z)),
                carried.strength(),
                1e5);
    }

    /** Errors of the pore pressure of a well have nothing to do with those of a sediment that both wells share. */
    @Test
    void aCommonSedimentDoesNotHideTheErrorOfThePorePressure() {
        OffsetWell well = withSpread(50, true, 0.3);
        OffsetEvidence.Test carried = test(apply(EvidenceUse.ADJUSTED, LogUse.COMPARED, 50, List.of(well)));
        double z = carried.verticalDepth();
        double there = well.tests().get(0).verticalDepth();
        double f = well.tests().get(0).pressure();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int sediment : new int[] {-1, 1}) {
            for (int pore : new int[] {-1, 1}) {
                double p = side(well.porePressure(), pore).lowestAt(there);
                double k = (f - p) / (side(well.overburden(), sediment).lowestAt(there) - p);
                double strength = PLANNED.at(z)
                        + k * (side(overburden(HERE, 50), sediment).lowestAt(z) - PLANNED.at(z));
                least = Math.min(least, strength);
                most = Math.max(most, strength);
            }
        }
        assertEquals(least, carried.low(), 1);
        assertEquals(most, carried.high(), 1);
    }

    private static PressureProfile side(Range range, int sign) {
        return sign < 0 ? range.lowOrLikely() : range.highOrLikely();
    }

    /** Hydrostatic, with a high estimate a share of the effective stress above it. */
    private static OffsetWell withSpread(double uncertainty, boolean common, double share) {
        OffsetWell plain = well("A", uncertainty, common, Optional.empty());
        PressureProfile likely = plain.porePressure().likely();
        double[] z = likely.depths();
        double[] high = new double[z.length];
        for (int i = 0; i < z.length; i++) {
            high[i] = NORMAL.at(z[i])
                    + share * Math.max(0, plain.overburden().likely().lowestAt(z[i]) - NORMAL.at(z[i]));
        }
        return new OffsetWell(
                plain.name(),
                plain.distance(),
                plain.normal(),
                plain.overburden(),
                new Range(likely, Optional.empty(), Optional.of(PressureProfile.of(z, high))),
                plain.tests(),
                plain.points(),
                plain.events(),
                plain.logged());
    }

    @Test
    void withoutUncertaintyNothingChanges() {
        OffsetWell with = well("A", 0, false, Optional.empty());
        OffsetWell before = new OffsetWell(
                "A",
                1000,
                NORMAL,
                with.overburden().likely(),
                with.porePressure().likely(),
                with.tests(),
                with.points());
        for (EvidenceUse use : EvidenceUse.values()) {
            assertEquals(
                    apply(use, LogUse.COMPARED, 0, List.of(before)), apply(use, LogUse.COMPARED, 0, List.of(with)));
        }
    }

    @Test
    void aLogThatIsComparedMovesNothingAndIsHeldAgainstThePoints() {
        LogPressure log = read(SONIC, log(0.4), 0);
        double z = GROUND + 2500;
        PressurePoint point =
                new PressurePoint("p", z, log.profile().likely().lowestAt(z) + 3e6, Quality.GOOD, Rocks.SOURCE);
        EvidenceTransfer.Result with =
                apply(EvidenceUse.ADJUSTED, LogUse.COMPARED, 0, List.of(well("A", 0, true, Optional.of(log), point)));
        EvidenceTransfer.Result without =
                apply(EvidenceUse.ADJUSTED, LogUse.COMPARED, 0, List.of(well("A", 0, true, Optional.empty(), point)));
        assertEquals(without.earth(), with.earth());
        assertTrue(
                with.evidence().conflicts().stream()
                        .map(EvidenceConflict::text)
                        .anyMatch(t -> t.startsWith("the pore pressure from the log, carried over, lies 3e6 Pa below")
                                || t.startsWith("the pore pressure from the log, carried over, lies 3000000 Pa below")),
                with.evidence().conflicts().toString());
    }

    @Test
    void anEstimatedLogCountsWhereNothingWasMeasured() {
        LogPressure log = read(SONIC, log(0.4), 30);
        double z = GROUND + 2500;
        double measured = log.profile().likely().lowestAt(z) + 3e6;
        PressurePoint point = new PressurePoint("p", z, measured, Quality.GOOD, Rocks.SOURCE);
        double down = HERE.groundOrSeabedDepth() - GROUND;
        double water = PLANNED.at(z + down) - NORMAL.at(z);
        for (EvidenceUse use : List.of(EvidenceUse.ADJUSTED, EvidenceUse.TRANSFERRED)) {
            List<OffsetWell> wells = new ArrayList<>(
                    List.of(well("A", 0, true, Optional.of(log), point), well("B", 0, true, Optional.of(log))));
            EvidenceTransfer.Result result = apply(use, LogUse.ESTIMATE, 0, wells);
            Collections.reverse(wells);
            assertEquals(result, apply(use, LogUse.ESTIMATE, 0, wells), "the order of the wells makes no difference");
            Range pore = result.earth().porePressure().orElseThrow();
            assertEquals(measured + water, pore.likely().lowestAt(z + down), 1, use + " at the point");
            double far = GROUND + 2005;
            assertEquals(
                    log.profile().likely().lowestAt(far) + water,
                    pore.likely().lowestAt(far + down),
                    1,
                    use + " far from it");
            assertEquals(
                    log.profile().lowOrLikely().lowestAt(far) + water,
                    pore.lowOrLikely().lowestAt(far + down),
                    1);
            double half = GROUND + 2400;
            double carried = measured - NORMAL.at(z) + NORMAL.at(half);
            double expected = (log.profile().likely().lowestAt(half) + carried) / 2 + water;
            assertEquals(expected, pore.likely().lowestAt(half + down), 2e4, use + " half a window away");
        }
    }

    @Test
    void theLogFracturePressureMeetsItsTest() {
        OffsetWell well = well("A", 0, true, Optional.of(read(SONIC, log(0), 0)));
        LogFracture fracture = LogFracture.of(well).orElseThrow();
        assertEquals(0.7, fracture.mean(), 1e-12);
        assertEquals(0.7 / 1.7, fracture.poissonRatio().getAsDouble(), 1e-12);
        double[] z = fracture.rows().stream()
                .mapToDouble(LogFracture.Row::verticalDepth)
                .toArray();
        double[] p =
                fracture.rows().stream().mapToDouble(r -> r.pressure().likely()).toArray();
        assertEquals(well.tests().get(0).pressure(), PressureProfile.of(z, p).lowestAt(GROUND + 1800), 1000);
        assertEquals(Optional.empty(), LogFracture.of(well("A", 0, true, Optional.empty())));
    }

    @Test
    void belowTheLogTheSedimentGoesOn() {
        Overburden law = new Overburden(THERE, 1025, new Overburden.MeanDensity(2150, 40));
        double[] z = {GROUND + 500, GROUND + 1000, GROUND + 1500};
        double[] density = {2150, 2150, 2150};
        Range range = law.along(DensityLog.of(z, density, 20, Rocks.SOURCE), GROUND + 4000);
        Range plain = law.withoutLog(GROUND + 4000);
        assertEquals(plain.likely().lowestAt(GROUND + 3777), range.likely().lowestAt(GROUND + 3777), 1e-4);
        double spread = Physics.GRAVITY * (40 * 500 + 20 * 1000 + 40 * 2500);
        assertEquals(
                spread,
                range.highOrLikely().lowestAt(GROUND + 4000) - range.likely().lowestAt(GROUND + 4000),
                1e-4);
        assertTrue(Arrays.equals(
                law.along(DensityLog.of(z, density, 20, Rocks.SOURCE)).likely().depths(),
                law.along(DensityLog.of(z, density, 20, Rocks.SOURCE), GROUND + 1200)
                        .likely()
                        .depths()));
    }
}
