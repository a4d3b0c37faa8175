package staunch.cli;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.kernel.MimeBundle;
import staunch.table.TableHtml;
import staunch.table.TableText;
import staunch.units.Measure;
import staunch.units.UnitSystem;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/** Any record as a card: a line for each component, numbers with the unit that they are declared with. */
final class RecordCard {
    private static final String ABSENT = "–";
    private static final int MOST_LISTED = 4;

    private final UnitSystem units;

    RecordCard(UnitSystem units) {
        this.units = units;
    }

    MimeBundle of(Record record) {
        Table table = table(record);
        String name = words(record.getClass().getSimpleName());
        return MimeBundle.html(
                "<p><strong>" + name + "</strong></p>" + TableHtml.of(table, Integer.MAX_VALUE),
                name + "\n" + TableText.of(table, Integer.MAX_VALUE));
    }

    private Table table(Record record) {
        List<String> names = new ArrayList<>();
        List<String> values = new ArrayList<>();
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            names.add(words(component.getName()));
            values.add(text(Components.value(component, record), Components.measure(component, record)));
        }
        return Table.create(StringColumn.create("what", names), StringColumn.create("value", values));
    }

    private String text(Object value, Optional<Measure> measure) {
        if (value instanceof Optional<?> optional) {
            return optional.map(v -> text(v, measure)).orElse(ABSENT);
        }
        if (value instanceof OptionalDouble optional) {
            return optional.isPresent() ? text(optional.getAsDouble(), measure) : ABSENT;
        }
        if (value instanceof double[] numbers) {
            return text(Arrays.stream(numbers).boxed().toList(), measure);
        }
        if (value instanceof Double number) {
            return measure.map(m -> units.precise(number, m)).orElseGet(number::toString);
        }
        if (value instanceof Enum<?> constant) {
            return words(constant.name().toLowerCase(Locale.ROOT).replace('_', ' '));
        }
        if (value instanceof Collection<?> list) {
            return list.size() > MOST_LISTED
                    ? list.size() + " items"
                    : String.join("; ", list.stream().map(v -> text(v, measure)).toList());
        }
        if (value instanceof Map<?, ?> map) {
            return map.size() + " items";
        }
        if (value instanceof Record record) {
            return Arrays.stream(record.getClass().getRecordComponents())
                    .filter(c -> !Collection.class.isAssignableFrom(c.getType()))
                    .map(c ->
                            words(c.getName()) + " " + text(Components.value(c, record), Components.measure(c, record)))
                    .reduce((a, b) -> a + ", " + b)
                    .orElse(words(record.getClass().getSimpleName()));
        }
        return String.valueOf(value);
    }

    /** {@code formationPressure} reads "formation pressure". */
    private static String words(String name) {
        return name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }
}
