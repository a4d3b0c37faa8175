package staunch.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.design.CaseHeader;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** What is written is read back by general libraries. */
class TableExportTest {
    private record Line(String name, OptionalDouble pressure) {}

    private static final List<Line> LINES = List.of(
            new Line("=HYPERLINK(\"http://example.org\")", OptionalDouble.of(6_894_757.293168)),
            new Line("+1, and a \"quote\"", OptionalDouble.empty()),
            new Line("−5 \u0007 m³\nnext", OptionalDouble.of(-1000)),
            new Line("@SUM(A1)", OptionalDouble.of(0)),
            new Line("-2", OptionalDouble.of(1e-9)),
            new Line("+3 psi", OptionalDouble.of(-0.0)),
            new Line(" =1+1", OptionalDouble.of(2 * 6_894_757.293168 / 3)),
            new Line("lone \uD83D and \uFFFE", OptionalDouble.of(Double.POSITIVE_INFINITY)));

    private static ResultTable table(String name) {
        return new Rows<>(LINES, UnitSystem.FIELD)
                .text("Name", Line::name)
                .optional("Pressure", Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR, Line::pressure)
                .table(name, "What it says.");
    }

    private static CaseHeader header() {
        return new CaseHeader(
                "=1+1",
                "Title",
                Optional.empty(),
                Optional.of("2026-03-05"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of("Invented"));
    }

    private static List<Sheet> written(List<CaseTables.Entry> entries, ReadableWorkbook[] keep) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TableExport.workbook(TableBook.of(header(), UnitSystem.FIELD, entries, List.of()), out);
        keep[0] = new ReadableWorkbook(new ByteArrayInputStream(out.toByteArray()));
        return keep[0].getSheets().toList();
    }

    @Test
    void aWorkbookHoldsRealNumbersAndNoFormulas() throws IOException {
        ReadableWorkbook[] book = new ReadableWorkbook[1];
        List<Sheet> sheets = written(List.of(new CaseTables.Entry("", "", table("Pressures"))), book);
        assertEquals(
                List.of("Contents", "Pressures"),
                sheets.stream().map(Sheet::getName).toList());
        List<Row> rows = sheets.get(1).read();
        assertEquals("Name", rows.get(0).getCellText(0));
        assertEquals("Pressure [psi]", rows.get(0).getCellText(1));
        assertEquals(CellType.NUMBER, rows.get(1).getCell(1).getType());
        // 6 894 757.293168 Pa is 1000 psi by the definition of the pound-force and the inch.
        assertEquals(1000, rows.get(1).getCell(1).asNumber().doubleValue(), 1e-9);
        assertTrue(rows.get(2).getOptionalCell(1).isEmpty()
                || rows.get(2).getCell(1).getType() == CellType.EMPTY);
        for (Sheet sheet : sheets) {
            try (Stream<Row> all = sheet.openStream()) {
                all.flatMap(Row::stream)
                        .forEach(c -> assertTrue(
                                c == null || (c.getType() != CellType.FORMULA && c.getFormula() == null),
                                String.valueOf(c)));
            }
        }
        assertEquals("=HYPERLINK(\"http://example.org\")", rows.get(1).getCellText(0));
        assertEquals("−5   m³\nnext", rows.get(3).getCellText(0));
        assertEquals(0.0, rows.get(6).getCell(1).asNumber().doubleValue());
        assertEquals("lone   and  ", rows.get(8).getCellText(0));
        assertEquals(CellType.STRING, rows.get(8).getCell(1).getType(), "no number that is not finite");
        List<Row> contents = sheets.get(0).read();
        assertEquals("=1+1", contents.get(0).getCellText(1));
        assertTrue(contents.stream().anyMatch(r -> r.getCellText(1).contains("competent person")));
        book[0].close();
    }

    @Test
    void sheetNamesAreShortDistinctAndWithoutForbiddenCharacters() throws IOException {
        List<CaseTables.Entry> entries = List.of(
                new CaseTables.Entry(
                        "Base", "12 1/4 in", table("Kick tolerance along the section, drilled and swabbed")),
                new CaseTables.Entry(
                        "Base", "12 1/4 in", table("Kick tolerance along the section, drilled and swabbed")),
                new CaseTables.Entry("Deep [13 3/8]", "12 1/4 in", table("Kick: tolerance?")),
                new CaseTables.Entry("", "", table("Contents")),
                new CaseTables.Entry("", "", table("History")),
                new CaseTables.Entry("", "", table("'Quoted' by the user's hand''")),
                new CaseTables.Entry("", "", table("'")),
                new CaseTables.Entry(
                        "", "", table("Highest pressures of the \uD83D\uDE00\uD83D\uDE00\uD83D\uDE00\uD83D\uDE00")));
        ReadableWorkbook[] book = new ReadableWorkbook[1];
        List<String> names = written(entries, book).stream().map(Sheet::getName).toList();
        assertEquals(9, names.stream().map(String::toLowerCase).distinct().count(), names.toString());
        assertEquals("A 12 1⁄4 in Kick tolerance", names.get(1));
        assertEquals("A 12 1⁄4 in Kick tolerance 2", names.get(2));
        assertEquals("B 12 1⁄4 in Kick tolerance", names.get(3));
        assertEquals("Quoted' by the user's hand", names.get(6));
        for (String name : names) {
            assertTrue(name.length() <= 31 && name.matches("[^\\[\\]:*?/\\\\]+"), name);
            assertTrue(!name.startsWith("'") && !name.endsWith("'") && !name.equalsIgnoreCase("history"), name);
            assertTrue(StandardCharsets.UTF_8.newEncoder().canEncode(name), name);
        }
        List<String> files = TableExport.fileNames(entries);
        assertEquals(8, files.stream().distinct().count(), files.toString());
        assertTrue(files.stream().allMatch(f -> f.matches("[a-z0-9][a-z0-9-]*\\.csv") && !f.equals("contents.csv")));
        assertEquals("deep-13-3-8-12-1-4-in-kick-tolerance.csv", files.get(2));
        book[0].close();
    }

