package staunch.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import staunch.units.Measure;
import staunch.well.Annulus;
import staunch.well.WellPath;

/**
 * Writes any record as JSON by its components, so that machine output can hold nothing that a result does not, and
 * nothing less. A number's key ends in its unit, taken from its {@link Si} declaration; a number without one takes the
 * unit of the {@link Measure} that stands beside it in its record. A variant of a sealed interface tells which one it is
 * under {@link #OUTCOME}. Whatever may be absent keeps its key with the value null. Equal values give equal bytes.
 */
final class RecordJson {
    /** Key that names the variant of a sealed interface. */
    static final String OUTCOME = "outcome";

    private static final Set<Class<?>> NUMBERS = Set.of(double.class, double[].class, OptionalDouble.class);

    /** Geometry that stands in the input already, and which no record describes. */
    static final Set<Class<?>> LEFT_OUT = Set.of(WellPath.class, Annulus.class);

    private final JsonGenerator json;

    RecordJson(JsonGenerator json) {
        this.json = json;
    }

    /**
     * @param record to write
     * @param path names the record where something in it cannot be written
     * @throws IllegalStateException where a number is not finite or a type is not known: a mistake in the library
     */
    void write(Record record, String path) throws IOException {
        json.writeStartObject();
        variant(record.getClass()).ifPresent(name -> field(OUTCOME, name));
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            if (LEFT_OUT.contains(component.getType())) {
                continue;
            }
            Object value = Components.value(component, record);
            json.writeFieldName(key(component, record));
            writeValue(value, path + "." + component.getName());
        }
        json.writeEndObject();
    }

    private void field(String key, String value) {
        try {
            json.writeStringField(key, value);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void writeValue(Object value, String path) throws IOException {
        if (value instanceof Optional<?> optional) {
            writeOptional(optional, path);
        } else if (value instanceof OptionalDouble optional) {
            if (optional.isPresent()) {
                writeNumber(optional.getAsDouble(), path);
            } else {
                json.writeNull();
            }
        } else if (value instanceof Double number) {
            writeNumber(number, path);
        } else if (value instanceof double[] numbers) {
            writeList(Arrays.stream(numbers).boxed().toList(), path);
        } else if (value instanceof Integer number) {
            json.writeNumber(number);
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value instanceof String text) {
            json.writeString(text);
        } else if (value instanceof Enum<?> constant) {
            json.writeString(constant.name());
        } else if (value instanceof Collection<?> list) {
            writeList(list, path);
        } else if (value instanceof Map<?, ?> map) {
            writeMap(map, path);
        } else if (value instanceof Record record) {
            write(record, path);
        } else {
            throw new IllegalStateException(
                    path + " has no form in machine output: " + (value == null ? "null" : value.getClass()));
        }
    }

    private void writeOptional(Optional<?> optional, String path) throws IOException {
        if (optional.isPresent()) {
            writeValue(optional.get(), path);
        } else {
            json.writeNull();
        }
    }

    private void writeNumber(double number, String path) throws IOException {
        if (!Double.isFinite(number)) {
            throw new IllegalStateException(path + " is " + number + " where a number is due");
        }
        json.writeNumber(number);
    }

    private void writeList(Collection<?> list, String path) throws IOException {
        LinePrinter lines = json.getPrettyPrinter() instanceof LinePrinter printer ? printer : null;
        json.writeStartArray();
        int before = lines == null ? 0 : lines.listBegins(list.size());
        int i = 0;
        for (Object element : list) {
            writeValue(element, path + "[" + i++ + "]");
        }
        json.writeEndArray();
        if (lines != null) {
            lines.listEnds(before);
        }
    }

    /** Sorted by key, since an unmodifiable map has another order in each run. */
    private void writeMap(Map<?, ?> map, String path) throws IOException {
        Map<Object, Object> sorted =
                new TreeMap<>(Comparator.comparing(Object::toString, RecordJson::byNumberThenText));
        sorted.putAll(map);
        json.writeStartObject();
        for (Map.Entry<Object, Object> entry : sorted.entrySet()) {
            json.writeFieldName(entry.getKey().toString());
            writeValue(entry.getValue(), path + "." + entry.getKey());
        }
        json.writeEndObject();
    }

    private static int byNumberThenText(String a, String b) {
        return a.length() != b.length() && isNumber(a) && isNumber(b)
                ? Integer.compare(a.length(), b.length())
                : a.compareTo(b);
    }

    private static boolean isNumber(String text) {
        return text.chars().allMatch(Character::isDigit);
    }

    /** A number that measures nothing has no key: what it stands for must be declared. */
    private static String key(RecordComponent component, Record record) {
        Optional<Measure> measure = Components.measure(component, record);
        if (measure.isEmpty() && NUMBERS.contains(component.getType())) {
            throw new IllegalStateException(
                    component.getDeclaringRecord().getName() + "." + component.getName() + " has no unit");
        }
        return component.getName() + measure.map(Measure::jsonSuffix).orElse("");
    }

    /** Name of a variant of a sealed interface, in camel case; empty for a record that stands alone. */
    static Optional<String> variant(Class<?> type) {
        return Arrays.stream(type.getInterfaces()).anyMatch(Class::isSealed)
                ? Optional.of(type.getSimpleName().substring(0, 1).toLowerCase(Locale.ROOT)
                        + type.getSimpleName().substring(1))
                : Optional.empty();
    }
}
