package staunch.table;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import staunch.design.CaseHeader;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/**
 * Writes tables as a workbook (.xlsx) and as CSV. Numbers go out unrounded, in the units that stand in the headings; a
 * missing number is an empty cell. No text becomes a formula: in a workbook it is stored as text, in CSV an apostrophe is
 * set before what a spreadsheet program would take for a formula.
 */
public final class TableExport {
    /** What every export says of itself. */
    static final String CAUTION =
            "Planning aid: every number is to be verified by a competent person before it is used."
                    + " Local regulations, the rig's own procedures and the judgement of certified well-control staff prevail.";

    private static final String NUMBER_FORMAT = "0.######";
    private static final int LONGEST_SHEET_NAME = 31;
    private static final int LONGEST_TEXT = 32_000;
    private static final int WIDEST = 60;

    private TableExport() {}

    /**
     * A workbook: a sheet of contents, then one sheet for each table.
     *
     * @param header title block of the case
     * @param units name of the units shown
     * @param tables to write
     * @param out stays open
     */
    public static void workbook(CaseHeader header, String units, List<CaseTables.Entry> tables, OutputStream out)
            throws IOException {
        Workbook book = new Workbook(out, "Staunch", null);
        Worksheet contents = book.newWorksheet("Contents");
        List<String> names = sheetNames(tables);
        contents(contents, header, units, tables, names);
        for (int i = 0; i < tables.size(); i++) {
            Worksheet sheet = book.newWorksheet(names.get(i));
            fill(sheet, tables.get(i).table().table());
            sheet.finish();
        }
        book.finish();
    }

    private static void contents(
            Worksheet sheet, CaseHeader header, String units, List<CaseTables.Entry> tables, List<String> names) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("Well", header.well()));
        lines.add(List.of("Title", header.title()));
        line(lines, "Revision", header.revision());
        line(lines, "Date", header.date());
        line(lines, "Notice", header.notice());
        lines.add(List.of("Units", units));
        lines.add(List.of("Caution", CAUTION));
        lines.add(List.of());
        lines.add(List.of("Sheet", "Casing design", "Section", "Table", "What it says"));
        int heading = lines.size() - 1;
        for (int i = 0; i < tables.size(); i++) {
            CaseTables.Entry entry = tables.get(i);
            lines.add(List.of(
                    names.get(i),
                    entry.design(),
                    entry.section(),
                    entry.table().name(),
                    entry.table().caption()));
        }
        for (int row = 0; row < lines.size(); row++) {
            for (int column = 0; column < lines.get(row).size(); column++) {
                sheet.value(row, column, clean(lines.get(row).get(column)));
                if (column == 0 || row == heading) {
                    sheet.style(row, column).bold().set();
                }
            }
        }
        sheet.width(0, 30);
        sheet.width(1, 20);
        sheet.width(2, 14);
        sheet.width(3, 34);
        sheet.width(4, WIDEST);
    }

    private static void line(List<List<String>> lines, String what, Optional<String> text) {
        text.ifPresent(t -> lines.add(List.of(what, t)));
    }

    private static void fill(Worksheet sheet, Table table) {
        for (int c = 0; c < table.columnCount(); c++) {
            Column<?> column = table.column(c);
            sheet.value(0, c, clean(column.name()));
            sheet.style(0, c).bold().set();
            int widest = column.name().length();
            for (int row = 0; row < table.rowCount(); row++) {
                if (column.isMissing(row)) {
                    continue;
                }
                if (column instanceof NumericColumn<?> numbers) {
                    sheet.value(row + 1, c, numbers.getDouble(row));
                    sheet.style(row + 1, c).format(NUMBER_FORMAT).set();
                } else {
                    String text = clean(column.getString(row));
                    sheet.value(row + 1, c, text);
                    widest = Math.max(widest, text.length());
                }
            }
            sheet.width(c, Math.min(WIDEST, Math.max(10, widest + 2)));
        }
        sheet.freezePane(0, 1);
    }

    /** Control characters cannot stand in a workbook, and a cell holds only so much. */
    private static String clean(String text) {
        String shown = text.replaceAll("[\\p{Cntrl}&&[^\\n\\t]]", " ");
        return shown.length() <= LONGEST_TEXT ? shown : shown.substring(0, LONGEST_TEXT) + " …";
    }

    private static List<String> sheetNames(List<CaseTables.Entry> tables) {
        List<String> designs =
                tables.stream().map(CaseTables.Entry::design).distinct().toList();
        List<String> names = new ArrayList<>();
        Set<String> used = new HashSet<>(Set.of("contents"));
        for (CaseTables.Entry entry : tables) {
            String prefix = entry.design().isEmpty()
                    ? ""
                    : letter(designs.indexOf(entry.design())) + " "
                            + (entry.section().isEmpty() ? "" : entry.section() + " ");
            String whole = (prefix + entry.table().name())
                    .replaceAll("[\\[\\]:*?/\\\\]", "_")
                    .strip();
            String name = whole.substring(0, Math.min(LONGEST_SHEET_NAME, whole.length()))
                    .strip();
            for (int i = 2; !used.add(name.toLowerCase(Locale.ROOT)); i++) {
                String end = " " + i;
                name = whole.substring(0, Math.min(LONGEST_SHEET_NAME - end.length(), whole.length()))
                                .strip()
                        + end;
            }
            names.add(name);
        }
        return names;
    }

    /** Designs are told apart by letters; tables of the case itself come before the first. */
    private static String letter(int design) {
        return design <= 26 ? String.valueOf((char) ('A' + Math.max(0, design - 1))) : "D" + design;
    }

    /** Name of the CSV file of each table, without the folder. */
    public static List<String> fileNames(List<CaseTables.Entry> tables) {
        List<String> names = new ArrayList<>();
        Set<String> used = new HashSet<>();
        for (CaseTables.Entry entry : tables) {
            String whole = String.join(
                    "-",
                    List.of(entry.design(), entry.section(), entry.table().name()).stream()
                            .filter(t -> !t.isEmpty())
                            .toList());
            String slug = whole.toLowerCase(Locale.ROOT)
                    .replaceAll("[^\\p{Alnum}]+", "-")
                    .replaceAll("^-|-$", "");
            String name = slug;
            for (int i = 2; !used.add(name); i++) {
                name = slug + "-" + i;
            }
            names.add(name + ".csv");
        }
        return names;
    }

    /** One table as CSV (RFC 4180) in UTF-8. */
    public static void csv(ResultTable result, OutputStream out) throws IOException {
        Table table = result.table();
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        CSVPrinter printer = new CSVPrinter(writer, CSVFormat.RFC4180);
        printer.printRecord(
                table.columnNames().stream().map(TableExport::neutral).toList());
        for (int row = 0; row < table.rowCount(); row++) {
            List<Object> cells = new ArrayList<>();
            for (Column<?> column : table.columns()) {
                if (column.isMissing(row)) {
                    cells.add("");
                } else if (column instanceof NumericColumn<?> numbers) {
                    cells.add(numbers.getDouble(row));
                } else {
                    cells.add(neutral(column.getString(row)));
                }
            }
            printer.printRecord(cells);
        }
        printer.flush();
    }

    /** Text that begins like a formula is marked as text; that is common practice. */
    static String neutral(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
