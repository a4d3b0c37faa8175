package staunch.table;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import staunch.units.Measure;
import staunch.units.UnitSystem;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;
import tech.tablesaw.columns.numbers.NumberColumnFormatter;

/**
 * Turns rows of results into columns of explicit type, one column at a time. Columns are made by way of {@link ColumnType},
 * since Tablesaw makes a second type, unlike {@code ColumnType.DOUBLE}, where the class of the column is loaded first.
 */
final class Rows<R> {
    /** What stands in a cell without a number. */
    static final String NONE = "–";

    private final UnitSystem units;
    private final List<R> rows;
    private final List<Column<?>> columns = new ArrayList<>();

    Rows(List<R> rows, UnitSystem units) {
        this.rows = rows;
        this.units = units;
    }

    Rows<R> text(String name, Function<R, String> value) {
        StringColumn column = ColumnType.STRING.create(name);
        rows.forEach(row -> column.append(value.apply(row)));
        columns.add(column);
        return this;
    }

    Rows<R> optionalText(String name, Function<R, Optional<String>> value) {
        return text(name, value.andThen(v -> v.orElse("")));
    }

    Rows<R> number(String name, Measure measure, RoundingMode rounding, ToDoubleFunction<R> si) {
        return optional(name, measure, rounding, r -> OptionalDouble.of(si.applyAsDouble(r)));
    }

    Rows<R> optional(String name, Measure measure, RoundingMode rounding, Function<R, OptionalDouble> si) {
        DoubleColumn column = ColumnType.DOUBLE.create(title(name, measure));
        for (R row : rows) {
            OptionalDouble value = si.apply(row);
            if (value.isPresent()) {
                column.append(units.fromSi(value.getAsDouble(), measure));
            } else {
                column.appendMissing();
            }
        }
        column.setPrintFormatter(new NumberColumnFormatter(new ShownFormat(units, measure, rounding), NONE));
        columns.add(column);
        return this;
    }

    ResultTable table(String name, String caption) {
        return new ResultTable(Table.create(name, columns), caption);
    }

    private String title(String name, Measure measure) {
        String unit = units.label(measure);
        return unit.isEmpty() || unit.equals("1") ? name : name + " [" + unit + "]";
    }
}
