package staunch.cli;

import java.io.PrintWriter;
import staunch.design.WellCase;
import staunch.table.ResultTable;
import staunch.table.TableText;

/**
 * Results as a person reads them on a terminal.
 *
 * @param terminal knows whether a person watches
 * @param out where they are printed
 */
record Listing(Terminal terminal, PrintWriter out) {
    /** Which well this is about, and that it is invented where it is. */
    void title(WellCase wellCase, String what) {
        String well = wellCase.header().well();
        String lines = TableText.folded(well + ": " + what, 0);
        // Folded before it is styled: control sequences take no room. A name longer than a line is folded itself.
        out.println(lines.startsWith(well) ? terminal.styled("bold", well) + lines.substring(well.length()) : lines);
        wellCase.header().notice().ifPresent(this::line);
        out.println();
    }

    /** A table under its name and caption. */
    void table(ResultTable table) {
        line(table.name() + ". " + table.caption());
        out.println(table.text());
    }

    /** A sentence, folded where it is longer than a line. */
    void line(String text) {
        out.println(TableText.folded(text, 0));
    }

    /** A point of a list, its further lines moved in. */
    void point(String text) {
        out.println("  " + TableText.folded(text, 4));
    }
}
