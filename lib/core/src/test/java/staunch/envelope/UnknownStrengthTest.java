package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Depths of which nothing is known never limit the gas, never hold, and never appear as a number. */
class UnknownStrengthTest {
    /** Strength known from 3800 m down only, the shoe at 3000 m. */
    private static Wells unknownAtTheShoe() {
        return Wells.standard().strength(3800, 1700, 9000, 1700);
    }

    @Test
    void aKnownDepthBelowAnUnknownShoeLimitsTheGas() {
        Tolerance.Finite finite =
                assertInstanceOf(Tolerance.Finite.class, unknownAtTheShoe().drilled());
        assertTrue(
                finite.weakPoint().measuredDepth() >= 3800, finite.weakPoint().toString());
        assertTrue(finite.volume() > 0);
    }

    @Test
    void aHoleThatEndsAboveTheFirstKnownDepthIsNotUnlimited() {
        SectionEnvelope section = unknownAtTheShoe().evaluate();
        for (DepthPoint point : section.alongSection()) {
            if (point.measuredDepth() < 3800) {
                assertInstanceOf(Tolerance.NotAssessed.class, point.drilled(), "at " + point.measuredDepth());
                assertInstanceOf(Tolerance.NotAssessed.class, point.swabbed(), "at " + point.measuredDepth());
            } else {
                assertFalse(point.drilled() instanceof Tolerance.Unlimited, "at " + point.measuredDepth());
            }
            assertTrue(point.shoeMargin().isEmpty(), "no margin at a shoe of unknown strength");
        }
        assertTrue(section.margins().isEmpty(), "no margin at a shoe of unknown strength");
    }

    @Test
    void noLimitBelowAnUnknownShoeIsNotAssessed() {
        SectionInput input =
                unknownAtTheShoe().intensity(0).mud(1200).pore(1100).input();
        Model model = Model.of(input, input.options().estimates());
        Tolerance tolerance =
                model.tolerance(model.kick(Kick.Scenario.SWABBED, Wells.BOTTOM), model.hole(Wells.BOTTOM));
        assertInstanceOf(Tolerance.NotAssessed.class, tolerance);
    }

    @Test
    void aFormationLoadEqualToTheLimitHolds() {
        // Sums of the same pressures in another order differ by some nanopascals.
        for (double depth : new double[] {3333.3, 3777.7, 4111.1, 4499.9}) {
            Tolerance.Finite finite = assertInstanceOf(
                    Tolerance.Finite.class,
                    Wells.standard()
                            .depths(Wells.SHOE, depth)
                            .strength(0, Wells.MUD, 9000, Wells.MUD)
                            .swabbed(),
                    "at " + depth);
            assertEquals(0, finite.volume(), 1e-6);
        }
    }
}
