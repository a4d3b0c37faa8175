package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.earth.PressurePoint;
import staunch.earth.Quality;
import staunch.earth.Standing;
import staunch.earth.StrengthTest;
import staunch.units.InputFault;
import staunch.units.Physics;
import staunch.well.Datum;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

class OffsetTablesTest {
    private static final double G = Physics.GRAVITY;

    private static final Map<String, OffsetSite> SITES = Map.of(
            "A",
            new OffsetSite(
                    "A",
                    new Datum("rotary table", 25, new Datum.AtSea(100, true)),
                    Optional.of(WellPath.of(
                            List.of(new SurveyStation(0, 0, 0), new SurveyStation(4000, Math.toRadians(60), 0))))),
            "B",
            new OffsetSite("B", new Datum("rotary table", 300, new Datum.OnLand(9)), Optional.empty()));

    @TempDir
    Path folder;

    private static OffsetTables.StrengthColumns strength(DepthColumns depth, PressureColumns pressure) {
        return new OffsetTables.StrengthColumns(
                TableColumn.text("well"),
                depth,
                pressure,
                WordColumn.of("kind", Map.of("LOT", Standing.LEAK_OFF, "FIT", Standing.INTEGRITY_TEST)),
                WordColumn.always(Quality.GOOD));
    }

    private static PressureColumns emw(String unit) {
        return new PressureColumns.Equivalent(new TableColumn("emw", unit), DepthColumns.Level.DATUM);
    }

    private Path written(String text) throws IOException {
        return Files.writeString(folder.resolve("tests.csv"), text);
    }

    private OffsetRows<StrengthTest> read(String text, OffsetTables.StrengthColumns columns)
            throws IOException, DataFileFault {
        return OffsetTables.strengthTests(written(text), TableFormat.PLAIN, columns, SITES);
    }

    private String faultOf(String text, OffsetTables.StrengthColumns columns) {
        return assertThrows(DataFileFault.class, () -> read(text, columns)).getMessage();
    }

    @Test
    void depthsOfEveryLevelBecomeDepthsBelowTheDatum() throws IOException, DataFileFault {
        DepthColumns byRow = new DepthColumns(
                new TableColumn("depth", "m"),
                DepthColumns.Kind.VERTICAL,
                WordColumn.of(
                        "from",
                        Map.of(
                                "RT", DepthColumns.Level.DATUM,
                                "MSL", DepthColumns.Level.MEAN_SEA_LEVEL,
                                "ML", DepthColumns.Level.MUDLINE,
                                "GL", DepthColumns.Level.GROUND)));
        OffsetRows<StrengthTest> rows = read("""
                well,depth,from,kind,emw
                A,2000,RT,LOT,1.8
                A,2000,MSL,LOT,1.8
                A,2000,ML,FIT,1.8
                B,2000,GL,LOT,1.8
                B,2000,MSL,LOT,1.8
                """, strength(byRow, emw("sg")));
        assertEquals(
                List.of(2000.0, 2025.0, 2125.0),
                rows.of("A").stream().map(StrengthTest::verticalDepth).toList());
        assertEquals(
                List.of(2009.0, 2300.0),
                rows.of("B").stream().map(StrengthTest::verticalDepth).toList());
        assertEquals(Standing.INTEGRITY_TEST, rows.of("A").get(2).standing());
        StrengthTest first = rows.of("A").get(0);
        assertEquals(Physics.ATMOSPHERE + 1800 * G * 2000, first.pressure(), 1e-3);
        assertEquals("tests.csv, line 2, depth and emw", first.source().text());
        assertTrue(faultOf("well,depth,from,kind,emw\nB,2000,ML,LOT,1.8\n", strength(byRow, emw("sg")))
                .contains("is the mudline, but B stands on land"));
        assertTrue(faultOf("well,depth,from,kind,emw\nB,2000,KB,LOT,1.8\n", strength(byRow, emw("sg")))
                .startsWith("tests.csv:2: from: has the word \"KB\", which is not mapped"));
    }

    @Test
    void measuredDepthsGoThroughTheSurvey() throws IOException, DataFileFault {
        OffsetRows<StrengthTest> rows = read(
                "well,depth,kind,emw\nA,4000,LOT,1.8\nB,3000,LOT,1.8\n",
                strength(DepthColumns.measured("depth", "m"), emw("sg")));
        // Arc from vertical to 60°: length 4000 m, radius 4000 / (π/3), depth radius · sin 60°.
        assertEquals(
                4000 / (Math.PI / 3) * Math.sin(Math.PI / 3),
                rows.of("A").get(0).verticalDepth(),
                1e-6);
        assertEquals(List.of(new OffsetRows.LeftOut(3, "B", "has a measured depth, but no survey")), rows.leftOut());
    }

