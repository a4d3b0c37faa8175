package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import staunch.units.RangeFault;

class SectionPlanTest {
    private static SectionPlan plan(OptionalDouble output, OptionalDouble active, OptionalDouble gain) {
        SectionPlan p = Wells.standard().input().plan();
        return new SectionPlan(
                p.name(),
                p.drilling(),
                p.hole(),
                p.bitDiameter(),
                p.mud(),
                p.string(),
                p.bitOffBottom(),
                p.gas(),
                p.slowCirculations(),
                output,
                active,
                gain,
                p.circulatingOverbalance(),
                p.chokeHandlingAllowance(),
                p.criteria());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void volumesOutsideTheirRangeAreFaults(double wrong) {
        OptionalDouble none = OptionalDouble.empty();
        OptionalDouble bad = OptionalDouble.of(wrong);
        assertThrows(RangeFault.class, () -> plan(bad, none, none));
        assertThrows(RangeFault.class, () -> plan(none, bad, none));
        assertThrows(RangeFault.class, () -> plan(none, none, bad));
        assertEquals(
                OptionalDouble.of(1.5), plan(none, none, OptionalDouble.of(1.5)).detectableGain());
    }
}
