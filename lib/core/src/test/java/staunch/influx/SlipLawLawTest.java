package staunch.influx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class SlipLawLawTest {
    private static SlipConditions conditions(double bore, double share, double mud, double gas) {
        return new SlipConditions(new FlowChannel(bore, share * bore), 0, mud, 0.01, gas, 0, 0.5);
    }

    /** With no pipe in the bore every annulus form is the form for a bore. */
    @Property(tries = 100, seed = "1")
    void annulusFormsTendToTheBore(
            @ForAll @DoubleRange(min = 0.1, max = 0.5) double bore,
            @ForAll @DoubleRange(min = 900, max = 2200) double mud,
            @ForAll @DoubleRange(min = 1, max = 400) double gas) {
        SlipConditions c = conditions(bore, 0, mud, gas);
        double expected = TaylorBubble.PIPE.driftVelocity(c);
        assertEquals(expected, TaylorBubble.ANNULUS_HASAN_KABIR.driftVelocity(c), 1e-15);
        assertEquals(expected, TaylorBubble.ANNULUS_SADATOMI.driftVelocity(c), 1e-15);
    }

    /** Heavier gas rises slower; a lift of zero would leave it where it is. */
    @Property(tries = 100, seed = "1")
    void heavierGasRisesSlower(
            @ForAll @DoubleRange(min = 0.15, max = 0.5) double bore,
            @ForAll @DoubleRange(min = 0.2, max = 0.8) double share,
            @ForAll @DoubleRange(min = 1, max = 300) double gas,
            @ForAll @DoubleRange(min = 1, max = 300) double more) {
        SlipConditions light = conditions(bore, share, 1300, gas);
        SlipConditions heavy = conditions(bore, share, 1300, gas + more);
        for (SlipLaw law : List.of(
                TaylorBubble.ANNULUS_HASAN_KABIR,
                TaylorBubble.ANNULUS_SADATOMI,
                new HarmathyBubble(0.05),
                HasanKabirAnnulus.of(0.05))) {
            assertTrue(law.driftVelocity(heavy) < law.driftVelocity(light));
        }
    }

    /** Froude scaling: four times the size, twice the speed. */
    @Property(tries = 50, seed = "1")
    void taylorBubblesScaleByFroude(
            @ForAll @DoubleRange(min = 0.1, max = 0.3) double bore,
            @ForAll @DoubleRange(min = 0, max = 0.8) double share) {
        for (SlipLaw law : List.of(TaylorBubble.ANNULUS_HASAN_KABIR, TaylorBubble.ANNULUS_SADATOMI)) {
            double small = law.driftVelocity(conditions(bore, share, 1300, 150));
            double large = law.driftVelocity(conditions(4 * bore, share, 1300, 150));
            assertEquals(2 * small, large, 1e-12);
        }
    }

    /** What flows in comes out: α v_g is the flux of gas. */
    @Property(tries = 100, seed = "1")
    void gasFractionCarriesTheGasFlux(
            @ForAll @DoubleRange(min = 0.01, max = 2) double gasFlux,
            @ForAll @DoubleRange(min = 0, max = 2) double mudFlux,
            @ForAll @DoubleRange(min = 0, max = 1) double drift) {
        DriftFlux law = new DriftFlux(1.2, drift);
        SlipConditions c = conditions(0.3, 0.5, 1300, 150).flowing(gasFlux + mudFlux, 0.5);
        assertEquals(gasFlux, law.gasFraction(gasFlux, mudFlux) * law.gasVelocity(c), 1e-12);
    }

    @Property(tries = 20, seed = "1")
    void theBracketIsOrdered(@ForAll @DoubleRange(min = 1000, max = 2200) double mud) {
        SlipConditions c = conditions(0.2159, 0.6, mud, 150);
        MigrationBracket bracket = MigrationBracket.PUBLISHED;
        assertTrue(bracket.slow().driftVelocity(c) < bracket.medium().driftVelocity(c));
        assertTrue(bracket.medium().driftVelocity(c) < bracket.fast().driftVelocity(c));
    }
}
