package staunch.ingest;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import staunch.ingest.Values.Bad;
import staunch.units.Quantity;

/** Checks every value of a case by itself against the table of keys, and reads the CSV files on the way. */
final class Validator {
    private final CaseDirectory directory;
    private final FaultLog log;
    private final Map<Item, List<Item.Mapping>> tables = new HashMap<>();

    Validator(CaseDirectory directory, FaultLog log) {
        this.directory = directory;
        this.log = log;
    }

    /** A value as a person is told of it: a record holds it in SI, whatever the units of its case. */
    String told(String written, Form form) {
        return directory.isRecorded()
                        && form instanceof Form.Amount amount
                        && Values.amount(written, amount) instanceof Values.Good<Double> good
                ? log.units().precise(good.value(), amount.measure())
                : written;
    }

    /** Rows of the CSV file named by an item; none where it could not be read. */
    List<Item.Mapping> table(Item name) {
        return tables.getOrDefault(name, List.of());
    }

    /** Whether the CSV file named by an item was read. */
    boolean isRead(Item name) {
        return tables.containsKey(name);
    }

    void check(Item.Mapping mapping, Block block, boolean whole) {
        for (Item.Entry entry : mapping.entries()) {
            block.key(entry.key())
                    .ifPresentOrElse(
                            key -> check(entry.value(), key.form()),
                            () -> log.add(
                                    entry.place(),
                                    entry.key(),
                                    "is not a key of " + block.name(),
                                    Words.hint(entry.key(), block.names())));
        }
        if (whole) {
            complete(mapping, block);
        }
    }

    /** Checks that what is needed is there. */
    void complete(Item.Mapping mapping, Block block) {
        for (Key key : block.keys()) {
            if (key.needed() && !mapping.has(key.name()) && !isMisspelt(mapping, block, Set.of(key.name()))) {
                missing(mapping, key);
            }
        }
        for (List<String> group : block.alternatives()) {
            List<String> given = group.stream().filter(mapping::has).toList();
            if (given.isEmpty() && !isMisspelt(mapping, block, Set.copyOf(group))) {
                log.add(mapping.place(), "", "needs one of " + String.join(", ", group), "give one of them");
            } else if (given.size() > 1) {
                log.add(mapping.place(), "", "has " + String.join(" and ", given), "keep one of them");
            }
        }
    }

    /** Whether one of some keys is there, but misspelt: a fault of its own already. */
    static boolean isMisspelt(Item.Mapping mapping, Block block, Set<String> keys) {
        return mapping.entries().stream()
                .filter(e -> block.key(e.key()).isEmpty())
                .anyMatch(e -> Words.nearest(e.key(), block.names())
                        .filter(keys::contains)
                        .isPresent());
    }

    void missing(Item.Mapping mapping, Key key) {
        log.add(at(mapping, key.name()), "", "is missing", needs(key));
    }

    static Place at(Item.Mapping mapping, String key) {
        return mapping.place().key(key, mapping.place().line());
    }

    private static String needs(Key key) {
        String meaning = key.meaning();
        int end = meaning.indexOf(". ");
        String first = end < 0 ? meaning.substring(0, meaning.length() - 1) : meaning.substring(0, end);
        return "give it: " + first.substring(0, 1).toLowerCase(Locale.ROOT) + first.substring(1);
    }

    private void check(Item item, Form form) {
        if (item instanceof Item.Refused) {
            return;
        }
        if (form instanceof Form.Nested nested) {
            mapping(item, nested.block(), nested.whole());
        } else if (form instanceof Form.Rows rows) {
            rows(item, rows);
        } else if (form instanceof Form.NameOrNested either) {
            if (item instanceof Item.Scalar scalar) {
                word(scalar, either.names());
            } else {
                mapping(item, either.block(), true);
            }
        } else if (item instanceof Item.Scalar scalar) {
            scalar(scalar, form);
        } else {
            log.add(
                    item.place(),
                    "",
                    "holds " + kind(item) + " where one value is wanted",
                    "write the value behind it");
        }
    }

    private void mapping(Item item, Block block, boolean whole) {
        if (item instanceof Item.Mapping mapping) {
            check(mapping, block, whole);
        } else {
            log.add(
                    item.place(),
                    shown(item),
                    "holds " + kind(item) + " where keys are wanted",
                    "write keys below it, such as " + block.keys().get(0).name() + ":");
        }
    }

