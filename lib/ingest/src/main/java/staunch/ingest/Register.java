package staunch.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import staunch.design.InputValue;
import staunch.units.Source;

/** Collects every number of a case with the place it was read from and the document named for it. */
final class Register {

    private final Validator validator;
    private final List<InputValue> values = new ArrayList<>();

    Register(Validator validator) {
        this.validator = validator;
    }

    List<InputValue> of(Item.Mapping root, Block block) {
        mapping(root, block, "", Optional.empty());
        return List.copyOf(values);
    }

    private void mapping(Item.Mapping mapping, Block block, String path, Optional<Source> above) {
        Optional<Source> source = source(mapping).or(() -> above);
        for (Item.Entry entry : mapping.entries()) {
            block.key(entry.key()).ifPresent(key -> {
                String at = path.isEmpty() ? key.name() : path + "." + key.name();
                value(entry.value(), key.form(), at, source);
            });
        }
    }

    private static Optional<Source> source(Item.Mapping mapping) {
        return mapping.text("source")
                .filter(t -> !t.isBlank())
                .map(t -> new Source(t, mapping.text("place").orElse("")));
    }

    private void value(Item item, Form form, String path, Optional<Source> source) {
        if (form instanceof Form.Nested nested && item instanceof Item.Mapping mapping) {
            mapping(mapping, nested.block(), path, source);
        } else if (form instanceof Form.NameOrNested either && item instanceof Item.Mapping mapping) {
            mapping(mapping, either.block(), path, source);
        } else if (form instanceof Form.Rows rows) {
            rows(item, rows, path, source);
        } else if (form instanceof Form.Csv csv) {
            table(item, csv.block(), path, source);
        } else if (item instanceof Item.Scalar scalar && isNumber(form)) {
            Place place = scalar.place();
            values.add(new InputValue(path, scalar.text(), place.file(), place.line(), source));
        }
    }

    private static boolean isNumber(Form form) {
        return form instanceof Form.Amount
                || form instanceof Form.RockPressure
                || form instanceof Form.PumpRate
                || form instanceof Form.Count;
    }

    private void rows(Item item, Form.Rows rows, String path, Optional<Source> source) {
        if (item instanceof Item.Sequence sequence) {
            int number = 1;
            for (Item row : sequence.items()) {
                if (row instanceof Item.Mapping mapping) {
                    mapping(mapping, rows.block(), named(mapping, path, number), source);
                }
                number++;
            }
        } else if (item instanceof Item.Mapping mapping) {
            mapping.get(CaseKeys.FILE).ifPresent(name -> table(name, rows.block(), path, source));
        }
    }

    /** Things with a name are found by it, others by their number. */
    private static String named(Item.Mapping mapping, String path, int number) {
        return path + "[" + mapping.text("name").orElse(Integer.toString(number)) + "]";
    }

    private void table(Item name, Block rows, String path, Optional<Source> source) {
        String at = path.endsWith("." + CaseKeys.FILE) ? path.substring(0, path.length() - 5) : path;
        for (Item.Mapping row : validator.table(name)) {
            mapping(row, rows, at, source);
        }
    }
}
