package staunch.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.units.EquivalentDensity;
import staunch.units.InputFault;
import staunch.well.Datum;

/** What must hold whatever the evidence is. */
class EvidenceTransferLawTest {
    private static final double WINDOW = 200;

    /** Pressures to 100 MPa carried through a quotient and a product. */
    private static final double ROUNDING = 1e-3;

    private static final NormalPressure OFFSET =
            new NormalPressure(new Datum("rotary table", 25, new Datum.AtSea(100, true)), 1030);
    private static final NormalPressure PLANNED =
            new NormalPressure(new Datum("rotary table", 30, new Datum.AtSea(400, true)), 1030);
    private static final EarthModel PREDICTED = new EarthModel(
            Optional.of(range(PLANNED, 1.2, 1e6)),
            Optional.of(range(PLANNED, 1.7, 2e6)),
            List.of(
                    test(
                            "planned",
                            ground(PLANNED) + 2000,
                            equivalent(1750, ground(PLANNED) + 2000),
                            Standing.LEAK_OFF),
                    test("done", ground(PLANNED) + 2000, equivalent(1750, ground(PLANNED) + 2000), Standing.LEAK_OFF)),
            List.of(new WeakZone("sand", ground(PLANNED) + 2900, ground(PLANNED) + 2950, 1500, Rocks.SOURCE)),
            Optional.empty(),
            List.of());

    private static double ground(NormalPressure normal) {
        return normal.datum().groundOrSeabedDepth();
    }

    private static double equivalent(double density, double z) {
        return EquivalentDensity.pressure(density, z);
    }

    /** Straight from the hydrostatic at the seabed to a multiple of the hydrostatic 4000 m below it. */
    private static PressureProfile profile(NormalPressure normal, double multiple) {
        double top = ground(normal);
        return PressureProfile.of(
                new double[] {top, top + 4000}, new double[] {normal.at(top), multiple * normal.at(top + 4000)});
    }

    private static Range range(NormalPressure normal, double multiple, double spread) {
        PressureProfile likely = profile(normal, multiple);
        double[] p = likely.pressures();
        return new Range(
                likely,
                Optional.of(PressureProfile.of(likely.depths(), new double[] {p[0] - spread, p[1] - spread})),
                Optional.of(PressureProfile.of(likely.depths(), new double[] {p[0] + spread, p[1] + spread})));
    }

    private static PressureProfile overburden(NormalPressure normal) {
        return new Overburden(normal.datum(), 1025, new Overburden.MeanDensity(2150, 0))
                .withoutLog(ground(normal) + 4500)
                .likely();
    }

    private static StrengthTest test(String name, double z, double pressure, Standing standing) {
        return new StrengthTest(name, z, pressure, standing, OptionalDouble.empty(), Rocks.SOURCE);
    }

    private static StrengthTest ofRatio(String name, double below, double ratio, Standing standing) {
        double z = ground(OFFSET) + below;
        StressState state = new StressState(
                overburden(OFFSET).lowestAt(z), profile(OFFSET, 1.2).lowestAt(z));
        return test(name, z, state.strengthAt(ratio), standing);
    }

    private static PressurePoint point(String name, double below, double excess) {
        double z = ground(OFFSET) + below;
        return new PressurePoint(name, z, OFFSET.at(z) + excess, Quality.GOOD, Rocks.SOURCE);
    }

    private static DrillingEvent event(DrillingEvent.Type type, double below, double pressure) {
        return new DrillingEvent(type.title(), type, ground(OFFSET) + below, pressure, Rocks.SOURCE);
    }

    private static OffsetWell well(
            String name, List<StrengthTest> tests, List<PressurePoint> points, DrillingEvent... events) {
        return new OffsetWell(
                name, 1000, OFFSET, overburden(OFFSET), profile(OFFSET, 1.2), tests, points, List.of(events));
    }

    private static EvidenceTransfer.Result apply(EvidenceUse use, boolean zones, List<OffsetWell> wells) {
        OffsetTransfer transfer = new OffsetTransfer(new DepthMatching.BelowMudline(), WINDOW, 5000, 0.1, 2e6);
        return new EvidenceTransfer(transfer, use, use, zones)
                .apply(PREDICTED, PLANNED, Range.of(overburden(PLANNED)), wells, Set.of("planned"));
    }

