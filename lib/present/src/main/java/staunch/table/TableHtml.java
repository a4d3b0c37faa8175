package staunch.table;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/** Any Tablesaw table as an HTML table: numbers to the right, texts to the left, everything escaped. */
public final class TableHtml {
    private static final Pattern UNIT = Pattern.compile("(.*) (\\[[^\\]]*\\])");

    private TableHtml() {}

    /**
     * The table as HTML, not more than so many rows; a last line tells how many are left out.
     *
     * @param table to show
     * @param mostRows at least 1
     */
    public static String of(Table table, int mostRows) {
        StringBuilder html = new StringBuilder("<table class=\"staunch\">\n<thead><tr>");
        for (Column<?> column : table.columns()) {
            html.append("<th scope=\"col\"").append(alignment(column)).append('>');
            html.append(heading(column.name())).append("</th>");
        }
        html.append("</tr></thead>\n<tbody>\n");
        int shown = Math.min(mostRows, table.rowCount());
        for (int row = 0; row < shown; row++) {
            html.append("<tr>");
            for (Column<?> column : table.columns()) {
                html.append("<td").append(alignment(column)).append('>');
                html.append(escape(signed(cell(column, row), column))).append("</td>");
            }
            html.append("</tr>\n");
        }
        html.append("</tbody>");
        if (shown < table.rowCount()) {
            html.append("\n<tfoot><tr><td colspan=\"")
                    .append(table.columnCount())
                    .append("\">… ")
                    .append(table.rowCount() - shown)
                    .append(" more rows</td></tr></tfoot>");
        }
        return html.append("\n</table>").toString();
    }

    static boolean isNumeric(Column<?> column) {
        ColumnType type = column.type();
        return type == ColumnType.DOUBLE
                || type == ColumnType.FLOAT
                || type == ColumnType.INTEGER
                || type == ColumnType.LONG
                || type == ColumnType.SHORT;
    }

    static String cell(Column<?> column, int row) {
        return column.isMissing(row) ? (isNumeric(column) ? Rows.NONE : "") : column.getString(row);
    }

    /** A hyphen is too short for a minus where numbers stand in columns. */
    private static String signed(String cell, Column<?> column) {
        return isNumeric(column) && cell.startsWith("-") ? "−" + cell.substring(1) : cell;
    }

    /** A text made safe to be set into HTML. */
    public static String escape(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.append(c);
            }
        }
        return safe.toString();
    }

    private static String heading(String name) {
        Matcher unit = UNIT.matcher(name);
        return unit.matches()
                ? escape(unit.group(1)) + " <span class=\"unit\">" + escape(unit.group(2)) + "</span>"
                : escape(name);
    }

    private static String alignment(Column<?> column) {
        return isNumeric(column) ? " class=\"n\" style=\"text-align:right\"" : " style=\"text-align:left\"";
    }
}
