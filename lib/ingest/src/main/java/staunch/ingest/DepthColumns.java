package staunch.ingest;

import java.util.Objects;

/**
 * Where the depth of a row stands and what it is measured from.
 *
 * @param depth column of the depth
 * @param kind along hole or vertical
 * @param level what it is measured from, for all rows or row by row
 */
public record DepthColumns(TableColumn depth, Kind kind, WordColumn<Level> level) {
    /** Along hole or vertical. */
    public enum Kind {
        MEASURED,
        VERTICAL
    }

    /** What a depth is measured from. */
    public enum Level {
        /** The zero of the well's depths, as a rule the rotary table. */
        DATUM("datum"),
        MEAN_SEA_LEVEL("mean sea level"),
        /** Seabed of a well at sea. */
        MUDLINE("mudline"),
        /** Ground level of a land well. */
        GROUND("ground level");

        private final String title;

        Level(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    public DepthColumns {
        Objects.requireNonNull(depth, "depth");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(level, "level");
    }

    /** Measured depths below the well's datum. */
    public static DepthColumns measured(String heading, String unit) {
        return of(heading, unit, Kind.MEASURED, Level.DATUM);
    }

    /** Vertical depths below one level. */
    public static DepthColumns vertical(String heading, String unit, Level level) {
        return of(heading, unit, Kind.VERTICAL, level);
    }

    private static DepthColumns of(String heading, String unit, Kind kind, Level level) {
        return new DepthColumns(new TableColumn(heading, unit), kind, WordColumn.always(level));
    }
}
