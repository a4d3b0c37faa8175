package staunch.fluid;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import staunch.reference.ReferenceRow;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;

/** Rows at the edge of a correlation's data check the equation itself, without the check of range. */
class PseudoCriticalReferenceTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("fluid/gas-z.csv");

    private static double optional(ReferenceRow row, String input) {
        return row.has(input) ? row.number(input) : 0;
    }

    private static void check(ReferenceRow row, PseudoCritical computed) {
        if (row.quantity().endsWith("Tpc")) {
            row.checkSi(computed.temperature(), Measure.TEMPERATURE);
        } else {
            row.checkSi(computed.pressure(), Measure.PRESSURE_ABSOLUTE);
        }
    }

    @TestFactory
    Stream<DynamicTest> sutton() {
        return TABLE.tests(
                r -> r.has("method") && r.text("method").equals("Sutton 1985"),
                r -> check(r, PseudoCriticalCorrelation.SUTTON_1985.at(GasComposition.sweet(r.number("gas gravity")))));
    }

    @TestFactory
    Stream<DynamicTest> standing() {
        return TABLE.tests(
                r -> r.has("method") && r.text("method").equals("Standing 1977"),
                r -> check(
                        r, PseudoCriticalCorrelation.STANDING_1977.at(GasComposition.sweet(r.number("gas gravity")))));
    }

    @TestFactory
    Stream<DynamicTest> piperMcCainCorredor() {
        return TABLE.tests(
                r -> r.has("method") && r.text("method").startsWith("Piper"),
                r -> check(
                        r,
                        PseudoCriticalCorrelation.PIPER_MCCAIN_CORREDOR_1993.at(new GasComposition(
                                r.number("g"), optional(r, "h2s"), optional(r, "co2"), optional(r, "n2")))));
    }

    @TestFactory
    Stream<DynamicTest> wichertAziz() {
        return TABLE.tests(r -> r.source().startsWith("Wichert"), r -> {
            double temperature = r.number("Tpc");
            double pressure = r.number("Ppc");
            double h2s = r.number("yH2S");
            double shift = PseudoCriticalCorrelation.wichertAzizShift(h2s, r.number("yCO2"));
            r.check(
                    switch (r.quantity()) {
                        case "epsilon" -> shift;
                        case "adjusted Tpc" -> temperature - shift;
                        default -> pressure * PseudoCriticalCorrelation.wichertAzizFactor(temperature, shift, h2s);
                    });
        });
    }
}
