package staunch.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import staunch.units.Measure;

class ReferenceTableTest {
    private static ReferenceRow row(String inputs, String value, String unit, String tolerance) {
        Map<String, String> columns = Map.of(
                "id",
                "X1",
                "inputs",
                inputs,
                "quantity",
                "q",
                "value",
                value,
                "unit",
                unit,
                "tolerance",
                tolerance,
                "method",
                "m",
                "source",
                "s");
        return ReferenceTable.of("none.csv", List.of(columns)).rows().get(0);
    }

    @Test
    void readsInputsWithTheirUnits() {
        ReferenceRow row = row("T=600 degR; pipe OD=5.0 in;p=35 MPa;dp=0.01776 bbl/ft,9925 ft", "1", "-", "-");
        assertEquals(333.3333333, row.si("T", Measure.TEMPERATURE), 1e-6);
        assertEquals(0.127, row.si("pipe OD", Measure.DIAMETER), 1e-12);
        assertEquals(35e6, row.si("p", Measure.PRESSURE_ABSOLUTE), 1e-6);
        assertEquals("0.01776 bbl/ft,9925 ft", row.text("dp"));
        assertEquals(5, row.number("pipe OD"));
        assertEquals("in", row.unitOf("pipe OD"));
        assertFalse(row.has("hole"));
        assertThrows(IllegalArgumentException.class, () -> row.text("hole"));
    }

    @Test
    void readsEachFormOfTolerance() {
        assertEquals(0.5, row("", "-50", "m", "1 %").tolerance(), 1e-12);
        assertEquals(1e-6, row("", "50", "m", "1e-6 abs").tolerance());
        assertEquals(0.06, row("", "50", "m", "0.06").tolerance());
        assertFalse(row("", "50", "m", "exclude").hasTolerance());
        assertFalse(row("", "50", "m", "-").hasTolerance());
        assertTrue(row("", "50", "m", "0.01 %").hasTolerance());
    }

    @Test
    void convertsToTheUnitOfTheRow() {
        assertEquals(68, row("", "1", "degF", "-").fromSi(293.15, Measure.TEMPERATURE), 1e-9);
        assertEquals(8.345404, row("", "1", "ppg", "-").fromSi(1000, Measure.DENSITY), 1e-6);
    }
}
