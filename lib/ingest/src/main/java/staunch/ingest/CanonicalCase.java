package staunch.ingest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import staunch.design.InputLine;
import staunch.ingest.Values.Good;
import staunch.units.Measure;

/**
 * The keys of a checked case in their one form: SI units, tables in the place of the files that hold them, keys in the
 * order of the reference, choices of method written out, lists whose order means nothing sorted by name.
 */
final class CanonicalCase {
    /** Blocks whose lists are sorted by name. */
    private static final List<String> UNORDERED = List.of("strength_test", "weak_zone", "criteria", "offset_well");

    private final Validator validator;
    private final EvidenceRows evidence;
    private final List<InputLine> tables = new ArrayList<>();

    CanonicalCase(Validator validator, EvidenceRows evidence) {
        this.validator = validator;
        this.evidence = evidence;
    }

    Item.Mapping of(Item.Mapping tree) {
        Item.Mapping whole = tree.has("options")
                ? tree
                : new Item.Mapping(tree.place(), plus(tree.entries(), entry("options", tree.place())));
        Item.Mapping canonical = mapping(whole, RecordKeys.CASE, "");
        tables.addAll(evidence.files());
        return canonical;
    }

    /** Which lists were read from a file of their own. */
    List<InputLine> tables() {
        return tables;
    }

    private static List<Item.Entry> plus(List<Item.Entry> entries, Item.Entry one) {
        List<Item.Entry> all = new ArrayList<>(entries);
        all.add(one);
        return all;
    }

    private static Item.Entry entry(String key, Place place) {
        return new Item.Entry(key, place, new Item.Mapping(place, List.of()));
    }

    private Item.Mapping mapping(Item.Mapping mapping, Block block, String path) {
        List<Item.Entry> entries = new ArrayList<>();
        for (Key key : block.keys()) {
            String here = path.isEmpty() ? key.name() : path + "." + key.name();
            Optional<Item> value = mapping.get(key.name());
            if (block == CaseKeys.OPTIONS && value.isEmpty()) {
                value = defaultOf(key, mapping.place());
            }
            if (value.isPresent() && key.form() instanceof Form.Csv csv) {
                Key rows = rowsLike(block, csv.block());
                String list = path + "." + rows.name();
                tables.add(new InputLine(list, ((Item.Scalar) value.get()).text()));
                entries.add(new Item.Entry(rows.name(), mapping.place(), table(value.get(), csv.block(), list)));
            } else {
                value.map(v -> item(v, key.form(), here))
                        .ifPresent(v -> entries.add(new Item.Entry(key.name(), v.place(), v)));
            }
        }
        if (block == RecordKeys.EVIDENCE) {
            entries.addAll(evidence.entries(mapping.place()));
        }
        return new Item.Mapping(mapping.place(), entries);
    }

    /** What is taken where an option is not given, if the reference gives it as a value. */
    private static Optional<Item> defaultOf(Key key, Place place) {
        boolean isValue = key.form() instanceof Form.Choice choice
                        && choice.names().contains(key.without())
                || key.form() instanceof Form.Flag && List.of("true", "false").contains(key.without())
                || key.form() instanceof Form.Count && key.without().matches("\\d{1,9}")
                || key.form() instanceof Form.Amount amount
                        && Values.amount(key.without(), amount) instanceof Good<Double>;
        return isValue
                ? Optional.of(new Item.Scalar(place.key(key.name(), place.line()), key.without()))
                : Optional.empty();
    }

    /** The key that holds in the case file what a CSV file may hold instead. */
    private static Key rowsLike(Block block, Block rows) {
        return block.keys().stream()
                .filter(k -> k.form() instanceof Form.Rows list && list.block() == rows)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(block.name() + " has no list for the rows of its file"));
    }

    private Item item(Item item, Form form, String path) {
        if (form instanceof Form.Nested nested) {
            return mapping((Item.Mapping) item, nested.block(), path);
        }
        if (form instanceof Form.NameOrNested either && item instanceof Item.Mapping mapping) {
            return mapping(mapping, either.block(), path);
        }
        if (form instanceof Form.Rows rows && item instanceof Item.Mapping file) {
            Item name = file.get(CaseKeys.FILE).orElseThrow();
            tables.add(new InputLine(path, ((Item.Scalar) name).text()));
            return table(name, rows.block(), path);
        }
        if (form instanceof Form.Rows rows && item instanceof Item.Sequence list) {
            return rows(list.place(), list.items(), rows.block(), path);
        }
        return new Item.Scalar(item.place(), text(((Item.Scalar) item).text(), form));
    }

    private Item table(Item name, Block block, String path) {
        return rows(name.place(), List.copyOf(validator.table(name)), block, path);
    }

    private Item rows(Place place, List<Item> items, Block block, String path) {
        List<Item> rows = new ArrayList<>();
        for (Item item : items) {
            Item.Mapping row = (Item.Mapping) item;
            rows.add(mapping(row, block, path + "[" + row.text("name").orElse("") + "]"));
        }
        if (UNORDERED.contains(block.name())) {
            rows.sort(Comparator.comparing(RecordText::sortingLine));
        }
        return new Item.Sequence(place, rows);
    }

    private static String text(String text, Form form) {
        if (form instanceof Form.Amount amount) {
            return si(good(Values.amount(text, amount)), amount.measure());
        }
        if (form instanceof Form.RockPressure) {
            Values.Rock rock = good(Values.rock(text));
            return rock instanceof Values.Pressure pressure
                    ? si(pressure.absolute(), Measure.PRESSURE_ABSOLUTE)
                    : si(((Values.Equivalent) rock).density(), Measure.EQUIVALENT_DENSITY);
        }
        if (form instanceof Form.PumpRate) {
            return Values.pumpRateText(text);
        }
        if (form instanceof Form.Count) {
            return String.valueOf(Integer.parseInt(text));
        }
        return text;
    }

    private static <T> T good(Values.Reading<T> reading) {
        if (reading instanceof Good<T> good) {
            return good.value();
        }
        throw new IllegalStateException("a value that was checked cannot be read");
    }

    /** A number with its SI unit; an absolute pressure says so. */
    static String si(double value, Measure measure) {
        if (measure == Measure.PRESSURE_ABSOLUTE) {
            return FixedDigits.text(value / 1000) + " kPaa";
        }
        return measure == Measure.NUMBER ? FixedDigits.text(value) : FixedDigits.text(value) + " " + measure.siUnit();
    }
}