    private static EvidenceTransfer.Result counting(EvidenceUse use, List<OffsetWell> wells) {
        OffsetTransfer transfer = new OffsetTransfer(new DepthMatching.BelowMudline(), WINDOW, 5000, 0.1, 2e6);
        return new EvidenceTransfer(transfer, use, use, false, LogUse.COMPARED, BoundUse.COUNTED)
                .apply(PREDICTED, PLANNED, Range.of(overburden(PLANNED)), wells, Set.of("planned"));
    }

    private static PressureProfile strength(EvidenceTransfer.Result result) {
        return result.earth().strength().orElseThrow().likely();
    }

    private static PressureProfile pore(EvidenceTransfer.Result result) {
        return result.earth().porePressure().orElseThrow().likely();
    }

    @Property(tries = 40, seed = "1")
    void anAdjustedProfileGoesThroughTheEvidenceAndIsThePredictionBeyondTheWindow(
            @ForAll @DoubleRange(min = 500, max = 3500) double below,
            @ForAll @DoubleRange(min = -5e6, max = 8e6) double excess) {
        EvidenceTransfer.Result result =
                apply(EvidenceUse.ADJUSTED, false, List.of(well("A", List.of(), List.of(point("p", below, excess)))));
        double z = ground(PLANNED) + below;
        PressureProfile predicted = PREDICTED.porePressure().orElseThrow().likely();
        // The grid of points lies within a nano-step of the matched depth, not on it.
        assertEquals(PLANNED.at(z) + excess, pore(result).lowestAt(z), 20);
        for (double away : new double[] {-WINDOW - 1, WINDOW + 1, -2 * WINDOW, 2 * WINDOW}) {
            assertEquals(predicted.lowestAt(z + away), pore(result).lowestAt(z + away), 20);
        }
        double half = pore(result).lowestAt(z + WINDOW / 2);
        double expected = 0.5 * (predicted.lowestAt(z + WINDOW / 2) + PLANNED.at(z + WINDOW / 2) + excess);
        assertEquals(expected, half, 20);
        assertEquals(excess, result.evidence().points().get(0).excess(), ROUNDING);
    }

    @Test
    void withoutEvidenceOrByChoiceNothingChanges() {
        assertEquals(PREDICTED, apply(EvidenceUse.ADJUSTED, true, List.of()).earth());
        OffsetWell well =
                well("A", List.of(ofRatio("t", 2000, 0.4, Standing.LEAK_OFF)), List.of(point("p", 2000, 9e6)));
        EvidenceTransfer.Result compared = apply(EvidenceUse.PREDICTED, false, List.of(well));
        assertEquals(PREDICTED, compared.earth());
        assertEquals(2, compared.evidence().conflicts().size(), "both are listed against the prediction");
    }

    @Test
    void theOrderOfTheWellsMakesNoDifference() {
        List<OffsetWell> wells = new ArrayList<>(List.of(
                well("A", List.of(ofRatio("t", 2000, 0.5, Standing.LEAK_OFF)), List.of(point("p", 1500, 2e6))),
                well("B", List.of(ofRatio("t", 2050, 0.7, Standing.LEAK_OFF)), List.of(point("p", 1400, 6e6))),
                well("C", List.of(ofRatio("f", 1990, 0.9, Standing.INTEGRITY_TEST)), List.of())));
        for (EvidenceUse use : List.of(EvidenceUse.ADJUSTED, EvidenceUse.TRANSFERRED, EvidenceUse.PREDICTED)) {
            // Transferred pore pressure ends above the tests, so that these are left out there.
            EvidenceTransfer.Result one = apply(use, true, wells);
            Collections.reverse(wells);
            assertEquals(one, apply(use, true, wells));
        }
    }

    @Test
    void theSpreadNeverShrinksAndTakesInTheEvidence() {
        EvidenceTransfer.Result result = apply(
                EvidenceUse.ADJUSTED,
                false,
                List.of(
                        well("A", List.of(ofRatio("t", 2000, 0.5, Standing.LEAK_OFF)), List.of()),
                        well("B", List.of(ofRatio("t", 2000, 0.8, Standing.LEAK_OFF)), List.of())));
        Range strength = result.earth().strength().orElseThrow();
        double z = ground(PLANNED) + 2000;
        StressState state =
                new StressState(overburden(PLANNED).lowestAt(z), pore(result).lowestAt(z));
        assertEquals(state.strengthAt(0.65), strength.likely().lowestAt(z), 100);
        assertEquals(state.strengthAt(0.5), strength.lowOrLikely().lowestAt(z), 100);
        assertEquals(state.strengthAt(0.8), strength.highOrLikely().lowestAt(z), 100);
        assertTrue(
                result.evidence().conflicts().stream().anyMatch(c -> c.text().startsWith("leak-off at stress ratios")));
        for (double depth : strength.likely().depths()) {
            double spread =
                    strength.likely().lowestAt(depth) - strength.lowOrLikely().lowestAt(depth);
            assertTrue(spread >= 2e6 - 1, "spread of " + spread + " at " + depth);
        }
    }

