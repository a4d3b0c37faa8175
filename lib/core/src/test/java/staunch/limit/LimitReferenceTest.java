package staunch.limit;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;

class LimitReferenceTest {
    @TestFactory
    Stream<DynamicTest> internalYieldPressure() {
        return ReferenceTable.read("limit/casing-ratings.csv").tests(r -> true, r -> {
            SteelGrade grade = SteelGrade.named(r.text("grade")).orElseThrow();
            r.checkSi(
                    CasingBurst.internalYieldPressure(
                            grade.yieldStrength(), r.si("wall", Measure.DIAMETER), r.si("OD", Measure.DIAMETER)),
                    Measure.PRESSURE_DIFFERENCE);
        });
    }
}
