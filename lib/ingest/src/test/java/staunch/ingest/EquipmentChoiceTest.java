package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.design.WellCase;
import staunch.earth.EquivalentZero;
import staunch.envelope.MaspBasis;
import staunch.units.Physics;
import staunch.well.BurstBackUp;
import staunch.well.CasingString;

/** Back-up of casing, nominal weight, the basis of MASP and the zero of equivalent densities, as a case gives them. */
class EquipmentChoiceTest {
    @TempDir
    private Path directory;

    private Cases base;

    @BeforeEach
    void copy() throws IOException {
        base = Cases.copy(Cases.BASE, directory);
    }

    private CasingString second() throws CaseFaults {
        return base.read().designs().get(0).strings().get(1);
    }

    @Test
    void withoutAnyTheDefaultsStand() throws Exception {
        WellCase well = base.read();
        assertEquals(new MaspBasis.GasToSurface(), well.options().maspBasis());
        assertEquals(EquivalentZero.Place.DATUM, well.options().equivalentDensityFrom());
        assertTrue(second().backUp().isEmpty());
        assertEquals(
                47 * 0.45359237 / 0.3048,
                second().intervals().get(0).nominalWeight().orElseThrow(),
                1e-7);
        assertTrue(
                well.designs()
                        .get(0)
                        .strings()
                        .get(2)
                        .intervals()
                        .get(0)
                        .nominalWeight()
                        .isEmpty(),
                "wall given");
    }

    @Test
    void backUpOfADensity() throws Exception {
        base.with("top_of_cement: 1500 m\n", "top_of_cement: 1500 m\n    back_up: {density: 1.03 sg}\n");
        assertEquals(new BurstBackUp.OfDensity(1030), second().backUp().orElseThrow());
    }

    @Test
    void backUpOfPressures() throws Exception {
        base.with(
                "top_of_cement: 1500 m\n",
                "top_of_cement: 1500 m\n    back_up:\n      points:\n        - {tvd: 100 m, pressure: 10 bar}\n"
                        + "        - {tvd: 2000 m, pressure: 200 bar}\n");
        BurstBackUp.OfPressures given = assertInstanceOf(
                BurstBackUp.OfPressures.class, second().backUp().orElseThrow());
        assertEquals(100, given.points().get(0).verticalDepth(), 1e-9);
        assertEquals(200e5 + Physics.ATMOSPHERE, given.points().get(1).pressure(), 1e-2);
    }

    @Test
    void chosenMethods() throws Exception {
        base.with(
                "options:\n",
                "options:\n  masp: mud_and_gas\n  masp_mud_share: 40 %\n  equivalent_density_from: mean_sea_level\n");
        WellCase well = base.read();
        assertEquals(new MaspBasis.MudAndGas(0.4), well.options().maspBasis());
        assertEquals(EquivalentZero.Place.MEAN_SEA_LEVEL, well.options().equivalentDensityFrom());
    }
}
