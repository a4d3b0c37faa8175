package staunch.units;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import staunch.reference.ReferenceTable;

class UnitsReferenceTest {
    @TestFactory
    Stream<DynamicTest> conversionFactors() {
        return ReferenceTable.read("units/conversion-factors.csv")
                .tests(r -> true, r -> r.check(Quantity.of(1, r.text("unit")).si(Measure.valueOf(r.text("measure")))));
    }
}
