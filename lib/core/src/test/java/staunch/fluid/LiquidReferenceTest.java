package staunch.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import staunch.reference.ReferenceRow;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Quantity;

class LiquidReferenceTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("fluid/mud-compressibility.csv");
    private static final double PSI = 6894.757293168362;

    @TestFactory
    Stream<DynamicTest> pureWater() {
        return TABLE.tests(r -> r.method().equals("IAPWS-95"), r -> {
            double p = r.si("p", Measure.PRESSURE_ABSOLUTE);
            double t = r.si("T", Measure.TEMPERATURE);
            switch (r.quantity()) {
                case "density" -> r.checkSi(PureWater.density(p, t), Measure.DENSITY);
                case "isothermal compressibility" ->
                    r.checkSi(PureWater.compressibility(p, t), Measure.COMPRESSIBILITY);
                default -> r.check(PureWater.thermalExpansion(p, t) * 1e4);
            }
        });
    }

    /**
     * Check values of the formulation itself, IAPWS-IF97 tables 5 and 35 (from memory), to the nine digits printed.
     */
    @Test
    void checkValuesOfTheFormulation() {
        assertEquals(0.100215168e-2, 1 / PureWater.density(3e6, 300), 0.5e-11);
        assertEquals(0.971180894e-3, 1 / PureWater.density(80e6, 300), 0.5e-12);
        assertEquals(0.120241800e-2, 1 / PureWater.density(3e6, 500), 0.5e-11);
        assertEquals(0.353658941e-2, PureWater.saturationPressure(300) / 1e6, 0.5e-11);
        assertEquals(0.263889776e1, PureWater.saturationPressure(500) / 1e6, 0.5e-8);
        assertEquals(0.123443146e2, PureWater.saturationPressure(600) / 1e6, 0.5e-7);
    }

    @TestFactory
    Stream<DynamicTest> seawater() {
        return TABLE.tests(r -> r.method().equals("TEOS-10"), r -> {
            double gauge = r.number("gauge p") * 1e4;
            Seawater water = new Seawater(r.number("seawater practical salinity"));
            r.check(water.density(gauge + Physics.ATMOSPHERE, r.si("in-situ T", Measure.TEMPERATURE)));
        });
    }

    /** Check values of EOS-80 itself, UNESCO 44 (from memory), printed to 1e-5 kg/m³ for temperatures of IPTS-68. */
    @Test
    void checkValuesOfTheEquationOfSeawater() {
        assertEquals(1027.67547, seawater1968(5, 0), 0.5e-5);
        assertEquals(1023.34306, seawater1968(25, 0), 0.5e-5);
        assertEquals(1069.48914, seawater1968(5, 1000), 0.5e-5);
        assertEquals(1062.53817, seawater1968(25, 1000), 0.5e-5);
    }

    private static double seawater1968(double celsius, double gaugeBar) {
        return new Seawater(35).density(gaugeBar * 1e5 + Physics.ATMOSPHERE, celsius / 1.00024 + Physics.CELSIUS_ZERO);
    }

    /** The handbook gives density over that of water at 4 °C, 0.99997 g/cm³. */
    @TestFactory
    Stream<DynamicTest> sodiumChlorideBrine() {
        return TABLE.tests(r -> r.inputs().startsWith("NaCl"), r -> {
            double percent = Double.parseDouble(r.inputs().replaceAll("NaCl solution ([0-9.]+) wt%.*", "$1"));
            double density = new SodiumChlorideBrine(percent / 100)
                    .density(r.si("p", Measure.PRESSURE_ABSOLUTE), r.si("T", Measure.TEMPERATURE));
            r.check(density / 999.97);
        });
    }

    @TestFactory
    Stream<DynamicTest> linearLiquids() {
        return TABLE.tests(r -> r.source().startsWith("Sorelle"), r -> {
            MudLiquid liquid = r.inputs().contains("diesel") ? MudLiquid.DIESEL : MudLiquid.WATER;
            double p = r.number("p") * PSI + Physics.ATMOSPHERE;
            r.checkSi(liquid.density(p, r.si("T", Measure.TEMPERATURE)), Measure.DENSITY);
        });
    }

    @TestFactory
    Stream<DynamicTest> volumeWeightedCompressibility() {
        return TABLE.tests(r -> r.id().equals("MC089"), r -> r.check(compressibility(r)));
    }

    @TestFactory
    Stream<DynamicTest> pressureRisePerBarrel() {
        return TABLE.tests(r -> r.id().equals("MC090"), r -> {
            double c = Double.parseDouble(r.inputs().replaceAll("effective compressibility ([0-9.e-]+) .*", "$1"));
            ClosedVolume shutIn = new ClosedVolume(r.si("volume", Measure.VOLUME), c / PSI);
            double barrel = Quantity.of(1, "bbl").si(Measure.VOLUME);
            r.check(shutIn.pressureRise(barrel) / PSI);
        });
    }

    @TestFactory
    Stream<DynamicTest> volumeToPump() {
        return TABLE.tests(r -> r.quantity().equals("volume to pump"), r -> {
            ClosedVolume shutIn = new ClosedVolume(r.si("volume", Measure.VOLUME), compressibility(r) * 1e-6 / PSI);
            r.checkSi(shutIn.volumeToPump(r.si("pressure", Measure.PRESSURE_DIFFERENCE)), Measure.VOLUME);
        });
    }

    /** In 1e-6 1/psi, from rules of thumb for oil, water and solids: 5.0, 3.0 and 0.2. */
    private static double compressibility(ReferenceRow row) {
        double unit = row.inputs().contains("%") ? 0.01 : 1;
        MudVolumes volumes = new MudVolumes(
                unit * fraction(row, "oil"), unit * fraction(row, "water"), unit * fraction(row, "solids"));
        return volumes.compressibility(5.0e-6 / PSI, 3.0e-6 / PSI, 0.2e-6 / PSI) * PSI * 1e6;
    }

    private static double fraction(ReferenceRow row, String part) {
        return Double.parseDouble(row.inputs().replaceAll(".*" + part + " ([0-9.]+).*", "$1"));
    }
}
