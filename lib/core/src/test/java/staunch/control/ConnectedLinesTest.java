package staunch.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.units.Physics;
import staunch.units.RangeFault;

class ConnectedLinesTest {
    /** At rest both columns weigh the same: what is left of one, and what has come into the other. */
    @Property(seed = "1")
    void columnsWeighTheSameAtTheStack(
            @ForAll @DoubleRange(min = 1000, max = 2200) double one,
            @ForAll @DoubleRange(min = 1000, max = 2200) double other,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double area) {
        double h = 1500;
        ConnectedLines lines = ConnectedLines.of(
                new ConnectedLines.Line("kill line", one, 0.004), new ConnectedLines.Line("riser", other, area), h);
        double heavy = lines.heavier().density();
        double light = lines.lighter().density();
        double fall = lines.fall();
        double entered = lines.overflow() / lines.lighter().area();
        assertTrue(fall >= 0 && fall <= h && entered <= h);
        assertEquals(heavy * (h - fall), light * (h - entered) + heavy * entered, 1e-6);
    }

    @Test
    void wideOtherLineLeavesTheUTubeOfTheHandbooks() {
        ConnectedLines lines = ConnectedLines.of(
                new ConnectedLines.Line("kill line", 1500, 1e-5), new ConnectedLines.Line("riser", 1200, 5), 1000);
        assertEquals(1000 * 300.0 / 1500, lines.fall(), 1e-3);
        assertEquals(300 * Physics.GRAVITY * 1000, lines.imbalance(), 1e-6);
        assertEquals(lines.imbalance(), lines.lostByHeavier(), 10);
    }

    @Test
    void equalFluidsDoNotMove() {
        ConnectedLines lines = ConnectedLines.of(
                new ConnectedLines.Line("kill line", 1200, 0.004), new ConnectedLines.Line("riser", 1200, 0.1), 1000);
        assertEquals(0, lines.fall());
        assertEquals(0, lines.imbalance());
    }

    @Test
    void refusesLinesTheWrongWayRound() {
        ConnectedLines.Line light = new ConnectedLines.Line("kill line", 1100, 0.004);
        ConnectedLines.Line heavy = new ConnectedLines.Line("riser", 1200, 0.1);
        assertThrows(RangeFault.class, () -> new ConnectedLines(light, heavy, 1000));
    }
}
