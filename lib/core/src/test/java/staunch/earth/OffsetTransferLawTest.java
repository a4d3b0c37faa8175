package staunch.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.units.EquivalentDensity;
import staunch.units.InputFault;
import staunch.units.UnitSystem;
import staunch.well.Datum;

class OffsetTransferLawTest {
    private static final OffsetTransfer TRANSFER =
            new OffsetTransfer(new DepthMatching.BelowMudline(), 200, 5000, 0.1, 2e6);

    /** Pressures to 100 MPa carried through a quotient and a product: 1e-13 of them. */
    private static final double ROUNDING = 1e-4;

    private static NormalPressure normal(double elevation, double water) {
        return new NormalPressure(new Datum("rotary table", elevation, new Datum.AtSea(water, true)), 1030);
    }

    private static PressureProfile overburden(NormalPressure normal, double density) {
        Datum datum = normal.datum();
        return new Overburden(datum, 1025, new Overburden.MeanDensity(density, 0))
                .withoutLog(datum.groundOrSeabedDepth() + 5000)
                .likely();
    }

    private static PressureProfile pore(NormalPressure normal, double excess) {
        double ground = normal.datum().groundOrSeabedDepth();
        return PressureProfile.of(
                new double[] {ground, ground + 1000, ground + 5000},
                new double[] {normal.at(ground), normal.at(ground + 1000), normal.at(ground + 5000) + excess});
    }

    private static OffsetWell well(
            String name, double distance, NormalPressure normal, List<StrengthTest> tests, List<PressurePoint> points) {
        return new OffsetWell(name, distance, normal, overburden(normal, 2150), pore(normal, 10e6), tests, points);
    }

    /** Test at a depth below mudline and a stress ratio of the well made by {@link #well}. */
    private static StrengthTest test(
            String name, NormalPressure normal, double below, double ratio, Standing standing) {
        double z = normal.datum().groundOrSeabedDepth() + below;
        StressState state = new StressState(
                overburden(normal, 2150).lowestAt(z), pore(normal, 10e6).lowestAt(z));
        return new StrengthTest(name, z, state.strengthAt(ratio), standing, OptionalDouble.empty(), Rocks.SOURCE);
    }

    private static PressurePoint point(String name, NormalPressure normal, double below, double excess, Quality q) {
        double z = normal.datum().groundOrSeabedDepth() + below;
        return new PressurePoint(name, z, normal.at(z) + excess, q, Rocks.SOURCE);
    }

    private static PlannedWell planned(NormalPressure normal, double density) {
        return new PlannedWell(normal, overburden(normal, density), pore(normal, 10e6));
    }

    private static StrengthTransfer.Estimated strength(PlannedWell planned, double z, OffsetWell... wells) {
        return assertInstanceOf(
                StrengthTransfer.Estimated.class,
                TRANSFER.strength(planned, List.of(wells), new double[] {z}).get(0));
    }

    @Property(tries = 50, seed = "1")
    void aWellCarriedOntoItselfKeepsItsStrength(
            @ForAll @DoubleRange(min = 300, max = 4000) double below,
            @ForAll @DoubleRange(min = 0.3, max = 1.1) double ratio) {
        NormalPressure n = normal(25, 100);
        StrengthTest test = test("leak-off", n, below, ratio, Standing.LEAK_OFF);
        OffsetWell well = well("A", 0, n, List.of(test), List.of());
        StrengthTransfer.Estimated e = strength(
                new PlannedWell(n, well.overburden(), well.porePressure().likely()), test.verticalDepth(), well);
        assertEquals(test.pressure(), e.strength().likely(), ROUNDING);
        assertEquals(e.strength().low(), e.strength().high());
        assertEquals(1, e.leakOffs().get(0).weight());
    }