    @Test
    void csvIsReadBackByAnotherReaderAndHoldsNothingThatRuns() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TableExport.csv(table("Pressures"), out);
        List<CSVRecord> rows = CSVFormat.RFC4180
                .parse(new StringReader(out.toString(StandardCharsets.UTF_8)))
                .getRecords();
        assertEquals(List.of("Name", "Pressure [psi]"), rows.get(0).toList());
        assertEquals("'=HYPERLINK(\"http://example.org\")", rows.get(1).get(0));
        assertEquals(1000, Double.parseDouble(rows.get(1).get(1)), 1e-9);
        assertEquals(List.of("'+1, and a \"quote\"", ""), rows.get(2).toList());
        assertEquals("'@SUM(A1)", rows.get(4).get(0));
        // A plain number runs nothing, and an apostrophe would keep it from being read as one.
        assertEquals("-2", rows.get(5).get(0));
        assertEquals(List.of("'+3 psi", "0.0"), rows.get(6).toList());
        assertEquals("' =1+1", rows.get(7).get(0));
        assertEquals("666.666667", rows.get(7).get(1));
        assertEquals("not finite", rows.get(8).get(1));
        // A negative number stays a number.
        assertTrue(Double.parseDouble(rows.get(3).get(1)) < 0);
    }

    @Test
    void whatCouldNotBeComputedStandsInTheContents() throws IOException {
        TableBook book = TableBook.of(
                header(),
                UnitSystem.FIELD,
                List.of(new CaseTables.Entry("Base", "", table("Pressures"))),
                List.of(new TableBook.Missing("Base", "6 in", "sensitivity", "=a reason")));
        ByteArrayOutputStream csv = new ByteArrayOutputStream();
        TableExport.contents(book, csv);
        List<CSVRecord> lines = CSVFormat.RFC4180
                .parse(new StringReader(csv.toString(StandardCharsets.UTF_8)))
                .getRecords();
        assertTrue(lines.stream()
                .anyMatch(r ->
                        r.toList().equals(List.of("not computed", "", "Base", "6 in", "sensitivity", "'=a reason"))));
        assertTrue(lines.stream()
                .anyMatch(r -> r.toList()
                        .equals(List.of("table", "base-pressures.csv", "Base", "", "Pressures", "What it says."))));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TableExport.workbook(book, out);
        try (ReadableWorkbook read = new ReadableWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
            List<Row> rows = read.getFirstSheet().read();
            Row missing = rows.stream()
                    .filter(r -> r.getCellCount() > 4 && r.getCellText(3).equals("sensitivity"))
                    .findFirst()
                    .orElseThrow();
            assertEquals("=a reason", missing.getCellText(4));
            assertTrue(rows.stream().anyMatch(r -> r.getCellText(0).equals("A Pressures")));
        }
    }

    /** The parts of the file are read by the JDK's own reader of archives. */
    @Test
    void contentsLinkToEverySheetAndHeadingsStay(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("book.xlsx");
        try (OutputStream out = Files.newOutputStream(file)) {
            TableExport.workbook(TableBook.of(List.of(table("Mud & gas"), table("The rig's"))), out);
        }
        Map<String, String> parts = new HashMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry part : Collections.list(zip.entries())) {
                parts.put(part.getName(), new String(zip.getInputStream(part).readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        String contents = parts.get("xl/worksheets/sheet1.xml").replace("&apos;", "'");
        assertTrue(contents.contains("location=\"'Mud &amp; gas'!A1\""), contents);
        assertTrue(contents.contains("location=\"'The rig''s'!A1\""), contents);
        String sheet = parts.get("xl/worksheets/sheet2.xml");
        assertTrue(sheet.contains("state=\"frozen\"") && sheet.contains("ySplit=\"1\""), sheet);
        assertTrue(sheet.contains("Mud &amp;&amp; gas"), "a print heading doubles its sign");
    }
}