    private void rows(Item item, Form.Rows rows) {
        if (item instanceof Item.Sequence sequence) {
            if (sequence.items().isEmpty()) {
                log.add(item.place(), "", "is an empty list", "leave the key out or list something");
            }
            sequence.items().stream()
                    .filter(i -> !(i instanceof Item.Refused))
                    .forEach(i -> mapping(i, rows.block(), rows.whole()));
        } else if (rows.csv() && item instanceof Item.Mapping mapping && mapping.has(CaseKeys.FILE)) {
            for (Item.Entry entry : mapping.entries()) {
                if (entry.key().equals(CaseKeys.FILE)) {
                    check(entry.value(), new Form.Csv(rows.block()));
                } else {
                    log.add(entry.place(), entry.key(), "does not stand beside file", "keep file alone");
                }
            }
        } else if (!(item instanceof Item.Scalar scalar
                && !rows.word().isEmpty()
                && scalar.text().equals(rows.word()))) {
            String also = (rows.csv() ? ", or name a CSV file with file:" : "")
                    + (rows.word().isEmpty() ? "" : ", or write " + rows.word());
            log.add(
                    item.place(),
                    shown(item),
                    "holds " + kind(item) + " where a list is wanted",
                    "begin each item with \"- \"" + also);
        }
    }

    private void scalar(Item.Scalar scalar, Form form) {
        if (scalar.text().isBlank()) {
            log.add(scalar.place(), "", "is empty", "write a value or leave the key out");
        } else if (form instanceof Form.Amount amount) {
            record(scalar, Values.amount(scalar.text(), amount));
        } else if (form instanceof Form.RockPressure) {
            record(scalar, Values.rock(scalar.text()));
        } else if (form instanceof Form.PumpRate) {
            // Whether strokes are allowed depends on the section: looked at when it is built.
            record(scalar, Values.pumpRate(scalar.text(), OptionalDouble.of(0.01)));
        } else if (form instanceof Form.Count count) {
            count(scalar, count);
        } else if (form instanceof Form.Flag) {
            word(scalar, List.of("true", "false"));
        } else if (form instanceof Form.Choice choice) {
            word(scalar, choice.names());
        } else if (form instanceof Form.Word word) {
            word(scalar, word.words());
        } else if (form instanceof Form.UnitOf unit) {
            unit(scalar, unit);
        } else if (form instanceof Form.Csv csv) {
            csv(scalar, csv);
        }
    }

    private void record(Item.Scalar scalar, Values.Reading<?> reading) {
        if (reading instanceof Bad<?> bad) {
            log.add(scalar.place(), scalar.text(), bad.problem(), bad.hint());
        }
    }

    private void count(Item.Scalar scalar, Form.Count count) {
        boolean whole = scalar.text().matches("\\d{1,9}");
        if (!whole) {
            log.add(scalar.place(), scalar.text(), "\"" + scalar.text() + "\" is not a whole number", "write digits");
        } else if (Integer.parseInt(scalar.text()) < count.lowest()
                || Integer.parseInt(scalar.text()) > count.highest()) {
            log.add(
                    scalar.place(),
                    scalar.text(),
                    scalar.text() + " is outside " + count.lowest() + " to " + count.highest(),
                    "");
        }
    }

    private void word(Item.Scalar scalar, List<String> words) {
        if (!words.contains(scalar.text())) {
            log.add(
                    scalar.place(),
                    scalar.text(),
                    "\"" + scalar.text() + "\" is none of " + String.join(", ", words),
                    Words.nearest(scalar.text(), words)
                            .map(w -> "did you mean " + w + "?")
                            .orElse("choose one"));
        }
    }

    private void unit(Item.Scalar scalar, Form.UnitOf unit) {
        List<String> known = Quantity.unitsFor(unit.measure());
        if (!known.contains(scalar.text())) {
            log.add(
                    scalar.place(),
                    scalar.text(),
                    "\"" + scalar.text() + "\" is not a unit of "
                            + unit.measure().title(),
                    Words.hint(scalar.text(), known));
        }
    }

    private void csv(Item.Scalar name, Form.Csv csv) {
        if (tables.containsKey(name)) {
            return;
        }
        try {
            String text = directory.csv(name);
            List<Item.Mapping> rows = CsvTable.read(text, directory.relative(name), csv.block(), log);
            rows.forEach(row -> check(row, csv.block(), true));
            tables.put(name, rows);
        } catch (FaultLog.Unreadable recorded) {
            // The fault is in the log; the table stays unread.
            return;
        }
    }

    private static String kind(Item item) {
        return item instanceof Item.Mapping ? "keys" : item instanceof Item.Sequence ? "a list" : "a text";
    }

    private static String shown(Item item) {
        return item instanceof Item.Scalar scalar ? scalar.text() : "";
    }
}