    @Test
    void onlyPlannedTestsAreLoweredAndIntegrityTestsMoveNothing() {
        OffsetWell low = well("A", List.of(ofRatio("t", 2000, 0.3, Standing.LEAK_OFF)), List.of());
        List<StrengthTest> lowered =
                apply(EvidenceUse.ADJUSTED, false, List.of(low)).earth().tests();
        assertTrue(lowered.get(0).pressure() < PREDICTED.tests().get(0).pressure() - 1e5);
        assertEquals(PREDICTED.tests().get(1), lowered.get(1));
        OffsetWell bound = well("A", List.of(ofRatio("f", 2000, 1.4, Standing.INTEGRITY_TEST)), List.of());
        EvidenceTransfer.Result held = apply(EvidenceUse.ADJUSTED, false, List.of(bound));
        assertEquals(PREDICTED, held.earth());
        assertEquals(
                "the rock held more than the high estimate",
                held.evidence().conflicts().get(0).text());
    }

    @Test
    void aTestInAWeakZoneSpeaksOfTheZoneAlone() {
        OffsetWell well = well("A", List.of(ofRatio("t", 2920, 0.45, Standing.LEAK_OFF)), List.of());
        EvidenceTransfer.Result given = apply(EvidenceUse.ADJUSTED, false, List.of(well));
        assertEquals(PREDICTED, given.earth());
        EvidenceTransfer.Result tested = apply(EvidenceUse.ADJUSTED, true, List.of(well));
        assertEquals(PREDICTED.strength(), tested.earth().strength());
        double z = ground(PLANNED) + 2920;
        StressState state =
                new StressState(overburden(PLANNED).lowestAt(z), pore(tested).lowestAt(z));
        assertEquals(
                EquivalentDensity.of(state.strengthAt(0.45), z),
                tested.earth().weakZones().get(0).strength(),
                1e-6);
    }

    @Test
    void evidenceAloneKnowsNothingBeyondItAndNoGaps() {
        OffsetWell near = well("A", List.of(), List.of(point("p", 1000, 1e6), point("q", 1300, 2e6)));
        PressureProfile alone = pore(apply(EvidenceUse.TRANSFERRED, false, List.of(near)));
        assertTrue(alone.top() > ground(PLANNED) + 1000 - WINDOW);
        assertTrue(alone.bottom() < ground(PLANNED) + 1300 + WINDOW);
        OffsetWell gap = well("A", List.of(), List.of(point("p", 1000, 1e6), point("q", 1500, 2e6)));
        assertThrows(InputFault.class, () -> apply(EvidenceUse.TRANSFERRED, false, List.of(gap)));
        assertTrue(apply(EvidenceUse.TRANSFERRED, false, List.of())
                .earth()
                .porePressure()
                .isEmpty());
    }

    @Test
    void lossesAndKicksAreBoundsThatAreListedAndChangeNothing() {
        double z = ground(OFFSET) + 2000;
        double pore = profile(OFFSET, 1.2).lowestAt(z);
        StressState state = new StressState(overburden(OFFSET).lowestAt(z), pore);
        OffsetWell well = well(
                "A",
                List.of(ofRatio("t", 2100, 0.6, Standing.LEAK_OFF)),
                List.of(point("p", 2050, 1e6)),
                event(DrillingEvent.Type.LOSS, 2000, state.strengthAt(0.3)),
                event(DrillingEvent.Type.KICK, 2000, pore + 9e6),
                event(DrillingEvent.Type.MUD, 2000, pore + 1e6));
        EvidenceTransfer.Result with = apply(EvidenceUse.PREDICTED, false, List.of(well));
        assertEquals(PREDICTED, with.earth());
        double here = ground(PLANNED) + 2000;
        assertEquals(3, with.evidence().events().size());
        OffsetEvidence.Event kick = with.evidence().events().stream()
                .filter(e -> e.event().type() == DrillingEvent.Type.KICK)
                .findFirst()
                .orElseThrow();
        assertEquals(here, kick.verticalDepth(), 1e-9);
        assertEquals(PLANNED.at(here) + pore + 9e6 - OFFSET.at(z), kick.bound(), ROUNDING);
        List<String> texts =
                with.evidence().conflicts().stream().map(EvidenceConflict::text).toList();
        for (String text : List.of(
                "mud was lost at less than the likely strength here",
                "the formation flowed against more than the likely pore pressure here",
                "mud was lost at a lower stress ratio than the test held",
                "the formation flowed against more than the pressure measured near it")) {
            assertTrue(texts.contains(text), text + " is not in " + texts);
        }
        // A loss below the pore pressure of its own well tells nothing of a stress ratio.
        OffsetWell odd = well("A", List.of(), List.of(), event(DrillingEvent.Type.LOSS, 2000, pore - 1e6));
        OffsetEvidence left = apply(EvidenceUse.PREDICTED, false, List.of(odd)).evidence();
        assertEquals(List.of(), left.events());
        assertEquals(1, left.leftOut().size());
    }

