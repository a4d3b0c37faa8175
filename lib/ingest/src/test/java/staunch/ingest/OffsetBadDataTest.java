package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
                                CASE + ":114: offset_evidence.tables[4].depth.unit: \"bar\" is not a unit of depth",
                                "1: pressure [bar]: cannot be in \"m\"",
                                "1: tvd [m]: cannot be in \"bar\"")),
                Arguments.of(
                        "columns changed over, in units that fit",
                        List.of(
                                depth,
                                "depth: {column: \"pressure [bar]\", unit: m, kind: vertical, below: datum}\n"
                                        + "      pressure: {column: \"tvd [m]\""),
                        HEADING + point("4889", "424.0"),
                        List.of("2: tvd [m]: \"4889\" bar makes 4890.0 bara at 424.0 m, above ")),
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
                        List.of("2: pressure [bar]: \"-4.0\" bar is negative; give")),
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

    // --- Slips that no single number gives away

    private static final Path LAND = Cases.ROOT.resolve("data/quillmarsh-1");
    private static final String LEAK_OFF = "leak-off.csv";
    private static final String LOSSES = "losses.csv";

    private static String bar(String depth, String pressure) {
        return HEADING + point(depth, pressure);
    }

    private static String sg(String density) {
        return "well;name;tvd [m];kind;pressure [sg];source;place\nWrenskerry 1;;1922;LOT;" + density + ";;\n";
    }

    private static String psi(String depth, String pressure) {
        return "well,name,tvd [ft],pressure [psi],quality,source,place\nQuillmarsh South 3,," + depth + "," + pressure
                + ",good,,\n";
    }

    private static String ppg(String density) {
        return "well,name,tvd [ft],kind,pressure [ppg],source,place\nQuillmarsh South 3,,9393,LOT," + density + ",,\n";
    }

    private static String loss(String density) {
        return "well,name,tvd [ft],ecd [ppg],source,place\nQuillmarsh South 3,,9400," + density + ",,\n";
    }

    private WellCase handIn(Path well, Map<String, byte[]> files) throws IOException, CaseFaults {
        Path drop = Files.createDirectory(directory.resolve("drop"));
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Files.write(drop.resolve(file.getKey()), file.getValue());
        }
        return CaseReader.read(well, List.of(drop));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /**
     * What a number would be in another unit is arithmetic: 12.5 ppg · 119.8264 kg/m³ · 9.80665 m/s² · 2889 m and one
     * atmosphere are 425.4 bara; 6150 psi are 424.0 bar; 1.77 sg over 9393 ft and one atmosphere are 7222 psia.
     */
    static Stream<Arguments> slips() {
        String check = ": check the unit of the column";
        String none = "check it, its unit and its depth";
        String tenth = " at 2889.0 m, below 29.3 bara, a tenth of what water weighs there; ";
        String above = " at 2889.0 m, above 585.6 bara, the overburden there and 5 % on it; ";
        String stress = ", from the pore pressure to twice the effective stress above it; ";
        String metric = " at 1922.0 m, outside 213.4 bara to 468.5 bara" + stress;
        String field = " at 9393 ft, outside 5065 psia to 12995 psia" + stress;
        String number = " is not a number; write the number alone, in bar, or name it as a sign for a missing value";
        String filler = " bar lies below 0 bara; name it as a sign for a missing value, if it is one";
        String p = "pressure [bar]: ";
        return Stream.of(
                // formation pressures, bar
                slip(
                        SUBSEA,
                        bar("2889", "12.5"),
                        p,
                        "\"12.5\" bar makes 13.5 bara" + tenth + "it would be in ppg 425.4 bara" + check),
                slip(
                        SUBSEA,
                        bar("2889", "1.45"),
                        p,
                        "\"1.45\" bar makes 2.5 bara" + tenth + "it would be in sg 411.8 bara" + check),
                slip(SUBSEA, bar("2889", "0"), p, "\"0\" bar makes 1.0 bara" + tenth + none),
                slip(
                        SUBSEA,
                        bar("2889", "6150"),
                        p,
                        "\"6150\" bar makes 6151.0 bara" + above + "it would be in psi 425.0 bara" + check),
                slip(
                        SUBSEA,
                        bar("2889", "42400"),
                        p,
                        "\"42400\" bar makes 42401.0 bara" + above + "it would be in kPa 425.0 bara" + check),
                slip(SUBSEA, bar("2889", "760"), p, "\"760\" bar makes 761.0 bara" + above + none),
                slip(SUBSEA, bar("2889", "-424"), p, "\"-424\" bar lies below 0 bara; check it and its unit"),
                slip(SUBSEA, bar("2889", "-999.25"), p, "\"-999.25\"" + filler),
                slip(SUBSEA, bar("2889", "-9999"), p, "\"-9999\"" + filler),
                slip(SUBSEA, bar("2889", "N/A"), p, "\"N/A\"" + number),
                slip(SUBSEA, bar("2889", "NaN"), p, "\"NaN\"" + number),
                slip(SUBSEA, bar("2889", "1e400"), p, "\"1e400\"" + number),
                slip(SUBSEA, bar("2889", "~424"), p, "\"~424\"" + number),
                slip(SUBSEA, bar("2889", "424 bar"), p, "\"424 bar\"" + number),
                slip(SUBSEA, bar("2889", "0x1F"), p, "\"0x1F\"" + number),
                slip(
                        SUBSEA,
                        bar("2889", "\"1,234.5\""),
                        p,
                        "\"1,234.5\" is not a number; write it without thousands separators"),
                slip(
                        SUBSEA,
                        bar("2889", "1'234"),
                        p,
                        "\"1'234\" is not a number; write it without thousands separators"),
                // depths
                slip(
                        SUBSEA,
                        bar("200", "424"),
                        "tvd [m]: ",
                        "\"200\" m lies at 200.0 m below the datum of Wrenskerry 1, not below its"
                                + " ground or seabed at 319.0 m; check the unit of the column, and what it is measured from"),
                slip(
                        SUBSEA,
                        bar("-2889", "424"),
                        "tvd [m]: ",
                        "vertical depth below the datum -2889 m is outside 1 m to 20000 m"),
                slip(
                        SUBSEA,
                        bar("320", "424"),
                        p,
                        "\"424\" bar makes 425.0 bara at 320.0 m, above 32.5 bara, the overburden there and"
                                + " 5 % on it; it would be in psi 30.2 bara" + check),
                // strength tests, sg
                slip(
                        SUBSEA,
                        sg("13,7"),
                        "pressure [sg]: ",
                        "\"13,7\" sg makes 2583.2 bara" + metric + "it would be in ppg 310.4 bara" + check),
                slip(
                        SUBSEA,
                        sg("1645"),
                        "pressure [sg]: ",
                        "\"1645\" sg makes 310056.9 bara" + metric + "it would be in kg/m3 311.1 bara" + check),
                slip(
                        SUBSEA,
                        sg("310"),
                        "pressure [sg]: ",
                        "\"310\" sg makes 58431.0 bara" + metric + "it would be in bar 311.0 bara" + check),
                slip(SUBSEA, sg("1,02"), "pressure [sg]: ", "\"1,02\" sg makes 193.3 bara" + metric + none),
                slip(SUBSEA, sg("2,6"), "pressure [sg]: ", "\"2,6\" sg makes 491.1 bara" + metric + none),
                slip(
                        SUBSEA,
                        sg("1.645"),
                        "pressure [sg]: ",
                        "\"1.645\" has a point where commas are decimal marks; check the format"),
                // the same in field units
                slip(
                        LAND,
                        ppg("1.77"),
                        "pressure [ppg]: ",
                        "\"1.77\" ppg makes 878 psia" + field + "it would be in sg 7222 psia" + check),
                slip(
                        LAND,
                        ppg("7200"),
                        "pressure [ppg]: ",
                        "\"7200\" ppg makes 3513241 psia" + field + "it would be in psi 7215 psia" + check),
                slip(
                        LAND,
                        ppg("0.767"),
                        "pressure [ppg]: ",
                        "\"0.767\" ppg makes 389 psia" + field + "it would be in psi/ft 7219 psia" + check),
                slip(
                        LAND,
                        psi("9842", "12.5"),
                        "pressure [psi]: ",
                        "\"12.5\" psi makes 27 psia at 9842 ft, below 441 psia, a tenth of what"
                                + " water weighs there; it would be in ppg 6406 psia" + check),
                slip(
                        LAND,
                        psi("9388", "34800"),
                        "pressure [psi]: ",
                        "\"34800\" psi makes 34815 psia at 9388 ft, above 9476 psia, the"
                                + " overburden there and 5 % on it; it would be in kPa 5062 psia" + check),
                slip(
                        LAND,
                        loss("1.79"),
                        "ecd [ppg]: ",
                        "\"1.79\" ppg makes 889 psia at 9400 ft, outside 2052 psia to 11018 psia, from the"
                                + " lightest to the heaviest mud; it would be in sg 7309 psia" + check),
                // wells
                slip(
                        SUBSEA,
                        bar("2889", "424").replace("Wrens", "wrens"),
                        "well: ",
                        "names the unknown well \"wrenskerry 1\"; did you mean \"Wrenskerry 1\"?"),
                slip(
                        SUBSEA,
                        bar("2889", "424").replace("kerry 1", "kery 1"),
                        "well: ",
                        "names the unknown well \"Wrenskery 1\"; did you mean \"Wrenskerry 1\"?"),
                slip(
                        SUBSEA,
                        bar("2889", "424").replace("kerry 1", "kerry 7"),
                        "well: ",
                        "names the unknown well \"Wrenskerry 7\"; add it to the"
                                + " wells, or check its spelling; known are Wrenskerry 1"));
    }

    private static Arguments slip(Path well, String table, String column, String message) {
        String file = table.contains("ecd") ? LOSSES : table.contains("kind") ? LEAK_OFF : POINTS;
        return Arguments.of(well, file, table, file + ":2: " + column + message);
    }

    @ParameterizedTest(name = "{3}")
    @MethodSource("slips")
    void aSlipIsNamedWithWhatWasWrittenWhatItMakesWhatIsAllowedAndWhatItMayBe(
            Path well, String file, String table, String message) {
        CaseFaults faults = assertThrows(CaseFaults.class, () -> handIn(well, Map.of(file, utf8(table))));
        assertEquals(
                List.of("drop/" + message),
                faults.faults().stream().map(CaseFault::text).toList());
    }

    static Stream<Arguments> files() {
        String good = bar("2889", "424");
        String none =
                ":1: has none of the columns well, tvd [m], pressure [bar], quality, name, source, place; its first"
                        + " line reads \"";
        String check = "\": check the delimiter, and whether that is the heading";
        String heading = HEADING.strip();
        return Stream.of(
                Arguments.of(utf8(""), ": is empty; fetch it again"),
                Arguments.of(utf8(" \n\n"), none + check),
                Arguments.of(utf8(good.replace(',', ';')), none + heading.replace(',', ';') + check),
                Arguments.of(utf8(good.replace(',', '\t')), none + heading.replace(",", "<tab>") + check),
                Arguments.of(utf8("<html>Sign in</html>"), none + "<html>Sign in</html>" + check),
                Arguments.of(
                        new byte[] {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0, 0, 0, 0, 0},
                        ": is binary, perhaps an old .xls or a locked workbook; save it as .xlsx or CSV"),
                Arguments.of(
                        utf8(good.replace("1,,", "1,\"a,")),
                        ":2: is not CSV: a quoted cell is not closed or goes on behind its quote; check the quotes"),
                Arguments.of(
                        utf8(good.replace("tvd [m]", "tvd")),
                        ":1: tvd [m]: is not a column of the table; its columns are "
                                + heading.replace("tvd [m]", "tvd").replace(",", ", ")),
                Arguments.of(
                        utf8(HEADING
                                + IntStream.range(0, 2001)
                                        .mapToObj(i -> point(String.valueOf(2500 + i / 10.0), "400"))
                                        .collect(Collectors.joining())),
                        ": holds 2001 readings, more than 2000; thin it out: each is weighed against every other"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("files")
    void aFileThatIsNoTableIsRefusedWithOneMessage(byte[] table, String message) {
        CaseFaults faults = assertThrows(CaseFaults.class, () -> handIn(SUBSEA, Map.of(POINTS, table)));
        assertEquals(
                List.of("drop/" + POINTS + message),
                faults.faults().stream().map(CaseFault::text).toList());
    }

    static Stream<byte[]> encodings() {
        String text = HEADING + "Wrenskerry 1\u00a0 ,M\u00fcller,2889,424,good,,\n";
        byte[] little = ("\ufeff" + text).getBytes(StandardCharsets.UTF_16LE);
        return Stream.of(
                utf8(text),
                utf8("\ufeff" + text),
                little,
                text.getBytes(StandardCharsets.UTF_16BE),
                text.getBytes(Charset.forName("windows-1252")),
                utf8(text.replace("\n", "\r\n")),
                utf8(text.replace('\n', '\r')));
    }

    @ParameterizedTest
    @MethodSource("encodings")
    void theSameTableIsReadInAnyUsualEncodingAndWithAnyEndsOfLines(byte[] table) throws Exception {
        List<PressurePoint> points = points(handIn(SUBSEA, Map.of(POINTS, table)));
        assertEquals(1, points.size());
        assertEquals("M\u00fcller", points.get(0).name());
    }

    @Test
    void whatIsHardToBelieveCountsAndIsSaid() throws Exception {
        WellCase well = handIn(
                SUBSEA, Map.of(POINTS, utf8(bar("2889", "42.4") + point("9478", "424")), LEAK_OFF, utf8(sg("2,05"))));
        assertEquals(2, points(well).size());
        assertEquals(
                List.of(
                        "line 2 of Wrenskerry 1, \"42.4\" bar makes 43.4 bara at 2889.0 m, below 145.8 bara, half of what"
                                + " water weighs there: the rock is much depleted, or the unit is another; it would be in MPa"
                                + " 425.0 bara: check the unit of the column. It counts.",
                        "line 3 of Wrenskerry 1, \"9478\" m lies at 9478.0 m below the datum of Wrenskerry 1, outside 319.0 m"
                                + " to 3490.0 m, where its pore pressure is given; in ft it would be 2888.9 m: check the unit"
                                + " of the column, and what it is measured from. It counts."),
                said(well));
        assertTrue(well.warnings().stream()
                .map(w -> w.text(UnitSystem.METRIC))
                .anyMatch(
                        t -> t.startsWith("line 2 of Wrenskerry 1, \"2,05\" sg makes 387.4 bara at 1922.0 m, above the"
                                + " overburden there of 340.9 bara")));
    }

    @Test
    void aTableWithoutRowsIsSaid() throws Exception {
        assertEquals(
                List.of("holds no rows below its heading: nothing of it counts."),
                said(handIn(SUBSEA, Map.of(POINTS, utf8(HEADING)))));
    }

    @Test
    void whatTwoDropsBothHoldCountsOnceAndTheOrderMakesNoDifference() throws Exception {
        Path one = Files.createDirectory(directory.resolve("one"));
        Path two = Files.createDirectory(directory.resolve("two"));
        Files.writeString(one.resolve(POINTS), bar("2889", "424") + point("3196", "469"));
        Files.writeString(
                two.resolve(POINTS),
                HEADING + "Wrenskerry 1,Named,2889.0,424.0,good,,\n" + point("3196", "470") + point("3000", "440"));
        WellCase forth = CaseReader.read(SUBSEA, List.of(one, two));
        assertEquals(4, points(forth).size());
        List<String> said = forth.warnings().stream()
                .filter(w -> w.subject().startsWith("two/"))
                .map(w -> w.text(UnitSystem.METRIC))
                .toList();
        assertEquals(
                List.of(
                        "line 3 of Wrenskerry 1 has 471.0 bara at 3196.0 m, where line 3 of one/formation-pressure.csv has"
                                + " 470.0 bara: perhaps the same twice; both count.",
                        "line 2 of Wrenskerry 1 is left out: is the same in well, depth and pressure as line 2 of"
                                + " one/formation-pressure.csv."),
                said);
        WellCase back = CaseReader.read(SUBSEA, List.of(two, one));
        assertEquals(
                forth.earth().porePressure().orElseThrow().likely(),
                back.earth().porePressure().orElseThrow().likely());
    }

    @Test
    void aDropHandsInItsOwnFilesAndNothingElse() throws Exception {
        Path outside = Files.writeString(directory.resolve("outside.csv"), bar("2889", "424"));
        Path drop = Files.createDirectory(directory.resolve("drop"));
        Files.createSymbolicLink(drop.resolve(POINTS), outside);
        Files.createSymbolicLink(drop.resolve(LEAK_OFF), directory.resolve("nowhere"));
        Files.createDirectory(drop.resolve("more"));
        Files.createDirectory(drop.resolve(".hidden"));
        CaseFaults faults = assertThrows(CaseFaults.class, () -> CaseReader.read(SUBSEA, List.of(drop)));
        assertEquals(
                List.of(
                        "drop/formation-pressure.csv: is a link that leaves the folder; copy the table itself into the folder",
                        "drop/leak-off.csv: is a link to a file that is not there, or may not be read; copy the table itself"
                                + " into the folder",
                        "drop/more: is a folder within the folder: what it holds is not read; hand it in as a folder of its"
                                + " own, or take it out"),
                faults.faults().stream().map(CaseFault::text).toList());
    }

    @Test
    void aNameThatIsAPathOpensNothing() {
        CaseFaults faults = assertThrows(
                CaseFaults.class,
                () -> read(List.of("drop: formation-pressure.csv", "drop: ../case/pore-pressure.csv"), HEADING));
        assertTrue(
                faults.faults()
                        .get(0)
                        .text()
                        .endsWith(
                                "\"../case/pore-pressure.csv\" is not the name of a file; give the name alone, as it stands in the"
                                        + " folder"),
                faults.getMessage());
    }
}
