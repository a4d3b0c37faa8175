package staunch.fluid;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import staunch.reference.ReferenceRow;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;
import staunch.units.Physics;

class DeviationFactorReferenceTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("fluid/gas-z.csv");

    /** Average departure of Dranchuk and Abou-Kassem's equation from the chart over its range, as they published it. */
    private static final double DAK_DEPARTURE_FROM_CHART = 0.00585;

    private static double z(DeviationFactor factor, ReferenceRow row) {
        return factor.solve(row.number("Ppr"), row.number("Tpr"));
    }

    @TestFactory
    Stream<DynamicTest> equationOfDranchukAndAbouKassem() {
        return TABLE.tests(
                r -> r.method().startsWith("Dranchuk-AbouKassem"),
                r -> r.check(z(DeviationFactor.DRANCHUK_ABOU_KASSEM, r)));
    }

    /** Rows beyond the range of the public method check the equation itself. */
    @TestFactory
    Stream<DynamicTest> equationOfHallAndYarborough() {
        return TABLE.tests(
                r -> r.method().startsWith("Hall-Yarborough") && r.hasTolerance(),
                r -> r.check(z(DeviationFactor.HALL_YARBOROUGH, r)));
    }

    @TestFactory
    Stream<DynamicTest> chartByDranchukAndAbouKassem() {
        return TABLE.tests(
                r -> r.method().startsWith("Standing-Katz chart") && r.has("Ppr"),
                r -> r.as("Dranchuk–Abou-Kassem")
                        .check(
                                z(DeviationFactor.DRANCHUK_ABOU_KASSEM, r),
                                r.tolerance() + DAK_DEPARTURE_FROM_CHART * r.published(),
                                "reading of the chart, plus the published average departure of the equation, 0.585 %"));
    }

    @TestFactory
    Stream<DynamicTest> chartByHallAndYarborough() {
        return TABLE.tests(
                r -> r.method().startsWith("Standing-Katz chart") && r.has("Ppr"),
                r -> r.as("Hall–Yarborough").check(z(DeviationFactor.HALL_YARBOROUGH, r)));
    }

    /** The example takes its pseudo-criticals from Standing. */
    @TestFactory
    Stream<DynamicTest> chartForAGravity() {
        return TABLE.tests(r -> r.method().equals("Standing-Katz chart") && r.has("gas gravity"), r -> {
            RealGas gas = RealGas.of(
                    GasComposition.sweet(r.number("gas gravity")),
                    PseudoCriticalCorrelation.STANDING_1977,
                    DeviationFactor.DRANCHUK_ABOU_KASSEM);
            r.check(gas.deviationFactor(r.si("p", Measure.PRESSURE_ABSOLUTE), r.si("T", Measure.TEMPERATURE)));
        });
    }

    /** The chart is one for all sweet gases: a pure gas lies off it by what the notes of the rows say. */
    @TestFactory
    Stream<DynamicTest> methaneEquationOfState() {
        RealGas methane = Methane.gas();
        return TABLE.tests(r -> r.method().equals("reference EOS"), r -> {
            double p = r.si("p", Measure.PRESSURE_ABSOLUTE);
            double t = r.si("T", Measure.TEMPERATURE);
            double reducedPressure = p / Methane.CRITICAL.pressure();
            double z = reducedPressure <= 30
                    ? methane.deviationFactor(p, t)
                    : DeviationFactor.DRANCHUK_ABOU_KASSEM.solve(reducedPressure, t / Methane.CRITICAL.temperature());
            double computed = r.quantity().equals("Z") ? z : p * Methane.MOLAR_MASS / (z * Physics.GAS_CONSTANT * t);
            if (reducedPressure <= 15) {
                r.check(computed, 0.02 * r.published(), "corresponding states for a pure gas: 2 % (note of the row)");
            } else if (reducedPressure <= 30) {
                r.check(
                        computed,
                        0.03 * r.published(),
                        "corresponding states above a reduced pressure of 15: 3 % (note of the row: 3 to 6 %)");
            } else {
                r.check(
                        computed,
                        0.06 * r.published(),
                        "equation alone, beyond its range, where the library refuses: 6 % (note of the row: 3 to 6 %)");
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> mixturesByGergEquation() {
        return TABLE.tests(r -> r.inputs().startsWith("AGA8 gas"), r -> {
            double p = r.si("p", Measure.PRESSURE_ABSOLUTE);
            RealGas gas = RealGas.of(mixture(r));
            r.check(
                    gas.deviationFactor(p, r.si("T", Measure.TEMPERATURE)),
                    0.03 * r.published(),
                    "Z from gravity alone: 3 %, the accuracy the trade gives the Standing–Katz chart for gases with few"
                            + " non-hydrocarbons (from memory)");
        });
    }

    private static GasComposition mixture(ReferenceRow row) {
        Matcher molarMass = Pattern.compile("M=([0-9.]+) g/mol").matcher(row.note());
        if (!molarMass.find()) {
            throw new IllegalArgumentException("No molar mass in the note of " + row.id());
        }
        double gravity = Double.parseDouble(molarMass.group(1)) / 1000 / Physics.MOLAR_MASS_AIR;
        return new GasComposition(gravity, 0, molePercent(row, "CO2") / 100, molePercent(row, "N2") / 100);
    }

    private static double molePercent(ReferenceRow row, String component) {
        Matcher m = Pattern.compile("[ ,]" + component + " ([0-9.]+)").matcher(row.inputs());
        return m.find() ? Double.parseDouble(m.group(1)) : 0;
    }
}
