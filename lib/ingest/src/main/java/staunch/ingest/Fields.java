package staunch.ingest;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import staunch.ingest.Values.Good;

/** Values of one mapping as numbers and words, after their check: what was wrong is simply not there. */
final class Fields {
    private final Item.Mapping mapping;
    private final Block block;
    private final Validator validator;

    Fields(Item.Mapping mapping, Block block, Validator validator) {
        this.mapping = mapping;
        this.block = block;
        this.validator = validator;
    }

    Place place() {
        return mapping.place();
    }

    /** Where a key stands, or its mapping where the key is not given. */
    Place place(String key) {
        return mapping.get(key).map(Item::place).orElseGet(() -> Validator.at(mapping, key));
    }

    /** Whether its block has such a key at all. */
    boolean knows(String key) {
        return block.key(key).isPresent();
    }

    boolean has(String key) {
        return mapping.has(known(key).name());
    }

    /** Text of a value as written, of a record in the units in which faults are told; empty where it is not given. */
    String written(String key) {
        return mapping.text(key).map(t -> validator.told(t, known(key).form())).orElse("");
    }

    Optional<String> text(String key) {
        return mapping.text(known(key).name()).filter(t -> !t.isBlank());
    }

    String needText(String key) {
        return text(key).orElseThrow(FaultLog.Incomplete::new);
    }

    OptionalDouble amount(String key) {
        Form.Amount form = (Form.Amount) known(key).form();
        return mapping.text(key).map(t -> Values.amount(t, form)).stream()
                .filter(Good.class::isInstance)
                .mapToDouble(r -> ((Good<Double>) r).value())
                .findFirst();
    }

    double needAmount(String key) {
        return amount(key).orElseThrow(FaultLog.Incomplete::new);
    }

    Optional<Values.Rock> rock(String key) {
        if (!(known(key).form() instanceof Form.RockPressure)) {
            throw new IllegalStateException(key + " is no pressure in the rock");
        }
        return mapping.text(key)
                .map(Values::rock)
                .filter(Good.class::isInstance)
                .map(r -> ((Good<Values.Rock>) r).value());
    }

    OptionalInt count(String key) {
        Form.Count form = (Form.Count) known(key).form();
        return mapping.text(key).filter(t -> t.matches("\\d{1,9}")).stream()
                .mapToInt(Integer::parseInt)
                .filter(n -> n >= form.lowest() && n <= form.highest())
                .findFirst();
    }

    Optional<Boolean> flag(String key) {
        return text(key).map("true"::equals);
    }

    <E extends Enum<E>> Optional<E> choice(String key, Class<E> type) {
        Form.Choice form = (Form.Choice) known(key).form();
        return text(key).filter(form.names()::contains).map(t -> Enum.valueOf(type, t.toUpperCase(Locale.ROOT)));
    }

    <E extends Enum<E>> E needChoice(String key, Class<E> type) {
        return choice(key, type).orElseThrow(FaultLog.Incomplete::new);
    }

    Optional<Fields> nested(String key) {
        Form.Nested form = (Form.Nested) known(key).form();
        return mapping.get(key)
                .filter(Item.Mapping.class::isInstance)
                .map(i -> new Fields((Item.Mapping) i, form.block(), validator));
    }

    Fields needNested(String key) {
        return nested(key).orElseThrow(FaultLog.Incomplete::new);
    }

    /** Mappings of a list, or of the rows of the CSV file that stands for it. */
    List<Fields> rows(String key) {
        Form.Rows form = (Form.Rows) known(key).form();
        Optional<Item> item = mapping.get(key);
        if (item.isPresent() && item.get() instanceof Item.Mapping file) {
            return file.get(CaseKeys.FILE).map(f -> table(f, form.block())).orElse(List.of());
        }
        return item
                .filter(Item.Sequence.class::isInstance)
                .map(i -> ((Item.Sequence) i).items())
                .orElse(List.of())
                .stream()
                .filter(Item.Mapping.class::isInstance)
                .map(i -> new Fields((Item.Mapping) i, form.block(), validator))
                .toList();
    }

    /** Rows of the CSV file that a key names. */
    List<Fields> table(String key) {
        Form.Csv form = (Form.Csv) known(key).form();
        return mapping.get(key).map(i -> table(i, form.block())).orElse(List.of());
    }

    private List<Fields> table(Item name, Block rows) {
        return validator.table(name).stream()
                .map(m -> new Fields(m, rows, validator))
                .toList();
    }

    Item.Mapping mapping() {
        return mapping;
    }

    private Key known(String key) {
        return block.key(key).orElseThrow(() -> new IllegalStateException(block.name() + " has no key " + key));
    }
}
