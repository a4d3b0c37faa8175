package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import staunch.control.FlowingMud;
import staunch.control.Hydraulics;
import staunch.control.LineBore;
import staunch.control.SlowCirculation;
import staunch.well.Datum;

class ChokeFrictionTest {
    private static final Datum FLOATER = new Datum("rotary table", 25, new Datum.AtSea(1000, true));

    private static Wells subsea() {
        return Wells.standard().datum(FLOATER).equipment(Wells.rated(103e6, 103e6, 1025, 0.0762));
    }

    @Test
    void isComputedFromLineAndReadingsWhereItWasNotMeasured() {
        SectionInput input = subsea().ready(OperationsPlan.NONE).input();
        double computed = Hydraulics.lineLoss(
                new LineBore(1025, 0.0762),
                new FlowingMud(
                        Wells.MUD,
                        ChokeFriction.flow(input.plan().mud().orElseThrow()).orElseThrow()),
                0.008);
        ChokeFriction friction = ChokeFriction.of(input);
        assertEquals(computed, friction.pressure().orElseThrow(), 1e-6);
        assertTrue(friction.basis().contains("API RP 13D"), friction.basis());
        Model model = Model.of(input, input.options().estimates());
        assertInstanceOf(
                Tolerance.Finite.class,
                model.tolerance(model.kick(Kick.Scenario.DRILLED, Wells.BOTTOM), model.hole(Wells.BOTTOM)));
    }

    @Test
    void aMeasurementTakesPrecedence() {
        SectionInput input = Inputs.slowCirculations(
                subsea().ready(OperationsPlan.NONE).input(),
                List.of(new SlowCirculation(0.008, OptionalDouble.empty(), OptionalDouble.of(1.5e6))));
        assertEquals(1.5e6, ChokeFriction.of(input).pressure().orElseThrow());
    }

    @Test
    void withNeitherTheToleranceWhileCirculatingIsNotAssessed() {
        SectionInput input = subsea().input();
        assertTrue(ChokeFriction.of(input).pressure().isEmpty());
        assertInstanceOf(
                Tolerance.NotAssessed.class, Inputs.evaluate(input).drilled().tolerance());
        assertEquals(
                Optional.of("neither measured nor computed"),
                Inputs.evaluate(input).assumptions().stream()
                        .filter(a -> a.subject().equals("choke-line friction"))
                        .map(Assumption::text)
                        .findFirst());
    }

    @Test
    void countsNothingForAStackAtSurface() {
        assertEquals(0, ChokeFriction.of(Wells.standard().input()).pressure().orElseThrow());
    }
}
