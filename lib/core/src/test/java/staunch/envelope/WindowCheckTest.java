package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import staunch.earth.EarthModel;
import staunch.earth.Standing;
import staunch.earth.StrengthTest;
import staunch.fluid.Mud;
import staunch.units.Physics;
import staunch.units.Source;
import staunch.well.Datum;
import staunch.well.HoleInterval;

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

    @Test
    void withoutARiserTheSeaStandsOnTheMud() {
        Datum floater = new Datum("rotary table", 25, new Datum.AtSea(1000, true));
        // From the datum down, mud of 1200 kg/m³ would break this rock at 1080 m; returns to the seabed do not.
        SectionInput input = Wells.standard()
                .datum(floater)
                .depths(1080, 1500)
                .mud(1200)
                .pore(1000)
                .strength(0, 1120, 9000, 1120)
                .hole(new HoleInterval(1080, 1500, 0.66))
                .input();
        SectionEnvelope section = Inputs.evaluate(Inputs.plan(input, Drilling.RISERLESS, Mud.waterBased("mud", 1200)));
        PressureWindow.Point first = section.window().points().get(0);
        double expected = Physics.ATMOSPHERE + Physics.GRAVITY * (1025 * 1000 + 1200 * (1080 - 1025));
        assertEquals(expected, first.mudPressure().orElseThrow(), 1);
        assertEquals(Verdict.Outcome.HOLDS, section.window().verdict().outcome());
        assertEquals(1, section.assumptions().size());
    }

    @Test
    void aGapNarrowerThanTheStepOfTheCheckIsNotOverlooked() {
        // A shoe's test counts down to 3010 m; the prediction begins at 3020 m.
        SectionInput input = Wells.standard().strength(3020, 1860, 9000, 1860).input();
        EarthModel e = input.earth();
        StrengthTest test = new StrengthTest(
                "test",
                3010,
                Wells.pressure(1860, 3010),
                Standing.LEAK_OFF,
                OptionalDouble.empty(),
                new Source("invented", ""));
        SectionEnvelope section = Inputs.evaluate(Inputs.earth(
                input,
                new EarthModel(
                        e.porePressure(), e.strength(), List.of(test), e.weakZones(), e.temperature(), e.tops())));
        assertEquals(Verdict.Outcome.NOT_ASSESSED, section.window().verdict().outcome());
    }
}