    @Test
    void pressuresOfEveryKind() throws IOException, DataFileFault {
        DepthColumns depth = DepthColumns.vertical("depth", "ft", DepthColumns.Level.DATUM);
        String text = "well,depth,kind,p,mud\nA,4000,LOT,1140,10\n";
        PressureColumns surface =
                new PressureColumns.Surface(new TableColumn("p", "psi"), new TableColumn("mud", "ppg"));
        StrengthTest test = read(text, strength(depth, surface)).of("A").get(0);
        // A published example: 1140 psi on 10 ppg at 4000 ft is 15.48 ppg with 0.052, 15.49 with exact gravity.
        double equivalent = (test.pressure() - Physics.ATMOSPHERE) / (G * 4000 * 0.3048) / 119.826427;
        assertEquals(15.486, equivalent, 0.001);
        assertEquals(1198.26, test.testMudDensity().orElseThrow(), 0.01);
        PressureColumns downhole = new PressureColumns.Downhole(new TableColumn("p", "psia"));
        assertEquals(
                1140 * 6894.757293,
                read(text, strength(depth, downhole)).of("A").get(0).pressure(),
                0.01);
        PressureColumns belowSea =
                new PressureColumns.Equivalent(new TableColumn("emw", "sg"), DepthColumns.Level.MEAN_SEA_LEVEL);
        StrengthTest sea = read(
                        "well,depth,kind,emw\nA,2025,LOT,1.8\n",
                        strength(DepthColumns.vertical("depth", "m", DepthColumns.Level.DATUM), belowSea))
                .of("A")
                .get(0);
        assertEquals(Physics.ATMOSPHERE + 1800 * G * 2000, sea.pressure(), 1e-3);
    }

    @Test
    void anyLayoutIsReadAsItsUserSays() throws IOException, DataFileFault {
        TableFormat format = new TableFormat(
                ';', TableFormat.DecimalMark.COMMA, Set.of("0", "-999,25"), 1, TableFormat.BadRows.REFUSE_FILE);
        Path file = Files.write(
                folder.resolve("p.csv"),
                "# Überblick\nBrunn;Tiefe;Druck;Güte\n;m;bar;\nA;2000,5;350,25;gut\nA;2100;0;gut\nA;2200;-999,25;gut\nA;2300;1e30;gut\nA;2000,5;350,25;gut\nA;2400;360;schlecht\n"
                        .getBytes(LasText.WESTERN));
        OffsetRows<PressurePoint> rows = OffsetTables.pressurePoints(
                file,
                format,
                new OffsetTables.PointColumns(
                        TableColumn.text("Brunn"),
                        DepthColumns.vertical("Tiefe", "m", DepthColumns.Level.DATUM),
                        new PressureColumns.Downhole(new TableColumn("Druck", "bar")),
                        WordColumn.of("Güte", Map.of("gut", Quality.GOOD, "schlecht", Quality.REJECTED))),
                SITES);
        assertEquals(1, rows.rows().size());
        assertEquals(35_025_000 + Physics.ATMOSPHERE, rows.of("A").get(0).pressure(), 1e-6);
        assertEquals(2000.5, rows.of("A").get(0).verticalDepth());
        assertEquals(
                List.of(
                        new OffsetRows.LeftOut(5, "A", "Druck is not given"),
                        new OffsetRows.LeftOut(6, "A", "Druck is not given"),
                        new OffsetRows.LeftOut(7, "A", "Druck is not given"),
                        new OffsetRows.LeftOut(8, "A", "repeats line 4"),
                        new OffsetRows.LeftOut(9, "A", "is flagged as rejected")),
                rows.leftOut());
    }

