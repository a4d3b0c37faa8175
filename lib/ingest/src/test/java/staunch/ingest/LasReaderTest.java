package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import staunch.units.InputFault;
import staunch.units.Warning;

class LasReaderTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "las");

    /** File, version, encoding, curves and rows of the log, tables: as counted in the files by eye and by grep. */
    private static final String READ = """
            1001178549.las 2.0 UTF-8 27 5 0
            6038187_v1.2.las 2.0 UTF-8 9 2732 0
            Curve-Param_Error_2_MS.LAS 3.0 windows-1252 0 0 2
            Curve-Param_Error_4_MS.LAS 3.0 UTF-8 0 0 2
            Curve-Param_Error_8_SS.las 3.0 UTF-8 10 201 0
            Curve-Param_Unknown_2_SS.LAS 3.0 UTF-8 0 0 1
            Good_File_SS.las 3.0 UTF-8 6 161 0
            Reshape_Error_2_SS.las 3.0 UTF-8 0 0 1
            Wellington_KGS-1-32-wDST2_LASv3.las 3.0 UTF-8 38 9341 8
            alog.las 1.2 UTF-8 9 24 0
            autodepthindex_FT.las 1.2 UTF-8 2 101 0
            autodepthindex_M_FT.las 1.2 UTF-8 2 101 0
            barebones.las 2.0 UTF-8 1 2 0
            blank_line.las 2.0 UTF-8 1 0 0
            colon_pick_end.las 2.0 UTF-8 8 3 0
            comma_decimal_mark.las 1.2 UTF-8 8 3 0
            data_characters.las 2.0 UTF-8 4 2 0
            duplicate_step.las 1.2 UTF-8 8 3 0
            encodings_cp1252.las 1.2 windows-1252 8 3 0
            encodings_utf16bebom.las 1.2 UTF-16BE 8 3 0
            encodings_utf16le.las 1.2 UTF-16LE 8 3 0
            encodings_utf8.las 1.2 UTF-8 8 3 0
            encodings_utf8wbom.las 1.2 UTF-8 8 3 0
            header_only.las 2.0 UTF-8 21 0 0
            index_null.las 2.0 UTF-8 4 3 0
            issue-264-dot-delimiter.las 1.2 UTF-8 5 3 0
            missing_a_section.las 2.0 UTF-8 1 0 0
            missing_null.las 1.2 UTF-8 8 3 0
            missing_wrap.las 1.2 UTF-8 8 3 0
            mnemonic_duplicate.las 1.2 UTF-8 8 3 0
            mnemonic_missing.las 1.2 UTF-8 8 3 0
            multi_channel.las 2.0 UTF-8 15 5 0
            null_policy_-999.25.las 1.2 UTF-8 8 3 0
            null_policy_ERR.las 1.2 UTF-8 8 3 0
            null_policy_runon.las 1.2 UTF-8 7 5 0
            sample.las 1.2 UTF-8 8 3 0
            sample_2.0.las 2.0 UTF-8 8 3 0
            sample_2.0_based.las 2.0 UTF-8 3 6 0
            sample_2.0_empty_other_section.las 2.0 UTF-8 8 3 0
            sample_2.0_minimal.las 2.0 UTF-8 8 2 0
            sample_2.0_tab_dlm.las 2.0 UTF-8 8 3 0
            sample_2.0_universal_newline.las 2.0 UTF-8 8 3 0
            sample_2.0_wrapped.las 2.0 UTF-8 36 2 0
            sample_2.0_wrong_stop_value.las 2.0 UTF-8 8 3 0
            sample_3.0.las 3.0 windows-1252 15 3 7
            sample_3.0_tab_dlm.las 3.0 UTF-8 15 3 7
            sample_TVD.las 1.2 UTF-8 8 3 0
            sample_bracketed_units.las 1.2 UTF-8 8 3 0
            sample_curve_api.las 1.2 UTF-8 8 3 0
            sample_cyrillic_depth_unit.las 1.2 UTF-8 8 3 0
            sample_minimal.las 1.2 UTF-8 8 2 0
            sample_rev.las 1.2 UTF-8 8 11 0
            sample_str_in_data.las 1.2 UTF-8 4 3 0
            sample_wrapped.las 1.2 UTF-8 36 5 0
            single_step_20.las 2.0 UTF-8 8 1 0
            skip_data_section_comments.las 1.2 UTF-8 6 4 0
            sparse_curves.las 1.2 UTF-8 8 3 0
            """;

    /** File and message, for the files that break the standard in a way that has no plain meaning. */
    private static final String REFUSED = """
            0-d_Array_2_MS.las|0-d_Array_2_MS.las:158: section ~Curve Information: is given twice
            dodgy_param_sect.las|dodgy_param_sect.las:31: section ~PARAMETER INFORMATION: "DEPTH     DT       RHOB
            excess_curves.las|excess_curves.las:27: section ~A DEPTH         TVD          VS     Gamma: has 4 values where 6
            not_a_las_file.las|not_a_las_file.las:1: does not begin a section with ~; this is not a LAS file
            """;

    @TempDir
    Path folder;

    private static LasFile read(String file) throws DataFileFault {
        return LasReader.read(FOLDER.resolve(file));
    }

    private LasFile written(String text) throws IOException, DataFileFault {
        return LasReader.read(Files.writeString(folder.resolve("log.las"), text));
    }

    private String faultOf(String text) {
        return assertThrows(DataFileFault.class, () -> written(text)).getMessage();
    }

    @Test
    void everyFileHasItsOutcome() throws IOException {
        Set<String> expected = new TreeSet<>();
        READ.lines().forEach(l -> expected.add(l.split(" ")[0]));
        REFUSED.lines().forEach(l -> expected.add(l.split("\\|")[0]));
        try (Stream<Path> files = Files.list(FOLDER)) {
            Set<String> found = files.map(p -> p.getFileName().toString())
                    .filter(n -> !n.equals("SOURCE.txt"))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(expected, found);
        }
    }

    @TestFactory
    Stream<DynamicTest> readable() {
        return READ.lines()
                .map(line -> line.split(" "))
                .map(want -> DynamicTest.dynamicTest(want[0], () -> {
                    LasFile las = read(want[0]);
                    assertEquals(want[1], las.version().title());
                    assertEquals(want[2], las.encoding());
                    assertEquals(want[3], Integer.toString(las.curves().size()), "curves");
                    assertEquals(want[4], Integer.toString(las.rows()), "rows");
                    assertEquals(want[5], Integer.toString(las.tables().size()), "tables");
                    for (LasCurve curve : las.curves()) {
                        assertEquals(las.rows(), curve.rows(), curve.name());
                    }
                    if (!want[0].equals("null_policy_runon.las")) {
                        checkAgainstText(las, FOLDER.resolve(want[0]));
                    }
                }));
    }

    @TestFactory
    Stream<DynamicTest> refused() {
        return REFUSED.lines()
                .map(line -> line.split("\\|"))
                .map(want -> DynamicTest.dynamicTest(want[0], () -> {
                    DataFileFault fault = assertThrows(DataFileFault.class, () -> read(want[0]));
                    assertTrue(fault.getMessage().startsWith(want[1]), fault.getMessage());
                    assertEquals(1, fault.problems().size());
                }));
    }

    /** Reads the values of the log once more, with nothing but the splitting of strings, and compares every one. */
    private static void checkAgainstText(LasFile las, Path file) throws IOException {
        String text = new String(Files.readAllBytes(file), Charset.forName(las.encoding()));
        String nullValue = "-999.25";
        List<String> cells = new ArrayList<>();
        boolean data = false;
        for (String line : text.split("\r\n|\r|\n")) {
            String plain = line.replace("\ufeff", "").strip();
            if (plain.startsWith("NULL")) {
                nullValue = plain.replaceAll("^NULL\\s*\\.\\s*", "").replaceAll("\\s*:.*", "");
            }
            if (plain.startsWith("~")) {
                data = plain.matches("(?i)~(a|a\\s.*|asc.*|log_data.*)");
            } else if (data && !plain.isEmpty() && !plain.startsWith("#")) {
                String by =
                        switch (las.delimiter()) {
                            case SPACE -> "\\s+";
                            case TAB -> "\\s*\t\\s*";
                            case COMMA -> "\\s*,\\s*";
                        };
                cells.addAll(List.of(plain.split(by)));
            }
        }
        assertEquals(las.curves().size() * las.rows(), cells.size(), "values");
        for (int i = 0; i < cells.size(); i++) {
            LasCurve curve = las.curves().get(i % las.curves().size());
            int row = i / las.curves().size();
            String cell = cells.get(i);
            String where = curve.name() + " row " + row;
            if (curve.isText()) {
                assertEquals(Optional.of(cell), curve.text(row), where);
                continue;
            }
            boolean isNull = cell.equals("ERR")
                    || i % las.curves().size() > 0
                            && new BigDecimal(cell.replace(',', '.')).compareTo(new BigDecimal(nullValue)) == 0;
            OptionalDouble expected =
                    isNull ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell.replace(',', '.')));
            assertEquals(expected, curve.number(row), where);
            assertEquals(isNull, curve.isMissing(row), where);
        }
    }

    private static double at(LasFile las, String curve, int row) {
        return las.curve(curve).number(row).orElseThrow();
    }

    @Test
    void wellSectionOfVersionOneHasItsTextAfterTheColon() throws DataFileFault {
        LasFile las = read("sample.las");
        assertEquals(
                "# ANY OIL COMPANY LTD.", las.wellItem("COMP").orElseThrow().value());
        assertEquals("COMPANY", las.wellItem("COMP").orElseThrow().description());
        assertEquals(1670.0, las.wellItem("STRT").orElseThrow().number().orElseThrow());
        assertEquals("M", las.wellItem("STRT").orElseThrow().unit());
        assertEquals(35.5, las.parameter("BHT").orElseThrow().number().orElseThrow());
        assertEquals(
                "ANY OIL COMPANY INC.",
                read("sample_2.0.las").wellItem("COMP").orElseThrow().value());
    }

    @Test
    void oddNamesUnitsAndColons() throws DataFileFault {
        LasFile dots = read("issue-264-dot-delimiter.las");
        assertEquals(
                List.of("DEPT", "Speed", "Cond.", "Gamma", "I. Res."),
                dots.curves().stream().map(LasCurve::name).toList());
        assertEquals("MS/M", dots.curve("Cond.").unit());
        assertEquals("dB.mW", read("header_only.las").curve("F1_S11_REF_AMP").unit());
        assertEquals("US/M", read("sample_bracketed_units.las").curve("DT").unit());
        assertEquals(
                "метер", read("sample_cyrillic_depth_unit.las").curve("DEPT").unit());
        LasItem logged = read("colon_pick_end.las").parameter("TIML").orElseThrow();
        assertEquals("hh:mm", logged.unit());
        assertEquals("23:15 23-JAN-2001", logged.value());
        assertEquals("Time Logger At Bottom:", logged.description());
        assertEquals(
                2710.1,
                read("comma_decimal_mark.las")
                        .parameter("MDEN")
                        .orElseThrow()
                        .number()
                        .orElseThrow());
    }

    @Test
    void duplicateAndMissingMnemonics() throws DataFileFault {
        LasFile las = read("mnemonic_duplicate.las");
        assertEquals(123.45, at(las, "SFLU:1", 2));
        assertEquals(125.45, at(las, "SFLU:2", 2));
        String text = assertThrows(InputFault.class, () -> las.curve("SFLU")).getMessage();
        assertTrue(text.startsWith("curve SFLU stands for several curves"), text);
        assertTrue(text.contains("SFLU:1, SFLU:2"), text);
        assertEquals("OHMM", read("mnemonic_missing.las").curve("UNKNOWN").unit());
    }

    @Test
    void numbersThatRunIntoEachOther() throws DataFileFault {
        LasFile las = read("null_policy_runon.las");
        assertEquals(7.020, at(las, "C04", 1));
        assertEquals(101130.188, at(las, "C05", 1));
        assertEquals(10.560, at(las, "C06", 1));
        assertEquals(-19508.961, at(las, "C05", 2));
        assertEquals(7.345, at(las, "C04", 3));
        assertEquals(116238.453, at(las, "C05", 3));
        assertEquals(4182.679, at(las, "C05", 4));
    }

    @Test
    void aNullValueInTheIndexIsADepth() throws DataFileFault {
        LasFile las = read("index_null.las");
        assertEquals(999.25, at(las, "DEPT", 1));
        assertTrue(las.curve("DT").isMissing(0));
    }

    @Test
    void sectionsOfVersionThree() throws DataFileFault {
        for (String file : List.of("sample_3.0.las", "sample_3.0_tab_dlm.las")) {
            LasFile las = read(file);
            assertEquals(2.85e12, at(las, "YME", 2));
            assertEquals(Optional.of("DOLOMITE WI/VUGS"), las.curve("CDES").text(0));
            assertEquals(17, at(las, "NMR[5]", 2));
            assertEquals("NMAT_Depth[2]", las.parameters().get(8).association());
            assertEquals("DD/MM/YYYY", las.parameters().get(12).format());
            LasTable test = las.table("Test").orElseThrow();
            assertEquals(21451, test.curve("FSIP").number(1).orElseThrow());
            assertEquals("KPAA", test.curve("FSIP").unit());
            assertEquals(Optional.of("Oil to surface"), test.curve("DDES").text(1));
            LasTable core = las.table("Core[2]").orElseThrow();
            assertEquals(675, core.curve("CORET").number(2).orElseThrow());
            assertEquals(Optional.of("Debris only"), core.curve("CDES").text(2));
            assertEquals(
                    571.9,
                    las.table("Inclinometry")
                            .orElseThrow()
                            .curve("TVD")
                            .number(6)
                            .orElseThrow());
            assertEquals(
                    Optional.of("Viking"),
                    las.table("tops").orElseThrow().curve("TOPN").text(0));
        }
    }

    @Test
    void drillStemTestsOfALongFile() throws DataFileFault {
        LasFile las = read("Wellington_KGS-1-32-wDST2_LASv3.las");
        assertEquals("ppg", las.parameter("MUDD").orElseThrow().unit());
        assertEquals(9.000001, las.parameter("MUDD").orElseThrow().number().orElseThrow());
        assertEquals(2.2575, at(las, "RHOB", 0));
        LasTable test = las.table("Test[1]").orElseThrow();
        assertEquals(
                3664.0,
                LasFile.item(test.parameters(), "STRT").orElseThrow().number().orElseThrow());
        assertEquals(Optional.of("MCW 40%m 60%w"), test.curve("_T_DESC").text(0));
        assertTrue(test.curve("_T_ID").isMissing(0));
        assertEquals(0.934, test.curve("_T_VOL").number(1).orElseThrow());
        LasTable tops = las.table("Tops").orElseThrow();
        assertEquals(Optional.of("Heebner Shale"), tops.curve("TOPN").text(0));
        assertEquals(4065.3, tops.curve("TOPT").number(11).orElseThrow());
        LasTable brine = las.table("IQ_Brine").orElseThrow();
        assertEquals(1610, brine.curve("SO4").number(2).orElseThrow());
    }

    @Test
    void anglePressureAndStationsOfTheVersionThreeSamples() throws DataFileFault {
        LasTable phase = read("Curve-Param_Error_2_MS.LAS").table("Phase_A").orElseThrow();
        assertEquals(109, phase.curve("ALONG_DL").number(0).orElseThrow());
        LasTable drilling = read("Reshape_Error_2_SS.las").table("Drilling").orElseThrow();
        assertEquals(
                16912.1441, drilling.curve("Total_Vertical_Depth").number(0).orElseThrow());
        assertEquals(93, drilling.rows());
        assertEquals(881.9649, drilling.curve("Weight_On_Hook").number(0).orElseThrow());
        LasTable time = read("Curve-Param_Unknown_2_SS.LAS").table("Drilling").orElseThrow();
        assertEquals(10, time.curve("ETIM").number(1).orElseThrow());
    }

    @Test
    void warningsSayHowAFileWasRead() throws DataFileFault {
        assertTrue(
                texts(read("comma_decimal_mark.las")).contains("commas as decimal marks: 1 times, first in line 45"));
        assertTrue(texts(read("missing_null.las")).contains("does not state NULL; −999.25 read as missing"));
        assertTrue(
                texts(read("sample_2.0_wrong_stop_value.las")).contains("Stated as 1660.0000, but the last row has"));
        assertEquals(List.of(), read("sample_2.0.las").warnings());
    }

    @Test
    void anIntervalOfVersionThreeIsNoDecimalComma() throws DataFileFault {
        LasItem interval = read("sample_3.0.las").parameter("NMAT_Depth[1]").orElseThrow();
        assertEquals("500,1500", interval.value());
        assertEquals(OptionalDouble.empty(), interval.number());
    }

    @Test
    void anIndexOutOfOrderIsNamed() throws IOException, DataFileFault {
        assertTrue(texts(read("alog.las")).contains("The index repeats itself or turns back in"));
        LasFile las = written(HEADER.replace("~C", "STRT.FT 1 :\n~C") + "1 1\n2 1\n2 1\n1.5 1\n3 1\n");
        assertTrue(texts(las).contains("turns back in 2 rows, first at 2.0"), texts(las));
        assertTrue(texts(las).contains("Stated in FT, while the index is in M"), texts(las));
    }

    @Test
    void manyCurvesOfFewRowsStaySmall() throws IOException, DataFileFault {
        StringBuilder text = new StringBuilder("~C\n");
        StringBuilder row = new StringBuilder("~A\n");
        for (int i = 0; i < 50_000; i++) {
            text.append("C").append(i).append(". :\n");
            row.append(i).append(' ');
        }
        assertEquals(49_999, at(written(text.append(row).append('\n').toString()), "C49999", 0));
    }

    private static String texts(LasFile las) {
        return las.warnings().stream().map(Warning::text).collect(Collectors.joining("\n"));
    }

    private static final String HEADER = """
            ~V
            VERS. 2.0 :
            WRAP. NO :
            ~W
            NULL. -999.25 :
            ~C
            DEPT.M :
            DT.US/M :
            ~A
            """;

    @Test
    void badDataNamesLineSectionAndCurve() {
        assertTrue(faultOf(HEADER + "1 2\n2 abc\n")
                .startsWith("log.las:11: section ~A: \"abc\" is not a number in curve DT"));
        assertTrue(faultOf(HEADER + "1 2\n2\n").startsWith("log.las:11: section ~A: has 1 value where 2 curves"));
        assertTrue(faultOf(HEADER + "1 2 3\n").startsWith("log.las:10: section ~A: has 3 values where 2 curves"));
        assertTrue(faultOf(HEADER + "ERR 2\n").startsWith("log.las:10: section ~A: has no index"));
        assertTrue(faultOf(HEADER + "1 1,234.5\n").contains("\"1,234.5\" is not a number in curve DT"));
        assertTrue(faultOf("~V\nVERS. 2.5 :\n").startsWith("log.las:2: section ~V: version \"2.5\" is not known"));
        assertTrue(faultOf("~V\nVERS. 2.0 :\nWRAP. MAYBE :\n").startsWith("log.las:3: section ~V: WRAP is \"MAYBE\""));
        assertTrue(faultOf("~V\nVERS. 3.0 :\nDLM. SEMICOLON :\n").startsWith("log.las:3: section ~V: DLM is"));
        assertTrue(faultOf("~W\nNULL. none :\n").startsWith("log.las:2: section ~W: NULL is \"none\", not a number"));
        assertTrue(
                faultOf("~V\nVERS. 2.0 :\n~A\n1 2\n").startsWith("log.las:3: section ~A: holds data whose curves no"));
        assertTrue(faultOf("hello\n").startsWith("log.las:1: does not begin a section"));
        assertTrue(faultOf("\n\n").startsWith("log.las: has no section"));
    }

    @Test
    void wrappedRowsMustFit() throws IOException, DataFileFault {
        String header = HEADER.replace("WRAP. NO", "WRAP. YES");
        assertEquals(4, at(written(header + "1\n2\n3\n4\n"), "DT", 1));
        assertTrue(faultOf(header + "1\n2 3\n")
                .startsWith("log.las:11: section ~A: brings the row begun in line 10 to 3"));
        assertTrue(faultOf(header + "1\n2\n3\n")
                .startsWith("log.las:12: section ~A: begins a row that ends after 1 values"));
    }

    @Test
    void numbersBeyondBelief() throws IOException, DataFileFault {
        LasFile las = written(HEADER + "1 1e30\n2 -1.0E+31\n3 1e400\n4 5\n");
        assertEquals(3, las.curve("DT").missing());
        assertEquals(5, at(las, "DT", 3));
        assertTrue(texts(las).contains("numbers of 1e30 or more, taken as missing: 3 times"));
    }

    @Test
    void commasWithoutADelimiterStated() throws IOException, DataFileFault {
        LasFile las = written(HEADER + "1.5, 2.5\n2.5, 3.5\n3.5,\n");
        assertEquals(3.5, at(las, "DT", 1));
        assertTrue(las.curve("DT").isMissing(2));
    }

    @Test
    void numbersAreReadToTheLastDigit() throws IOException, DataFileFault {
        List<String> numbers = List.of(
                "0.1",
                "-0.0",
                "123456789.123456789",
                "1e-5",
                "2.2250738585072014E-308",
                "1.7976931348623157e29",
                "9007199254740993",
                ".5",
                "5.",
                "+7",
                "0.000000000000000000000000123",
                "123456789012345678901234567");
        StringBuilder rows = new StringBuilder(HEADER);
        numbers.forEach(n -> rows.append("1 ").append(n).append('\n'));
        LasFile las = written(rows.toString());
        for (int i = 0; i < numbers.size(); i++) {
            assertEquals(Double.parseDouble(numbers.get(i)), at(las, "DT", i), numbers.get(i));
        }
    }

    @Test
    void filesThatAreNoLogs() throws IOException {
        assertEquals(
                "cloud.las: is a LiDAR point cloud, not a well log; give the log; both end in .las",
                refusedBytes("cloud.las", "LASF\0\0\1\2".getBytes(StandardCharsets.ISO_8859_1)));
        assertTrue(refusedBytes("a.las", new byte[] {'P', 'K', 3, 4, 0}).startsWith("a.las: is a compressed file"));
        assertTrue(refusedBytes("a.las", new byte[] {1, 0, 0, 0, 2, 0, 7}).startsWith("a.las: is binary"));
        assertTrue(refusedBytes("a.las", new byte[0]).startsWith("a.las: is empty"));
        String missing = assertThrows(DataFileFault.class, () -> LasReader.read(folder.resolve("none.las")))
                .getMessage();
        assertTrue(missing.startsWith("none.las: does not exist"), missing);
        String longLine = faultOf("~V\n" + "x".repeat(LasText.LONGEST_LINE + 1));
        assertTrue(longLine.startsWith("log.las:2: section ~V: has a line of more than 1000000"), longLine);
    }

    private String refusedBytes(String name, byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve(name), bytes);
        return assertThrows(DataFileFault.class, () -> LasReader.read(file)).getMessage();
    }

    @Test
    void everyLineEndCountsOnce() throws IOException, DataFileFault {
        LasFile las = written(HEADER.replace("\n", "\r") + "1 2\r\n3 4\n\n5 6");
        assertEquals(3, las.rows());
        assertTrue(faultOf(HEADER.replace("\n", "\r") + "1 2\r\n3 x").startsWith("log.las:11:"));
        assertFalse(las.curve("DT").isText());
    }
}
