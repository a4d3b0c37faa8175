package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import staunch.earth.EarthModel;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.Standing;
import staunch.earth.StrengthTest;
import staunch.fluid.DeviationFactor;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.fluid.PseudoCriticalCorrelation;
import staunch.fluid.RealGas;
import staunch.limit.PressureEquipment;
import staunch.limit.PressureRating;
import staunch.limit.StackElement;
import staunch.units.Physics;
import staunch.units.Source;
import staunch.well.Datum;
import staunch.well.HoleInterval;

class MaspLawTest {
    private static final double T = 350;
    private static final double G = Physics.GRAVITY;

    /** Weight of an ideal gas of gravity 0.65 over its pressure, 1/m. */
    private static final double K = G * 0.65 * Physics.MOLAR_MASS_AIR / (Physics.GAS_CONSTANT * T);

    private static Wells ideal(MaspBasis basis) {
        return Wells.standard().isothermal(T).options(ToleranceLawTest.ideal().withMaspBasis(basis));
    }

    private static Masp chosen(Wells wells) {
        return wells.evaluate().masp().orElseThrow();
    }

    private static double pressure(Masp masp) {
        return masp.pressure().orElseThrow() + Physics.ATMOSPHERE;
    }

    @Test
    void anIdealIsothermalGasColumnIsTheBarometricFormula() {
        Masp masp = chosen(ideal(new MaspBasis.GasToSurface()));
        double expected = Wells.pressure(1400, Wells.BOTTOM) * Math.exp(-K * Wells.BOTTOM);
        assertEquals(expected, pressure(masp), 1e-9 * expected);
        assertEquals(Wells.BOTTOM, masp.fromVerticalDepth().orElseThrow(), 1e-6);
        assertEquals("surface", masp.at());
        assertEquals(0, masp.verticalDepth(), 0);
    }

    /**
     * p_s = p_b exp(−g M z / (Z R T)) with Z and T at the averages of both ends: the average temperature and deviation
     * factor method for static gas columns (Katz and others, Handbook of Natural Gas Engineering, 1959; from memory).
     * Against integration it is good to about half a percent on a column of this length.
     */
    @Test
    void aRealGasColumnAgreesWithTheAverageTemperatureAndDeviationMethod() {
        Masp masp = chosen(Wells.standard());
        double bottom = Wells.pressure(1400, Wells.BOTTOM);
        double mean = 288.15 + 0.03 * Wells.BOTTOM / 2;
        RealGas gas = RealGas.of(
                GasComposition.sweet(0.65),
                PseudoCriticalCorrelation.SUTTON_1985,
                DeviationFactor.DRANCHUK_ABOU_KASSEM);
        double surface = bottom;
        for (int i = 0; i < 50; i++) {
            double density = gas.density(0.5 * (bottom + surface), mean);
            surface = bottom * Math.exp(-G * density * Wells.BOTTOM / (0.5 * (bottom + surface)));
        }
        assertEquals(surface, pressure(masp), 0.005 * surface);
    }

    @Test
    void theWorstExposedDepthCountsNotSectionTotalDepth() {
        // Pressure falls back below 4000 m: from section TD alone the surface pressure would come out too low.
        Masp masp = chosen(ideal(new MaspBasis.GasToSurface()).pores(0, 1400, 4000, 1500, 4500, 1250, 9000, 1250));
        double expected = Wells.pressure(1500, 4000) * Math.exp(-K * 4000);
        assertEquals(expected, pressure(masp), 1e-9 * expected);
        assertEquals(4000, masp.fromVerticalDepth().orElseThrow(), 0.1);
        double fromBottom = Wells.pressure(1250, 4500) * Math.exp(-K * 4500);
        assertTrue(pressure(masp) > fromBottom + 1e6);
    }

