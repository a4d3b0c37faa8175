package staunch.table;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.dhatim.fastexcel.HyperLink;
import org.dhatim.fastexcel.Position;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/**
 * Writes tables as a workbook (.xlsx) and as CSV. Numbers go out to nine significant digits, in the units that stand in the
 * headings; a missing number is an empty cell, one that is not finite says so. No text becomes a formula: in a workbook it is stored as
 * text, in CSV an apostrophe is set before what a spreadsheet program would take for a formula. A text that is a plain number,
 * such as {@code -5}, is none.
 */
public final class TableExport {
    /** Name of the CSV file that tells what the others hold. */
    public static final String CONTENTS_FILE = "contents.csv";

    private static final MathContext DIGITS = new MathContext(9, RoundingMode.HALF_EVEN);
    private static final int LONGEST_SHEET_NAME = 31;
    private static final int LONGEST_FILE_NAME = 120;
    private static final int LONGEST_TEXT = 16_000;
    private static final int NARROWEST = 12;
    private static final int WIDEST = 60;

    private static final String CONTENTS = "Contents";
    private static final String BLUE = "0563C1";

    /** A spreadsheet program keeps this name for itself. */
    private static final String RESERVED = "history";

    private static final Pattern PLAIN_NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?([eE][+-]?\\d+)?");
    private static final String FORMULA_SIGNS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private TableExport() {}

    /**
     * A workbook: a sheet of contents, then one sheet for each table.
     *
     * @param book to write
     * @param out stays open
     */
    public static void workbook(TableBook book, OutputStream out) throws IOException {
        Workbook workbook = new Workbook(out, "Staunch", null);
        List<String> names = sheetNames(book.tables());
        contents(workbook.newWorksheet(CONTENTS), book, names);
        for (int i = 0; i < names.size(); i++) {
            Worksheet sheet = workbook.newWorksheet(names.get(i));
            CaseTables.Entry entry = book.tables().get(i);
            fill(sheet, entry.table().table());
            forPrint(sheet, entry);
            sheet.finish();
        }
        workbook.finish();
    }

    private static void contents(Worksheet sheet, TableBook book, List<String> names) {
        int row = 0;
        for (TableBook.Fact fact : book.facts()) {
            bold(sheet, row, 0, fact.name());
            sheet.value(row++, 1, clean(fact.text()));
        }
        if (!book.missing().isEmpty()) {
            headings(sheet, ++row, "Not computed", "Casing design", "Section", "Part", "Reason");
            for (TableBook.Missing missing : book.missing()) {
                texts(sheet, ++row, missing.design(), missing.section(), missing.part(), missing.reason());
            }
            row++;
        }
        headings(sheet, ++row, "Sheet", "Casing design", "Section", "Table", "What it says");
        for (int i = 0; i < names.size(); i++) {
            CaseTables.Entry entry = book.tables().get(i);
            row++;
            String name = names.get(i);
            sheet.hyperlink(row, 0, HyperLink.internal("'" + name.replace("'", "''") + "'!A1", name));
            sheet.style(row, 0).fontColor(BLUE).underlined().set();
            texts(
                    sheet,
                    row,
                    entry.design(),
                    entry.section(),
                    entry.title(),
                    entry.table().caption());
        }
        int[] widths = {34, 20, 16, 44, WIDEST};
        for (int column = 0; column < widths.length; column++) {
            sheet.width(column, widths[column]);
        }
    }

    private static void headings(Worksheet sheet, int row, String... words) {
        for (int column = 0; column < words.length; column++) {
            bold(sheet, row, column, words[column]);
        }
    }

    private static void texts(Worksheet sheet, int row, String... texts) {
        for (int i = 0; i < texts.length; i++) {
            text(sheet, row, i + 1, texts[i]);
        }
    }

    private static void bold(Worksheet sheet, int row, int column, String text) {
        sheet.value(row, column, clean(text));
        sheet.style(row, column).bold().set();
    }

