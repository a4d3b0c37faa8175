package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import staunch.design.CasingDesign;
import staunch.design.WellCase;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.UnitSystem;

class CaseReaderTest {
    static Path data(String well) {
        return Path.of(System.getProperty("staunch.root"), "data", well);
    }

    @Test
    void readsTheLandWell() throws CaseFaults {
        WellCase well = CaseReader.read(data("quillmarsh-1"));
        assertEquals("Quillmarsh 1", well.header().well());
        assertEquals(UnitSystem.FIELD, well.units());
        assertEquals(
                2,
                well.designs().size(),
                well.designs().stream().map(CasingDesign::name).toList().toString());
        CasingDesign base = well.design("Base");
        assertEquals(5, base.strings().size());
        assertEquals(4, base.sections().size());
        assertEquals(5, well.files().size());
        assertEquals("case.yaml", well.files().get(0).path());
        assertTrue(well.files().stream().allMatch(f -> f.sha256().matches("[0-9a-f]{64}")));
    }

    @Test
    void aDesignTakesWhatItDoesNotChange() throws CaseFaults {
        WellCase well = CaseReader.read(data("quillmarsh-1"));
        CasingDesign early = well.design("Early liner");
        assertEquals(10_350 * 0.3048, early.strings().get(3).shoeDepth(), 1e-9);
        assertEquals(0.8, early.strings().get(3).allowedBurstShare().getAsDouble(), 0, "taken from the shared string");
        assertEquals(10_350 * 0.3048, early.section("6 in").topDepth(), 1e-9);
        assertEquals(
                well.design("Base").section("6 in").mud(),
                early.section("6 in").mud(),
                "taken from the shared section");
    }

    @Test
    void surfaceLeakOffPressureGoesDownholeWithTheTestMud() throws CaseFaults {
        WellCase well = CaseReader.read(data("quillmarsh-1"));
        var test = well.earth().tests().get(0);
        double psi = UnitSystem.FIELD.toSi(910, Measure.PRESSURE_GAUGE);
        double mud = UnitSystem.FIELD.toSi(9.2, Measure.DENSITY);
        double z = well.path().verticalDepth(3515 * 0.3048);
        assertEquals(Physics.ATMOSPHERE + psi + mud * 9.80665 * z, test.pressure(), 1e-6 * test.pressure());
    }
}
