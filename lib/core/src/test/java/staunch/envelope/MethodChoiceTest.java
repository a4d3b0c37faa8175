package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import staunch.control.CirculationMethod;
import staunch.earth.TemperatureProfile;
import staunch.envelope.MethodOptions.ToleranceDefinition;
import staunch.units.Physics;
import staunch.well.Datum;
import staunch.well.StringComponent;

/** Choices of method where they meet unusual wells. */
class MethodChoiceTest {
    private static final MethodOptions WAIT_AND_WEIGHT =
            MethodOptions.DEFAULT.withMethod(CirculationMethod.WAIT_AND_WEIGHT);

    private static Tolerance.Finite finite(Tolerance tolerance) {
        return assertInstanceOf(Tolerance.Finite.class, tolerance);
    }

    @Test
    void temperatureThatBeginsAtGroundIsEnoughForAnInfluxThatStaysBelow() {
        SectionInput input = Wells.standard().input();
        TemperatureProfile fromGround =
                TemperatureProfile.of(new double[] {8, 4500}, new double[] {288.15 + 0.24, 288.15 + 135});
        SectionEnvelope section = Inputs.evaluate(Inputs.temperature(input, Optional.of(fromGround)));
        assertEquals(
                finite(Wells.standard().drilled()).volume(),
                finite(section.drilled().tolerance()).volume(),
                1e-9);
    }

    @Test
    void killMudNeedsPipeToComeDown() {
        Wells open = Wells.standard().string();
        double drillers = finite(open.drilled()).mass();
        assertEquals(drillers, finite(open.options(WAIT_AND_WEIGHT).drilled()).mass(), 1e-9 * drillers);
    }

    @Test
    void killMudIsNeverLighterThanTheMudItReplaces() {
        // A formation that the mud just balances, and a string so narrow that the kill mud is early.
        StringComponent narrow = new StringComponent("pipe", 10, Wells.PIPE, 0.02);
        Wells well = Wells.standard().string(narrow).intensity(0);
        double drillers = finite(well.drilled()).mass();
        double weighted = finite(well.options(WAIT_AND_WEIGHT).drilled()).mass();
        assertEquals(drillers, weighted, 1e-9 * drillers);
    }

    @Test
    void topAtWeakPointSeesAZoneWhoseStrengthRisesFasterThanTheMud() {
        Tolerance.Finite finite = finite(Wells.standard()
                .zone("depleted sand", 3700, 3730, 1700)
                .options(MethodOptions.DEFAULT.withDefinition(ToleranceDefinition.TOP_AT_WEAK_POINT))
                .drilled());
        assertEquals("depleted sand", finite.weakPoint().name());
        assertEquals(3700, finite.stage().gasTop(), 1e-6);
    }

    @Test
    void overbalanceDoesNotCountWhereCirculationDoesNot() {
        MethodOptions onBottom = MethodOptions.DEFAULT.withDefinition(ToleranceDefinition.ON_BOTTOM);
        SectionEnvelope without = Wells.standard().options(onBottom).evaluate();
        SectionEnvelope with =
                Wells.standard().options(onBottom).overbalance(4e6).evaluate();
        assertEquals(intensity(without.zeroGainMargin()), intensity(with.zeroGainMargin()), 1e-9);
        assertEquals(intensity(without.largestIntensity()), intensity(with.largestIntensity()), 1e-5);
    }

    private static double intensity(IntensityLimit limit) {
        return assertInstanceOf(IntensityLimit.Largest.class, limit).intensity();
    }

    @Test
    void chokeLineFrictionThatBreaksTheShoeLeavesNoIntensityAndNoMargin() {
        double friction = 10e6;
        SectionEnvelope section =
                subsea().chokeLineFriction(friction).required(0.5).evaluate();
        double expected = (1860 - Wells.MUD) * Physics.GRAVITY * Wells.SHOE - friction;
        assertEquals(expected / (Physics.GRAVITY * Wells.BOTTOM), intensity(section.zeroGainMargin()), 1e-6);
        for (InfluxMargin margin : section.margins()) {
            assertEquals(expected, margin.leastAtShoe(), 1e-3);
            assertEquals(expected, margin.least(), 1e-3);
        }
        for (DepthPoint point : section.alongSection()) {
            assertEquals(expected, point.shoeMargin().orElseThrow(), 1e-3);
        }
    }

    @Test
    void chokeLineFrictionNotKnownLeavesNoMarginWhileCirculating() {
        SectionEnvelope section = subsea().evaluate();
        assertInstanceOf(IntensityLimit.NotAssessed.class, section.zeroGainMargin());
        section.alongSection().forEach(p -> assertEquals(true, p.shoeMargin().isEmpty()));
    }

    private static Wells subsea() {
        return Wells.standard().datum(new Datum("rotary table", 25, new Datum.AtSea(1000, true)));
    }
}
