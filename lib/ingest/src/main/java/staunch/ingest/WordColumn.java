package staunch.ingest;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import staunch.units.InputFault;

/**
 * A choice that one value makes for all rows, or a column row by row.
 *
 * @param <T> what is chosen
 * @param always the choice for all rows; empty where a column makes it
 * @param column that makes it; empty where it is the same for all rows
 * @param words what the words of that column stand for
 */
public record WordColumn<T>(Optional<T> always, Optional<TableColumn> column, Map<String, T> words) {
    public WordColumn {
        Objects.requireNonNull(column, "column");
        words = Map.copyOf(words);
        if (always.isPresent() == column.isPresent()) {
            throw new InputFault("choice", "needs either one value for all rows or a column", "give one of the two");
        }
    }

    /** The same for all rows. */
    public static <T> WordColumn<T> always(T value) {
        return new WordColumn<>(Optional.of(value), Optional.empty(), Map.of());
    }

    /** Row by row. */
    public static <T> WordColumn<T> of(String heading, Map<String, T> words) {
        return new WordColumn<>(Optional.empty(), Optional.of(TableColumn.text(heading)), words);
    }
}
