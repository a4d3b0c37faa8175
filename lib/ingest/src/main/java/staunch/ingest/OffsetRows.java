package staunch.ingest;

import java.util.List;
import java.util.Objects;
import staunch.units.Wording;

/**
 * What a table of offset wells held: every row is either here or left out with a reason.
 *
 * @param <T> what a row is
 * @param file name of the file
 * @param rows as in the file
 * @param leftOut rows without a value, repeated, rejected, of no known vertical depth, or bad where the format allows it
 */
public record OffsetRows<T>(String file, List<Row<T>> rows, List<LeftOut> leftOut) {
    public OffsetRows {
        Objects.requireNonNull(file, "file");
        rows = List.copyOf(rows);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * One row that was read.
     *
     * @param well name of the wellbore
     * @param value what it says, with its own source down to line and column
     * @param line counted from 1
     * @param cells numbers of it that were used, as written
     */
    public record Row<T>(String well, T value, int line, List<Written> cells) {
        public Row {
            cells = List.copyOf(cells);
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(value, "value");
        }
    }

    /**
     * A number as it stands in the file.
     *
     * @param column its heading
     * @param text as written, with the unit of the column
     */
    public record Written(String column, String text) {
        public Written {
            Objects.requireNonNull(column, "column");
            Objects.requireNonNull(text, "text");
        }
    }

    /**
     * One row that was not.
     *
     * @param line counted from 1
     * @param well name of the wellbore
     * @param reason why not
     */
    public record LeftOut(int line, String well, Wording reason) {
        /** A reason that names no quantity. */
        LeftOut(int line, String well, String reason) {
            this(line, well, new Wording(reason, List.of()));
        }

        public LeftOut {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(reason, "reason");
        }
    }

    /** What was read of one wellbore, as in the file. */
    public List<T> of(String well) {
        return rows.stream().filter(r -> r.well().equals(well)).map(Row::value).toList();
    }
}
