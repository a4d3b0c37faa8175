package staunch.table;

import java.util.ArrayList;
import java.util.List;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/** Any Tablesaw table as aligned text for a terminal: the unit of a column stands under its name. */
public final class TableText {
    private static final String GAP = "  ";

    private TableText() {}

    /**
     * The table as text, not more than so many rows; a last line tells how many are left out.
     *
     * @param table to show
     * @param mostRows at least 1
     */
    public static String of(Table table, int mostRows) {
        int shown = Math.min(mostRows, table.rowCount());
        List<List<String>> columns = new ArrayList<>();
        List<Boolean> numeric = new ArrayList<>();
        for (Column<?> column : table.columns()) {
            List<String> cells = new ArrayList<>();
            int unit = column.name().lastIndexOf(" [");
            cells.add(unit < 0 ? column.name() : column.name().substring(0, unit));
            cells.add(unit < 0 ? "" : column.name().substring(unit + 1));
            for (int row = 0; row < shown; row++) {
                cells.add(oneLine(TableHtml.cell(column, row)));
            }
            columns.add(cells);
            numeric.add(TableHtml.isNumeric(column));
        }
        StringBuilder text = new StringBuilder();
        for (int line = 0; line < shown + 2; line++) {
            if (line == 1 && unitless(columns)) {
                continue;
            }
            StringBuilder row = new StringBuilder();
            for (int c = 0; c < columns.size(); c++) {
                String cell = columns.get(c).get(line);
                String fill = " ".repeat(width(columns.get(c)) - length(cell));
                row.append(c == 0 ? "" : GAP).append(numeric.get(c) ? fill + cell : cell + fill);
            }
            text.append(row.toString().stripTrailing()).append('\n');
            if (line == 1 || (line == 0 && unitless(columns))) {
                text.append(rule(columns)).append('\n');
            }
        }
        if (shown < table.rowCount()) {
            text.append("… ").append(table.rowCount() - shown).append(" more rows\n");
        }
        return text.toString();
    }

    private static boolean unitless(List<List<String>> columns) {
        return columns.stream().allMatch(c -> c.get(1).isEmpty());
    }

    private static String rule(List<List<String>> columns) {
        return String.join(GAP, columns.stream().map(c -> "-".repeat(width(c))).toList());
    }

    private static int width(List<String> cells) {
        return cells.stream().mapToInt(TableText::length).max().orElse(0);
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    private static String oneLine(String text) {
        return text.replaceAll("[\\p{Cntrl}\\s]+", " ");
    }
}
