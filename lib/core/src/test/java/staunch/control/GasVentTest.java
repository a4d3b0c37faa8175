package staunch.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import staunch.fluid.FixedGradientGas;
import staunch.fluid.Gas;
import staunch.fluid.GasComposition;
import staunch.fluid.IdealGas;
import staunch.units.InputFault;
import staunch.units.Physics;
import staunch.units.RangeFault;

class GasVentTest {
    private static final double STANDARD = 288.15;
    private static final Gas GAS = IdealGas.of(GasComposition.sweet(0.65));

    /** 200 ft of 7 in pipe. */
    private static final GasVent.Line LINE = new GasVent.Line(200 * 0.3048, 7 * 0.0254);

    private static double perDay(double cubicFeet) {
        return cubicFeet * Math.pow(0.3048, 3) / 86_400;
    }

    /** In its own units the hand formula gives 5e-12 × 200 × (10⁷)²/7⁵ = 5.950 psi. */
    @Test
    void handFormulaInFieldUnits() {
        assertEquals(
                5e-12 * 200 * 1e14 / Math.pow(7, 5) * 6894.757293168,
                GasVent.handBackPressure(LINE, perDay(1e7)),
                1e-3);
    }

    /**
     * Two sources of one thing: at small pressures the gas hardly expands, and the flow equation with Weymouth's factor must
     * come to the hand formula but for the density of the gas it is made for.
     */
    @Test
    void smallPressuresAgreeWithTheHandFormula() {
        double rate = perDay(1e6);
        GasVent.Line longLine = new GasVent.Line(400, 7 * 0.0254);
        double ratio = GasVent.backPressure(longLine, GAS, rate, STANDARD) / GasVent.handBackPressure(longLine, rate);
        assertEquals(1, ratio, 0.05);
    }

    /** What is returned satisfies the equation it is the root of, with the vent at one atmosphere. */
    @Test
    void satisfiesTheEquationOfIsothermalFlow() {
        double rate = perDay(1e7);
        double p = Physics.ATMOSPHERE + GasVent.backPressure(LINE, GAS, rate, STANDARD);
        double density = GAS.density(Physics.ATMOSPHERE, STANDARD);
        double area = Math.PI / 4 * Math.pow(7 * 0.0254, 2);
        double flux = rate * density / area;
        double friction = 0.032 / Math.cbrt(7) * 200 * 12 / 7;
        double right = Math.pow(Physics.ATMOSPHERE, 2)
                + flux * flux * Physics.ATMOSPHERE / density * (friction + 2 * Math.log(p / Physics.ATMOSPHERE));
        assertEquals(right, p * p, 1e-9 * right);
    }

    @Test
    void aVentThatChokesBacksUpAtTheSpeedOfSound() {
        GasVent.Line small = new GasVent.Line(1, 0.05);
        double rate = 3;
        double density = GAS.density(Physics.ATMOSPHERE, STANDARD);
        double end = rate * density / (Math.PI / 4 * 0.05 * 0.05) * Math.sqrt(Physics.ATMOSPHERE / density);
        assertTrue(end > Physics.ATMOSPHERE, "the gas cannot leave at one atmosphere");
        assertTrue(GasVent.backPressure(small, GAS, rate, STANDARD) > end - Physics.ATMOSPHERE);
    }

    @Test
    void pressureGrowsWithRateAndLengthAndShrinksWithDiameter() {
        double base = GasVent.backPressure(LINE, GAS, 2, STANDARD);
        assertTrue(GasVent.backPressure(LINE, GAS, 2.1, STANDARD) > base);
        assertTrue(GasVent.backPressure(new GasVent.Line(70, 7 * 0.0254), GAS, 2, STANDARD) > base);
        assertTrue(GasVent.backPressure(new GasVent.Line(200 * 0.3048, 0.2), GAS, 2, STANDARD) < base);
        assertTrue(GasVent.backPressure(LINE, GAS, 2, 320) > base);
        assertEquals(0, GasVent.backPressure(LINE, GAS, 0, STANDARD));
    }

    @Test
    void refusesAGasWithoutDensityAndRatesOutOfRange() {
        assertThrows(
                InputFault.class, () -> GasVent.backPressure(LINE, FixedGradientGas.ofGradient(2262), 1, STANDARD));
        assertThrows(RangeFault.class, () -> GasVent.backPressure(LINE, GAS, -1, STANDARD));
        assertThrows(RangeFault.class, () -> new GasVent.Line(0, 0.2));
    }
}
