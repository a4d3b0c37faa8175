package staunch.ingest;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One column of a data section, of numbers or of text. Numbers are in the unit of the file: a log knows units, such as
 * ohm metres or API units, in which this library does not calculate.
 */
public final class LasCurve {
    private final String name;
    private final LasItem definition;
    private final LasColumn column;

    LasCurve(String name, LasItem definition, LasColumn column) {
        this.name = Objects.requireNonNull(name, "name");
        this.definition = definition;
        this.column = column;
    }

    /**
     * Name by which it is asked for: the mnemonic; with {@code :1}, {@code :2} after it where several curves share one;
     * {@code UNKNOWN} where it has none.
     */
    public String name() {
        return name;
    }

    /** The line that defines it. */
    public LasItem definition() {
        return definition;
    }

    /** Unit as written in the file, without brackets; empty where there is none. */
    public String unit() {
        return definition.unit();
    }

    /** Number of rows. */
    public int rows() {
        return column.rows();
    }

    /** Whether it holds text. */
    public boolean isText() {
        return column.isText();
    }

    /** Whether the value of a row is missing. Rows count from 0. */
    public boolean isMissing(int row) {
        Objects.checkIndex(row, rows());
        return column.isText() ? column.text(row) == null : Double.isNaN(column.number(row));
    }

    /** Number of a row in {@link #unit()}; empty where it is missing or text. Rows count from 0. */
    public OptionalDouble number(int row) {
        Objects.checkIndex(row, rows());
        if (column.isText() || Double.isNaN(column.number(row))) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(column.number(row));
    }

    /** Text of a row; empty where it is missing or a number. Rows count from 0. */
    public Optional<String> text(int row) {
        Objects.checkIndex(row, rows());
        return column.isText() ? Optional.ofNullable(column.text(row)) : Optional.empty();
    }

    /** How many values are missing. */
    public int missing() {
        int count = 0;
        for (int row = 0; row < rows(); row++) {
            count += isMissing(row) ? 1 : 0;
        }
        return count;
    }

    /** Finds one by name among others. */
    static Optional<LasCurve> named(List<LasCurve> curves, String name) {
        return curves.stream().filter(c -> c.name.equalsIgnoreCase(name)).findFirst();
    }
}
