package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import staunch.control.FrictionCurve;
import staunch.control.PipeMovement;
import staunch.units.Physics;
import staunch.units.Quantity;

/** Friction of a section's mud at its slow rates and while the string is tripped. */
class MudFlowLawTest {
    private static MudFlowOutcome.Computed computed(double speed) {
        OperationsPlan plan = OperationsEvaluatorTest.FULL.withTrippingSpeed(new Quantity(speed, "m/s"));
        return assertInstanceOf(
                MudFlowOutcome.Computed.class,
                MudFlow.of(OperationsEvaluatorTest.full().ready(plan).input()));
    }

    /** The definition of equivalent circulating density: the loss in the annulus over g times vertical depth. */
    @Test
    void theEquivalentCirculatingDensityIsTheMudPlusTheLossOverDepth() {
        MudFlowOutcome.Computed flow = computed(0.5);
        assertTrue(!flow.rates().isEmpty());
        double last = 0;
        for (FrictionCurve.Point point : flow.rates()) {
            assertEquals(
                    OperationsEvaluatorTest.full()
                                    .input()
                                    .plan()
                                    .mud()
                                    .orElseThrow()
                                    .density()
                            + point.annulus() / (Physics.GRAVITY * Wells.BOTTOM),
                    point.equivalentDensity(),
                    1e-6);
            assertTrue(point.annulus() > last, "a faster pump loses more");
            last = point.annulus();
        }
    }

    @Test
    void aFasterTripSwabsAndSurgesMoreAndLeavesLess() {
        MudFlowOutcome.Trip slow = computed(0.2).trip().orElseThrow();
        MudFlowOutcome.Trip fast = computed(1.0).trip().orElseThrow();
        assertTrue(fast.swab() > slow.swab());
        assertTrue(fast.surge() > slow.surge());
        assertEquals(PipeMovement.End.PLUGGED, fast.end());
        assertEquals(
                fast.swab() - slow.swab(),
                slow.pulling().orElseThrow().margin()
                        - fast.pulling().orElseThrow().margin(),
                1e-6 * fast.swab());
        assertEquals(
                fast.surge() - slow.surge(),
                slow.running().orElseThrow().margin()
                        - fast.running().orElseThrow().margin(),
                1e-6 * fast.surge());
    }

    @Test
    void withoutASpeedThereIsNoTripAndWithoutReadingsNothing() {
        SectionInput input = OperationsEvaluatorTest.full().input();
        assertTrue(((MudFlowOutcome.Computed) MudFlow.of(input)).trip().isEmpty());
        NotAssessed not =
                assertInstanceOf(NotAssessed.class, MudFlow.of(Wells.standard().input()));
        assertTrue(!not.missing().isEmpty(), not.summary());
    }

    @Test
    void swabAndSurgeNeedNoSlowRate() {
        MudFlowOutcome.Trip with = computed(0.5).trip().orElseThrow();
        SectionInput full = OperationsEvaluatorTest.full()
                .ready(OperationsEvaluatorTest.FULL.withTrippingSpeed(new Quantity(0.5, "m/s")))
                .input();
        SectionInput slowless = new SectionInput(
                full.datum(),
                full.path(),
                full.earth(),
                full.casing(),
                full.equipment(),
                full.plan().withSlowCirculations(List.of()),
                full.options());
        MudFlowOutcome.Computed without = assertInstanceOf(MudFlowOutcome.Computed.class, MudFlow.of(slowless));
        assertTrue(without.rates().isEmpty());
        assertEquals(with, without.trip().orElseThrow());
    }
}
