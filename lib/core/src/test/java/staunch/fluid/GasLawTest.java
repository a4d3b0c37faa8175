package staunch.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import staunch.units.Physics;

class GasLawTest {
    private static final DeviationFactor DAK = DeviationFactor.DRANCHUK_ABOU_KASSEM;
    private static final DeviationFactor HY = DeviationFactor.HALL_YARBOROUGH;

    /** Residual of the equation as published, over its slope and the density: the relative error of the root. */
    private static double relativeErrorOfRoot(double ppr, double tpr, double z) {
        double x = 0.27 * ppr / (z * tpr);
        double r1 = 0.3265
                - 1.0700 / tpr
                - 0.5339 / Math.pow(tpr, 3)
                + 0.01569 / Math.pow(tpr, 4)
                - 0.05165 / Math.pow(tpr, 5);
        double r2 = 0.5475 - 0.7361 / tpr + 0.1844 / (tpr * tpr);
        double r3 = 0.1056 * (-0.7361 / tpr + 0.1844 / (tpr * tpr));
        double r4 = 0.6134 / Math.pow(tpr, 3);
        double b = 0.7210 * x * x;
        double published = 1 + r1 * x + r2 * x * x - r3 * Math.pow(x, 5) + r4 * (1 + b) * x * x * Math.exp(-b);
        double slope = 1
                + 2 * r1 * x
                + 3 * r2 * x * x
                - 6 * r3 * Math.pow(x, 5)
                + r4 * x * x * (3 + 3 * b - 2 * b * b) * Math.exp(-b);
        return (x * published - 0.27 * ppr / tpr) / (slope * x);
    }

