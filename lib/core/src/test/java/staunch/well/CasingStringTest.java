package staunch.well;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import staunch.units.InputFault;
import staunch.units.RangeFault;

class CasingStringTest {
    private static final int FIELDS = 6;

    private static CasingInterval interval(OptionalDouble weight) {
        return new CasingInterval(
                0,
                1000,
                0.24448,
                0.22049,
                Optional.of("P110"),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                weight);
    }

    /** A string with one of its optional numbers given. */
    private static CasingString string(int field, double value) {
        OptionalDouble[] given = new OptionalDouble[FIELDS];
        for (int i = 0; i < FIELDS; i++) {
            given[i] = i == field ? OptionalDouble.of(value) : OptionalDouble.empty();
        }
        return new CasingString(
                "9 5/8 in casing",
                List.of(interval(OptionalDouble.empty())),
                given[0],
                given[1],
                given[2],
                given[3],
                given[4],
                given[5]);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 500, -1, top of cement",
        "1, 1200, 100, fluid behind",
        "2, 1000, 2000, mix water",
        "3, 0.8, 1.5, allowed share of burst",
        "4, 30e6, -1, test pressure",
        "5, 50e6, 5e9, liner-top rating"
    })
    void numbersAreRefusedOutsideTheirRangeAndWhereTheyAreNone(int field, double good, double bad, String name) {
        assertDoesNotThrow(() -> string(field, good));
        RangeFault fault = assertThrows(RangeFault.class, () -> string(field, bad));
        assertTrue(fault.field().contains(name), fault.field());
        assertThrows(RangeFault.class, () -> string(field, Double.NaN));
        assertThrows(RangeFault.class, () -> string(field, Double.POSITIVE_INFINITY));
    }

    @Test
    void nominalWeightHasARange() {
        assertThrows(RangeFault.class, () -> interval(OptionalDouble.of(Double.NaN)));
        assertThrows(RangeFault.class, () -> interval(OptionalDouble.of(0)));
    }

    @Test
    void specifiedBackUpIsChecked() {
        assertThrows(RangeFault.class, () -> new BurstBackUp.OfDensity(Double.NaN));
        assertThrows(RangeFault.class, () -> new BurstBackUp.Point(1000, Double.NaN));
        BurstBackUp.Point deep = new BurstBackUp.Point(2000, 30e6);
        BurstBackUp.Point shallow = new BurstBackUp.Point(1000, 10e6);
        assertThrows(InputFault.class, () -> new BurstBackUp.OfPressures(List.of(deep)));
        assertThrows(InputFault.class, () -> new BurstBackUp.OfPressures(List.of(deep, shallow)));
    }
}
