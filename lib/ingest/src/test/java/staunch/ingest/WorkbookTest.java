package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.earth.Quality;
import staunch.earth.Standing;
import staunch.earth.StrengthTest;
import staunch.well.Datum;
import staunch.well.WellPath;

/** Workbooks are read by the same mapping as text; what could mislead is refused and nothing of the file is kept. */
class WorkbookTest {
    private static final Map<String, OffsetSite> SITES = Map.of(
            "A 1",
            new OffsetSite(
                    "A 1",
                    new Datum("rotary table", 25, new Datum.AtSea(100, false)),
                    Optional.of(WellPath.vertical(4000))));

    private static final OffsetTables.StrengthColumns COLUMNS = new OffsetTables.StrengthColumns(
            TableColumn.text("Well"),
            DepthColumns.vertical("TVD RT", "m", DepthColumns.Level.DATUM),
            new PressureColumns.Equivalent(new TableColumn("EMW", "sg"), DepthColumns.Level.DATUM),
            WordColumn.of("Type", Map.of("LOT", Standing.LEAK_OFF, "FIT", Standing.INTEGRITY_TEST)),
            WordColumn.always(Quality.GOOD));

    @TempDir
    private Path directory;

    private Path book(Consumer<Worksheet> fill, String... sheets) throws IOException {
        Path file = directory.resolve("tests.xlsx");
        try (OutputStream out = Files.newOutputStream(file);
                Workbook book = new Workbook(out, "test", "1.0")) {
            for (String sheet : sheets.length == 0 ? new String[] {"Tests"} : sheets) {
                fill.accept(book.newWorksheet(sheet));
            }
        }
        return file;
    }

    private static void heading(Worksheet sheet) {
        List<String> names = List.of("Well", "TVD RT", "EMW", "Type", "Date");
        for (int i = 0; i < names.size(); i++) {
            sheet.value(0, i, names.get(i));
        }
    }

    private static void row(Worksheet sheet, int row, Object depth, Object density) {
        sheet.value(row, 0, "A 1");
        put(sheet, row, 1, depth);
        put(sheet, row, 2, density);
        sheet.value(row, 3, "LOT");
    }

    private static void put(Worksheet sheet, int row, int column, Object value) {
        if (value instanceof Number number) {
            sheet.value(row, column, number);
        } else if (value instanceof LocalDate date) {
            sheet.value(row, column, date);
            sheet.style(row, column).format("yyyy-mm-dd").set();
        } else {
            sheet.value(row, column, (String) value);
        }
    }

    private static OffsetRows<StrengthTest> read(Path file, TableFormat format) throws DataFileFault {
        return OffsetTables.strengthTests(file, format, COLUMNS, SITES);
    }

    private static String refused(Path file, TableFormat format) {
        return assertThrows(DataFileFault.class, () -> read(file, format)).getMessage();
    }

    private String refused(Consumer<Worksheet> fill) throws IOException {
        return refused(book(fill), TableFormat.PLAIN);
    }

    @Test
    void numbersTextsAndDatesAreReadAsTheyAre() throws Exception {
        Path file = book(sheet -> {
            heading(sheet);
            row(sheet, 1, 1922.5, 1.645);
            sheet.value(1, 4, LocalDate.of(2026, 3, 5));
            sheet.style(1, 4).format("dd.mm.yyyy").set();
            // Row 3 is empty, row 4 holds numbers as text.
            row(sheet, 3, "2100", "1.70");
        });
        OffsetRows<StrengthTest> rows = read(file, TableFormat.PLAIN);
        assertEquals(2, rows.rows().size());
        assertEquals(List.of(), rows.leftOut());
        StrengthTest first = rows.rows().get(0).value();
        assertEquals(1922.5, first.verticalDepth());
        // p = pa + 1645 · 9.80665 · 1922.5
        assertEquals(101325 + 1645 * 9.80665 * 1922.5, first.pressure(), 1e-3);
        assertEquals("tests.xlsx, line 2, TVD RT and EMW", first.source().text());
        assertEquals(4, rows.rows().get(1).line());
    }