    /** A text that is wider than any column is folded. */
    private static void text(Worksheet sheet, int row, int column, String text) {
        if (text.isEmpty()) {
            return;
        }
        sheet.value(row, column, clean(text));
        if (text.length() > WIDEST) {
            sheet.style(row, column).wrapText(true).verticalAlignment("top").set();
        }
    }

    private static void fill(Worksheet sheet, Table table) {
        for (int c = 0; c < table.columnCount(); c++) {
            Column<?> column = table.column(c);
            bold(sheet, 0, c, column.name());
            int widest = column.name().length();
            for (int row = 0; row < table.rowCount(); row++) {
                if (column.isMissing(row)) {
                    continue;
                }
                if (isNumber(column, row)) {
                    sheet.value(row + 1, c, number(column, row));
                } else {
                    String text = words(column, row);
                    text(sheet, row + 1, c, text);
                    widest = Math.max(widest, text.length());
                }
            }
            sheet.width(c, Math.min(WIDEST, Math.max(NARROWEST, widest + 2)));
        }
        sheet.freezePane(0, 1);
    }

    /** A sheet on paper says what it is and repeats its headings. */
    private static void forPrint(Worksheet sheet, CaseTables.Entry entry) {
        String where = String.join(
                ", ",
                List.of(entry.design(), entry.section(), entry.title()).stream()
                        .filter(t -> !t.isEmpty())
                        .toList());
        sheet.header(clean(where).replace("&", "&&"), Position.LEFT);
        sheet.repeatRows(0);
        sheet.pageOrientation("landscape");
        sheet.setFitToPage(true);
        sheet.fitToWidth((short) 1);
        sheet.fitToHeight((short) 0);
    }

    private static boolean isNumber(Column<?> column, int row) {
        return column instanceof NumericColumn<?> numbers && Double.isFinite(numbers.getDouble(row));
    }

    private static String words(Column<?> column, int row) {
        return column instanceof NumericColumn<?> ? "not finite" : column.getString(row);
    }

    /** As many digits as a conversion of units leaves exact. */
    private static double number(Column<?> column, int row) {
        double value = ((NumericColumn<?>) column).getDouble(row);
        return BigDecimal.valueOf(value).round(DIGITS).doubleValue();
    }

    /** Characters that XML forbids cannot stand in a workbook, and a cell holds only so much. */
    private static String clean(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().map(c -> legal(c) ? c : ' ').limit(LONGEST_TEXT).forEach(shown::appendCodePoint);
        return shown.length() < text.length() ? shown + " …" : shown.toString();
    }

    private static boolean legal(int c) {
        return c == '\t'
                || c == '\n'
                || c >= ' ' && c < 0x7F
                || c >= 0xA0 && c < Character.MIN_SURROGATE
                || c > Character.MAX_SURROGATE && c < 0xFFFE
                || c > 0xFFFF;
    }

    static List<String> sheetNames(List<CaseTables.Entry> tables) {
        List<String> designs = tables.stream()
                .map(CaseTables.Entry::design)
                .filter(d -> !d.isEmpty())
                .distinct()
                .toList();
        List<String> names = new ArrayList<>();
        Set<String> used = new HashSet<>(Set.of(CONTENTS.toLowerCase(Locale.ROOT), RESERVED));
        for (CaseTables.Entry entry : tables) {
            String design = entry.design().isEmpty() ? "" : letter(designs.indexOf(entry.design())) + " ";
            String section = entry.section().isEmpty() ? "" : entry.section() + " ";
            String whole = permitted(design + section + entry.sheet());
            String name = cut(whole, LONGEST_SHEET_NAME);
            for (int i = 2; !used.add(name.toLowerCase(Locale.ROOT)); i++) {
                String end = " " + i;
                name = cut(whole, LONGEST_SHEET_NAME - end.length()) + end;
            }
            names.add(name);
        }
        return names;
    }

    /** Designs are told apart by letters. */
    private static String letter(int design) {
        return design < 26 ? String.valueOf((char) ('A' + design)) : "D" + (design + 1);
    }

