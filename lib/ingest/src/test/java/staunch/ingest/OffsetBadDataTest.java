package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import staunch.design.WellCase;
import staunch.earth.PressurePoint;
import staunch.units.UnitSystem;

/**
 * Bad tables of offset wells handed in with the subsea demonstration case. The large log and the zip bomb have tests of
 * their own, {@code LargeLogIT} and {@code WorkbookTest}, and so have merged headings.
 */
class OffsetBadDataTest {
    private static final Path SUBSEA = Cases.ROOT.resolve("data/wrenskerry-2");
    private static final String POINTS = "formation-pressure.csv";
    private static final String CASE = "case.yaml";
    private static final String HEADING = "well,name,tvd [m],pressure [bar],quality,source,place\n";
    private static final String POINTS_KEYS =
            "    - holds: formation_pressures\n      drop: formation-pressure.csv\n      well_column: well\n";

    @TempDir
    private Path directory;

    private static String point(String depth, String pressure) {
        return "Wrenskerry 1,,%s,%s,good,,\n".formatted(depth, pressure);
    }

    private WellCase read(List<String> edits, String table) throws IOException, CaseFaults {
        Path home = directory.resolve("case");
        Path drop = directory.resolve("drop");
        for (Path folder : List.of(home, drop)) {
            if (!Files.exists(folder)) {
                Files.createDirectory(folder);
            }
        }
        try (Stream<Path> files = Files.list(SUBSEA)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.write(home.resolve(file.getFileName()), Files.readAllBytes(file));
            }
        }
        String text = Files.readString(home.resolve("case.yaml"));
        for (int i = 0; i < edits.size(); i += 2) {
            assertTrue(text.contains(edits.get(i)), edits.get(i));
            text = text.replace(edits.get(i), edits.get(i + 1));
        }
        Files.writeString(home.resolve("case.yaml"), text);
        // A good table beside the bad one: neither may come in where one is refused.
        Files.write(drop.resolve("leak-off.csv"), Files.readAllBytes(SUBSEA.resolve("offset-drop/leak-off.csv")));
        Files.writeString(drop.resolve(POINTS), table);
        return CaseReader.read(home, List.of(drop));
    }

    private static List<String> said(WellCase well) {
        return well.warnings().stream()
                .filter(w -> w.subject().equals("drop/" + POINTS))
                .map(w -> w.text(UnitSystem.METRIC))
                .toList();
    }

    private static List<PressurePoint> points(WellCase well) {
        return well.evidence().orElseThrow().points().stream()
                .map(p -> p.point())
                .toList();
    }

    static Stream<Arguments> refused() {
        String depth = "depth: {column: \"tvd [m]\", unit: m, kind: vertical, below: datum}\n"
                + "      pressure: {column: \"pressure [bar]\"";
        return Stream.of(
                Arguments.of(
                        "decimal commas where points are stated",
                        List.of(),
                        HEADING + point("\"2889,5\"", "424.0"),
                        List.of("2: tvd [m]: \"2889,5\" has a comma")),
                Arguments.of(
                        "decimal commas where commas part the columns",
                        List.of(),
                        HEADING + point("2889,5", "424,0"),
                        List.of("2: has 9 cells where the heading has 7; check delimiter and decimal mark")),
                Arguments.of(
                        "the units row is missing",
                        List.of(POINTS_KEYS, POINTS_KEYS + "      lines_of_units: 1\n"),
                        HEADING + point("2889", "424.0") + point("3196", "469.0"),
                        List.of("2: tvd [m]: holds the number 2889 where a line of units is stated; state how many")),
                Arguments.of(
                        "a units row that nobody stated",
                        List.of(),
                        HEADING + ",,m,bar,,,\n" + point("2889", "424.0"),
                        List.of("2: well: is empty")),
                Arguments.of(
                        "a column mapped to the wrong dimension",
                        List.of(
                                "unit: m, kind: vertical, below: datum}\n      pressure: {column: \"pressure [bar]\","
                                        + " unit: bar, kind: downhole}",
                                "unit: bar, kind: vertical, below: datum}\n      pressure: {column: \"pressure [bar]\","
                                        + " unit: m, kind: downhole}"),
                        HEADING + point("2889", "424.0"),
                        List.of(
                                CASE + ":108: offset_evidence.tables[3].depth.unit: \"bar\" is not a unit of depth",
                                "1: pressure [bar]: cannot be in \"m\"",
                                "1: tvd [m]: cannot be in \"bar\"")),
                Arguments.of(
                        "columns changed over, in units that fit",
                        List.of(
                                depth,
                                "depth: {column: \"pressure [bar]\", unit: m, kind: vertical, below: datum}\n"
                                        + "      pressure: {column: \"tvd [m]\""),
                        HEADING + point("4889", "424.0"),
                        List.of("2: pressure [bar]: formation pressure ")),
                Arguments.of(
                        "negative pressures",
                        List.of(),
                        HEADING + point("2889", "-424.0") + point("3000", "430") + point("3196", "-469.0"),
                        List.of("2: pressure [bar]: ", "4: pressure [bar]: ")),
                Arguments.of(
                        "a negative surface pressure",
                        List.of(
                                "unit: bar, kind: downhole}",
                                "unit: bar, kind: surface, mud_column: name, mud_unit: sg}"),
                        HEADING + "Wrenskerry 1,1.55,2889,-4.0,good,,\n",
                        List.of("2: pressure [bar]: is negative")),
                Arguments.of(
                        "a datum that is not mapped",
                        List.of(
                                depth,
                                depth.replace(
                                        "below: datum",
                                        "below_column: place, below_words: [{word: RT, means:"
                                                + " datum}, {word: MSL, means: mean_sea_level}]")),
                        HEADING
                                + "Wrenskerry 1,,2889,424,good,,RT\n"
                                + "Wrenskerry 1,,2900,426,good,,MSL\n"
                                + "Wrenskerry 1,,2910,428,good,,KB\n",
                        List.of("4: place: has the word \"KB\", which is not mapped")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void aBadTableRefusesTheCaseAndNamesEveryBadLine(
            String what, List<String> edits, String table, List<String> starts) {
        List<String> faults = assertThrows(CaseFaults.class, () -> read(edits, table)).faults().stream()
                .map(f -> f.text())
                .toList();
        assertEquals(starts.size(), faults.size(), faults.toString());
        for (int i = 0; i < starts.size(); i++) {
            String start = (starts.get(i).startsWith(CASE) ? "" : "drop/" + POINTS + ":") + starts.get(i);
            assertTrue(faults.get(i).startsWith(start), faults.get(i));
        }
    }

    @Test
    void absentNumbersAreLeftOutAndSaid() throws Exception {
        WellCase well =
                read(List.of(), HEADING + point("2889", "424") + point("3000", "1e30") + point("1.0E+30", "469"));
        assertEquals(1, points(well).size());
        assertEquals(
                List.of(
                        "line 3 of Wrenskerry 1 is left out: pressure [bar] is not given.",
                        "line 4 of Wrenskerry 1 is left out: tvd [m] is not given."),
                said(well));
    }

    @Test
    void mixedDatumsComeToOne() throws Exception {
        WellCase well = read(
                List.of(
                        "below: datum}\n      pressure: {column: \"pressure [bar]\", unit: bar, kind: downhole}",
                        "below_column: place, below_words: [{word: RT, means: datum}, {word: MSL, means: mean_sea_level},"
                                + " {word: ML, means: mudline}]}\n      pressure: {column: \"pressure [bar]\", unit: bar,"
                                + " kind: downhole}"),
                HEADING
                        + "Wrenskerry 1,,2889,424,good,,RT\n"
                        + "Wrenskerry 1,,2866,424,good,,MSL\n"
                        + "Wrenskerry 1,,2570,424,good,,ML\n");
        // The rotary table stands 23 m above the sea, the mudline 296 m below it.
        assertEquals(
                List.of(2889.0, 2889.0, 2889.0),
                points(well).stream().map(PressurePoint::verticalDepth).toList());
        assertEquals(List.of(), said(well), "the same pressure at the same depth");
    }

    @Test
    void repeatedDepthsBothCountAndAreSaidAndRepeatedRowsCountOnce() throws Exception {
        WellCase well = read(List.of(), HEADING + point("2889", "424") + point("2889", "431") + point("2889", "424"));
        assertEquals(2, points(well).size());
        List<String> said = said(well);
        assertEquals(2, said.size(), said.toString());
        assertTrue(said.contains("line 4 of Wrenskerry 1 is left out: repeats line 2."), said.toString());
        assertTrue(
                said.get(0).startsWith("lines 2 and 3 of Wrenskerry 1 give ")
                        && said.get(0).endsWith(" at the same depth of 2889.0 m; both count."),
                said.toString());
    }

    /** Nine readings on a straight 1.45 sg with a scatter of 0.01 sg, the fifth read as 520 bar for 420. */
    private static final List<String> SPIKED = List.of(
            point("2700", "385.1"),
            point("2750", "390.0"),
            point("2800", "399.4"),
            point("2850", "404.1"),
            point("2900", "520.0"),
            point("2950", "420.7"),
            point("3000", "425.4"),
            point("3050", "434.9"),
            point("3100", "439.5"));

    @Test
    void aSpikeIsSaidWithDepthAndValueAndStillCounts() throws Exception {
        WellCase well = read(List.of(), HEADING + String.join("", SPIKED));
        assertEquals(9, points(well).size());
        List<String> said = said(well);
        assertEquals(1, said.size(), said.toString());
        assertTrue(said.get(0).startsWith("line 6 of Wrenskerry 1, "), said.toString());
        // 520 bar above atmosphere over 2900 m: 52e6 / (9.80665 · 2900) is 1828 kg/m³.
        for (String part : List.of("521.0 bara", "at 2900.0 m", "1828 kg/m³", "perhaps a spike")) {
            assertTrue(said.get(0).contains(part), part + " in " + said);
        }
    }

    @Test
    void whatTheCaseRejectsIsLeftOut() throws Exception {
        WellCase well = read(List.of(), HEADING + String.join("", SPIKED).replace("520.0,good", "520.0,no seal"));
        assertEquals(8, points(well).size());
        assertEquals(List.of("line 6 of Wrenskerry 1 is left out: is flagged as rejected."), said(well));
    }

    @Test
    void aStepOfTheRockIsNoSpike() throws Exception {
        String steps = Stream.of(2600, 2650, 2700, 2750, 2800, 2850, 2900, 2950, 3000, 3050)
                .map(z -> point(String.valueOf(z), String.valueOf((z < 2800 ? 1150 : 1450) * 9.80665 * z / 1e5)))
                .collect(Collectors.joining());
        assertEquals(List.of(), said(read(List.of(), HEADING + steps)));
    }

    @Test
    void theOrderOfDepthsMakesNoDifference() throws Exception {
        List<String> turned = Arrays.asList(SPIKED.toArray(new String[0]));
        WellCase sorted = read(List.of(), HEADING + String.join("", SPIKED));
        Collections.reverse(turned);
        WellCase unsorted = read(List.of(), HEADING + String.join("", turned));
        Collections.swap(turned, 0, 6);
        WellCase mixed = read(List.of(), HEADING + String.join("", turned));
        assertEquals(1, said(sorted).size());
        assertEquals(said(sorted), said(unsorted), "the spike is in the middle line either way");
        assertEquals(
                sorted.earth().porePressure().orElseThrow().likely(),
                unsorted.earth().porePressure().orElseThrow().likely());
        assertEquals(
                sorted.earth().porePressure().orElseThrow().likely(),
                mixed.earth().porePressure().orElseThrow().likely());
    }
}
