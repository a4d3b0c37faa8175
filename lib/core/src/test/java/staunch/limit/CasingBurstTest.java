package staunch.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.RangeFault;
import staunch.well.CasingInterval;

class CasingBurstTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final double L80 = 0.875 * 2 * SteelGrade.L80.yieldStrength() * 0.012 / 0.2445;

    private static CasingInterval casing(
            String grade, OptionalDouble yield, OptionalDouble rating, OptionalDouble connection, double wear) {
        return new CasingInterval(0, 1000, 0.2445, 0.2205, Optional.ofNullable(grade), yield, rating, connection, wear);
    }

    private static CasingBurst.Rated rated(CasingInterval interval) {
        return assertInstanceOf(CasingBurst.Rated.class, CasingBurst.of(interval));
    }

    @Test
    void aGradeGivesItsYield() {
        CasingBurst.Rated rated = rated(casing("L-80", NONE, NONE, NONE, 0));
        assertEquals(L80, rated.pressure(), 1e-6);
        assertEquals("internal yield pressure by API formula for grade L80", rated.basis());
    }

    @Test
    void theYieldOfTheCaseComesBeforeTheGradeAndARatingBeforeBoth() {
        OptionalDouble yield = OptionalDouble.of(6e8);
        assertEquals(
                0.875 * 2 * 6e8 * 0.012 / 0.2445,
                rated(casing("L80", yield, NONE, NONE, 0)).pressure(),
                1e-6);
        CasingBurst.Rated rated = rated(casing("L80", yield, OptionalDouble.of(4e7), NONE, 0));
        assertEquals(4e7, rated.pressure(), 0);
        assertEquals("burst rating of the case", rated.basis());
    }

    @Test
    void wearTakesItsPartOfTheWall() {
        assertEquals(0.8 * L80, rated(casing("L80", NONE, NONE, NONE, 0.2)).pressure(), 1e-6);
        CasingBurst.Rated rated = rated(casing("L80", NONE, OptionalDouble.of(4e7), NONE, 0.2));
        assertEquals(3.2e7, rated.pressure(), 1e-6);
        assertEquals("burst rating of the case, less wear", rated.basis());
    }

    @Test
    void theConnectionCountsWhereItHoldsLess() {
        assertEquals(
                "rating of the connection",
                rated(casing("L80", NONE, NONE, OptionalDouble.of(2e7), 0)).basis());
        assertEquals(
                L80, rated(casing("L80", NONE, NONE, OptionalDouble.of(2e8), 0)).pressure(), 1e-6);
    }

    @Test
    void whatIsMissingIsNamed() {
        assertEquals(
                new CasingBurst.NotAssessed("burst rating, or grade, of the casing"),
                CasingBurst.of(casing(null, NONE, NONE, OptionalDouble.of(2e7), 0)));
        assertEquals(
                new CasingBurst.NotAssessed("burst rating, or yield strength of grade \"X999\""),
                CasingBurst.of(casing("X999", NONE, NONE, NONE, 0)));
    }

    @Test
    void gradesAreKnownByAnySpelling() {
        assertEquals(SteelGrade.Q125, SteelGrade.named("q-125").orElseThrow());
        assertEquals(SteelGrade.L80, SteelGrade.named("L80-13Cr").orElseThrow());
        assertEquals(SteelGrade.N80, SteelGrade.named("N80Q").orElseThrow());
        assertTrue(SteelGrade.named("L800").isEmpty());
        assertTrue(SteelGrade.names().contains("T95"));
        assertEquals(
                80_000, SteelGrade.N80.yieldStrength() / Quantity.of(1, "psi").si(Measure.PRESSURE_DIFFERENCE), 1e-9);
    }

    @Test
    void faultsOutsideTheRange() {
        RangeFault fault = assertThrows(RangeFault.class, () -> CasingBurst.internalYieldPressure(5e8, 0.07, 0.2445));
        assertEquals("wall of the casing 0.07 m is outside 0.000001 m to 0.061125 m", fault.getMessage());
    }
}