    /** A fraction keeps its bar; other characters that a sheet's name may not have become spaces. */
    private static String permitted(String text) {
        String name = clean(text)
                .replace('/', '\u2044')
                .replaceAll("[\\[\\]:*?\\\\\\s]+", " ")
                .replaceAll("^[' ]+|[' ]+$", "");
        return name.isEmpty() ? "Sheet" : name;
    }

    /** Between words, and not before a word that asks for another. */
    private static String cut(String name, int longest) {
        if (name.length() <= longest) {
            return name;
        }
        int space = name.lastIndexOf(' ', longest);
        int end = space > longest / 2 ? space : longest;
        if (Character.isHighSurrogate(name.charAt(end - 1))) {
            end--;
        }
        return name.substring(0, end).replaceAll("( (of|the|at|against|and|for|to))*[' ,;-]*$", "");
    }

    /** Name of the CSV file of each table, without the folder. */
    public static List<String> fileNames(List<CaseTables.Entry> tables) {
        List<String> names = new ArrayList<>();
        Set<String> used = new HashSet<>(Set.of("", "contents"));
        for (CaseTables.Entry entry : tables) {
            String slug = slug(String.join(" ", entry.design(), entry.section(), entry.title()));
            String name = slug;
            for (int i = 2; !used.add(name); i++) {
                name = slug.isEmpty() ? "table-" + i : slug + "-" + i;
            }
            names.add(name + ".csv");
        }
        return names;
    }

    /** Letters without accents, digits and hyphens. */
    private static String slug(String text) {
        String slug = Normalizer.normalize(text, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        return slug.substring(0, Math.min(LONGEST_FILE_NAME, slug.length())).replaceAll("^-|-$", "");
    }

    /** What the CSV files of a book hold, and what could not be computed, as CSV. */
    public static void contents(TableBook book, OutputStream out) throws IOException {
        CSVPrinter printer = printer(out);
        printer.printRecord("Kind", "File", "Casing design", "Section", "Name", "Text");
        for (TableBook.Fact fact : book.facts()) {
            texts(printer, "about", "", "", "", fact.name(), fact.text());
        }
        for (TableBook.Missing missing : book.missing()) {
            texts(printer, "not computed", "", missing.design(), missing.section(), missing.part(), missing.reason());
        }
        List<String> files = fileNames(book.tables());
        for (int i = 0; i < files.size(); i++) {
            CaseTables.Entry entry = book.tables().get(i);
            texts(
                    printer,
                    "table",
                    files.get(i),
                    entry.design(),
                    entry.section(),
                    entry.title(),
                    entry.table().caption());
        }
        printer.flush();
    }

    private static void texts(CSVPrinter printer, String... texts) throws IOException {
        printer.printRecord(List.of(texts).stream().map(TableExport::neutral).toList());
    }

    /** One table as CSV (RFC 4180) in UTF-8. */
    public static void csv(ResultTable result, OutputStream out) throws IOException {
        Table table = result.table();
        CSVPrinter printer = printer(out);
        texts(printer, table.columnNames().toArray(String[]::new));
        for (int row = 0; row < table.rowCount(); row++) {
            List<Object> cells = new ArrayList<>();
            for (Column<?> column : table.columns()) {
                if (column.isMissing(row)) {
                    cells.add("");
                } else if (isNumber(column, row)) {
                    cells.add(number(column, row));
                } else {
                    cells.add(neutral(words(column, row)));
                }
            }
            printer.printRecord(cells);
        }
        printer.flush();
    }

    private static CSVPrinter printer(OutputStream out) throws IOException {
        return new CSVPrinter(new OutputStreamWriter(out, StandardCharsets.UTF_8), CSVFormat.RFC4180);
    }

    /** Text that begins like a formula is marked as text, which is common practice; a plain number stays one. */
    static String neutral(String text) {
        String seen = text.stripLeading();
        boolean begins = !text.isEmpty() && FORMULA_SIGNS.indexOf(text.charAt(0)) >= 0
                || !seen.isEmpty() && FORMULA_SIGNS.indexOf(seen.charAt(0)) >= 0;
        return begins && !PLAIN_NUMBER.matcher(text).matches() ? "'" + text : text;
    }
}
