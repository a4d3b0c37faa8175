package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import staunch.control.StringFriction;
import staunch.design.CasingDesign;
import staunch.design.WellCase;
import staunch.envelope.OperationsPlan;
import staunch.limit.GasSeparator;
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
        assertEquals(7, well.files().size());
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

    @Test
    void readsTheSubseaWell() throws CaseFaults {
        WellCase well = CaseReader.read(data("wrenskerry-2"));
        assertTrue(well.datum().stackAtSeabed());
        assertEquals("sg", well.units().symbol(Measure.DENSITY));
        assertEquals("in", well.units().symbol(Measure.DIAMETER));
        assertEquals("bar", well.units().symbol(Measure.PRESSURE_GAUGE));
        assertEquals(
                5,
                well.equipment().stack().stream()
                        .filter(e -> e.type().name().contains("RAM"))
                        .count());
        double rate = well.design("Base")
                .section("12 1/4 in")
                .slowCirculations()
                .get(0)
                .rate();
        assertEquals(20 * 0.0196 / 60, rate, 1e-12, "20 strokes of 19.6 l in a minute");
        assertEquals(
                335, well.earth().tops().get(0).verticalDepth(), 1e-9, "310 m below sea level, datum 25 m above it");
        assertEquals(3, well.design("Base").section("12 1/4 in").hole().size(), "a washout parts the hole");
    }

    @Test
    void readsHowAnInfluxIsHandled() throws CaseFaults {
        OperationsPlan land = CaseReader.read(data("quillmarsh-1"))
                .design("Base")
                .section("8 1/2 in")
                .operations();
        assertEquals(new OperationsPlan.InfluxChoice.RequiredOrDetectable(), land.influx());
        assertEquals(
                10 * 42 * 231 * Math.pow(0.0254, 3), land.surfaceLineVolume().getAsDouble(), 1e-9);
        assertEquals(100 * 6894.757293168, land.volumetric().working().getAsDouble(), 1e-4);
        assertEquals(Optional.of(true), land.yielding().floatInString());
        assertTrue(land.killRate().isEmpty() && land.migration().isEmpty(), "left to their defaults");
        WellCase subsea = CaseReader.read(data("wrenskerry-2"));
        OperationsPlan plan = subsea.design("Base").section("12 1/4 in").operations();
        assertEquals(20 * 0.0196 / 60, plan.killRate().getAsDouble(), 1e-12, "20 strokes of 19.6 l in a minute");
        assertEquals(Optional.of(5), plan.startUpSteps());
        assertEquals(
                List.of("slow, 150 m/h", "medium, 350 m/h", "fast, 1800 m/h"),
                plan.migration().orElseThrow().laws().stream()
                        .map(law -> law.wording().in(subsea.units()))
                        .toList());
        assertEquals(StringFriction.BY_BORE, plan.killSheet().orElseThrow().friction());
        GasSeparator separator = subsea.equipment().gasSeparator().orElseThrow();
        assertEquals(6, separator.mudLegHeight().getAsDouble(), 0);
        assertEquals(450_000 / 86_400.0, separator.gasCapacity().getAsDouble(), 1e-9);
        assertEquals(3.45e7, subsea.equipment().mudPump().orElseThrow().pressure(), 1e-3);
    }
}
