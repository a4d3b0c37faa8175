package staunch.ingest;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import staunch.design.ChangedField;
import staunch.design.InputChange;
import staunch.units.Measure;

/**
 * Walks through the keys of two cases side by side, finds the parts that differ, and puts together the keys with some of
 * the parts from the later case and the others from the earlier one.
 */
final class CaseMixture {
    /** Blocks whose keys can be changed one by one; any other is one part. */
    private static final Set<String> KEY_BY_KEY = Set.of(
            "case",
            "earth",
            "section_defaults",
            "section",
            "casing_string",
            "design",
            "equipment",
            "criteria",
            "options",
            "offset_evidence",
            "offset_pumping_test");

    /** Blocks of which each row of a list is a part. */
    private static final Set<String> ROW_BY_ROW = Set.of(
            "strength_test",
            "weak_zone",
            "offset_well",
            "offset_test",
            "offset_pressure",
            "offset_event",
            "offset_log_read");

    /** Blocks that say nothing a result rests on. */
    private static final Set<String> WITHOUT_EFFECT = Set.of("title_block", "units");

    /** Keys that tell where a value comes from; another source of the same value is no change. */
    private static final Set<String> PROVENANCE = Set.of("source", "place");

    /** Keys of a row that its change is named by. */
    private static final Set<String> IDENTITY = Set.of("name", "well", "called");

    private final Predicate<String> later;
    private final Map<String, InputChange> changes = new LinkedHashMap<>();

    private CaseMixture(Predicate<String> later) {
        this.later = later;
    }

    /** What differs, in the order of the reference. */
    static List<InputChange> changes(Item.Mapping before, Item.Mapping after) {
        CaseMixture walk = new CaseMixture(name -> true);
        walk.mapping(before, after, RecordKeys.CASE, List.of());
        return List.copyOf(walk.changes.values());
    }

    /** The keys of the earlier case with the named parts of the later one. */
    static Item.Mapping of(Item.Mapping before, Item.Mapping after, Set<String> made) {
        return new CaseMixture(made::contains).mapping(before, after, RecordKeys.CASE, List.of());
    }

    private Item.Mapping mapping(Item.Mapping before, Item.Mapping after, Block block, List<String> path) {
        List<Item.Entry> entries = new ArrayList<>();
        for (Key key : block.keys()) {
            Optional<Item> b = before.get(key.name());
            Optional<Item> a = after.get(key.name());
            Optional<Item> chosen;
            boolean idle = path.isEmpty() && WITHOUT_EFFECT.contains(key.name());
            if (idle || PROVENANCE.contains(key.name())) {
                chosen = a;
            } else {
                chosen = item(b, a, key, ChangeWords.under(path, key.name()));
            }
            chosen.ifPresent(i -> entries.add(new Item.Entry(key.name(), i.place(), i)));
        }
        return new Item.Mapping(after.place(), entries);
    }

    private Optional<Item> item(Optional<Item> before, Optional<Item> after, Key key, List<String> path) {
        if (same(before, after)) {
            return after;
        }
        boolean both = before.isPresent() && after.isPresent();
        if (both
                && key.form() instanceof Form.Nested nested
                && KEY_BY_KEY.contains(nested.block().name())) {
            return Optional.of(mapping((Item.Mapping) before.get(), (Item.Mapping) after.get(), nested.block(), path));
        }
        if (key.form() instanceof Form.Rows rows
                && before.orElse(NONE) instanceof Item.Sequence b
                && after.orElse(NONE) instanceof Item.Sequence a
                && rowByRow(rows.block())
                && named(b)
                && named(a)) {
            List<Item> mixed = rows(b, a, rows.block(), path);
            return mixed.isEmpty() ? Optional.empty() : Optional.of(new Item.Sequence(a.place(), mixed));
        }
        return part(before, after, key.form(), path);
    }

    private static final Item NONE = new Item.Sequence(new Place("", 0, ""), List.of());

    private static boolean rowByRow(Block block) {
        return KEY_BY_KEY.contains(block.name()) || ROW_BY_ROW.contains(block.name());
    }