    // --- Bounds that count

    private static DrillingEvent lossOfRatio(double below, double ratio) {
        return event(
                DrillingEvent.Type.LOSS,
                below,
                ofRatio("l", below, ratio, Standing.LEAK_OFF).pressure());
    }

    private static DrillingEvent kickOfExcess(double below, double excess) {
        return event(DrillingEvent.Type.KICK, below, OFFSET.at(ground(OFFSET) + below) + excess);
    }

    /** Tests and points, so that a profile can be made of evidence too. */
    private static OffsetWell measured() {
        return well(
                "M",
                List.of(ofRatio("t", 1900, 0.6, Standing.LEAK_OFF), ofRatio("u", 2150, 0.7, Standing.LEAK_OFF)),
                List.of(point("p", 1850, 7e6), point("q", 2100, 8e6), point("r", 2300, 6e6)));
    }

    private static List<OffsetWell> with(DrillingEvent... events) {
        List<OffsetWell> wells = new ArrayList<>(List.of(measured()));
        for (int i = 0; i < events.length; i++) {
            wells.add(well("E" + i, List.of(), List.of(), events[i]));
        }
        return wells;
    }

    /**
     * What straight lines between the depths of a profile may leave of a rule that is not straight, Pa: s d over h = 10 m with
     * s′ = 1/200 and d′ to 22 kPa/m leaves 2 s′ d′ h²/8 = 2.75 kPa, and as much again where two bounds cross.
     */
    private static final double STRAIGHT = 5500;

    private static void neverHigher(Range with, Range without) {
        for (int below = 1700; below <= 2400; below += 3) {
            double z = ground(PLANNED) + below;
            if (!without.likely().covers(z)) {
                continue;
            }
            assertTrue(with.likely().lowestAt(z) <= without.likely().lowestAt(z) + STRAIGHT, "likely at " + below);
            assertTrue(
                    with.lowOrLikely().lowestAt(z) <= without.lowOrLikely().lowestAt(z) + STRAIGHT, "low at " + below);
            assertTrue(
                    with.highOrLikely().lowestAt(z) <= without.highOrLikely().lowestAt(z) + STRAIGHT,
                    "high at " + below);
        }
    }

    @Property(tries = 60, seed = "1")
    void aLossThatCountsNeverRaisesStrengthAndAKickNeverLowersPorePressure(
            @ForAll @DoubleRange(min = 1800, max = 2300) double one,
            @ForAll @DoubleRange(min = 0.05, max = 1.5) double ratio,
            @ForAll @DoubleRange(min = 1800, max = 2300) double other,
            @ForAll @DoubleRange(min = -3e6, max = 15e6) double excess) {
        for (EvidenceUse use : EvidenceUse.values()) {
            DrillingEvent loss = lossOfRatio(one, ratio);
            DrillingEvent kick = kickOfExcess(other, excess);
            EarthModel listed = apply(use, false, with()).earth();
            EarthModel none = counting(use, with()).earth();
            assertEquals(listed, none, "nothing to count");
            EarthModel lost = counting(use, with(loss)).earth();
            EarthModel twice =
                    counting(use, with(loss, lossOfRatio(other, 0.4))).earth();
            EarthModel both = counting(use, with(loss, kick)).earth();
            neverHigher(lost.strength().orElseThrow(), none.strength().orElseThrow());
            neverHigher(twice.strength().orElseThrow(), lost.strength().orElseThrow());
            assertEquals(lost.porePressure(), none.porePressure(), "a loss says nothing of pore pressure");
            neverHigher(lost.porePressure().orElseThrow(), both.porePressure().orElseThrow());
            assertEquals(lost.strength(), both.strength(), "a kick never raises the strength");
            assertEquals(none.tests().get(1), both.tests().get(1), "a test made in the well itself stands");
        }
    }