    @Test
    void aHighEstimateCountsUnlessTheLikelyOneIsChosen() {
        Wells wells = ideal(new MaspBasis.GasToSurface()).highPore(1500);
        double high = pressure(chosen(wells));
        double likely =
                pressure(chosen(wells.options(ToleranceLawTest.ideal().withEstimates(MethodOptions.Estimates.LIKELY))));
        assertEquals(Wells.pressure(1500, Wells.BOTTOM) * Math.exp(-K * Wells.BOTTOM), high, 1);
        assertEquals(Wells.pressure(1400, Wells.BOTTOM) * Math.exp(-K * Wells.BOTTOM), likely, 1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.25, 0.5, 0.9, 1})
    void mudBelowGasIsTheSumOfBothColumns(double share) {
        Masp masp = chosen(ideal(new MaspBasis.MudAndGas(share)));
        double z = Wells.BOTTOM;
        double boundary = z * (1 - share);
        double there = Wells.pressure(1400, z) - Wells.MUD * G * share * z;
        double expected = there * Math.exp(-K * boundary);
        // Mud enough to hold the formation: the well stands open.
        assertEquals(Math.max(expected, Physics.ATMOSPHERE), pressure(masp), 1e-6 * pressure(masp));
    }

    @Test
    void theDefaultIsShownBesideTheChoice() {
        List<Masp> masps = ideal(new MaspBasis.FractureLimited()).evaluate().masps();
        assertEquals(2, masps.size());
        assertEquals(new MaspBasis.GasToSurface(), masps.get(0).basis());
        assertEquals(new MaspBasis.FractureLimited(), masps.get(1).basis());
        assertEquals(1, ideal(new MaspBasis.GasToSurface()).evaluate().masps().size());
    }

    @Test
    void fractureLimitedIsTheLesserOfBoth() {
        Wells weak = ideal(new MaspBasis.FractureLimited()).strength(0, 1450, 9000, 1450);
        double fracture = Wells.pressure(1450, Wells.SHOE) * Math.exp(-K * Wells.SHOE);
        assertEquals(fracture, pressure(chosen(weak)), 1e-9 * fracture);
        Wells strong = ideal(new MaspBasis.FractureLimited()).strength(0, 2400, 9000, 2400);
        double full = Wells.pressure(1400, Wells.BOTTOM) * Math.exp(-K * Wells.BOTTOM);
        assertEquals(full, pressure(chosen(strong)), 1e-9 * full);
    }

    @Test
    void anIntegrityTestBoundsTheFracturePressureFromBelowOnly() {
        SectionInput weak = ideal(new MaspBasis.FractureLimited())
                .strength(0, 1450, 9000, 1450)
                .input();
        double predicted = pressure(Inputs.evaluate(weak).masp().orElseThrow());
        double higher = pressure(withTest(weak, Standing.INTEGRITY_TEST, 1480));
        double lower = pressure(withTest(weak, Standing.INTEGRITY_TEST, 1300));
        double leakOff = pressure(withTest(weak, Standing.LEAK_OFF, 1300));
        assertEquals(predicted, lower, 1e-6);
        assertTrue(higher > predicted);
        assertEquals(Wells.pressure(1300, Wells.SHOE) * Math.exp(-K * Wells.SHOE), leakOff, 1);
        Masp without = withTest(
                Inputs.earth(weak, strength(weak.earth(), Optional.empty(), List.of())), Standing.INTEGRITY_TEST, 1480);
        assertTrue(without.notAssessed().orElseThrow().contains("integrity test"));
    }

    private static Masp withTest(SectionInput input, Standing standing, double density) {
        StrengthTest test = new StrengthTest(
                "test",
                Wells.SHOE,
                Wells.pressure(density, Wells.SHOE),
                standing,
                OptionalDouble.empty(),
                new Source("invented", ""));
        return Inputs.evaluate(Inputs.earth(
                        input, strength(input.earth(), input.earth().strength(), List.of(test))))
                .masp()
                .orElseThrow();
    }

    private static EarthModel strength(EarthModel e, Optional<Range> strength, List<StrengthTest> tests) {
        return new EarthModel(e.porePressure(), strength, tests, e.weakZones(), e.temperature(), e.tops());
    }

    /** Ideal isothermal gas, one cross-section: the gas of mass m stands under the choke with p_s (e^{kh} − 1) A / g = m. */
    @Test
    void aCirculatedKickEqualsTheClosedFormInOneCrossSection() {
        double hole = 0.22049;
        double volume = 4;
        Masp masp = chosen(ideal(new MaspBasis.KickLimited(volume))
                .hole(new HoleInterval(Wells.SHOE, Wells.BOTTOM, hole))
                .equipment(Wells.rated(70e6)));
        double area = Math.PI / 4 * (hole * hole - Wells.PIPE * Wells.PIPE);
        double pf = Wells.pressure(Wells.MUD + 60, Wells.BOTTOM);
        double height = volume / area;
        double mass = area * pf * -Math.expm1(-K * height) / G;
        double low = 0;
        double high = Wells.BOTTOM;
        for (int i = 0; i < 200; i++) {
            double h = 0.5 * (low + high);
            double ps = (pf - Wells.MUD * G * (Wells.BOTTOM - h)) * Math.exp(-K * h);
            if (area * ps * Math.expm1(K * h) / G < mass) {
                low = h;
            } else {
                high = h;
            }
        }
        double expected = (pf - Wells.MUD * G * (Wells.BOTTOM - low)) * Math.exp(-K * low);
        assertEquals(expected, pressure(masp), 1e-6 * expected);
    }

