package staunch.fluid;

import org.junit.jupiter.api.Test;
import staunch.reference.ReferenceRow;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;
import staunch.units.Physics;

class GasDensityReferenceTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("fluid/gas-z.csv");

    @Test
    void idealGasOfAMolarMass() {
        ReferenceRow row = TABLE.row("GZ305");
        double density = new IdealGas(row.number("M") / 1000)
                .density(row.si("p", Measure.PRESSURE_ABSOLUTE), row.si("T", Measure.TEMPERATURE));
        row.checkSi(density, Measure.DENSITY);
    }

    @Test
    void gravityOfAMolarMass() {
        ReferenceRow row = TABLE.row("GZ307");
        row.check(row.number("M") / 1000 / Physics.MOLAR_MASS_AIR);
    }

    @Test
    void densityOfAGravityAtAGivenDeviationFactor() {
        ReferenceRow row = TABLE.row("GZ308");
        double ideal = IdealGas.of(GasComposition.sweet(row.number("gas gravity")))
                .density(row.si("p", Measure.PRESSURE_ABSOLUTE), row.si("T", Measure.TEMPERATURE));
        row.checkSi(ideal / row.number("Z"), Measure.DENSITY);
    }
}
