package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import staunch.envelope.MethodOptions.DrilledPressure;
import staunch.limit.PressureEquipment;
import staunch.limit.PressureRating;
import staunch.limit.StackElement;

class VerdictTest {
    @Test
    void namesEveryCheckThatFails() {
        Verdict verdict = Wells.standard().required(25).evaluate().verdict();
        assertEquals("fails: drilled and swabbed kick at the formation", verdict.statement());
        assertEquals("shoe of 9 5/8 in casing, top of the influx at the weak point", verdict.governing());
    }

    @Test
    void aKickWithoutCriterionDoesNotKeepTheSectionOpen() {
        assertEquals(
                Verdict.Outcome.HOLDS,
                Wells.standard()
                        .required(4)
                        .noSwabbedCriterion()
                        .evaluate()
                        .verdict()
                        .outcome());
    }

    @Test
    void porePressureBelowTheMudIsNoInflux() {
        KickResult drilled = Wells.standard()
                .options(MethodOptions.DEFAULT.withDrilledPressure(DrilledPressure.PORE_PRESSURE_ONLY))
                .evaluate()
                .drilled();
        assertEquals(Verdict.Outcome.NOT_ASSESSED, drilled.verdict().outcome());
        assertTrue(drilled.verdict().statement().contains("no influx: the mud exceeds the formation pressure"));
    }

    @Test
    void stackOfWhichOneElementIsNotRatedHoldsAtMostTheLowestKnown() {
        StackElement annular = element("annular", StackElement.Type.ANNULAR, Optional.of(5e6));
        StackElement ram = element("pipe ram", StackElement.Type.PIPE_RAM, Optional.empty());
        PressureEquipment rated = Wells.rated(69e6);
        PressureEquipment partly = new PressureEquipment(
                rated.wellhead(),
                rated.chokeManifold(),
                rated.chokeLine(),
                rated.killLine(),
                rated.riser(),
                List.of(ram, annular));
        Maasp maasp = Wells.standard()
                .burst(3.9e8)
                .equipment(partly)
                .evaluate()
                .maasp()
                .orElseThrow();
        assertTrue(maasp.atMost());
        assertEquals(5e6, maasp.lowest().orElseThrow().pressure().orElseThrow(), 1e-6);
    }

    private static StackElement element(String name, StackElement.Type type, Optional<Double> rating) {
        return new StackElement(
                name,
                type,
                rating.map(p -> new PressureRating(name, p, Optional.empty())),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }
}