    /** Whether every row has a name of its own to be known by. */
    private static boolean named(Item.Sequence list) {
        Set<String> names = new HashSet<>();
        return list.items().stream()
                .allMatch(i -> i instanceof Item.Mapping m
                        && m.text("name").filter(names::add).isPresent());
    }

    private List<Item> rows(Item.Sequence before, Item.Sequence after, Block block, List<String> path) {
        Map<String, Item.Mapping> b = byName(before);
        Map<String, Item.Mapping> a = byName(after);
        boolean designs = block.name().equals("design");
        List<Item> mixed = new ArrayList<>();
        for (String name : order(b.keySet(), a.keySet())) {
            Optional<Item> then = Optional.ofNullable(b.get(name));
            Optional<Item> now = Optional.ofNullable(a.get(name));
            List<String> here = ChangeWords.row(path, name);
            if (designs && (then.isEmpty() || now.isEmpty())) {
                // Designs that only one run has are not compared.
                continue;
            }
            Optional<Item> chosen = then.isPresent() && now.isPresent() && KEY_BY_KEY.contains(block.name())
                    ? Optional.of(mapping(b.get(name), a.get(name), block, here))
                    : same(then, now) ? now : part(then, now, new Form.Nested(block, true), here);
            chosen.ifPresent(mixed::add);
        }
        return mixed;
    }

    /** Rows of the later list, with those that only the earlier one has behind the row they followed there. */
    private static List<String> order(Set<String> before, Set<String> after) {
        List<String> order = new ArrayList<>(after);
        String above = "";
        for (String name : before) {
            if (!after.contains(name)) {
                order.add(order.indexOf(above) + 1, name);
            }
            above = name;
        }
        return order;
    }

    private static Map<String, Item.Mapping> byName(Item.Sequence list) {
        Map<String, Item.Mapping> rows = new LinkedHashMap<>();
        list.items().forEach(i -> rows.put(((Item.Mapping) i).text("name").orElseThrow(), (Item.Mapping) i));
        return rows;
    }

    private Optional<Item> part(Optional<Item> before, Optional<Item> after, Form form, List<String> path) {
        String words = ChangeWords.name(path);
        String name = words;
        for (int i = 2; changes.containsKey(name); i++) {
            name = words + " (" + i + ")";
        }
        InputChange.Kind kind = path.get(0).equals("options") ? InputChange.Kind.METHOD : InputChange.Kind.INPUT;
        changes.put(name, new InputChange(name, kind, fields(before, after, form, path)));
        return later.test(name) ? after : before;
    }

    private static List<ChangedField> fields(
            Optional<Item> before, Optional<Item> after, Form form, List<String> path) {
        List<ChangedField> fields = new ArrayList<>();
        fields(before, after, form, new At(ChangeWords.last(path), ""), fields);
        return fields;
    }

    /** Name of a value, and the row it stands in. */
    private record At(String name, String place) {}

    private static void fields(
            Optional<Item> before, Optional<Item> after, Form form, At at, List<ChangedField> fields) {
        if (same(before, after)) {
            return;
        }
        Item any = after.or(() -> before).orElseThrow();
        if (any instanceof Item.Mapping) {
            for (Key key : InputLines.nested(form).keys()) {
                Block block = InputLines.nested(form);
                boolean told = PROVENANCE.contains(key.name()) || rowByRow(block) && IDENTITY.contains(key.name());
                if (told) {
                    continue;
                }
                fields(
                        before.flatMap(b -> get(b, key)),
                        after.flatMap(a -> get(a, key)),
                        key.form(),
                        new At(ChangeWords.words(key.name()), at.place()),
                        fields);
            }
        } else if (form instanceof Form.Rows rows
                && before.orElse(NONE) instanceof Item.Sequence b
                && after.orElse(NONE) instanceof Item.Sequence a) {
            table(b, a, rows.block(), fields);
        } else {
            fields.add(new ChangedField(
                    at.name(), at.place(), scalar(before), scalar(after), measure(form, before, after)));
        }
    }

    private static Optional<Item> get(Item item, Key key) {
        return item instanceof Item.Mapping mapping ? mapping.get(key.name()) : Optional.empty();
    }