    @Test
    void aLargerKickNeverGivesLess() {
        double last = 0;
        for (double volume = 1; volume < 30; volume += 4) {
            double now = pressure(chosen(Wells.standard()
                    .options(MethodOptions.DEFAULT
                            .withMaspBasis(new MaspBasis.KickLimited(volume))
                            .withDepths(1000, 1))));
            assertTrue(now >= last, volume + " m³");
            last = now;
        }
    }

    @Test
    void aLoadEqualToTheRatingFails() {
        double load = chosen(ideal(new MaspBasis.GasToSurface())).pressure().orElseThrow();
        Masp equal = chosen(ideal(new MaspBasis.GasToSurface()).burst(1e8).equipment(Wells.rated(load)));
        assertEquals(Verdict.Outcome.FAILS, equal.verdict().outcome());
        Masp above = chosen(ideal(new MaspBasis.GasToSurface()).burst(1e8).equipment(Wells.rated(load + 1)));
        assertEquals(Verdict.Outcome.HOLDS, above.verdict().outcome());
        assertEquals(1, check(above, SurfaceLimit.Type.WELLHEAD).margin().orElseThrow(), 1e-6);
    }

    /** Common practice: the load of gas to surface is held by a ram; an annular preventer is closed before it comes. */
    @Test
    void anAnnularPreventerOfLowerRatingFailsOnlyWithoutARamThatHolds() {
        double load = chosen(ideal(new MaspBasis.GasToSurface())).pressure().orElseThrow();
        Masp withRam = chosen(ideal(new MaspBasis.GasToSurface()).burst(1e8).equipment(annularOn(load + 1)));
        assertEquals(Verdict.Outcome.HOLDS, withRam.verdict().outcome());
        assertTrue(
                withRam.verdict().statement().contains("annular"),
                withRam.verdict().statement());
        assertEquals(
                Verdict.Outcome.FAILS,
                withRam.checks().stream()
                        .filter(c -> c.name().equals("annular"))
                        .findFirst()
                        .orElseThrow()
                        .outcome());
        Masp alone = chosen(ideal(new MaspBasis.GasToSurface()).burst(1e8).equipment(annularOn(load - 1)));
        assertEquals(Verdict.Outcome.FAILS, alone.verdict().outcome());
        assertTrue(
                alone.verdict().statement().contains("annular"), alone.verdict().statement());
    }

    private static PressureEquipment annularOn(double rams) {
        PressureEquipment without = Wells.rated(rams);
        List<StackElement> stack = new ArrayList<>(without.stack());
        stack.add(new StackElement(
                "annular",
                StackElement.Type.ANNULAR,
                Optional.of(new PressureRating("annular", rams / 2, Optional.empty())),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty()));
        return new PressureEquipment(
                without.wellhead(),
                without.chokeManifold(),
                without.chokeLine(),
                without.killLine(),
                without.riser(),
                stack);
    }

    private static MaspCheck check(Masp masp, SurfaceLimit.Type type) {
        return masp.checks().stream().filter(c -> c.type() == type).findFirst().orElseThrow();
    }

    @Test
    void whatIsNotRatedLeavesTheVerdictOpen() {
        Masp masp = chosen(Wells.standard().burst(1e8).equipment(PressureEquipment.NONE));
        assertEquals(Verdict.Outcome.NOT_ASSESSED, masp.verdict().outcome());
        assertEquals(
                Verdict.Outcome.NOT_ASSESSED,
                check(masp, SurfaceLimit.Type.WELLHEAD).outcome());
        assertEquals(
                Verdict.Outcome.HOLDS, check(masp, SurfaceLimit.Type.CASING).outcome());
    }