    @Property(tries = 50, seed = "1")
    void theRotaryTableOfNeitherWellMatters(
            @ForAll @DoubleRange(min = 5, max = 60) double elevation,
            @ForAll @DoubleRange(min = 5, max = 60) double plannedElevation) {
        NormalPressure n = normal(elevation, 100);
        OffsetWell well = well("A", 0, n, List.of(test("t", n, 2000, 0.7, Standing.LEAK_OFF)), List.of());
        NormalPressure p = normal(plannedElevation, 350);
        double z = p.datum().groundOrSeabedDepth() + 2000;
        NormalPressure p0 = normal(20, 350);
        double z0 = p0.datum().groundOrSeabedDepth() + 2000;
        NormalPressure n0 = normal(20, 100);
        OffsetWell well0 = well("A", 0, n0, List.of(test("t", n0, 2000, 0.7, Standing.LEAK_OFF)), List.of());
        assertEquals(
                strength(planned(p0, 2100), z0, well0).strength().likely(),
                strength(planned(p, 2100), z, well).strength().likely(),
                ROUNDING);
    }

    @Test
    void deeperWaterLowersTheEquivalentDensityOfTheSameRock() {
        NormalPressure n = normal(25, 100);
        OffsetWell well = well("A", 0, n, List.of(test("t", n, 1500, 0.7, Standing.LEAK_OFF)), List.of());
        NormalPressure deep = normal(25, 1500);
        double z = deep.datum().groundOrSeabedDepth() + 1500;
        double transferred = EquivalentDensity.of(
                strength(planned(deep, 2150), z, well).strength().likely(), z);
        double raw = EquivalentDensity.of(
                well.tests().get(0).pressure(), well.tests().get(0).verticalDepth());
        assertTrue(transferred < raw - 200, transferred + " against " + raw);
    }

    @Test
    void integrityTestsBoundAndNeverMoveTheEstimate() {
        NormalPressure n = normal(25, 100);
        PlannedWell planned = planned(n, 2150);
        StrengthTest leakOff = test("leak-off", n, 2000, 0.7, Standing.LEAK_OFF);
        StrengthTest low = test("low integrity", n, 2010, 0.5, Standing.INTEGRITY_TEST);
        StrengthTest high = test("high integrity", n, 1990, 0.95, Standing.INTEGRITY_TEST);
        double z = leakOff.verticalDepth();
        OffsetWell a = well("A", 1000, n, List.of(leakOff), List.of());
        OffsetWell b = well("B", 10, n, List.of(low, high), List.of());
        StrengthTransfer.Estimated alone = strength(planned, z, a);
        StrengthTransfer.Estimated both = strength(planned, z, a, b);
        assertEquals(alone.strength(), both.strength());
        assertEquals(2, both.bounds().size());
        assertEquals(1, both.conflicts().size());
        assertTrue(both.conflicts().get(0).text().contains("above the leak-off"));
        StrengthTransfer.BoundOnly bound = assertInstanceOf(
                StrengthTransfer.BoundOnly.class,
                TRANSFER.strength(planned, List.of(b), new double[] {z}).get(0));
        assertEquals(planned.stressAt(z).strengthAt(0.5), bound.lowest(), ROUNDING);
        assertEquals(planned.stressAt(z).strengthAt(0.95), bound.highest(), ROUNDING);
    }

