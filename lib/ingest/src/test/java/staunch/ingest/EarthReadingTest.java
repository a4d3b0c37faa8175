package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.earth.PressureProfile;

/** Base: datum 25 m above mean sea level, water 100 m deep, seabed at 125 m. Expected values are worked by hand. */
class EarthReadingTest {
    private static final double ATMOSPHERE = 101_325;
    private static final double G = 9.80665;
    private static final String POINT = "{tvd: 1000 m, low: 1.50 sg, likely: 1.55 sg}";

    /** Rounding of doubles only. */
    private static final double EXACT = 1e-12;

    @TempDir
    private Path directory;

    private Cases base;

    @BeforeEach
    void copy() throws IOException {
        base = Cases.copy(Cases.BASE, directory);
    }

    private double likelyAt(double z) throws CaseFaults {
        return base.read().earth().strength().orElseThrow().likely().lowestAt(z);
    }

    private static void assertPressure(double expected, double actual) {
        assertEquals(expected, actual, EXACT * expected);
    }

    @Test
    void equivalentDensityCountsFromTheDatum() throws CaseFaults {
        assertPressure(ATMOSPHERE + 1550 * G * 1000, likelyAt(1000));
    }

    @Test
    void equivalentDensityFromMeanSeaLevel() throws Exception {
        base.with("earth:\n", "earth:\n  equivalent_density_datum: mean_sea_level\n");
        assertPressure(ATMOSPHERE + 1550 * G * (1000 - 25), likelyAt(1000));
    }

    @Test
    void equivalentDensityFromTheMudline() throws Exception {
        base.with("earth:\n", "earth:\n  equivalent_density_datum: mudline\n")
                .with("  stack: surface\n", "  stack: surface\n  sea_water_density: 1.03 sg\n");
        assertPressure(ATMOSPHERE + 1030 * G * 100 + 1550 * G * (1000 - 125), likelyAt(1000));
    }

    @Test
    void gradientIsTheEquivalentDensityOfTheSameGradient() throws Exception {
        base.with(POINT, "{tvd: 1000 m, low: 1.50 sg, likely: 15.2 kPa/m}");
        double expected = ATMOSPHERE + 15_200 * 1000;
        assertEquals(expected, likelyAt(1000), 5e-10 * expected, "the equivalent density is read to ten digits");
    }

    @Test
    void gaugePressureTakesTheAtmosphere() throws Exception {
        base.with(POINT, "{tvd: 1000 m, low: 1.50 sg, likely: 152 bar}");
        assertPressure(ATMOSPHERE + 152e5, likelyAt(1000));
    }

    @Test
    void absolutePressureIsTakenAsItIs() throws Exception {
        base.with(POINT, "{tvd: 1000 m, low: 1.50 sg, likely: 152 bara}");
        assertPressure(152e5, likelyAt(1000));
    }

    @Test
    void depthBelowSeaLevelTakesTheElevation() throws Exception {
        base.with(POINT, "{tvdss: 975 m, low: 1.50 sg, likely: 1.55 sg}");
        assertPressure(ATMOSPHERE + 1550 * G * 1000, likelyAt(1000));
    }

    /** Straight in density: 1.70 sg half-way from 1.55 at 1000 m to 1.85 at 3000 m, to within the 2 kPa promised. */
    @Test
    void betweenEquivalentDensitiesDensityIsStraight() throws CaseFaults {
        PressureProfile likely = base.read().earth().strength().orElseThrow().likely();
        for (double z = 1000; z <= 3000; z += 7) {
            double density = 1550 + 300 * (z - 1000) / 2000;
            assertEquals(ATMOSPHERE + density * G * z, likely.lowestAt(z), 2000, "at " + z + " m");
        }
    }

    /** With a pressure at one end pressure is straight: (152 bar + 544.27 bar) / 2 half-way. */
    @Test
    void betweenPressuresPressureIsStraight() throws Exception {
        base.with(POINT, "{tvd: 1000 m, low: 150 bar, likely: 152 bar}");
        double bottom = ATMOSPHERE + 1850 * G * 3000;
        assertPressure((ATMOSPHERE + 152e5 + bottom) / 2, likelyAt(2000));
    }

    @Test
    void aStepKeepsItsTwoSides() throws Exception {
        base.with(POINT, POINT + "\n      - {tvd: 1000 m, low: 1.60 sg, likely: 1.65 sg}");
        PressureProfile profile = base.read().earth().strength().orElseThrow().likely();
        assertPressure(ATMOSPHERE + 1550 * G * 1000, profile.above(1000));
        assertPressure(ATMOSPHERE + 1650 * G * 1000, profile.below(1000));
    }

    @Test
    void surfacePressureGoesDownWithTheTestMud() throws Exception {
        base.with("      pressure: 1.60 sg\n", "      surface_pressure: 50 bar\n      test_mud: 1.10 sg\n");
        assertPressure(
                ATMOSPHERE + 50e5 + 1100 * G * 1005,
                base.read().earth().tests().get(0).pressure());
    }

    @Test
    void aWeakZoneGivenByItsPressureHoldsTheDensityOfItsTop() throws Exception {
        base.with("      strength: 1.58 sg\n", "      strength: 232 bar\n");
        double density = base.read().earth().weakZones().get(0).strength();
        assertEquals(232e5 / (G * 1500), density, EXACT * density);
    }

    @Test
    void geothermalRunsFromTheSeabedAndStraightAboveIt() throws Exception {
        base.with("    points:\n      - {tvd: 0 m, temperature: 10 degC}\n", "    geothermal:\n")
                .with(
                        "      - {tvd: 125 m, temperature: 6 degC}\n",
                        "      at_surface: 10 degC\n      at_ground: 6 degC\n")
                .with("      - {tvd: 3000 m, temperature: 90 degC}\n", "      gradient: 3 degC/100m\n");
        var temperature = base.read().earth().temperature().orElseThrow();
        assertEquals(283.15, temperature.at(0), 1e-9);
        assertEquals(281.15, temperature.at(62.5), 1e-9);
        assertEquals(279.15, temperature.at(125), 1e-9);
        assertEquals(279.15 + 0.03 * 1000, temperature.at(1125), 1e-9);
    }

    @Test
    void unitsInASecondRowReadAsThoseInTheHeading() throws Exception {
        PressureProfile before =
                base.read().earth().porePressure().orElseThrow().likely();
        base.with("pore.csv", "tvd [m],low [sg],likely [sg],high [sg]\n", "tvd,low,likely,high\nm,sg,sg,sg\n");
        assertEquals(before, base.read().earth().porePressure().orElseThrow().likely());
        assertTrue(before.covers(1500));
    }
}
