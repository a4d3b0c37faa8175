package staunch.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class LiquidLawTest {
    private static final MudVolumes.State SURFACE = new MudVolumes.State(1.01325e5, 293.15);

    @Property(seed = "1")
    void derivativesOfWaterAgreeWithItsDensity(
            @ForAll @Scale(12) @DoubleRange(min = 6e6, max = 9.9e7) double pressure,
            @ForAll @Scale(12) @DoubleRange(min = 274, max = 540) double temperature) {
        double h = 1e3;
        double byPressure = (Math.log(PureWater.density(pressure + h, temperature))
                        - Math.log(PureWater.density(pressure - h, temperature)))
                / (2 * h);
        assertEquals(byPressure, PureWater.compressibility(pressure, temperature), 1e-6 * byPressure + 1e-15);
        double d = 1e-2;
        double byTemperature = (Math.log(PureWater.density(pressure, temperature - d))
                        - Math.log(PureWater.density(pressure, temperature + d)))
                / (2 * d);
        assertEquals(byTemperature, PureWater.thermalExpansion(pressure, temperature), 1e-9);
    }

    @Property(seed = "1")
    void saturationPressureRises(@ForAll @Scale(12) @DoubleRange(min = 273.15, max = 623) double temperature) {
        assertTrue(PureWater.saturationPressure(temperature + 0.1) > PureWater.saturationPressure(temperature));
    }

    /** Seawater without salt is water, to the 0.01 % both are held to. */
    @Property(seed = "1")
    void freshSeawaterIsWater(
            @ForAll @Scale(12) @DoubleRange(min = 1.02e5, max = 9.9e7) double pressure,
            @ForAll @Scale(12) @DoubleRange(min = 273.15, max = 313) double temperature) {
        double water = PureWater.density(pressure, temperature);
        assertEquals(1, new Seawater(0).density(pressure, temperature) / water, 1e-4);
    }

    @Property(seed = "1")
    void brineWithoutSaltIsWater(
            @ForAll @Scale(12) @DoubleRange(min = 2e5, max = 9e7) double pressure,
            @ForAll @Scale(12) @DoubleRange(min = 274, max = 373) double temperature) {
        double water = PureWater.density(pressure, temperature);
        assertEquals(1, new SodiumChlorideBrine(0).density(pressure, temperature) / water, 1e-12);
    }

    @Property(seed = "1")
    void mudOfWaterAloneMovesAsWater(
            @ForAll @Scale(12) @DoubleRange(min = 2e6, max = 9e7) double pressure,
            @ForAll @Scale(12) @DoubleRange(min = 280, max = 450) double temperature) {
        MudVolumes water = new MudVolumes(0, 1, 0);
        MudVolumes.State state = new MudVolumes.State(pressure, temperature);
        double expected =
                PureWater.density(pressure, temperature) / PureWater.density(SURFACE.pressure(), SURFACE.temperature());
        assertEquals(expected, water.relativeDensity(state, SURFACE), 1e-12);
    }

    @Property(seed = "1")
    void lawOfExpansionIsOneAtItsReferenceAndMultiplies(
            @ForAll @Scale(12) @DoubleRange(min = 0, max = 1e-9) double compressibility,
            @ForAll @Scale(12) @DoubleRange(min = 0, max = 1e-3) double expansion,
            @ForAll @Scale(12) @DoubleRange(min = 1e5, max = 1e8) double pressure,
            @ForAll @Scale(12) @DoubleRange(min = 280, max = 450) double temperature) {
        MudExpansion law = new MudExpansion(compressibility, expansion, 1e5, 293);
        assertEquals(1, law.relativeDensity(1e5, 293), 0);
        double both = law.relativeDensity(pressure, temperature);
        assertEquals(both, law.relativeDensity(pressure, 293) * law.relativeDensity(1e5, temperature), 1e-14 * both);
    }
}
