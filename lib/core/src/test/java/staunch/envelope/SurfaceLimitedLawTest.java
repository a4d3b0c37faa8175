package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import staunch.limit.PressureEquipment;
import staunch.units.Physics;
import staunch.well.Datum;
import staunch.well.HoleInterval;

class SurfaceLimitedLawTest {
    private static final double RATING = 15e6;

    private static Tolerance solve(Wells wells) {
        Model model = wells.model();
        return model.circulatedToSurface(model.kick(Kick.Scenario.DRILLED, Wells.BOTTOM), Wells.BOTTOM)
                .tolerance();
    }

    @Test
    void equalsTheClosedFormOfAnIdealIsothermalGasThatReachesSurfaceAtTheRating() {
        double t = 350;
        // Casing and hole alike, so that one cross-section runs from bottom to surface.
        double hole = 0.22049;
        Wells wells = Wells.standard()
                .isothermal(t)
                .options(ToleranceLawTest.ideal())
                .hole(new HoleInterval(Wells.SHOE, Wells.BOTTOM, hole))
                .burst(3.9e8)
                .equipment(Wells.rated(RATING));
        Tolerance.Finite finite = assertInstanceOf(Tolerance.Finite.class, solve(wells));
        double g = Physics.GRAVITY;
        double k = g * 0.65 * Physics.MOLAR_MASS_AIR / (Physics.GAS_CONSTANT * t);
        double area = Math.PI / 4 * (hole * hole - Wells.PIPE * Wells.PIPE);
        double pf = Wells.pressure(Wells.MUD + 60, Wells.BOTTOM);
        double limit = Physics.ATMOSPHERE + RATING;
        double s = 0;
        for (int i = 0; i < 50; i++) {
            double f = limit * Math.exp(k * s) - pf + Wells.MUD * g * (Wells.BOTTOM - s);
            s -= f / (k * limit * Math.exp(k * s) - Wells.MUD * g);
        }
        double mass = area * limit * Math.expm1(k * s) / g;
        assertEquals(mass, finite.mass(), 1e-9 * mass);
        assertEquals(0, finite.stage().gasTop(), 1e-6);
    }

    @Test
    void casingCanGovernBeforeTheGasIsAtSurface() {
        Wells wells = Wells.standard().burst(66e6).equipment(Wells.rated(100e6));
        Tolerance.Finite finite = assertInstanceOf(Tolerance.Finite.class, solve(wells));
        assertEquals("9 5/8 in casing P110", finite.weakPoint().name());
        assertTrue(finite.stage().gasTop() > 100, "the peak at the shoe comes early");
    }

    @Test
    void strongerEquipmentNeverCarriesLess() {
        double last = 0;
        for (double rating = 8e6; rating < 30e6; rating += 2e6) {
            Tolerance tolerance = solve(Wells.standard().burst(3.9e8).equipment(Wells.rated(rating)));
            double volume = tolerance instanceof Tolerance.Finite f ? f.volume() : Double.MAX_VALUE;
            assertTrue(volume >= last);
            last = volume;
        }
    }

    @Test
    void intensityAboveTheRatingFailsWithoutGas() {
        Tolerance tolerance = solve(Wells.standard().burst(3.9e8).equipment(Wells.rated(2e6)));
        double expected = 60 * Physics.GRAVITY * Wells.BOTTOM - 2e6;
        assertEquals(
                expected,
                assertInstanceOf(Tolerance.FailsOnIntensity.class, tolerance).shortfall(),
                1e-3);
    }

    @Test
    void thinChokeLineOfASubseaStackIsFollowedToSurface() {
        Tolerance.Finite thin = assertInstanceOf(Tolerance.Finite.class, solve(subsea(0.0762)));
        Tolerance.Finite wide = assertInstanceOf(Tolerance.Finite.class, solve(subsea(0.1143)));
        assertTrue(thin.mass() < wide.mass(), "gas stretches out in a thin line and loads the manifold sooner");
        assertEquals("manifold", thin.weakPoint().name());
    }

    private static Wells subsea(double lineDiameter) {
        Datum floater = new Datum("rotary table", 25, new Datum.AtSea(1000, true));
        return Wells.standard()
                .datum(floater)
                .chokeLineFriction(0)
                .burst(3.9e8)
                .equipment(Wells.rated(103e6, RATING, 1025, lineDiameter));
    }

    @Test
    void subseaStackWithoutChokeLineIsNotAssessed() {
        Datum floater = new Datum("rotary table", 25, new Datum.AtSea(1000, true));
        Wells wells = Wells.standard().datum(floater).chokeLineFriction(0).equipment(PressureEquipment.NONE);
        assertInstanceOf(Tolerance.NotAssessed.class, solve(wells));
    }

    @Test
    void verdictSaysWhetherCasingAndEquipmentWereLookedAt() {
        assertEquals(
                "holds (formation only)",
                Wells.standard().required(1).evaluate().drilled().verdict().statement());
        assertEquals(
                "holds",
                Wells.standard()
                        .required(1)
                        .burst(3.9e8)
                        .equipment(Wells.rated(69e6))
                        .evaluate()
                        .drilled()
                        .verdict()
                        .statement());
        Verdict fails = Wells.standard()
                .required(4)
                .burst(3.9e8)
                .equipment(Wells.rated(8e6))
                .evaluate()
                .drilled()
                .verdict();
        assertEquals(Verdict.Outcome.FAILS, fails.outcome());
        assertEquals("fails at casing or equipment on the way to surface", fails.statement());
        Verdict burst = Wells.standard()
                .required(4)
                .burst(10e6)
                .equipment(Wells.rated(69e6))
                .evaluate()
                .drilled()
                .verdict();
        assertEquals(
                "fails at casing or equipment on intensity alone, casing burst with no back-up outside (missing: casing string:"
                        + " mix water density)",
                burst.statement());
    }

    @Test
    void wayToSurfaceIsAWholeDisplacementWhateverCountsAtTheFormation() {
        Wells wells = Wells.standard().burst(3.9e8).equipment(Wells.rated(RATING));
        Tolerance whole = wells.evaluate().drilled().circulatedToSurface().tolerance();
        for (MethodOptions.ToleranceDefinition definition : MethodOptions.ToleranceDefinition.values()) {
            wells.options(MethodOptions.DEFAULT.withDefinition(definition));
            assertEquals(whole, wells.evaluate().drilled().circulatedToSurface().tolerance());
        }
    }
}
