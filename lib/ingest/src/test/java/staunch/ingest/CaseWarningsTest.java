package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.units.UnitSystem;

/** Each change of the base makes it legal but suspicious, and gives one warning. */
class CaseWarningsTest {
    @TempDir
    private Path directory;

    private Cases base;

    @BeforeEach
    void copy() throws IOException {
        base = Cases.copy(Cases.BASE, directory);
    }

    private void assertWarning(String expected) throws CaseFaults {
        assertEquals(
                List.of(expected),
                base.read().warnings().stream()
                        .map(w -> w.subject() + ": " + w.text(UnitSystem.METRIC))
                        .toList());
    }

    @Test
    void strengthBelowPorePressure() throws Exception {
        base.with("low: 1.80 sg", "low: 1.20 sg");
        assertWarning("strength: the low estimate is below the likely pore pressure at 2840.0 m: check both profiles.");
    }

    @Test
    void mudBelowTheHighPorePressure() throws Exception {
        base.with("density: 1.25 sg", "density: 1.10 sg");
        assertWarning(
                "12 1/4 in: the mud of 1100 kg/m³ is below the high estimate of pore pressure at 1480.0 m of vertical"
                        + " depth.");
    }

    @Test
    void mudHeavierThanTheTest() throws Exception {
        base.with("pressure: 1.60 sg", "pressure: 1.24 sg");
        assertWarning(
                "12 1/4 in: the mud is heavier than the leak-off test \"LOT 13 3/8 in\" of 1240 kg/m³ at its shoe.");
    }

    @Test
    void surveyThatEndsALittleAboveTotalDepth() throws Exception {
        base.with("survey.csv", "2600,30,45", "2490,30,45");
        assertWarning(
                "survey: it ends at 2490 m, above the deepest section TD of 2505 m: the hole is taken to go on straight.");
    }

    @Test
    void surveyThatBeginsBelowTheDatum() throws Exception {
        base.with("survey.csv", "0,0,0\n1200", "100,0,0\n1200");
        assertWarning(
                "survey: its first station lies at 100.0 m: the hole above it is taken to leave the datum vertically.");
    }

    @Test
    void surveyWithOtherVerticalDepths() throws Exception {
        base.with("survey.csv", "azimuth [deg]\n0,0,0\n", "azimuth [deg],tvd [m]\n0,0,0,0\n")
                .with("survey.csv", "1200,0,0\n", "1200,0,0,1200\n")
                .with("survey.csv", "1500,30,45\n2600,30,45\n", "1500,30,45,1470\n2600,30,45,2423\n");
        assertWarning(
                "survey: its vertical depth at 1500.0 m is 1470 m, by minimum curvature it is 1486.48 m, which was used.");
    }

    @Test
    void strengthThatEndsAboveTotalDepth() throws Exception {
        base.with("{tvd: 3000 m, low: 1.80 sg, likely: 1.85 sg}", "{tvd: 2000 m, low: 1.80 sg, likely: 1.85 sg}");
        assertWarning(
                "strength: the profile ends at 2000.0 m, above the deepest section TD at 2356.8 m of vertical depth:"
                        + " below it nothing is assessed that needs it.");
    }

    @Test
    void shortLinerLap() throws Exception {
        base.with("top: 1900 m", "top: 1985 m");
        assertWarning("7 in liner: the liner overlaps the string above by 15.0 m only.");
    }

    @Test
    void longPocketBelowAShoe() throws Exception {
        base.with("to: 2005 m", "to: 2050 m");
        assertWarning("8 1/2 in: the hole reaches 50.0 m below the shoe at 2000.0 m: a long pocket.");
    }

    @Test
    void sourGasWithUndeclaredSteel() throws Exception {
        base.with("gas: {gravity: 0.65}", "gas: {gravity: 0.65, h2s: 0.5 %}")
                .with("    wall: 0.408 in\n    grade: P-110\n", "    wall: 0.408 in\n");
        assertWarning(
                "7 in liner: the gas of a section holds hydrogen sulphide and the grade of this string is not declared:"
                        + " check it for sour service.");
    }

    @Test
    void riserOfASurfaceStack() throws Exception {
        base.with("equipment:\n", "equipment:\n  riser: {name: Riser, length: 110 m, inside_diameter: 19 in}\n");
        assertWarning("riser: the stack stands at surface and the case has a drilling riser.");
    }
}
