package staunch.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.fluid.FlowModel;
import staunch.influx.FlowChannel;
import staunch.units.InputFault;
import staunch.units.RangeFault;
import staunch.well.Annulus;

class HydraulicsTest {
    private static final FlowingMud MUD = new FlowingMud(1300, new FlowModel.BinghamPlastic(0.02, 6));
    private static final LineBore LINE = new LineBore(1500, 0.076);
    private static final double RATE = 0.008;

    @Test
    void lossesAddUpOverTheStretches() {
        Annulus annulus = KillWells.annulus(3000, 0);
        double expected = 0;
        for (int i = 0; i < annulus.count(); i++) {
            FlowChannel channel = new FlowChannel(annulus.holeDiameter(i), annulus.pipeDiameter(i));
            expected += (annulus.bottom(i) - annulus.top(i))
                    * Friction.at(channel, MUD, RATE / channel.area()).gradient();
        }
        double loss = Hydraulics.annularLoss(annulus, MUD, RATE);
        assertEquals(expected, loss, 1e-9 * expected);
        double atShoe = Hydraulics.annularLossAbove(annulus, 2000, MUD, RATE);
        assertTrue(atShoe > 0 && atShoe < loss);
        assertEquals(0, Hydraulics.annularLossAbove(annulus, 0, MUD, RATE), 0);
        double ecd = Hydraulics.equivalentCirculatingDensity(1300, loss, 3000);
        assertEquals(1300 + loss / 9.80665 / 3000, ecd, 1e-9);
        assertThrows(RangeFault.class, () -> Hydraulics.annularLoss(annulus, MUD, 0));
    }

    /** Below the bit nothing flows. */
    @Test
    void theHoleBelowTheBitAddsNothing() {
        Annulus off = KillWells.annulus(2500, 0);
        assertEquals(Hydraulics.annularLossAbove(off, 2500, MUD, RATE), Hydraulics.annularLoss(off, MUD, RATE), 1e-9);
    }

    /** A jet of 1200 kg/m³ at 100 m/s behind a coefficient of 0.95. */
    @Test
    void theBitTurnsPressureIntoSpeed() {
        assertEquals(0.5 * 1200 * 1e4 / (0.95 * 0.95), Hydraulics.nozzleLoss(1200, 0.03, 3e-4), 1e-6);
    }

    @Test
    void measuredChokeLineFrictionTakesPrecedence() {
        SlowCirculation measured = new SlowCirculation(RATE, OptionalDouble.of(4e6), OptionalDouble.of(1e6));
        ChokeLineLoss.Line line = new ChokeLineLoss.Line(LINE, List.of(measured), 1300, 1560, Optional.of(MUD.flow()));
        ChokeLineLoss.Known same = assertInstanceOf(ChokeLineLoss.Known.class, line.at(RATE));
        assertEquals(ChokeLineLoss.Basis.MEASURED, same.basis());
        assertEquals(1.2e6, same.pressure(), 1e-6);
        ChokeLineLoss.Known other = assertInstanceOf(ChokeLineLoss.Known.class, line.at(2 * RATE));
        assertEquals(ChokeLineLoss.Basis.MEASURED_AT_ANOTHER_RATE, other.basis());
        double ratio = Hydraulics.lineLoss(LINE, new FlowingMud(1560, MUD.flow()), 2 * RATE)
                / Hydraulics.lineLoss(LINE, MUD, RATE);
        assertEquals(1e6 * ratio, other.pressure(), 1e-6);
        ChokeLineLoss.Line unmeasured = new ChokeLineLoss.Line(LINE, List.of(), 1300, 1300, Optional.of(MUD.flow()));
        ChokeLineLoss.Known computed = assertInstanceOf(ChokeLineLoss.Known.class, unmeasured.at(RATE));
        assertEquals(ChokeLineLoss.Basis.COMPUTED, computed.basis());
        assertEquals(Hydraulics.lineLoss(LINE, MUD, RATE), computed.pressure(), 0);
        ChokeLineLoss.Line unknown = new ChokeLineLoss.Line(LINE, List.of(measured), 1300, 1300, Optional.empty());
        assertInstanceOf(ChokeLineLoss.NotAssessed.class, unknown.at(2 * RATE));
        assertInstanceOf(
                ChokeLineLoss.NotAssessed.class,
                new ChokeLineLoss.Line(LINE, List.of(), 1300, 1300, Optional.empty()).at(RATE));
    }

    @Test
    void swabAndSurgeAreMirrorImages() {
        Annulus annulus = KillWells.annulus(3000, 0);
        double surge = PipeMovement.of(1, PipeMovement.Direction.RUNNING_IN, PipeMovement.End.PLUGGED)
                .pressureChange(annulus, MUD);
        double swab = PipeMovement.of(1, PipeMovement.Direction.PULLING_OUT, PipeMovement.End.PLUGGED)
                .pressureChange(annulus, MUD);
        double open = PipeMovement.of(1, PipeMovement.Direction.RUNNING_IN, PipeMovement.End.OPEN)
                .pressureChange(annulus, MUD);
        assertEquals(-surge, swab, 0);
        assertTrue(open > 0 && open < surge);
    }

    /** The mud that clings in laminar Newtonian flow: half the speed in a narrow gap, less in a wide one. */
    @Property(tries = 50, seed = "1")
    void clingingMudMovesAtUpToHalfThePipesSpeed(@ForAll @DoubleRange(min = 0.05, max = 0.98) double alpha) {
        double here = PipeMovement.laminarClinging(new FlowChannel(0.3, 0.3 * alpha));
        double narrower = PipeMovement.laminarClinging(new FlowChannel(0.3, 0.3 * (alpha + 0.01)));
        assertTrue(here > 0 && here < narrower && narrower < 0.5);
        // Mean of the dragged velocity V ln(r/R)/ln α over the annulus, by the midpoint rule.
        double sum = 0;
        int parts = 4000;
        for (int i = 0; i < parts; i++) {
            double x = alpha + (1 - alpha) * (i + 0.5) / parts;
            sum += Math.log(x) / Math.log(alpha) * 2 * x * (1 - alpha) / parts;
        }
        assertEquals(sum / (1 - alpha * alpha), here, 1e-5);
    }

    @Test
    void pluggedStringsCannotBePumpedThrough() {
        Annulus annulus = KillWells.plugged();
        assertEquals(
                "string component \"plugged pipe\"",
                assertThrows(InputFault.class, () -> Hydraulics.stringLoss(annulus.string(), MUD, RATE))
                        .field());
    }

    /** The margin brings the pressure of the parted riser back to balance. */
    @Property(tries = 100, seed = "1")
    void theRiserMarginBalancesTheWellWithoutTheRiser(
            @ForAll @DoubleRange(min = 1100, max = 1900) double balancing,
            @ForAll @DoubleRange(min = 200, max = 2500) double water) {
        SubseaFormulas.Sea sea = SubseaFormulas.Sea.of(25, water, 1025);
        double depth = 4500;
        double margin = sea.riserMargin(balancing, depth, HydrostaticConstant.EXACT);
        double parted = 9.80665 * ((balancing + margin) * (depth - sea.seabed()) + 1025 * water);
        assertEquals(9.80665 * balancing * depth, parted, 1e-6);
    }
}