    @Property(tries = 20, seed = "1")
    void aBoundThatCountsIsMetAtItsDepthAndEndsAtTheWindow(
            @ForAll @DoubleRange(min = 500, max = 2600) double below,
            @ForAll @DoubleRange(min = 0.1, max = 0.3) double ratio) {
        double z = ground(PLANNED) + below;
        EvidenceTransfer.Result lost =
                counting(EvidenceUse.PREDICTED, List.of(well("A", List.of(), List.of(), lossOfRatio(below, ratio))));
        StressState state = new StressState(
                overburden(PLANNED).lowestAt(z),
                PREDICTED.porePressure().orElseThrow().likely().lowestAt(z));
        Range made = lost.earth().strength().orElseThrow();
        Range before = PREDICTED.strength().orElseThrow();
        double bound = state.strengthAt(ratio);
        assertEquals(Math.min(bound, before.likely().lowestAt(z)), made.likely().lowestAt(z), 20);
        assertEquals(
                Math.min(bound, before.lowOrLikely().lowestAt(z)),
                made.lowOrLikely().lowestAt(z),
                20);
        assertEquals(before.high(), made.high(), "other rock may be as strong as was thought");
        for (double away : new double[] {-WINDOW - 1, WINDOW + 1}) {
            assertEquals(before.likely().lowestAt(z + away), made.likely().lowestAt(z + away), 20);
        }
        // Halfway to the edge half of the difference is left.
        double half = z + WINDOW / 2;
        double there = new StressState(
                        overburden(PLANNED).lowestAt(half),
                        PREDICTED.porePressure().orElseThrow().likely().lowestAt(half))
                .strengthAt(ratio);
        double likely = before.likely().lowestAt(half);
        assertEquals(likely - 0.5 * Math.max(0, likely - there), made.likely().lowestAt(half), 20);
        assertEquals(
                made.likely().lowestAt(z) < before.likely().lowestAt(z) - 1,
                lost.evidence().changes().stream().anyMatch(c -> c.subject().equals("strength, by bounds")));
    }

    @Test
    void whatWouldWidenTheWindowNeverCounts() {
        double z = ground(OFFSET) + 2000;
        OffsetWell mud = well(
                "A",
                List.of(ofRatio("f", 2000, 1.4, Standing.INTEGRITY_TEST)),
                List.of(),
                event(DrillingEvent.Type.MUD, 2000, OFFSET.at(z)),
                lossOfRatio(2000, 1.6),
                kickOfExcess(2000, -2e6));
        for (EvidenceUse use : List.of(EvidenceUse.PREDICTED, EvidenceUse.ADJUSTED)) {
            assertEquals(PREDICTED, counting(use, List.of(mud)).earth());
        }
    }

    @Test
    void theOrderOfWellsMakesNoDifferenceToBoundsThatCount() {
        List<OffsetWell> wells = with(
                lossOfRatio(2000, 0.3), kickOfExcess(1950, 9e6), lossOfRatio(2080, 0.25), kickOfExcess(2050, 10e6));
        for (EvidenceUse use : EvidenceUse.values()) {
            EvidenceTransfer.Result one = counting(use, wells);
            List<OffsetWell> turned = new ArrayList<>(wells);
            Collections.reverse(turned);
            assertEquals(one, counting(use, turned));
        }
    }

    @Test
    void aLossInAWeakZoneLowersTheZoneAloneAndOneNearAPlannedTestLowersThat() {
        EvidenceTransfer.Result zone =
                counting(EvidenceUse.PREDICTED, List.of(well("A", List.of(), List.of(), lossOfRatio(2920, 0.1))));
        assertEquals(PREDICTED.strength(), zone.earth().strength());
        OffsetEvidence.Event loss = zone.evidence().events().get(0);
        assertEquals(
                EquivalentDensity.of(loss.bound(), loss.verticalDepth()),
                zone.earth().weakZones().get(0).strength(),
                1e-6);
        EvidenceTransfer.Result test =
                counting(EvidenceUse.PREDICTED, List.of(well("A", List.of(), List.of(), lossOfRatio(2000, 0.1))));
        double bound = test.evidence().events().get(0).bound();
        assertEquals(bound, test.earth().tests().get(0).pressure(), 20);
        assertEquals(PREDICTED.tests().get(1), test.earth().tests().get(1));
        assertEquals(PREDICTED.weakZones(), test.earth().weakZones());
    }
}
