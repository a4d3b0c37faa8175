package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import staunch.design.Study;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.Tolerance;
import staunch.fluid.Mud;
import staunch.units.InputFault;

/** A section is changed in a study, and nothing else is. */
class ChangedStudyTest {
    private static final String SECTION = "8 1/2 in";

    private final Study study = Study.of(InventedWell.wellCase());

    @Test
    void lighterMudLeavesLessPressureAtTheShoeAndMoreTolerance() {
        Study lighter = study.withSection(SECTION, s -> s.withMud(Mud.waterBased("lighter", 1500)));
        assertTrue(volume(lighter) > volume(study), volume(study) + " m³ → " + volume(lighter) + " m³");
        assertEquals(
                study.evaluate().sections().get(0),
                lighter.evaluate().sections().get(0));
        assertEquals(
                1560,
                study.wellCase()
                        .design("base")
                        .section(SECTION)
                        .mud()
                        .orElseThrow()
                        .density());
    }

    @Test
    void aSectionThatIsNotThereIsAFault() {
        InputFault fault = assertThrows(InputFault.class, () -> study.withSection("6 in", s -> s));
        assertTrue(fault.getMessage().contains(SECTION), fault.getMessage());
    }

    private static double volume(Study study) {
        SectionEnvelope section = study.evaluate().sections().get(1);
        return ((Tolerance.Finite) section.swabbed().tolerance()).volume();
    }
}
