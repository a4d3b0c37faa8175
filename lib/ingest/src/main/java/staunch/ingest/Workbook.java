package staunch.ingest;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/**
 * Rows of one sheet of a workbook (.xlsx), one at a time. What the file unpacks to is counted first, whatever its
 * directory says, so that a small file that unpacks to a huge one is refused before anything is read from it.
 */
final class Workbook {
    /** Most that a workbook may unpack to, bytes. */
    static final long LARGEST_UNPACKED = 200_000_000;

    private static final int MOST_PARTS = 5000;
    private static final int MOST_ROWS = 200_000;
    private static final int MOST_COLUMNS = 1000;
    private static final int MOST_NAMED = 5;

    /** Sheets of real data pack to about a tenth; a part that packs to less than this share holds one thing over and over. */
    private static final int MOST_PACKED = 200;

    private static final long SMALL_PART = 1_000_000;

    private final Path path;
    private final String file;

    private Workbook(Path path, String file) {
        this.path = path;
        this.file = file;
    }

    /** Takes a row with its number, counted from 1. */
    interface RowTaker {
        void take(List<Cell> cells, int row) throws DataFileFault;
    }

    /**
     * Hands over every row of a sheet that is not empty.
     *
     * @param sheet by name; without one the workbook may have one sheet only
     */
    static void read(Path path, String file, Optional<String> sheet, RowTaker taker) throws DataFileFault {
        new Workbook(path, file).read(sheet, taker);
    }

    private DataFileFault refused(String problem, String advice) {
        return new DataFileFault(new DataFileFault.Problem(file, 0, "", problem, advice));
    }

    private void read(Optional<String> sheet, RowTaker taker) throws DataFileFault {
        check();
        try (ReadableWorkbook book = new ReadableWorkbook(path.toFile(), new ReadingOptions(true, false))) {
            Sheet chosen = choose(book, sheet);
            refuse(
                    chosen,
                    marked(chosen.getId(), "mergeCell", xml -> Optional.of(xml.getAttributeValue(null, "ref"))),
                    "has merged cells (",
                    "), of which only the first holds a value",
                    "part them and write a name above each column, a value into each cell");
            refuse(
                    chosen,
                    marked(chosen.getId(), "row", Workbook::hidden),
                    "has hidden rows (",
                    "), so that what is seen is not what would be read",
                    "show them, or take out those that are not to count");
            rows(chosen, taker);
        } catch (IOException | XMLStreamException | ExcelReaderException e) {
            throw refused("cannot be read as a workbook: " + e.getMessage(), "save it again as .xlsx");
        }
    }

    private void refuse(Sheet sheet, List<String> found, String before, String after, String advice)
            throws DataFileFault {
        if (!found.isEmpty()) {
            throw new DataFileFault(new DataFileFault.Problem(
                    file,
                    0,
                    "sheet " + sheet.getName(),
                    before
                            + found.stream().limit(MOST_NAMED).collect(Collectors.joining(", "))
                            + (found.size() > MOST_NAMED ? " and more" : "")
                            + after,
                    advice));
        }
    }

    /** Number of a row that is hidden, by hand or by a filter. */
    private static Optional<String> hidden(XMLStreamReader row) {
        String hidden = row.getAttributeValue(null, "hidden");
        return "1".equals(hidden) || "true".equals(hidden)
                ? Optional.ofNullable(row.getAttributeValue(null, "r"))
                : Optional.empty();
    }

    private Sheet choose(ReadableWorkbook book, Optional<String> name) throws DataFileFault {
        List<Sheet> sheets = book.getSheets().toList();
        String names = sheets.stream().map(Sheet::getName).collect(Collectors.joining(", "));
        if (name.isPresent()) {
            return sheets.stream()
                    .filter(s -> s.getName().equals(name.get()))
                    .findFirst()
                    .orElseThrow(() -> refused("has no sheet " + name.get(), "its sheets are " + names));
        }
        if (sheets.size() != 1) {
            throw refused("has " + sheets.size() + " sheets", "name one of them: " + names);
        }
        return sheets.get(0);
    }

    private void rows(Sheet sheet, RowTaker taker) throws IOException, DataFileFault {
        int count = 0;
        int width = 0;
        try (Stream<Row> rows = sheet.openStream()) {
            for (Row row : (Iterable<Row>) rows::iterator) {
                List<Cell> cells = cells(row);
                if (cells.stream().allMatch(c -> c.text().isEmpty())) {
                    continue;
                }
                if (++count > MOST_ROWS) {
                    throw refused("has more than " + MOST_ROWS + " rows", "cut it down");
                }
                // Empty cells to the right may be there or not: rows are made as long as the heading.
                while (!cells.isEmpty()
                        && cells.size() > width
                        && cells.get(cells.size() - 1).text().isEmpty()) {
                    cells.remove(cells.size() - 1);
                }
                while (cells.size() < width) {
                    cells.add(Cell.EMPTY);
                }
                width = count == 1 ? cells.size() : width;
                taker.take(cells, row.getRowNum());
            }
        }
    }

    private List<Cell> cells(Row row) throws DataFileFault {
        if (row.getCellCount() > MOST_COLUMNS) {
            throw refused("has more than " + MOST_COLUMNS + " columns", "cut it down");
        }
        List<Cell> cells = new ArrayList<>(Collections.nCopies(row.getCellCount(), Cell.EMPTY));
        for (int i = 0; i < row.getCellCount(); i++) {
            org.dhatim.fastexcel.reader.Cell cell = row.getCell(i);
            if (cell != null) {
                cells.set(i, cell(cell, row.getRowNum()));
            }
        }
        return cells;
    }

