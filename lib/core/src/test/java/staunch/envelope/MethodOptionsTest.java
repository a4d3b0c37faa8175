package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import staunch.control.CirculationMethod;

class MethodOptionsTest {
    private record Change(String name, UnaryOperator<MethodOptions> there, UnaryOperator<MethodOptions> back) {}

    @TestFactory
    Stream<DynamicTest> oneChoiceIsChangedAndNoOther() {
        MethodOptions d = MethodOptions.DEFAULT;
        return Stream.of(
                        new Change(
                                "definition",
                                o -> o.withDefinition(MethodOptions.ToleranceDefinition.ON_BOTTOM),
                                o -> o.withDefinition(d.definition())),
                        new Change(
                                "drilled pressure",
                                o -> o.withDrilledPressure(MethodOptions.DrilledPressure.INTENSITY_ONLY),
                                o -> o.withDrilledPressure(d.drilledPressure())),
                        new Change(
                                "weak point",
                                o -> o.withWeakPoint(MethodOptions.WeakPointChoice.SHOE_ONLY),
                                o -> o.withWeakPoint(d.weakPoint())),
                        new Change(
                                "estimates",
                                o -> o.withEstimates(MethodOptions.Estimates.LIKELY),
                                o -> o.withEstimates(d.estimates())),
                        new Change(
                                "gas model",
                                o -> o.withGasModel(MethodOptions.GasModel.IDEAL),
                                o -> o.withGasModel(d.gasModel())),
                        new Change(
                                "method",
                                o -> o.withMethod(CirculationMethod.WAIT_AND_WEIGHT),
                                o -> o.withMethod(d.method())),
                        new Change(
                                "mud density",
                                o -> o.withMudDensity(MethodOptions.MudDensityModel.PRESSURE_AND_TEMPERATURE),
                                o -> o.withMudDensity(d.mudDensity())),
                        new Change(
                                "influx",
                                o -> o.withInflux(new InfluxForm.Distributed(0.3)),
                                o -> o.withInflux(d.influx())),
                        new Change(
                                "annular friction",
                                o -> o.withAnnularFriction(MethodOptions.AnnularFriction.COUNTED),
                                o -> o.withAnnularFriction(d.annularFriction())),
                        new Change(
                                "seawater credit", o -> o.withSeawaterCredit(true), o -> o.withSeawaterCredit(false)),
                        new Change(
                                "depths", o -> o.withDepths(50, 7), o -> o.withDepths(d.depthStep(), d.depthCount())))
                .map(c -> DynamicTest.dynamicTest(c.name(), () -> {
                    MethodOptions changed = c.there().apply(d);
                    assertNotEquals(d, changed);
                    assertEquals(
                            c.name().equals("depths") ? 0 : 1,
                            changed.departures().size());
                    assertEquals(d, c.back().apply(changed));
                }));
    }

    @Test
    void theDefaultsAreNoDepartures() {
        assertEquals(List.of(), MethodOptions.DEFAULT.departures());
    }
}
