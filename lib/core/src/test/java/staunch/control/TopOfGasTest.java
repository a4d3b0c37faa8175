package staunch.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import staunch.units.Physics;
import staunch.units.RangeFault;

class TopOfGasTest {
    private static final double G = Physics.GRAVITY;

    /** The root satisfies the balance it stands for: bottom, mud, gas at its new height and top. */
    @Test
    void balancesTheColumns() {
        TopOfGas.Influx influx = new TopOfGas.Influx(150, 180, 0.6);
        TopOfGas top = new TopOfGas(60e6, 1500, 2000, influx, 0.9);
        double p = top.pressure();
        double height = 150 * 0.6 * 60e6 / p * 0.9;
        assertEquals(60e6, p + 180 * G * 150 * 0.6 + 1500 * G * (2000 - height), 1e-3);
    }

    /** With the top where it was at shut-in and nothing changed, gas of no weight has the pressure of the bottom. */
    @Test
    void weightlessGasOnBottomHasTheBottomPressure() {
        TopOfGas top = new TopOfGas(60e6, 1500, 150, new TopOfGas.Influx(150, 0, 1), 1);
        assertEquals(60e6, top.pressure(), 1e-6);
    }

    @Test
    void withoutGasTheMudAloneStandsBelow() {
        TopOfGas top = new TopOfGas(60e6, 1500, 2000, new TopOfGas.Influx(0, 0, 1), 1);
        assertEquals(60e6 - 1500 * G * 2000, top.pressure(), 1e-6);
    }

    @Test
    void refusesValuesOutOfRange() {
        assertThrows(RangeFault.class, () -> new TopOfGas.Influx(-1, 0, 1));
        assertThrows(RangeFault.class, () -> new TopOfGas(60e6, 1500, 2000, new TopOfGas.Influx(1, 0, 1), 9));
    }
}
