package staunch.ingest;

import java.util.Objects;
import staunch.units.Check;

/**
 * A column of somebody else's table.
 *
 * @param heading as it stands in the first line of the table
 * @param unit of its numbers, such as "m" or "g/cm3" as the library writes it ("sg"); empty for text
 */
public record TableColumn(String heading, String unit) {
    public TableColumn {
        Check.text("heading of the column", heading);
        Objects.requireNonNull(unit, "unit");
    }

    /** A column of text. */
    public static TableColumn text(String heading) {
        return new TableColumn(heading, "");
    }
}
