package staunch.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import staunch.fluid.FlowModel;
import staunch.units.Fault;
import staunch.well.Annulus;
import staunch.well.WellPath;

class FrictionCurveTest {
    private static final FlowingMud MUD = new FlowingMud(1500, new FlowModel.BinghamPlastic(0.03, 6));
    private static final WellPath PATH = KillWells.deviated(800, 40);
    private static final Annulus ANNULUS = KillWells.annulus(3000, 300);

    @Test
    void holdsTheLossesOfTheHydraulics() {
        LineBore line = new LineBore(300, 0.0762);
        FrictionCurve curve = FrictionCurve.of(new FrictionCurve.Well(PATH, ANNULUS, Optional.of(line)), MUD, 0.02, 4);
        assertEquals(4, curve.points().size());
        FrictionCurve.Point half = curve.points().get(1);
        assertEquals(0.01, half.rate(), 1e-15);
        assertEquals(Hydraulics.annularLoss(ANNULUS, MUD, half.rate()), half.annulus(), 0);
        assertEquals(
                Hydraulics.lineLoss(line, MUD, half.rate()), half.chokeLine().getAsDouble(), 0);
        double z = PATH.verticalDepth(3000);
        assertEquals(1500 + half.annulus() / (9.80665 * z), half.equivalentDensity(), 1e-9);
    }

    @Test
    void aWellWithoutAChokeLineLosesNothingThere() {
        FrictionCurve curve = FrictionCurve.of(new FrictionCurve.Well(PATH, ANNULUS, Optional.empty()), MUD, 0.02, 4);
        assertTrue(curve.points().stream().allMatch(p -> p.chokeLine().isEmpty()));
        assertThrows(
                Fault.class,
                () -> FrictionCurve.of(new FrictionCurve.Well(PATH, ANNULUS, Optional.empty()), MUD, 0, 4));
    }
}