    @Test
    void decimalCommasInTextNeedTheirFormatAndLeaveNumbersAlone() throws Exception {
        Path file = book(sheet -> {
            heading(sheet);
            row(sheet, 1, 1922.5, "1,645");
        });
        assertEquals(
                "tests.xlsx:2: EMW: \"1,645\" has a comma; say that commas are decimal marks, or take it out",
                refused(file, TableFormat.PLAIN));
        TableFormat commas = new TableFormat(
                ';', TableFormat.DecimalMark.COMMA, java.util.Set.of(), 0, TableFormat.BadRows.REFUSE_FILE);
        StrengthTest test = read(file, commas).rows().get(0).value();
        assertEquals(1922.5, test.verticalDepth());
        assertEquals(101325 + 1645 * 9.80665 * 1922.5, test.pressure(), 1e-3);
    }

    @Test
    void hiddenRowsAreRefusedSinceNobodySeesThem() throws Exception {
        String fault = refused(sheet -> {
            heading(sheet);
            row(sheet, 1, 1922.5, 1.645);
            row(sheet, 2, 2100, 1.7);
            sheet.hideRow(2);
        });
        assertTrue(
                fault.endsWith(
                        "has hidden rows (3), so that what is seen is not what would be read; show them, or take out"
                                + " those that are not to count"),
                fault);
    }

    @Test
    void aTruthIsNoNumber() throws Exception {
        String fault = refused(sheet -> {
            heading(sheet);
            row(sheet, 1, 1922.5, 1.645);
            sheet.value(1, 2, true);
        });
        assertTrue(fault.startsWith("tests.xlsx:2: EMW: \"TRUE\" is not a number"), fault);
    }

    @Test
    void absentNumbersAreLeftOutAndBadOnesRefuseTheFile() throws Exception {
        OffsetRows<StrengthTest> rows = read(
                book(sheet -> {
                    heading(sheet);
                    row(sheet, 1, 1922.5, 1e30);
                    row(sheet, 2, 1e30, 1.7);
                    row(sheet, 3, 2000, 1.7);
                    row(sheet, 4, 2000, 1.7);
                }),
                TableFormat.PLAIN);
        assertEquals(1, rows.rows().size());
        assertEquals(
                List.of("EMW is not given", "TVD RT is not given", "repeats line 4"),
                rows.leftOut().stream().map(l -> l.reason().text()).toList());
        String fault = refused(sheet -> {
            heading(sheet);
            row(sheet, 1, 2000, -1.7);
            row(sheet, 2, LocalDate.of(2026, 3, 5), 1.7);
            row(sheet, 3, 2000, "#N/A");
            row(sheet, 4, 2000, 1.7);
        });
        assertTrue(fault.contains("tests.xlsx:2: "), fault);
        assertTrue(fault.contains("tests.xlsx:3: TVD RT: holds the date 2026-03-05; write a number"), fault);
        assertTrue(fault.contains("tests.xlsx:4: EMW: holds the error #N/A"), fault);
        assertFalse(fault.contains("tests.xlsx:5"), fault);
    }

    @Test
    void mergedCellsAreRefused() throws Exception {
        assertEquals(
                "tests.xlsx: sheet Tests: has merged cells (B1:C1), of which only the first holds a value; part them and"
                        + " write a name above each column, a value into each cell",
                refused(sheet -> {
                    heading(sheet);
                    sheet.range(0, 1, 0, 2).merge();
                    row(sheet, 1, 2000, 1.7);
                }));
    }

