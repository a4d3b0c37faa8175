package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class WindowCheckTest {
    @Test
    void porePressureAboveAStepAtTheShoeIsCasedOff() {
        // 1700 kg/m³ down to the shoe, 1400 below it; the mud of 1560 is lighter than what is cased off.
        Wells wells = Wells.standard().pores(0, 1000, Wells.SHOE, 1700, Wells.SHOE, 1400, 9000, 1400);
        assertEquals(Verdict.Outcome.HOLDS, wells.evaluate().window().verdict().outcome());
        // The same step a metre below the shoe is exposed.
        Wells exposed = Wells.standard().pores(0, 1000, Wells.SHOE + 1, 1700, Wells.SHOE + 1, 1400, 9000, 1400);
        assertEquals(
                "not assessed: underbalanced: the mud is lighter than the likely pore pressure",
                exposed.evaluate().window().verdict().statement());
    }
}
