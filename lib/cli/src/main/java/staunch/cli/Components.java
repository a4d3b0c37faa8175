package staunch.cli;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Measure;
import staunch.units.Si;

/** What a record's components hold and measure. */
final class Components {
    private Components() {}

    static Object value(RecordComponent component, Record record) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(component + " cannot be read", e);
        }
    }

    /**
     * What a number measures: as declared, or else as the {@link Measure} says that stands beside a bare number in its
     * record; empty for anything but a number.
     */
    static Optional<Measure> measure(RecordComponent component, Record record) {
        Si declaration = component.getAnnotation(Si.class);
        if (declaration != null) {
            return Optional.of(Measure.of(declaration));
        }
        return component.getType() != double.class && component.getType() != OptionalDouble.class
                ? Optional.empty()
                : Arrays.stream(record.getClass().getRecordComponents())
                        .filter(c -> c.getType() == Measure.class)
                        .map(c -> (Measure) value(c, record))
                        .findFirst();
    }
}