    /** Rows are known by their depth or else by what stands in their first column, and how often it came before. */
    private static void table(Item.Sequence before, Item.Sequence after, Block block, List<ChangedField> fields) {
        Map<String, Item> b = byPlace(before, block);
        Map<String, Item> a = byPlace(after, block);
        Set<String> places = new LinkedHashSet<>(a.keySet());
        places.addAll(b.keySet());
        for (String place : places) {
            Optional<Item> then = Optional.ofNullable(b.get(place));
            Optional<Item> now = Optional.ofNullable(a.get(place));
            fields(then, now, new Form.Nested(block, true), new At("", place), fields);
        }
    }

    private static Map<String, Item> byPlace(Item.Sequence list, Block block) {
        Optional<String> depth = block.keys().stream()
                .filter(k -> k.form() instanceof Form.Amount amount && amount.measure() == Measure.DEPTH)
                .map(Key::name)
                .findFirst();
        Map<String, Item> rows = new LinkedHashMap<>();
        for (Item item : list.items()) {
            Item.Mapping row = (Item.Mapping) item;
            String first = depth.flatMap(row::text).orElseGet(() -> firstText(row));
            String place = first;
            for (int i = 2; rows.containsKey(place); i++) {
                place = first + " (" + i + ")";
            }
            rows.put(place, item);
        }
        return rows;
    }

    private static String firstText(Item.Mapping row) {
        return row.entries().stream()
                .map(Item.Entry::value)
                .filter(Item.Scalar.class::isInstance)
                .map(i -> ((Item.Scalar) i).text())
                .findFirst()
                .orElse("");
    }

    private static String scalar(Optional<Item> item) {
        return item.filter(Item.Scalar.class::isInstance)
                .map(i -> ((Item.Scalar) i).text())
                .orElse(item.isPresent() ? "given" : "");
    }

    private static Optional<Measure> measure(Form form, Optional<Item> before, Optional<Item> after) {
        if (form instanceof Form.Amount amount) {
            return Optional.of(amount.measure());
        }
        if (form instanceof Form.RockPressure) {
            List<String> texts = List.of(scalar(before), scalar(after));
            boolean densities = texts.stream().allMatch(t -> t.isEmpty() || t.endsWith(" kg/m3"));
            boolean pressures = texts.stream().allMatch(t -> t.isEmpty() || t.endsWith(" kPaa"));
            return densities
                    ? Optional.of(Measure.EQUIVALENT_DENSITY)
                    : pressures ? Optional.of(Measure.PRESSURE_ABSOLUTE) : Optional.empty();
        }
        return Optional.empty();
    }

    private static boolean same(Optional<Item> a, Optional<Item> b) {
        return a.isPresent() == b.isPresent() && (a.isEmpty() || same(a.get(), b.get()));
    }

    /** Equal but for where they stand. */
    private static boolean same(Item a, Item b) {
        if (a instanceof Item.Scalar x && b instanceof Item.Scalar y) {
            return x.text().equals(y.text());
        }
        if (a instanceof Item.Sequence x && b instanceof Item.Sequence y) {
            return sameAll(x.items(), y.items());
        }
        if (a instanceof Item.Mapping x && b instanceof Item.Mapping y) {
            List<Item.Entry> some = values(x);
            List<Item.Entry> others = values(y);
            return some.stream()
                            .map(Item.Entry::key)
                            .toList()
                            .equals(others.stream().map(Item.Entry::key).toList())
                    && sameAll(
                            some.stream().map(Item.Entry::value).toList(),
                            others.stream().map(Item.Entry::value).toList());
        }
        return false;
    }

    private static List<Item.Entry> values(Item.Mapping mapping) {
        return mapping.entries().stream()
                .filter(e -> !PROVENANCE.contains(e.key()))
                .toList();
    }

    private static boolean sameAll(List<Item> a, List<Item> b) {
        if (a.size() != b.size()) {
            return false;
        }
        for (int i = 0; i < a.size(); i++) {
            if (!same(a.get(i), b.get(i))) {
                return false;
            }
        }
        return true;
    }
}