    @Test
    void allProblemsOfAFileAreListedAndNothingIsKept() {
        DepthColumns depth = DepthColumns.vertical("depth", "m", DepthColumns.Level.DATUM);
        String fault = faultOf("""
                well,depth,kind,emw
                A,2000,LOT,1.8
                C,2000,LOT,1.8
                A,abc,LOT,1.8
                A,-50,LOT,1.8
                A,2000,LOT,180
                A,2000,LOT,"1,8"
                A,2000,LOT
                ,2000,LOT,1.8
                A,2000,XLOT,1.8
                """, strength(depth, emw("sg")));
        List<String> lines = fault.lines().toList();
        assertEquals(8, lines.size(), fault);
        assertTrue(lines.get(0).startsWith("tests.csv:3: well: names the unknown well \"C\"; add it"), fault);
        assertTrue(lines.get(1).startsWith("tests.csv:4: depth: "), fault);
        assertTrue(
                lines.get(2).startsWith("tests.csv:5: depth: ") && lines.get(2).contains("-50 m is outside"), fault);
        assertTrue(lines.get(3).startsWith("tests.csv:6: emw: ") && lines.get(3).contains("is outside"), fault);
        assertTrue(lines.get(4).startsWith("tests.csv:7: emw: ") && lines.get(4).contains("decimal mark"), fault);
        assertTrue(lines.get(5).startsWith("tests.csv:8: has 3 cells where the heading has 4"), fault);
        assertTrue(lines.get(6).startsWith("tests.csv:9: well: is empty"), fault);
        assertTrue(lines.get(7).startsWith("tests.csv:10: kind: has the word \"XLOT\""), fault);
    }

    @Test
    void aColumnMappedWrongIsRefusedAtTheHeading() {
        DepthColumns depth = DepthColumns.vertical("depth", "m", DepthColumns.Level.DATUM);
        String text = "well,depth,kind,emw\nA,2000,LOT,1.8\n";
        String dimension = faultOf(text, strength(depth, emw("m")));
        assertTrue(dimension.startsWith("tests.csv:1: emw: cannot be in \"m\""), dimension);
        String unknown = faultOf(text, strength(depth, emw("stone")));
        assertTrue(unknown.startsWith("tests.csv:1: emw: cannot be in \"stone\""), unknown);
        String missing = faultOf(text.replace("emw", "density"), strength(depth, emw("sg")));
        assertTrue(missing.startsWith("tests.csv:1: emw: is not a column of the table; its columns are well, depth"));
        String twice = faultOf("well,emw,depth,kind,emw\n", strength(depth, emw("sg")));
        assertTrue(twice.startsWith("tests.csv:1: emw: is a column given twice"), twice);
        assertTrue(faultOf("\n", strength(depth, emw("sg"))).startsWith("tests.csv: has no heading"));
        assertTrue(faultOf("well,depth,kind,emw\nA,\"2000\n", strength(depth, emw("sg")))
                .startsWith("tests.csv:2: is not CSV: a quoted cell is not closed"));
        assertThrows(
                InputFault.class,
                () -> new TableFormat(
                        ',', TableFormat.DecimalMark.COMMA, Set.of(), 0, TableFormat.BadRows.REFUSE_FILE));
    }

    @Test
    void badRowsMayBeLeftOutWhereTheyAreFew() throws IOException, DataFileFault {
        OffsetTables.StrengthColumns columns =
                strength(DepthColumns.vertical("depth", "m", DepthColumns.Level.DATUM), emw("sg"));
        StringBuilder text = new StringBuilder("well,depth,kind,emw\n");
        for (int i = 0; i < 9; i++) {
            text.append("A,").append(2000 + i).append(",LOT,1.8\n");
        }
        TableFormat lenient = TableFormat.PLAIN.leavingOutBadRows();
        OffsetRows<StrengthTest> rows =
                OffsetTables.strengthTests(written(text + "A,2500,LOT,1..8\n"), lenient, columns, SITES);
        assertEquals(9, rows.rows().size());
        assertEquals(11, rows.leftOut().get(0).line());
        assertEquals("A", rows.leftOut().get(0).well());
        assertTrue(
                rows.leftOut().get(0).reason().text().startsWith("emw: "),
                rows.leftOut().toString());
        Path worse = written(text + "A,2500,LOT,1..8\nA,2600,LOT,18\n".replace("18", "1800"));
        String fault = assertThrows(
                        DataFileFault.class, () -> OffsetTables.strengthTests(worse, lenient, columns, SITES))
                .getMessage();
        assertEquals(2, fault.lines().count(), fault);
    }

    @Test
    void filesThatAreNoTables() throws IOException {
        DepthColumns depth = DepthColumns.vertical("depth", "m", DepthColumns.Level.DATUM);
        Path sheet = Files.write(folder.resolve("book.xlsx"), "PK\3\4...".getBytes(StandardCharsets.ISO_8859_1));
        String fault = assertThrows(
                        DataFileFault.class,
                        () -> OffsetTables.strengthTests(sheet, TableFormat.PLAIN, strength(depth, emw("sg")), SITES))
                .getMessage();
        assertTrue(fault.startsWith("book.xlsx: is a damaged workbook"), fault);
    }
}
