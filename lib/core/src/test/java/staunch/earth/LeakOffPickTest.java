package staunch.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import staunch.units.EquivalentDensity;
import staunch.units.Fault;
import staunch.units.InputFault;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.Source;

/** Curves whose leak-off is known because they were made so; the conversion against a published example. */
class LeakOffPickTest {
    private static final Source SOURCE = new Source("Invented", "sheet 1");
    private static final double PSI = Quantity.of(1, "psi").si(Measure.PRESSURE_DIFFERENCE);
    private static final double BARREL = Quantity.of(1, "bbl").si(Measure.VOLUME);

    /** A reading every quarter barrel, pressures in psi against barrels. */
    private static PumpingTest curve(int readings, DoubleUnaryOperator psi, double... shutInPsi) {
        List<PumpingTest.Pumped> pumped = new ArrayList<>();
        for (int i = 0; i < readings; i++) {
            double barrels = 0.25 * i;
            pumped.add(new PumpingTest.Pumped(barrels * BARREL, psi.applyAsDouble(barrels) * PSI));
        }
        List<PumpingTest.ShutIn> shutIn = new ArrayList<>();
        for (int i = 0; i < shutInPsi.length; i++) {
            shutIn.add(new PumpingTest.ShutIn(60.0 * (i + 1), shutInPsi[i] * PSI));
        }
        return new PumpingTest("LOT", pumped, shutIn, SOURCE);
    }

    /** Straight with 380 psi/bbl to 1140 psi at 3 bbl, then 120 psi/bbl. */
    private static double bent(double barrels) {
        return barrels <= 3 ? 380 * barrels : 1140 + 120 * (barrels - 3);
    }

    private static LeakOffPick.Picked picked(PumpingTest test, LeakOffMethod method) {
        return assertInstanceOf(LeakOffPick.Picked.class, LeakOffPick.of(test, method));
    }

    @Test
    void bothMethodsFindTheBreakOfTwoStraightLines() {
        PumpingTest test = curve(19, LeakOffPickTest::bent, 1050, 1000, 985);
        for (LeakOffMethod method : List.of(LeakOffMethod.Departure.DEFAULT, LeakOffMethod.TwoLines.DEFAULT)) {
            LeakOffPick.Picked pick = picked(test, method);
            assertEquals(1140 * PSI, pick.pressure(), 1e-6 * 1140 * PSI, method.toString());
            assertEquals(3 * BARREL, pick.volume(), 1e-6);
            assertEquals(List.of(), pick.flags());
            assertEquals(Standing.LEAK_OFF, pick.standing());
        }
    }

    /**
     * Lapeyrouse, Formulas and Calculations for Drilling, Production and Workover, 2nd ed., 2002 (from memory): 1140 psi at
     * 4000 ft on 10.0 ppg is an equivalent of 15.48 ppg by the constant 0.052, which is 0.1 % above the exact one.
     */
    @Test
    void thePressureOnTheFormationIsThatOfTheHandbook() {
        double foot = Quantity.of(1, "ft").si(Measure.DEPTH);
        double ppg = Quantity.of(1, "ppg").si(Measure.DENSITY);
        PumpingTest.Column column = new PumpingTest.Column(4000 * foot, 0, 10 * ppg);
        LeakOffPick pick = picked(curve(19, LeakOffPickTest::bent), LeakOffMethod.Departure.DEFAULT);
        double equivalent = EquivalentDensity.of(pick.atFormation(column), 4000 * foot) / ppg;
        assertEquals(15.48, equivalent, 0.001 * 5.48 + 0.005);
        StrengthTest test = pick.strengthTest(column);
        assertEquals(Standing.LEAK_OFF, test.standing());
        assertEquals(
                "Invented, sheet 1, picked by departure from build-up",
                test.source().text());
        // A gauge 10 m above the datum stands on 10 m more mud.
        PumpingTest.Column high = new PumpingTest.Column(4000 * foot, -10, 10 * ppg);
        assertEquals(10 * 10 * ppg * 9.80665, pick.atFormation(high) - pick.atFormation(column), 1e-3);
    }

    @Test
    void aStraightCurveIsAnIntegrityTest() {
        for (LeakOffMethod method : List.of(LeakOffMethod.Departure.DEFAULT, LeakOffMethod.TwoLines.DEFAULT)) {
            LeakOffPick pick = LeakOffPick.of(curve(13, v -> 380 * v, 1130, 1128), method);
            assertInstanceOf(LeakOffPick.NoLeakOff.class, pick);
            assertEquals(1140 * PSI, pick.pressure(), 1);
            assertEquals(Standing.INTEGRITY_TEST, pick.standing());
            assertEquals(List.of(), pick.flags());
        }
        LeakOffPick fell = LeakOffPick.of(curve(13, v -> 380 * v, 1130, 700), LeakOffMethod.Departure.DEFAULT);
        assertEquals(List.of(LeakOffPick.Flag.FELL_WITHOUT_LEAK_OFF), fell.flags());
    }

