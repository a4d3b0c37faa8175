package staunch.design;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

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
}