    @Property(tries = 50, seed = "1")
    void theOrderOfOffsetWellsMakesNoDifference(@ForAll @DoubleRange(min = 0.3, max = 1) double ratio) {
        NormalPressure n = normal(25, 100);
        List<OffsetWell> wells = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            wells.add(well(
                    "W" + i,
                    1000 * i,
                    normal(20 + i, 100 + 10 * i),
                    List.of(
                            test("one", normal(20 + i, 100 + 10 * i), 1950 + 20 * i, ratio, Standing.LEAK_OFF),
                            test("two", normal(20 + i, 100 + 10 * i), 1980, 0.6, Standing.LEAK_OFF)),
                    List.of(point("p", normal(20 + i, 100 + 10 * i), 2000, i * 1e6, Quality.GOOD))));
        }
        double[] z = {2125, 2200};
        List<StrengthTransfer> strength = TRANSFER.strength(planned(n, 2150), wells, z);
        List<PressureTransfer> pressure = TRANSFER.porePressure(n, wells, z);
        Collections.reverse(wells);
        assertEquals(strength, TRANSFER.strength(planned(n, 2150), wells, z));
        assertEquals(pressure, TRANSFER.porePressure(n, wells, z));
    }

    @Test
    void theNearerWellCountsMoreAndTheSpreadIsKept() {
        NormalPressure n = normal(25, 100);
        PlannedWell planned = planned(n, 2150);
        double z = n.datum().groundOrSeabedDepth() + 2000;
        OffsetWell near = well("near", 0, n, List.of(test("t", n, 2000, 0.6, Standing.LEAK_OFF)), List.of());
        OffsetWell far = well("far", 5000, n, List.of(test("t", n, 2000, 0.9, Standing.LEAK_OFF)), List.of());
        StrengthTransfer.Estimated e = strength(planned, z, near, far);
        // At the distance of half weight: (2 · 0.6 + 0.9) / 3.
        assertEquals(planned.stressAt(z).strengthAt(0.7), e.strength().likely(), ROUNDING);
        assertEquals(planned.stressAt(z).strengthAt(0.6), e.strength().low(), ROUNDING);
        assertEquals(planned.stressAt(z).strengthAt(0.9), e.strength().high(), ROUNDING);
        assertEquals(
                "leak-off at stress ratios that differ by 0.300",
                e.conflicts().get(0).text());
        assertEquals("far: t", e.conflicts().get(0).first());
    }

    @Test
    void withoutEvidenceNothingIsAssessed() {
        NormalPressure n = normal(25, 100);
        OffsetWell well = well(
                "A",
                0,
                n,
                List.of(test("t", n, 2000, 0.6, Standing.LEAK_OFF)),
                List.of(point("p", n, 2000, 1e6, Quality.REJECTED)));
        double ground = n.datum().groundOrSeabedDepth();
        double[] z = {ground + 2000, ground + 2200};
        List<StrengthTransfer> found = TRANSFER.strength(planned(n, 2150), List.of(well), z);
        assertInstanceOf(StrengthTransfer.NoEvidence.class, found.get(1));
        String fault = assertThrows(InputFault.class, () -> StrengthTransfer.profile(found))
                .getMessage();
        assertTrue(fault.startsWith("strength at 2325 m has no leak-off test"), fault);
        assertInstanceOf(
                PressureTransfer.NoEvidence.class,
                TRANSFER.porePressure(n, List.of(well), z).get(0));
        assertThrows(InputFault.class, () -> TRANSFER.strength(planned(n, 2150), List.of(well, well), z));
    }

    @Test
    void excessPressureIsCarriedOverNotTheEquivalentDensity() {
        NormalPressure n = normal(25, 100);
        NormalPressure deep = normal(30, 1200);
        OffsetWell a = well("A", 0, n, List.of(), List.of(point("p", n, 2000, 8e6, Quality.GOOD)));
        OffsetWell b = well("B", 0, n, List.of(), List.of(point("p", n, 2000, 4e6, Quality.DOUBTFUL)));
        double z = deep.datum().groundOrSeabedDepth() + 2000;
        PressureTransfer.Estimated e = assertInstanceOf(
                PressureTransfer.Estimated.class,
                TRANSFER.porePressure(deep, List.of(a, b), new double[] {z}).get(0));
        assertEquals(deep.at(z) + 6e6, e.pressure().likely(), ROUNDING);
        assertEquals(deep.at(z) + 4e6, e.pressure().low(), ROUNDING);
        assertEquals(deep.at(z) + 8e6, e.pressure().high(), ROUNDING);
        assertEquals(1, e.conflicts().size());
        // 4 MPa over 6894.757 Pa.
        assertEquals(
                "excess pressures that differ by 580 psi", e.conflicts().get(0).text(UnitSystem.FIELD));
        assertNotEquals(
                EquivalentDensity.of(
                        a.points().get(0).pressure(), a.points().get(0).verticalDepth()),
                EquivalentDensity.of(e.pressure().high(), z),
                50);
        assertEquals(
                e.pressure().likely(),
                PressureTransfer.profile(List.of(e)).likely().lowestAt(z),
                ROUNDING);
    }

    private static FormationTop top(String name, double depth) {
        return new FormationTop(name, depth);
    }

    @Test
    void betweenTopsEvidenceStaysInItsFormation() {
        NormalPressure n = normal(25, 100);
        OffsetWell well = well(
                "A",
                0,
                n,
                List.of(
                        test("in sand", n, 2075, 0.6, Standing.LEAK_OFF),
                        test("in shale", n, 2175, 0.8, Standing.LEAK_OFF),
                        test("below all", n, 2600, 0.9, Standing.LEAK_OFF)),
                List.of());
        // Depths below the datum: 125 m more than below mudline. The sand is twice as thick in the planned well.
        DepthMatching.FormationTops tops = new DepthMatching.FormationTops(
                List.of(top("sand", 2400), top("shale", 2800), top("chalk", 3100)),
                Map.of("A", List.of(top("sand", 2100), top("marl", 2250), top("shale", 2300), top("chalk", 2600))));
        assertEquals(0, tops.difference(well, 2200, n, 2600).orElseThrow(), 1e-9);
        assertEquals(-100, tops.difference(well, 2200, n, 2700).orElseThrow(), 1e-9);
        assertTrue(tops.difference(well, 2200, n, 2800).isEmpty(), "another formation");
        assertTrue(tops.difference(well, 2725, n, 3000).isEmpty(), "below the last common top");
        OffsetTransfer transfer = new OffsetTransfer(tops, 200, 5000, 0.1, 2e6);
        PlannedWell planned = planned(n, 2150);
        List<StrengthTransfer> found = transfer.strength(planned, List.of(well), new double[] {2600, 2801, 3200});
        StrengthTransfer.Estimated sand = assertInstanceOf(StrengthTransfer.Estimated.class, found.get(0));
        assertEquals("in sand", sand.leakOffs().get(0).test().name());
        assertEquals(1, sand.leakOffs().size());
        assertEquals(planned.stressAt(2600).strengthAt(0.6), sand.strength().likely(), ROUNDING);
        StrengthTransfer.Estimated shale = assertInstanceOf(StrengthTransfer.Estimated.class, found.get(1));
        assertEquals("in shale", shale.leakOffs().get(0).test().name());
        assertInstanceOf(StrengthTransfer.NoEvidence.class, found.get(2));
    }

    @Test
    void topsThatDoNotMatchAreRefused() {
        List<FormationTop> planned = List.of(top("sand", 2400), top("shale", 2800));
        assertThrows(
                InputFault.class,
                () -> new DepthMatching.FormationTops(
                        planned, Map.of("A", List.of(top("shale", 2400), top("sand", 2800)))));
        assertThrows(
                InputFault.class,
                () -> new DepthMatching.FormationTops(planned, Map.of("A", List.of(top("sand", 2400)))));
        assertThrows(
                InputFault.class,
                () -> new DepthMatching.FormationTops(List.of(top("sand", 2400), top("sand", 2800)), Map.of()));
        DepthMatching.FormationTops none = new DepthMatching.FormationTops(planned, Map.of());
        NormalPressure n = normal(25, 100);
        OffsetWell well = well("A", 0, n, List.of(), List.of());
        assertThrows(InputFault.class, () -> none.difference(well, 2500, n, 2500));
    }
}
