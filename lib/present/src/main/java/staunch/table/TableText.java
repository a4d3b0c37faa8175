package staunch.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/**
 * Any Tablesaw table as aligned text for a terminal: the unit of a column stands under its name. A table wider than a
 * terminal has its headings and texts folded between words; numbers and words are never cut, so that a table of many
 * numbers may stay wider.
 */
public final class TableText {
    private static final String GAP = "  ";

    /** Characters of a line that a table is folded to. */
    private static final int LINE = 100;

    /** A word that ends in a number, its decimals or its fraction. */
    private static final Pattern NUMBER = Pattern.compile("(^|[\\s(+−-])\\d+([./]\\d+)?$");

    /** Characters of a number with its unit, as in "12 1/4 in". */
    private static final int KEPT_TOGETHER = 12;

    private TableText() {}

    /**
     * The table as text, not more than so many rows; a last line tells how many are left out.
     *
     * @param table to show
     * @param mostRows at least 1
     */
    public static String of(Table table, int mostRows) {
        int shown = Math.min(mostRows, table.rowCount());
        List<TextColumn> columns =
                table.columns().stream().map(c -> TextColumn.of(c, shown)).toList();
        int[] widths = widths(columns);
        StringBuilder text = new StringBuilder();
        List<List<String>> names = new ArrayList<>();
        for (int c = 0; c < widths.length; c++) {
            names.add(parts(columns.get(c).name(), widths[c]));
        }
        int deepest = names.stream().mapToInt(List::size).max().orElse(0);
        names.replaceAll(n -> lowered(n, deepest));
        appendLines(text, columns, names, widths);
        if (columns.stream().anyMatch(c -> !c.unit().isEmpty())) {
            appendLines(
                    text, columns, columns.stream().map(c -> List.of(c.unit())).toList(), widths);
        }
        List<List<String>> rules = new ArrayList<>();
        for (int width : widths) {
            rules.add(List.of("-".repeat(width)));
        }
        appendLines(text, columns, rules, widths);
        for (int row = 0; row < shown; row++) {
            List<List<String>> cells = new ArrayList<>();
            for (int c = 0; c < widths.length; c++) {
                cells.add(parts(columns.get(c).cells().get(row), widths[c]));
            }
            appendLines(text, columns, cells, widths);
        }
        if (shown < table.rowCount()) {
            text.append("… ").append(table.rowCount() - shown).append(" more rows\n");
        }
        return text.toString();
    }

    /** A sentence broken between words, later lines moved in by an indent that the first already has. */
    public static String folded(String sentence, int indent) {
        return String.join("\n" + " ".repeat(indent), parts(sentence, LINE - indent));
    }

    private record TextColumn(String name, String unit, List<String> cells, boolean numeric) {
        static TextColumn of(Column<?> column, int rows) {
            int unit = column.name().lastIndexOf(" [");
            List<String> cells = new ArrayList<>();
            for (int row = 0; row < rows; row++) {
                cells.add(oneLine(TableHtml.cell(column, row)));
            }
            return new TextColumn(
                    oneLine(unit < 0 ? column.name() : column.name().substring(0, unit)),
                    unit < 0 ? "" : column.name().substring(unit + 1),
                    cells,
                    TableHtml.isNumeric(column));
        }

        int widest() {
            return Math.max(
                    Math.max(length(name), length(unit)),
                    cells.stream().mapToInt(TableText::length).max().orElse(0));
        }

        /** Below this width a number or a word would be cut. */
        int narrowest() {
            int cell = cells.stream()
                    .mapToInt(c -> numeric ? length(c) : longestWord(c))
                    .max()
                    .orElse(0);
            return Math.max(cell, Math.max(longestWord(name), length(unit)));
        }
    }

    /** Widths of the columns: the widest is narrowed step by step until the line is short enough or nothing gives. */
    private static int[] widths(List<TextColumn> columns) {
        int[] widths = columns.stream().mapToInt(TextColumn::widest).toArray();
        int[] least = columns.stream().mapToInt(TextColumn::narrowest).toArray();
        int total = GAP.length() * (widths.length - 1);
        for (int width : widths) {
            total += width;
        }
        // Headings above numbers give way first, so that texts fold less.
        for (int c = 0; c < widths.length && total > LINE; c++) {
            if (columns.get(c).numeric()) {
                total -= widths[c] - least[c];
                widths[c] = least[c];
            }
        }
        for (; total > LINE; total--) {
            int widest = -1;
            for (int c = 0; c < widths.length; c++) {
                if (widths[c] > least[c] && (widest < 0 || widths[c] > widths[widest])) {
                    widest = c;
                }
            }
            if (widest < 0) {
                break;
            }
            widths[widest]--;
        }
        return widths;
    }

    private static void appendLines(
            StringBuilder text, List<TextColumn> columns, List<List<String>> cells, int[] widths) {
        int lines = cells.stream().mapToInt(List::size).max().orElse(0);
        for (int line = 0; line < lines; line++) {
            StringBuilder row = new StringBuilder();
            for (int c = 0; c < widths.length; c++) {
                List<String> cell = cells.get(c);
                String part = line < cell.size() ? cell.get(line) : "";
                String fill = " ".repeat(widths[c] - length(part));
                row.append(c == 0 ? "" : GAP).append(columns.get(c).numeric() ? fill + part : part + fill);
            }
            text.append(row.toString().stripTrailing()).append('\n');
        }
    }

    /** Words of a text, with a number and what it counts as one. */
    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        boolean number = false;
        for (String word : text.split(" ")) {
            if (number) {
                word = words.remove(words.size() - 1) + " " + word;
            }
            words.add(word);
            number = NUMBER.matcher(word).find() && length(word) <= KEPT_TOGETHER;
        }
        return words;
    }

    private static List<String> parts(String text, int width) {
        if (length(text) <= width) {
            return List.of(text);
        }
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words(text)) {
            if (line.length() > 0 && length(line.toString()) + 1 + length(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static List<String> lowered(List<String> lines, int depth) {
        List<String> lowered = new ArrayList<>(Collections.nCopies(depth - lines.size(), ""));
        lowered.addAll(lines);
        return lowered;
    }

    private static int longestWord(String text) {
        int longest = 0;
        for (String word : words(text)) {
            longest = Math.max(longest, length(word));
        }
        return longest;
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    private static String oneLine(String text) {
        return text.replaceAll("[\\p{Cntrl}\\s]+", " ");
    }
}
