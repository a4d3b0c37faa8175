package staunch.design;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import staunch.well.CasingInterval;
import staunch.well.CasingString;

class SteelUseTest {
    /** Factor of the plain-end mass in API 5CT / ISO 11960, w = 0.024 661 5 (D − t) t in kg/m and mm, from memory. */
    private static final double PLAIN_END = 0.0246615;

    /** The factor has six digits. */
    private static final double DIGITS = 5e-6;

    @Test
    void weightIsThatOfPlainPipe() {
        SteelUse steel = SteelUse.of(TwoSectionWell.design("one", 3000, 1560));
        double wall = 12;
        double surface = PLAIN_END * (339.73 - wall) * wall * 500;
        double production = PLAIN_END * (244.48 - wall) * wall * 3000;
        assertEquals("13 3/8 in casing", steel.strings().get(0).string());
        assertEquals(surface, steel.strings().get(0).mass(), surface * DIGITS);
        assertEquals(production, steel.strings().get(1).mass(), production * DIGITS);
        assertEquals(surface + production, steel.mass(), (surface + production) * DIGITS);
        assertEquals(3500, steel.length(), 1e-9);
    }

    /** Nominal weight is per length threaded and coupled: 47 lb/ft over 1000 ft weigh 47 000 lb by definition. */
    @Test
    void nominalWeightCountsWhereItIsGiven() {
        double foot = 0.3048;
        double pound = 0.45359237;
        CasingString string = new CasingString(
                "9 5/8 in casing",
                List.of(new CasingInterval(
                        0,
                        1000 * foot,
                        0.244475,
                        0.220498,
                        Optional.of("L80"),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        0,
                        OptionalDouble.of(47 * pound / foot))),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        assertEquals(47_000 * pound, StringSteel.of(string, Optional.empty()).mass(), 1e-6);
    }
}
