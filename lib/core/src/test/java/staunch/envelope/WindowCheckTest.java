package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WindowCheckTest {
    @ParameterizedTest
    @ValueSource(doubles = {3333.3, 3777.7, 4111.1, 4500})
    void mudEqualToPorePressureIsNotUnderbalanced(double bottom) {
        SectionEnvelope section = Wells.standard()
                .depths(Wells.SHOE, bottom)
                .pore(Wells.MUD)
                .required(1)
                .evaluate();
        assertEquals(Verdict.Outcome.HOLDS, section.window().verdict().outcome());
        assertEquals(Verdict.Outcome.HOLDS, section.verdict().outcome());
    }

    @ParameterizedTest
    @ValueSource(doubles = {3333.3, 3777.7, 4111.1, 4500})
    void mudEqualToStrengthHolds(double bottom) {
        SectionEnvelope section = Wells.standard()
                .depths(Wells.SHOE, bottom)
                .strength(0, Wells.MUD, 9000, Wells.MUD)
                .evaluate();
        assertEquals(Verdict.Outcome.HOLDS, section.window().verdict().outcome());
    }
}
