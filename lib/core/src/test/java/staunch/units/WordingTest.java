package staunch.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordingTest {
    private static final Wording MOVED = Wording.of(
            "moves by more than {} at {}", Amount.of(12, Measure.DENSITY_DIFFERENCE), Amount.of(3000, Measure.DEPTH));

    @Test
    void aTextIsWholeInSiAndReadsInAnyUnits() {
        assertEquals("moves by more than 12 kg/m3 at 3000 m", MOVED.text());
        assertEquals("moves by more than 0.10 ppg at 9843 ft", MOVED.in(UnitSystem.FIELD));
        assertEquals("moves by more than 12 kg/m³ at 3000.0 m", MOVED.in(UnitSystem.METRIC));
    }

    @Test
    void equalQuantitiesAreTakenInTheirOrder() {
        Wording twice = Wording.of("{} of {}", new Amount(5, Measure.DEPTH, 6), new Amount(5, Measure.LENGTH, 6))
                .within("(", ")");
        assertEquals("(16.4042 ft of 16.4042 ft)", twice.in(UnitSystem.FIELD));
        Wording both = Wording.joined(List.of(twice, MOVED), "; ");
        assertEquals("(16.4042 ft of 16.4042 ft); moves by more than 0.10 ppg at 9843 ft", both.in(UnitSystem.FIELD));
    }

    @Test
    void aRangeFaultSpeaksTheReadersUnits() {
        RangeFault fault = new RangeFault("gas pressure", 2.5e8, 1e5, 2e8, Measure.PRESSURE_ABSOLUTE, "");
        assertEquals(fault.getMessage(), fault.wording().text());
        assertEquals(fault.text(UnitSystem.FIELD), fault.wording().in(UnitSystem.FIELD));
        RangeFault near = new RangeFault("depth", 3000.0000001, 0, 3000, Measure.DEPTH, "extend it");
        assertTrue(near.wording().in(UnitSystem.METRIC).startsWith("depth 3000.0000001 m is outside"));
        RangeFault none = new RangeFault("depth", Double.NaN, 0, 3000, Measure.DEPTH, "");
        assertEquals(none.getMessage(), none.wording().in(UnitSystem.FIELD));
    }

    @Test
    void warningsReadInAnyUnits() {
        Warning warning = new Warning("mud density", MOVED);
        assertEquals(MOVED.text(), warning.text());
        assertEquals(MOVED.in(UnitSystem.FIELD), warning.text(UnitSystem.FIELD));
    }

    @Test
    void marksAndQuantitiesMustMatch() {
        assertThrows(IllegalArgumentException.class, () -> Wording.of("nothing", Amount.of(1, Measure.DEPTH)));
        assertThrows(IllegalArgumentException.class, () -> Wording.of("{}"));
    }
}
