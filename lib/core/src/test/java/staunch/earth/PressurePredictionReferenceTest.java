package staunch.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import staunch.reference.ReferenceRow;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Quantity;

class PressurePredictionReferenceTest {
    private static final double DEPTH = Quantity.of(12_000, "ft").si(Measure.LENGTH);

    /** Stresses of mean gradients at 12 000 ft, the depth of the examples. */
    private static StressState state(double overburden, double porePressure) {
        return new StressState(Physics.ATMOSPHERE + overburden * DEPTH, Physics.ATMOSPHERE + porePressure * DEPTH);
    }

    private static double gradient(double pressure) {
        return (pressure - Physics.ATMOSPHERE) / DEPTH;
    }

    private static double gradient(ReferenceRow row, String input) {
        return row.si(input, Measure.PRESSURE_GRADIENT);
    }

    @TestFactory
    Stream<DynamicTest> examples() {
        return ReferenceTable.read("earth/pressure-prediction.csv").tests(r -> true, r -> {
            switch (r.id()) {
                case "D09-01" -> {
                    StressState state = state(gradient(r, "overburden"), gradient(r, "pore"));
                    double ratio = StressState.ratioOfPoisson(r.number("poisson"));
                    r.checkSi(gradient(state.strengthAt(ratio)), Measure.PRESSURE_GRADIENT);
                }
                case "D09-04" ->
                    r.checkSi(
                            new DrillingExponent(
                                            r.si("rop", Measure.SPEED),
                                            r.number("rpm") / 60,
                                            r.si("wob", Measure.FORCE),
                                            r.si("bit", Measure.DIAMETER))
                                    .asDrilled(),
                            Measure.NUMBER);
                case "D09-05" ->
                    r.checkSi(
                            DrillingExponent.corrected(
                                    r.number("d"),
                                    r.si("mw1", Measure.EQUIVALENT_DENSITY),
                                    r.si("mw2", Measure.EQUIVALENT_DENSITY)),
                            Measure.NUMBER);
                case "D09-06" -> {
                    StressState state = state(gradient(r, "overburden"), gradient(r, "pore"));
                    r.checkSi(state.equivalentNormalDepth(gradient(r, "normal_matrix")), Measure.LENGTH);
                }
                default -> {
                    double pore = gradient(r, "pore");
                    StressState state = state(pore + gradient(r, "matrix"), pore);
                    r.checkSi(gradient(state.strengthAt(r.number("ki"))), Measure.PRESSURE_GRADIENT);
                }
            }
        });
    }

    /**
     * Eaton's equations with an overburden of 1.0 psi/ft and 0.465 psi/ft normal, as usual for the Gulf Coast. Worked out
     * by hand from the published form (SPE 5544, from memory), not read from a source: 1 − 0.535 rⁿ with 0.5^1.2 = 0.43528,
     * 0.7^1.2 = 0.65180, 0.8³ = 0.512 and 0.9³ = 0.729.
     */
    @ParameterizedTest
    @CsvSource({
        "EATON_RESISTIVITY, 0.5, 0.76713",
        "EATON_RESISTIVITY, 0.7, 0.65128",
        "EATON_SONIC, 0.8, 0.72608",
        "EATON_SONIC, 0.9, 0.60999"
    })
    void eatonFromTheRatioOfTheLog(PorePressureMethod method, double ratio, double expected) {
        double foot = Quantity.of(1, "psi/ft").si(Measure.PRESSURE_GRADIENT);
        double found = gradient(method.pressure(state(foot, 0.465 * foot), ratio)) / foot;
        assertEquals(expected, found, 1e-5);
    }

    /**
     * By hand from the definition of the equivalent depth: a reading at 10 000 ft is that of the trend at 6000 ft, where the
     * effective stress is 0.535 · 6000 = 3210 psi, so that the pore pressure is 10 000 − 3210 = 6790 psi.
     */
    @Test
    void theEquivalentDepthBearsTheSameEffectiveStress() {
        double psi = Quantity.of(1, "psi").si(Measure.PRESSURE_DIFFERENCE);
        StressState above = new StressState(6000 * psi, 0.465 * 6000 * psi);
        assertEquals(6790, PorePressureMethod.byEquivalentDepth(10_000 * psi, above) / psi, 1e-6);
    }
}