    @Test
    void aSheetIsNamedWhereThereAreSeveral() throws Exception {
        Path file = book(
                sheet -> {
                    heading(sheet);
                    row(sheet, 1, sheet.getName().equals("Old") ? 1000 : 2000, 1.7);
                    if (sheet.getName().equals("Old")) {
                        sheet.range(5, 1, 6, 2).merge();
                    }
                },
                "Old",
                "New");
        assertEquals("tests.xlsx: has 2 sheets; name one of them: Old, New", refused(file, TableFormat.PLAIN));
        assertEquals(
                2000,
                read(file, TableFormat.PLAIN.ofSheet("New"))
                        .rows()
                        .get(0)
                        .value()
                        .verticalDepth());
        assertTrue(refused(file, TableFormat.PLAIN.ofSheet("Old")).contains("merged cells (B6:C7)"));
        assertEquals(
                "tests.xlsx: has no sheet Newer; its sheets are Old, New",
                refused(file, TableFormat.PLAIN.ofSheet("Newer")));
    }

    @Test
    void formulasCountByTheirComputedValueOnly() throws Exception {
        assertEquals(
                "tests.xlsx:2: cell C2: holds a formula without a computed value; let a spreadsheet program compute and"
                        + " save it",
                refused(sheet -> {
                    heading(sheet);
                    row(sheet, 1, 2000, 0);
                    sheet.formula(1, 2, "1.6+0.1");
                }));
    }

    private Path zip(String name, Map<String, byte[]> parts) throws IOException {
        Path file = directory.resolve(name);
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                out.putNextEntry(new ZipEntry(part.getKey()));
                out.write(part.getValue());
            }
        }
        return file;
    }

    @Test
    void zipBombsAndOtherArchivesAreRefusedBeforeTheyAreRead() throws Exception {
        byte[] spaces = " ".repeat(20_000_000).getBytes(StandardCharsets.US_ASCII);
        Path bomb = zip("bomb.xlsx", Map.of("xl/workbook.xml", spaces));
        assertTrue(Files.size(bomb) < 50_000);
        assertEquals(
                "bomb.xlsx: unpacks to more than 200 times its size, as no real table does; do not trust it; ask for the"
                        + " table as CSV",
                refused(bomb, TableFormat.PLAIN));
        assertEquals(
                "notes.xlsx: is a compressed file, but no .xlsx workbook; unpack it, or save it as .xlsx or CSV",
                refused(zip("notes.xlsx", Map.of("notes.txt", new byte[] {65})), TableFormat.PLAIN));
        byte[] entity = "<!DOCTYPE a [<!ENTITY x 'y'>]><workbook/>".getBytes(StandardCharsets.US_ASCII);
        String doctype = refused(zip("entity.xlsx", Map.of("xl/workbook.xml", entity)), TableFormat.PLAIN);
        assertTrue(doctype.startsWith("entity.xlsx: declares a document type"), doctype);
        Path torn = directory.resolve("torn.xlsx");
        byte[] whole = Files.readAllBytes(book(WorkbookTest::heading));
        Files.write(torn, java.util.Arrays.copyOf(whole, whole.length / 2));
        assertTrue(refused(torn, TableFormat.PLAIN).startsWith("torn.xlsx: is a damaged workbook"));
        Path old = directory.resolve("old.xls");
        Files.write(old, new byte[] {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0, 0, 0, 0, 0, 1, 2, 3});
        assertEquals(
                "old.xls: is binary, perhaps an old .xls or a locked workbook; save it as .xlsx or CSV",
                refused(old, TableFormat.PLAIN));
    }

    @Test
    void datesAreKnownByTheirNumberFormat() {
        for (String format : List.of("yyyy-mm-dd", "dd.mm.yyyy", "m/d/yy h:mm", "[h]:mm:ss", "[$-409]d-mmm-yy;@")) {
            assertTrue(staunch.ingest.Workbook.isDate(format), format);
        }
        for (String format : List.of("General", "0.00", "#,##0.0", "[Red]0.0", "0.00\" sd\"", "0.0E+00", "@")) {
            assertFalse(staunch.ingest.Workbook.isDate(format), format);
        }
    }
}
