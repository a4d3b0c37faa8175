package staunch.table;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/** Any Tablesaw table as an HTML table: numbers to the right, texts to the left, everything escaped. */
public final class TableHtml {
    private static final Pattern HYPHEN = Pattern.compile("(?<![^\\s(=,;])-(?=\\d)");
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
            html.append("<th scope=\"col\"")
                    .append(alignment(column, column == table.column(0)))
                    .append('>');
            html.append(heading(column.name())).append("</th>");
        }
        html.append("</tr></thead>\n<tbody>\n");
        int shown = Math.min(mostRows, table.rowCount());
        for (int row = 0; row < shown; row++) {
            html.append("<tr>");
            for (Column<?> column : table.columns()) {
                html.append("<td").append(alignment(column, false)).append('>');
                html.append(escape(minus(cell(column, row)))).append("</td>");
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

    /** A text with a minus before its negative numbers, for which a hyphen is too short. */
    public static String minus(String text) {
        return HYPHEN.matcher(text).replaceAll("−");
    }

    /**
     * The table turned: a row for each column but the first, whose values head the columns. For tables of few rows and more
     * columns than a page is wide.
     */
    static String turned(Table table) {
        StringBuilder html = new StringBuilder("<table class=\"staunch turned\">\n<thead><tr><th scope=\"col\""
                + " style=\"text-align:left\">" + heading(table.column(0).name()) + "</th>");
        for (int row = 0; row < table.rowCount(); row++) {
            html.append("<th scope=\"col\" style=\"text-align:left\">")
                    .append(escape(cell(table.column(0), row)))
                    .append("</th>");
        }
        html.append("</tr></thead>\n<tbody>\n");
        for (Column<?> column : table.columns().subList(1, table.columnCount())) {
            html.append("<tr><th scope=\"row\" style=\"text-align:left;font-weight:normal\">")
                    .append(heading(column.name()))
                    .append("</th>");
            for (int row = 0; row < table.rowCount(); row++) {
                html.append("<td style=\"text-align:left\">")
                        .append(escape(minus(cell(column, row))))
                        .append("</td>");
            }
            html.append("</tr>\n");
        }
        return html.append("</tbody>\n</table>").toString();
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
                ? escape(unit.group(1)) + " <span class=\"unit\" style=\"white-space:nowrap\">" + escape(unit.group(2))
                        + "</span>"
                : escape(name);
    }

    /** @param first whether it names the rows: then a name such as "12 1/4 in" stays on one line */
    private static String alignment(Column<?> column, boolean first) {
        return isNumeric(column)
                ? " class=\"n\" style=\"text-align:right\""
                : " style=\"text-align:left" + (first ? ";min-width:9ch" : "") + "\"";
    }
}
