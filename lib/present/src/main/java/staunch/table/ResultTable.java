package staunch.table;

import java.util.Map;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/**
 * A table of results. Its Tablesaw table holds unrounded numbers in the chosen units, in columns whose names carry the
 * unit; rounding is a matter of the columns' print format, to the safe side: tolerances, margins and MAASP down, pore
 * pressures up. A missing number is a missing cell, and a text column beside it says why.
 */
public final class ResultTable {
    private static final int MOST_COLUMNS = 12;
    private static final int MOST_TURNED = 8;

    /** Characters at which a text column folds, and that half a sheet takes. */
    private static final int FOLDED = 28;

    private static final int HALF_SHEET = 80;

    private final Table table;
    private final String caption;

    ResultTable(Table table, String caption) {
        this.table = table;
        this.caption = caption;
    }

    /** A table of one's own. */
    public static ResultTable of(Table table) {
        return new ResultTable(table.copy(), "");
    }

    /** Names and what stands beside each. */
    public static ResultTable of(String name, Map<String, String> lines) {
        StringColumn names = ColumnType.STRING.create("what");
        StringColumn values = ColumnType.STRING.create("value");
        lines.forEach((what, value) -> {
            names.append(what);
            values.append(value);
        });
        return new ResultTable(Table.create(name, names, values), "");
    }

    /** A copy of the table, free to be filtered and changed. */
    public Table table() {
        return table.copy();
    }

    /** What the table is called. */
    public String name() {
        return table.name();
    }

    /** One sentence that says what the rows are and how they are rounded; may be empty. */
    public String caption() {
        return caption;
    }

    /** Number of rows. */
    public int rowCount() {
        return table.rowCount();
    }

    /** Whether it has a column of this name. */
    public boolean hasColumn(String column) {
        return table.columnNames().contains(column);
    }

    /** The table with so many rows evenly spread over it, first and last among them; itself where it is not longer. */
    public ResultTable thinned(int rows) {
        int count = table.rowCount();
        if (count <= rows || rows < 2) {
            return this;
        }
        int[] kept = new int[rows];
        for (int i = 0; i < rows; i++) {
            kept[i] = (int) Math.round((double) i * (count - 1) / (rows - 1));
        }
        String note = rows + " of " + count + " rows shown.";
        return new ResultTable(table.rows(kept), caption.isEmpty() ? note : caption + " " + note);
    }

    /** The whole table as HTML. */
    public String html() {
        return html(Integer.MAX_VALUE);
    }

    /** The table as HTML, not more than so many rows. */
    public String html(int mostRows) {
        return TableHtml.of(table, mostRows);
    }

    /**
     * The table as HTML for a page of ordinary width: one of more columns than fit, and of few rows, is turned so that each
     * of its columns is a row.
     *
     * @param mostRows shown where it is not turned
     */
    public String htmlToFit(int mostRows) {
        boolean turned = table.columnCount() > MOST_COLUMNS && table.rowCount() > 0 && table.rowCount() <= MOST_TURNED;
        return turned ? TableHtml.turned(table) : html(mostRows);
    }

    /** Whether it fits on half the width of a landscape sheet, texts folded. */
    public boolean isNarrow() {
        int width = 0;
        for (Column<?> column : table.columns()) {
            int widest = 0;
            for (String word : column.name().split(" ")) {
                widest = Math.max(widest, word.length());
            }
            for (int row = 0; row < table.rowCount(); row++) {
                widest = Math.max(
                        widest, Math.min(FOLDED, TableHtml.cell(column, row).length()));
            }
            width += widest + 2;
        }
        return width <= HALF_SHEET;
    }

    /** The whole table as aligned text. */
    public String text() {
        return text(Integer.MAX_VALUE);
    }

    /** The table as aligned text, not more than so many rows. */
    public String text(int mostRows) {
        return TableText.of(table, mostRows);
    }

    @Override
    public String toString() {
        return text(20);
    }
}
