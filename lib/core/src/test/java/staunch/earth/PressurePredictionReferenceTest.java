package staunch.earth;

import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
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

    private static final Set<String> DRILLING_EXPONENT = Set.of("D09-04", "D09-05");

    @TestFactory
    Stream<DynamicTest> examples() {
        return ReferenceTable.read("earth/pressure-prediction.csv")
                .tests(r -> !DRILLING_EXPONENT.contains(r.id()), r -> {
                    switch (r.id()) {
                        case "D09-01" -> {
                            StressState state = state(gradient(r, "overburden"), gradient(r, "pore"));
                            double ratio = StressState.ratioOfPoisson(r.number("poisson"));
                            r.checkSi(gradient(state.strengthAt(ratio)), Measure.PRESSURE_GRADIENT);
                        }
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
}