    private Cell cell(org.dhatim.fastexcel.reader.Cell cell, int row) throws DataFileFault {
        if (cell.getType() == CellType.EMPTY) {
            return Cell.EMPTY;
        }
        String raw = cell.getRawValue();
        if (cell.getType() == CellType.BOOLEAN) {
            return Cell.text("1".equals(raw) ? "TRUE" : "FALSE");
        }
        if (cell.getType() == CellType.FORMULA && (raw == null || raw.isEmpty())) {
            throw new DataFileFault(new DataFileFault.Problem(
                    file,
                    row,
                    "cell " + cell.getAddress(),
                    "holds a formula without a computed value",
                    "let a spreadsheet program compute and save it"));
        }
        boolean number = cell.getType() == CellType.NUMBER || cell.getType() == CellType.FORMULA && isNumber(raw);
        if (number && isDate(cell.getDataFormatString())) {
            return Cell.text(date(cell));
        }
        if (number) {
            return new Cell(raw.strip(), true);
        }
        return Cell.text(cell.getType() == CellType.STRING ? cell.asString() : raw == null ? "" : raw);
    }

    private static boolean isNumber(String raw) {
        return raw.strip().matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
    }

    /** Whether a number format shows a date or a time; colours, conditions and quoted text in it do not count. */
    static boolean isDate(String format) {
        if (format == null) {
            return false;
        }
        String bare =
                format.replaceAll("\\[[^\\]]*]|\"[^\"]*\"|\\\\.|_.|\\*.", "").toLowerCase(Locale.ROOT);
        return !bare.equals("general") && bare.matches(".*[ymdhs].*");
    }

    private static String date(org.dhatim.fastexcel.reader.Cell cell) {
        LocalDateTime at = cell.asDate();
        return at.toLocalTime().equals(LocalTime.MIDNIGHT) ? at.toLocalDate().toString() : at.toString();
    }

    // --- What is in the file, before anything of it is trusted

    private void check() throws DataFileFault {
        try (ZipFile zip = new ZipFile(path.toFile())) {
            if (zip.getEntry("xl/workbook.xml") == null) {
                throw refused("is a compressed file, but no .xlsx workbook", "unpack it, or save it as .xlsx or CSV");
            }
            if (zip.size() > MOST_PARTS) {
                throw refused("has more than " + MOST_PARTS + " parts", "it may be damaged: save it again");
            }
            List<? extends ZipEntry> entries = Collections.list(zip.entries());
            long total = 0;
            for (ZipEntry entry : entries) {
                total += unpacked(zip, entry, total);
            }
            // Only now is it known that reading the parts comes to an end.
            for (ZipEntry entry : entries) {
                if (entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels")) {
                    elements(zip, entry, "", xml -> {});
                }
            }
        } catch (ZipException e) {
            throw refused("is a damaged workbook: " + e.getMessage(), "fetch it again");
        } catch (IOException | XMLStreamException e) {
            throw refused("cannot be read as a workbook: " + e.getMessage(), "save it again as .xlsx");
        }
    }

    /** What elements of a sheet say, which is found by its number among the relations of the workbook. */
    private List<String> marked(String relation, String element, Function<XMLStreamReader, Optional<String>> asked)
            throws IOException, XMLStreamException, DataFileFault {
        List<String> found = new ArrayList<>();
        try (ZipFile zip = new ZipFile(path.toFile())) {
            List<String> parts = new ArrayList<>();
            elements(zip, zip.getEntry("xl/_rels/workbook.xml.rels"), "Relationship", xml -> {
                if (relation.equals(xml.getAttributeValue(null, "Id"))) {
                    parts.add(xml.getAttributeValue(null, "Target"));
                }
            });
            for (String part : parts) {
                String name = part.startsWith("/") ? part.substring(1) : "xl/" + part;
                elements(
                        zip,
                        zip.getEntry(name),
                        element,
                        xml -> asked.apply(xml).ifPresent(found::add));
            }
        }
        return found;
    }

    private long unpacked(ZipFile zip, ZipEntry entry, long before) throws IOException, DataFileFault {
        long packed = Math.max(1, entry.getCompressedSize());
        long size = 0;
        byte[] buffer = new byte[1 << 16];
        try (InputStream in = zip.getInputStream(entry)) {
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                size += n;
                boolean bomb = size > SMALL_PART && size / packed > MOST_PACKED;
                if (bomb || before + size > LARGEST_UNPACKED) {
                    throw refused(
                            bomb
                                    ? "unpacks to more than " + MOST_PACKED + " times its size, as no real table does"
                                    : "unpacks to more than " + LARGEST_UNPACKED / 1_000_000 + " MB",
                            "do not trust it; ask for the table as CSV");
                }
            }
        }
        return size;
    }

    private void elements(ZipFile zip, ZipEntry entry, String name, Consumer<XMLStreamReader> taker)
            throws IOException, XMLStreamException, DataFileFault {
        if (entry == null) {
            throw refused("lacks a part that every workbook has", "save it again as .xlsx");
        }
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try (InputStream in = zip.getInputStream(entry)) {
            XMLStreamReader xml = factory.createXMLStreamReader(in);
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamConstants.DTD) {
                    throw refused("declares a document type, as no workbook does", "do not trust it; ask for CSV");
                }
                if (event == XMLStreamConstants.START_ELEMENT && name.isEmpty()) {
                    // A document type can only stand before the first element.
                    break;
                }
                if (event == XMLStreamConstants.START_ELEMENT
                        && xml.getLocalName().equals(name)) {
                    taker.accept(xml);
                }
            }
            xml.close();
        }
    }
}
