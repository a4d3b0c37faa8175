package staunch.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class StackRatingTest {
    private static final StackElement CONNECTOR = element("connector", StackElement.Type.WELLHEAD_CONNECTOR, 103e6);
    private static final StackElement SPOOL = element("spool", StackElement.Type.DRILLING_SPOOL, 0);
    private static final StackElement RAM = element("lower pipe ram", StackElement.Type.PIPE_RAM, 103e6);
    private static final StackElement SHEAR = element("shear ram", StackElement.Type.BLIND_SHEAR_RAM, 103e6);
    private static final StackElement ANNULAR = element("annular", StackElement.Type.ANNULAR, 69e6);

    private static StackElement element(String name, StackElement.Type type, double pressure) {
        Optional<PressureRating> rating =
                pressure > 0 ? Optional.of(new PressureRating(name, pressure, Optional.empty())) : Optional.empty();
        return new StackElement(
                name, type, rating, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    @Test
    void theLowestOfAllThatMayBeClosedCounts() {
        StackRating rating = StackRating.of(List.of(CONNECTOR, SPOOL, RAM, SHEAR, ANNULAR));
        assertEquals(
                "annular",
                assertInstanceOf(StackRating.Rated.class, rating).lowest().equipment());
    }

    @Test
    void whatSitsAboveTheUppermostSealSeesNoPressure() {
        StackElement diverter = element("diverter", StackElement.Type.DIVERTER, 3.4e6);
        StackElement riser = element("riser connector", StackElement.Type.RISER_CONNECTOR, 0);
        assertInstanceOf(StackRating.Rated.class, StackRating.of(List.of(CONNECTOR, RAM, ANNULAR, riser, diverter)));
        // Below an annular the connector of the lower marine riser package does.
        StackRating below = StackRating.of(List.of(CONNECTOR, RAM, riser, ANNULAR));
        assertEquals(
                "rating of riser connector",
                assertInstanceOf(StackRating.NotAssessed.class, below).missing());
    }

    @Test
    void anUnratedElementThatMustHoldMakesItNotAssessed() {
        StackElement unrated = element("upper pipe ram", StackElement.Type.VARIABLE_BORE_RAM, 0);
        StackRating rating = StackRating.of(List.of(CONNECTOR, RAM, unrated));
        StackRating.NotAssessed not = assertInstanceOf(StackRating.NotAssessed.class, rating);
        assertEquals("rating of upper pipe ram", not.missing());
        assertEquals(103e6, not.lowestKnown().orElseThrow().pressure());
    }

    @Test
    void aStackThatCannotCloseIsNotAssessed() {
        assertEquals(
                new StackRating.NotAssessed("elements of the BOP stack", Optional.empty()), StackRating.of(List.of()));
        StackRating rating = StackRating.of(List.of(CONNECTOR, SPOOL));
        assertTrue(assertInstanceOf(StackRating.NotAssessed.class, rating)
                .missing()
                .contains("seals"));
    }
}
