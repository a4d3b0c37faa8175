package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import staunch.earth.DepthMatching;
import staunch.earth.NormalPressure;
import staunch.earth.OffsetTransfer;
import staunch.earth.OffsetWell;
import staunch.earth.Overburden;
import staunch.earth.PlannedWell;
import staunch.earth.PressurePoint;
import staunch.earth.PressureProfile;
import staunch.earth.Quality;
import staunch.earth.RockEstimates;
import staunch.earth.Standing;
import staunch.earth.StrengthTest;
import staunch.earth.StrengthTransfer;
import staunch.units.EquivalentDensity;
import staunch.units.Physics;

/**
 * Exploration wells of the Norwegian shelf. Contains data under the Norwegian licence for Open Government data (NLOD) made
 * available by the Norwegian Petroleum Directorate, www.npd.no, 2013.
 */
class OffsetOpenDataTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "open-data");

    /** Misprints, such as a mud of 0.14 g/cm³ or a bit of 12 174 in, are left out and listed. */
    private static final TableFormat ZERO_IS_MISSING =
            TableFormat.PLAIN.withMissing("0").leavingOutBadRows();

    private static Map<String, OffsetSite> sites;
    private static OffsetRows<StrengthTest> leakOffs;

    @BeforeAll
    static void readOnce() throws DataFileFault {
        // An inclination of 0 is a value, not a missing one.
        sites = OffsetTables.sitesAtSea(
                FOLDER.resolve("ncs-wells.csv"),
                TableFormat.PLAIN,
                new OffsetTables.SiteColumns(
                        TableColumn.text("wlbWellboreName"),
                        new TableColumn("wlbKellyBushElevation", "m"),
                        new TableColumn("wlbWaterDepth", "m"),
                        new TableColumn("wlbTotalDepth", "m"),
                        new TableColumn("wlbMaxInclation", "deg"),
                        Math.toRadians(5)));
        leakOffs = OffsetTables.strengthTests(
                FOLDER.resolve("ncs-casing-lot.csv"),
                ZERO_IS_MISSING,
                new OffsetTables.StrengthColumns(
                        TableColumn.text("wlbName"),
                        DepthColumns.measured("wlbCasingDepth", "m"),
                        new PressureColumns.Equivalent(
                                new TableColumn("wlbLotMudDencity", "sg"), DepthColumns.Level.DATUM),
                        WordColumn.always(Standing.LEAK_OFF),
                        WordColumn.always(Quality.GOOD)),
                sites);
    }

    /** Rows of a file below its heading, by nothing but line ends. */
    private static int lines(String file) throws IOException {
        return Files.readAllLines(FOLDER.resolve(file)).size() - 1;
    }

    private static long zeros(String file, int column) throws IOException {
        return Files.readAllLines(FOLDER.resolve(file)).stream()
                .filter(l -> l.split(",")[column].equals("0"))
                .count();
    }

    private static <T> Map<String, Long> reasons(OffsetRows<T> rows) {
        return rows.leftOut().stream()
                .collect(Collectors.groupingBy(
                        l -> l.reason().text().startsWith("repeats")
                                ? "repeats"
                                : l.reason().text(),
                        Collectors.counting()));
    }

    @Test
    void everyWellIsRead() throws IOException {
        assertEquals(lines("ncs-wells.csv"), sites.size());
        OffsetSite sidetrack = sites.get("1/5-4 S");
        assertTrue(sidetrack.path().isEmpty(), "inclined by 55.4°");
        assertEquals(69 + 23, sidetrack.datum().groundOrSeabedDepth());
        assertEquals(3574, sites.get("1/2-1").path().orElseThrow().end());
    }

    @Test
    void everyRowIsReadOrLeftOutWithItsReason() throws IOException, DataFileFault {
        assertEquals(
                lines("ncs-casing-lot.csv"),
                leakOffs.rows().size() + leakOffs.leftOut().size());
        StrengthTest first = leakOffs.of("1/2-1").get(0);
        assertEquals(645, first.verticalDepth());
        assertEquals(Physics.ATMOSPHERE + 1690 * Physics.GRAVITY * 645, first.pressure(), 1e-3);
        assertTrue(
                reasons(leakOffs).containsKey("wlbLotMudDencity is not given"),
                reasons(leakOffs).toString());

        OffsetRows<MudRecord> mud = OffsetTables.mudWeights(
                FOLDER.resolve("ncs-mud.csv"),
                ZERO_IS_MISSING,
                new OffsetTables.MudColumns(
                        TableColumn.text("wlbName"),
                        DepthColumns.measured("wlbMD", "m"),
                        new TableColumn("wlbMudWeightAtMD", "sg"),
                        TableColumn.text("wlbMudType")),
                sites);
        assertEquals(lines("ncs-mud.csv"), mud.rows().size() + mud.leftOut().size());
        assertEquals(1040, mud.of("1/2-1").get(0).density());

        OffsetRows<CasingRecord> casings = OffsetTables.casings(
                FOLDER.resolve("ncs-casing-lot.csv"),
                ZERO_IS_MISSING,
                new OffsetTables.CasingColumns(
                        TableColumn.text("wlbName"),
                        TableColumn.text("wlbCasingType"),
                        new TableColumn("wlbCasingDiameter", "in"),
                        new TableColumn("wlbCasingDepth", "m"),
                        new TableColumn("wlbHoleDiameter", "in"),
                        new TableColumn("wlbHoleDepth", "m")),
                sites);
        assertEquals(
                lines("ncs-casing-lot.csv"),
                casings.rows().size() + casings.leftOut().size());
        CasingRecord intermediate = casings.of("1/2-1").get(2);
        assertEquals(13.375 * 0.0254, intermediate.outsideDiameter().orElseThrow(), 1e-12);
        assertEquals(17.5 * 0.0254, intermediate.holeDiameter().orElseThrow(), 1e-12);
        assertTrue(casings.of("1/3-4").get(4).outsideDiameter().isEmpty(), "open hole");
        assertEquals(5, casings.of("1/5-4 S").size(), "a sidetrack has its own programme");

        OffsetRows<PressurePoint> tests = OffsetTables.pressurePoints(
                FOLDER.resolve("ncs-dst.csv"),
                ZERO_IS_MISSING,
                new OffsetTables.PointColumns(
                        TableColumn.text("wlbName"),
                        DepthColumns.measured("wlbDstFromDepth", "m"),
                        new PressureColumns.Downhole(new TableColumn("wlbDstFinShutInPress", "MPa")),
                        WordColumn.always(Quality.DOUBTFUL)),
                sites);
        assertEquals(lines("ncs-dst.csv"), tests.rows().size() + tests.leftOut().size());
        assertEquals(zeros("ncs-casing-lot.csv", 6), reasons(leakOffs).get("wlbLotMudDencity is not given"));
        assertEquals(zeros("ncs-mud.csv", 2), reasons(mud).get("wlbMudWeightAtMD is not given"));
        assertEquals(zeros("ncs-dst.csv", 5), reasons(tests).get("wlbDstFinShutInPress is not given"));
        List<String> misprints = Stream.of(mud.leftOut(), casings.leftOut())
                .flatMap(List::stream)
                .filter(l -> l.reason().text().contains(":"))
                .map(l -> l.line() + " " + l.well())
                .toList();
        assertEquals(List.of("1164 2/1-7", "1295 2/1-9", "273 2/5-13"), misprints);
    }

    private static final double DEPTH = 3400;

    /** North Sea sediment by the porosity law, since no density log is at hand; the same for all wells. */
    private static PressureProfile overburden(OffsetSite site) {
        RockEstimates.Sediment sediment = new RockEstimates.Sediment(0.6, 2000, 2650, 1030);
        return new Overburden(site.datum(), 1025, new Overburden.Compacting(sediment, 50))
                .withoutLog(DEPTH)
                .likely();
    }

    private static OffsetWell offset(String name) {
        OffsetSite site = sites.get(name);
        NormalPressure normal = new NormalPressure(site.datum(), 1030);
        List<StrengthTest> shallow =
                leakOffs.of(name).stream().filter(t -> t.verticalDepth() < 3000).toList();
        return new OffsetWell(name, 10_000, normal, overburden(site), hydrostatic(normal), shallow, List.of());
    }

    private static PressureProfile hydrostatic(NormalPressure normal) {
        return normal.profile(normal.datum().groundOrSeabedDepth(), DEPTH);
    }

    private static StrengthTransfer.Estimated predicted(String target, double z, List<String> others) {
        OffsetSite site = sites.get(target);
        NormalPressure normal = new NormalPressure(site.datum(), 1030);
        PlannedWell planned = new PlannedWell(normal, overburden(site), hydrostatic(normal));
        List<OffsetWell> offsets =
                others.stream().map(OffsetOpenDataTest::offset).toList();
        return assertInstanceOf(
                StrengthTransfer.Estimated.class,
                new OffsetTransfer(new DepthMatching.BelowMudline(), 200, 5000, 0.1, 5e6)
                        .strength(planned, offsets, new double[] {z})
                        .get(0));
    }

    /**
     * The shoes near 1200 to 1400 m of four neighbours, each predicted from the other three. Pore pressure is taken as
     * hydrostatic there and the distances as equal, since neither is in the data; nor do the rows tell leak-off from
     * integrity tests. The measured values, 1.82, 1.80, 1.77 and 1.70 g/cm³, span 0.12: no prediction from neighbours can
     * be expected to be closer.
     */
    @Test
    void neighbouringWellsPredictEachOther() {
        List<String> names = List.of("16/10-1", "16/10-2", "16/10-3", "16/10-4");
        for (String target : names) {
            StrengthTest measured = offset(target).tests().stream()
                    .filter(t -> t.verticalDepth() > 1000 && t.verticalDepth() < 1500)
                    .findFirst()
                    .orElseThrow();
            List<String> others = names.stream().filter(n -> !n.equals(target)).toList();
            double z = measured.verticalDepth();
            StrengthTransfer.Estimated found = predicted(target, z, others);
            assertEquals(3, found.leakOffs().size());
            double expected = EquivalentDensity.of(measured.pressure(), z);
            assertEquals(expected, EquivalentDensity.of(found.strength().likely(), z), 120, target);
            assertTrue(found.strength().low() < found.strength().high(), "the spread is kept");
            assertTrue(found.leakOffs().stream()
                    .allMatch(c -> c.test().source().text().startsWith("ncs-casing-lot.csv, line ")));
        }
    }

    /** Two neighbours with 1.45 and 1.80 g/cm³ near 1690 m. */
    @Test
    void aConflictBetweenNeighboursIsListed() {
        StrengthTransfer.Estimated found = predicted("16/2-5", 1700, List.of("16/2-3", "16/2-4"));
        assertEquals(1, found.conflicts().size());
        assertEquals("16/2-3: leak-off test at 1693 m", found.conflicts().get(0).first());
        assertEquals("16/2-4: leak-off test at 1689 m", found.conflicts().get(0).second());
        assertTrue(found.conflicts().get(0).text().startsWith("leak-off at stress ratios that differ by 0."));
    }
}