    /** Air at the start bends the curve the other way, and breakdown drops it: neither is leak-off. */
    @Test
    void compressionOfAirAndBreakdownAreNoLeakOff() {
        DoubleUnaryOperator curve = v -> {
            double straight = Math.max(0, 380 * (v - 0.5)) + 40 * Math.min(v, 0.5);
            double leaked = v <= 3.5 ? straight : 1160 + 60 * (v - 3.5);
            return v > 4.25 ? 700 : leaked;
        };
        for (LeakOffMethod method : List.of(LeakOffMethod.Departure.DEFAULT, LeakOffMethod.TwoLines.DEFAULT)) {
            assertEquals(1160 * PSI, picked(curve(21, curve), method).pressure(), 8 * PSI, method.toString());
        }
    }

    @Test
    void scatterOfTheGaugeMovesThePickByLittle() {
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            PumpingTest test = curve(21, v -> Math.max(0, bent(v) + random.nextGaussian() * 3));
            // Within a reading (95 psi) below, and not above what the tolerance of 14.5 psi allows.
            double early = picked(test, LeakOffMethod.Departure.DEFAULT).pressure() / PSI;
            assertTrue(early > 1035 && early < 1185, "departure " + early);
            double crossing = picked(test, LeakOffMethod.TwoLines.DEFAULT).pressure() / PSI;
            assertEquals(1140, crossing, 25);
        }
    }

    @Test
    void aConstantVolumeAddedChangesNoPressure() {
        PumpingTest test = curve(19, LeakOffPickTest::bent);
        List<PumpingTest.Pumped> later = test.pumped().stream()
                .map(r -> new PumpingTest.Pumped(r.volume() + 2, r.pressure()))
                .toList();
        PumpingTest moved = new PumpingTest("LOT", later, List.of(), SOURCE);
        for (LeakOffMethod method : List.of(LeakOffMethod.Departure.DEFAULT, LeakOffMethod.TwoLines.DEFAULT)) {
            assertEquals(picked(test, method).pressure(), picked(moved, method).pressure(), 1);
        }
    }

    @Test
    void whatSpeaksAgainstAReadingIsFlagged() {
        LeakOffPick few = LeakOffPick.of(curve(16, v -> Math.min(500 * v, 1140)), LeakOffMethod.Departure.DEFAULT);
        assertTrue(
                few.flags().contains(LeakOffPick.Flag.FEW_READINGS), few.flags().toString());
        LeakOffPick above = LeakOffPick.of(curve(19, LeakOffPickTest::bent, 1200), LeakOffMethod.Departure.DEFAULT);
        assertEquals(List.of(LeakOffPick.Flag.SHUT_IN_ABOVE_LEAK_OFF), above.flags());
        LeakOffPick last = LeakOffPick.of(curve(14, LeakOffPickTest::bent), LeakOffMethod.Departure.DEFAULT);
        assertEquals(List.of(LeakOffPick.Flag.ONE_READING_AFTER), last.flags());
        LeakOffPick curved = LeakOffPick.of(curve(19, v -> 500 * Math.sqrt(v)), LeakOffMethod.Departure.DEFAULT);
        assertTrue(
                curved.flags().contains(LeakOffPick.Flag.NOT_STRAIGHT),
                curved.flags().toString());
    }

    @Test
    void badCurvesAreRefused() {
        assertThrows(InputFault.class, () -> curve(4, v -> v));
        assertThrows(Fault.class, () -> curve(9, v -> -v));
        assertThrows(
                InputFault.class,
                () -> new PumpingTest(
                        "LOT",
                        List.of(
                                new PumpingTest.Pumped(0, 0),
                                new PumpingTest.Pumped(1, 1e6),
                                new PumpingTest.Pumped(0.5, 2e6),
                                new PumpingTest.Pumped(2, 2e6),
                                new PumpingTest.Pumped(3, 3e6)),
                        List.of(),
                        SOURCE));
        assertThrows(
                InputFault.class,
                () -> LeakOffPick.of(curve(9, v -> v < 1.9 ? 0 : 1000), LeakOffMethod.Departure.DEFAULT));
        assertThrows(Fault.class, () -> new LeakOffMethod.Departure(0.6, 0.2, 1e5));
    }
}