    @Test
    void casingIsCheckedOverItsWholeLength() {
        // 0.8 × 40 MPa holds the load at surface; no back-up, so that at the shoe the heavier gas column decides.
        double surface = chosen(ideal(new MaspBasis.GasToSurface())).pressure().orElseThrow();
        Masp masp = chosen(ideal(new MaspBasis.GasToSurface()).burst((surface + 1e6) / 0.8));
        MaspCheck casing = check(masp, SurfaceLimit.Type.CASING);
        assertEquals(Verdict.Outcome.FAILS, casing.outcome());
        assertEquals(Wells.SHOE, casing.measuredDepth(), 1e-6);
        double load = Wells.pressure(1400, Wells.BOTTOM) * Math.exp(-K * (Wells.BOTTOM - Wells.SHOE));
        assertEquals(load - Physics.ATMOSPHERE, casing.load().orElseThrow(), 1);
    }

    @Test
    void aSubseaStackSeesItAtTheMudlineAndTheSeaCountsOnlyByChoice() {
        double sea = 1000;
        double mudline = 1025;
        Wells wells = ideal(new MaspBasis.GasToSurface())
                .datum(new Datum("rotary table", 25, new Datum.AtSea(sea, true, OptionalDouble.of(1030))))
                .chokeLineFriction(0)
                .equipment(Wells.rated(70e6, 70e6, mudline, 0.0762));
        Masp masp = chosen(wells);
        double atMudline = Wells.pressure(1400, Wells.BOTTOM) * Math.exp(-K * (Wells.BOTTOM - mudline));
        assertEquals("mudline", masp.at());
        assertEquals(mudline, masp.verticalDepth(), 1e-9);
        assertEquals(atMudline, pressure(masp), 1e-9 * atMudline);
        double manifold = Wells.pressure(1400, Wells.BOTTOM) * Math.exp(-K * Wells.BOTTOM) - Physics.ATMOSPHERE;
        assertEquals(
                manifold, check(masp, SurfaceLimit.Type.CHOKE_MANIFOLD).load().orElseThrow(), 1);
        double without = check(masp, SurfaceLimit.Type.BOP).margin().orElseThrow();
        Masp credited = chosen(wells.options(ToleranceLawTest.ideal().withSeawaterCredit(true)));
        double with = check(credited, SurfaceLimit.Type.BOP).margin().orElseThrow();
        assertEquals(1030 * G * sea, with - without, 1e-3);
    }

    @Test
    void whatItNeedsAndLacksIsNamed() {
        SectionInput input = Wells.standard().input();
        EarthModel e = input.earth();
        PressureProfile partly = Wells.profile(new double[] {0, 4000}, new double[] {1400, 1400});
        Masp part = Inputs.evaluate(Inputs.porePressure(input, Range.of(partly)))
                .masp()
                .orElseThrow();
        assertTrue(part.notAssessed().orElseThrow().contains("whole open hole"));
        Masp none = Inputs.evaluate(Inputs.earth(
                        input,
                        new EarthModel(
                                Optional.empty(), e.strength(), e.tests(), e.weakZones(), e.temperature(), e.tops())))
                .masp()
                .orElseThrow();
        assertTrue(none.notAssessed().orElseThrow().contains("missing: earth: pore pressure"));
        assertEquals(Verdict.Outcome.NOT_ASSESSED, none.verdict().outcome());
        Masp cold = Inputs.evaluate(Inputs.temperature(input, Optional.empty()))
                .masp()
                .orElseThrow();
        assertTrue(cold.notAssessed().orElseThrow().contains("missing: earth: temperature"));
    }

    @Test
    void aSectionThatIsNotShutInHasNone() {
        SectionInput input = Inputs.plan(Wells.standard().input(), Drilling.DIVERTER, Mud.waterBased("mud", Wells.MUD));
        assertTrue(Inputs.evaluate(input).masp().isEmpty());
    }

    @Test
    void theSectionsVerdictDoesNotHangOnIt() {
        Wells wells = Wells.standard().required(0.1);
        SectionEnvelope strong = wells.equipment(Wells.rated(100e6)).evaluate();
        double load = strong.masp().orElseThrow().pressure().orElseThrow();
        SectionEnvelope weak = wells.equipment(Wells.rated(load)).evaluate();
        assertEquals(Verdict.Outcome.FAILS, weak.masp().orElseThrow().verdict().outcome());
        assertEquals(strong.verdict().outcome(), weak.verdict().outcome());
    }
}
