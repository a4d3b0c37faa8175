package staunch.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class EquivalentDensityTest {
    @Test
    void aColumnOfThatDensityGivesThePressureBack() {
        double pressure = EquivalentDensity.pressure(1200, 2500);
        assertEquals(101_325 + 1200 * 9.80665 * 2500, pressure, 1e-6);
        assertEquals(1200, EquivalentDensity.of(pressure, 2500), 1e-9);
    }

    @Test
    void noEquivalentAtTheDatumItself() {
        RangeFault fault = assertThrows(RangeFault.class, () -> EquivalentDensity.of(2e5, 0));
        assertEquals("vertical depth of an equivalent density", fault.field());
    }
}