    @Property(tries = 20_000, seed = "1")
    void rootIsFoundToRounding(
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 30, minIncluded = false) double ppr,
            @ForAll @Scale(9) @DoubleRange(min = 1.05, max = 3) double tpr) {
        assertEquals(0, relativeErrorOfRoot(ppr, tpr, DAK.z(ppr, tpr)), 1e-13);
    }

    /** Where the isotherm is flattest and the first guess is worst. */
    @Property(tries = 20_000, seed = "1")
    void rootIsFoundToRoundingNearTheCriticalPoint(
            @ForAll @Scale(9) @DoubleRange(min = 0.5, max = 3) double ppr,
            @ForAll @Scale(9) @DoubleRange(min = 1.05, max = 1.2) double tpr) {
        assertEquals(0, relativeErrorOfRoot(ppr, tpr, DAK.z(ppr, tpr)), 1e-13);
    }

    /** The equation in the reduced density y, written as published. */
    @Property(tries = 5000, seed = "1")
    void rootOfTheSecondEquationIsFoundToRounding(
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 24, minIncluded = false) double ppr,
            @ForAll @Scale(9) @DoubleRange(min = 1.15, max = 3) double tpr) {
        double t = 1 / tpr;
        double target = 0.06125 * ppr * t * Math.exp(-1.2 * (1 - t) * (1 - t));
        double y = target / HY.z(ppr, tpr);
        double published = (y + y * y + Math.pow(y, 3) - Math.pow(y, 4)) / Math.pow(1 - y, 3)
                - (14.76 * t - 9.76 * t * t + 4.58 * Math.pow(t, 3)) * y * y
                + (90.7 * t - 242.2 * t * t + 42.4 * Math.pow(t, 3)) * Math.pow(y, 2.18 + 2.82 * t);
        assertEquals(target, published, 1e-12 * target);
    }

    @Property(seed = "1")
    void deviationFactorTendsToOneAsPressureFalls(@ForAll @Scale(9) @DoubleRange(min = 1.15, max = 3) double tpr) {
        for (DeviationFactor factor : DeviationFactor.values()) {
            assertEquals(1, factor.z(0, tpr), 0);
            double previous = 1;
            for (double ppr = 1e-12; ppr < 0.2; ppr *= 10) {
                double departure = Math.abs(factor.z(ppr, tpr) - 1);
                assertTrue(departure <= 0.3 * ppr + 1e-15, "first order in pressure");
                previous = departure;
            }
            assertTrue(previous < 0.05);
        }
    }

    /**
     * Both equations were fitted to the same chart, 1.2 ≤ Tpr ≤ 3 and ppr to 15: they agree within 2 %, the largest
     * departure from it that was published for the second.
     */
    @Property(seed = "1")
    void bothEquationsAgreeOverTheChart(
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 15) double ppr,
            @ForAll @Scale(9) @DoubleRange(min = 1.2, max = 3) double tpr) {
        assertEquals(1, DAK.z(ppr, tpr) / HY.z(ppr, tpr), 0.02);
    }

    @Property(seed = "1")
    void densityRisesWithPressureAndFallsWithTemperature(
            @ForAll @Scale(9) @DoubleRange(min = 0.57, max = 1.0) double gravity,
            @ForAll @Scale(9) @DoubleRange(min = 1e5, max = 9e7) double pressure,
            @ForAll @Scale(9) @DoubleRange(min = 285, max = 470) double temperature) {
        RealGas gas = RealGas.of(GasComposition.sweet(gravity));
        double density = gas.density(pressure, temperature);
        assertTrue(gas.density(pressure * 1.001, temperature) > density);
        assertTrue(gas.density(pressure, temperature * 1.001) < density);
    }

    /** The cells of the table of first guesses leave no mark: second differences shrink with the square of the step. */
    @Property(seed = "1")
    void densityIsSmooth(
            @ForAll @Scale(9) @DoubleRange(min = 1e6, max = 9e7) double pressure,
            @ForAll @Scale(9) @DoubleRange(min = 290, max = 470) double temperature) {
        RealGas gas = RealGas.of(GasComposition.sweet(0.65));
        double h = 1e-5 * pressure;
        double middle = gas.density(pressure, temperature);
        double bend = gas.density(pressure + h, temperature) + gas.density(pressure - h, temperature) - 2 * middle;
        assertEquals(0, bend / middle, 1e-9);
    }

    @Property(seed = "1")
    void realGasIsIdealAtLowPressure(
            @ForAll @Scale(9) @DoubleRange(min = 0.57, max = 1.0) double gravity,
            @ForAll @Scale(9) @DoubleRange(min = 290, max = 450) double temperature) {
        GasComposition composition = GasComposition.sweet(gravity);
        double real = RealGas.of(composition).density(1, temperature);
        assertEquals(1, real / IdealGas.of(composition).density(1, temperature), 1e-6);
    }

    @Property(seed = "1")
    void correctionForOtherPartsVanishesWithThem(@ForAll @Scale(9) @DoubleRange(min = 0.62, max = 1.6) double gravity) {
        PseudoCritical sweet = PseudoCriticalCorrelation.SUTTON_1985.of(GasComposition.sweet(gravity));
        for (double part = 1e-2; part > 1e-12; part /= 100) {
            PseudoCritical sour =
                    PseudoCriticalCorrelation.SUTTON_1985.of(new GasComposition(gravity, part, part, part));
            // The correction grows with the root of the fraction of H2S: 15 °R √y on some 350 °R.
            double bound = 0.1 * Math.sqrt(part) + 3 * part;
            assertEquals(1, sour.temperature() / sweet.temperature(), bound);
            assertEquals(1, sour.pressure() / sweet.pressure(), bound);
        }
        assertEquals(0, PseudoCriticalCorrelation.wichertAzizShift(0, 0), 0);
    }

    @Property(seed = "1")
    void idealGasFollowsBoyleAndGayLussac(
            @ForAll @Scale(9) @DoubleRange(min = 1e5, max = 1e8) double pressure,
            @ForAll @Scale(9) @DoubleRange(min = 280, max = 450) double temperature) {
        IdealGas gas = new IdealGas(0.02);
        double density = gas.density(pressure, temperature);
        assertEquals(pressure * 0.02, density * Physics.GAS_CONSTANT * temperature, 1e-12 * pressure * 0.02);
    }

    @Property(seed = "1")
    void fixedGradientGasFollowsBoyleAndWeighsTheSame(
            @ForAll @Scale(9) @DoubleRange(min = 1e5, max = 1e8) double pressure,
            @ForAll @Scale(9) @DoubleRange(min = 280, max = 450) double temperature) {
        FixedGradientGas gas = FixedGradientGas.ofGradient(2262);
        assertEquals(2, gas.density(2 * pressure, temperature) / gas.density(pressure, 300), 1e-12);
        assertEquals(2262 / Physics.GRAVITY, gas.columnDensity(pressure, temperature), 1e-9);
    }

    @Property(seed = "1")
    void viscosityRisesWithPressureAtConstantTemperature(
            @ForAll @Scale(9) @DoubleRange(min = 1e5, max = 5e7) double pressure,
            @ForAll @Scale(9) @DoubleRange(min = 312, max = 440) double temperature) {
        RealGas gas = RealGas.of(GasComposition.sweet(0.65));
        assertTrue(gas.viscosity(pressure * 1.01, temperature) > gas.viscosity(pressure, temperature));
    }
}
