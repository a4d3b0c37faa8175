package staunch.influx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import staunch.units.InputFault;
import staunch.units.RangeFault;

class SlipLawTest {
    private static final FlowChannel ANNULUS = new FlowChannel(0.2159, 0.127);
    private static final SlipConditions STILL = new SlipConditions(ANNULUS, 0, 1200, 0.02, 100, 0, 0.1);

    @Test
    void rangesAreFaultsAndNameWhatIsWrong() {
        RangeFault steep = assertThrows(
                RangeFault.class, () -> TaylorBubble.ANNULUS_SADATOMI.driftVelocity(STILL.at(Math.toRadians(80))));
        assertEquals("inclination of the Taylor bubble", steep.field());
        SlipConditions thick = new SlipConditions(ANNULUS, 0, 1200, 5, 100, 0, 0.1);
        RangeFault viscous =
                assertThrows(RangeFault.class, () -> TaylorBubble.ANNULUS_HASAN_KABIR.driftVelocity(thick));
        assertEquals("inverse viscosity number of the Taylor bubble", viscous.field());
        SlipConditions thin = new SlipConditions(FlowChannel.bore(0.01), 0, 1000, 0.001, 1, 0, 0.1);
        RangeFault tension = assertThrows(RangeFault.class, () -> TaylorBubble.PIPE.driftVelocity(thin));
        assertEquals("Eötvös number of the Taylor bubble", tension.field());
        assertThrows(InputFault.class, () -> TaylorBubble.PIPE.driftVelocity(STILL));
        assertThrows(RangeFault.class, () -> new SlipConditions(ANNULUS, 0, 1000, 0.02, 1000, 0, 0.1));
        assertThrows(RangeFault.class, () -> HasanKabirAnnulus.of(0.07).driftVelocity(STILL.flowing(0, 0.9)));
        assertThrows(InputFault.class, () -> new FlowChannel(0.2, 0.2));
    }

    @Test
    void thePatternFollowsTheGasFraction() {
        HasanKabirAnnulus law = HasanKabirAnnulus.of(0.07);
        assertEquals(new HarmathyBubble(0.07).driftVelocity(STILL), law.driftVelocity(STILL.flowing(0, 0.2499)), 0);
        assertEquals(
                TaylorBubble.ANNULUS_HASAN_KABIR.driftVelocity(STILL), law.driftVelocity(STILL.flowing(0, 0.25)), 0);
    }

    @Test
    void yieldStressHoldsSmallBubblesInMudAtRestOnly() {
        // τ_y = 0.143 · 1100 · 9.80665 · 0.0025 = 3.857 Pa holds a bubble of 5 mm.
        SlipLaw moving = new HarmathyBubble(0.05);
        double critical = 0.143 * 1100 * 9.80665 * 0.0025;
        YieldStressSuspension held = new YieldStressSuspension(moving, critical * 1.001, 0.005);
        YieldStressSuspension free = new YieldStressSuspension(moving, critical * 0.999, 0.005);
        assertTrue(held.holds(STILL));
        assertEquals(0, held.driftVelocity(STILL), 0);
        assertFalse(free.holds(STILL));
        assertEquals(moving.driftVelocity(STILL), free.driftVelocity(STILL), 0);
        assertEquals(moving.driftVelocity(STILL), held.driftVelocity(STILL.flowing(0.1, 0.1)), 0);
    }
}
