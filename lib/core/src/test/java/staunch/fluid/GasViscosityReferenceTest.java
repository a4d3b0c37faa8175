package staunch.fluid;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import staunch.reference.ReferenceRow;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;

/** Rows outside the range of temperature of the correlation check the equation itself, without the check of range. */
class GasViscosityReferenceTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("fluid/gas-viscosity.csv");

    @TestFactory
    Stream<DynamicTest> equationOfLeeGonzalezAndEakin() {
        return TABLE.tests(r -> r.method().startsWith("Lee-Gonzalez-Eakin"), r -> {
            double molarMass = r.number("M") / 1000;
            double temperature = r.si("T", Measure.TEMPERATURE);
            switch (r.quantity()) {
                case "K" -> r.check(LeeGonzalezEakin.k(molarMass, temperature));
                case "Y" -> r.check(LeeGonzalezEakin.y(LeeGonzalezEakin.x(molarMass, temperature)));
                default ->
                    r.checkSi(
                            LeeGonzalezEakin.viscosity(molarMass, r.si("density", Measure.DENSITY), temperature),
                            Measure.VISCOSITY);
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> methane() {
        return TABLE.tests(
                r -> r.has("fluid") && r.text("fluid").equals("methane"), GasViscosityReferenceTest::checkMethane);
    }

    private static void checkMethane(ReferenceRow row) {
        double temperature = row.si("T", Measure.TEMPERATURE);
        double density = row.has("p") ? Methane.gas().density(row.si("p", Measure.PRESSURE_ABSOLUTE), temperature) : 0;
        double computed = LeeGonzalezEakin.viscosity(Methane.MOLAR_MASS, density, temperature);
        row.check(
                row.fromSi(computed, Measure.VISCOSITY),
                0.09 * row.published() + row.tolerance(),
                "largest deviation of the correlation from its own data, 9 % (from memory), plus the uncertainty given"
                        + " with the reference row");
    }
}
