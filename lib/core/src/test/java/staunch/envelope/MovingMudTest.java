package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import staunch.earth.TemperatureProfile;
import staunch.envelope.MethodOptions.GasModel;
import staunch.envelope.MethodOptions.MudDensityModel;
import staunch.fluid.Mud;
import staunch.fluid.MudBase;
import staunch.fluid.MudExpansion;

/** Mud whose density moves with pressure and temperature, where the temperature is not known all the way. */
class MovingMudTest {
    private static SectionInput input(GasModel gas, Optional<TemperatureProfile> temperature) {
        MethodOptions options = MethodOptions.DEFAULT
                .withGasModel(gas)
                .withMudDensity(MudDensityModel.PRESSURE_AND_TEMPERATURE)
                .withDepths(30, 1);
        Mud mud = new Mud(
                "mud",
                Wells.MUD,
                MudBase.WATER,
                Optional.empty(),
                Optional.of(new MudExpansion(4e-10, 4e-4, 101_325, 288.15)));
        return Inputs.temperature(
                Inputs.plan(Wells.standard().options(options).input(), Drilling.SHUT_IN, mud), temperature);
    }

    private static Stream<Optional<TemperatureProfile>> insufficient() {
        return Stream.of(
                Optional.empty(),
                Optional.of(TemperatureProfile.of(new double[] {8, 9000}, new double[] {288, 500})),
                Optional.of(TemperatureProfile.of(new double[] {0, 4000}, new double[] {288, 400})));
    }

    @ParameterizedTest
    @EnumSource(
            value = GasModel.class,
            names = {"DRANCHUK_ABOU_KASSEM", "FIXED_GRADIENT"})
    void namesTheTemperatureAsMissing(GasModel gas) {
        insufficient().forEach(temperature -> {
            SectionEnvelope section = Inputs.evaluate(input(gas, temperature));
            Tolerance.NotAssessed not = assertInstanceOf(
                    Tolerance.NotAssessed.class, section.drilled().tolerance());
            assertEquals("earth: temperature", not.missing());
            assertTrue(section.window().verdict().statement().contains("earth: temperature"));
            assertTrue(section.maasp().isEmpty());
        });
    }

    @Test
    void isAssessedWhereTheTemperatureReachesFromDatumToBottom() {
        SectionEnvelope section = Inputs.evaluate(input(
                GasModel.DRANCHUK_ABOU_KASSEM,
                Optional.of(TemperatureProfile.of(new double[] {0, 4500}, new double[] {288, 423}))));
        assertInstanceOf(Tolerance.Finite.class, section.drilled().tolerance());
    }
}
