package staunch.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A part of a case as written: text, a mapping or a list, each knowing where it stands. */
sealed interface Item {
    Place place();

    /** Text; empty where a key has no value. */
    record Scalar(Place place, String text) implements Item {}

    /** Something that was refused with a fault of its own. */
    record Refused(Place place) implements Item {}

    /** List. */
    record Sequence(Place place, List<Item> items) implements Item {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /** Keys with their values, in the order written. */
    record Mapping(Place place, List<Entry> entries) implements Item {
        public Mapping {
            entries = List.copyOf(entries);
        }

        Optional<Item> get(String key) {
            return entries.stream()
                    .filter(e -> e.key().equals(key))
                    .map(Entry::value)
                    .findFirst();
        }

        boolean has(String key) {
            return get(key).isPresent();
        }

        Optional<String> text(String key) {
            return get(key).filter(Scalar.class::isInstance).map(i -> ((Scalar) i).text());
        }

        /** This mapping with the keys of another that it lacks itself. */
        Mapping over(Mapping defaults) {
            List<Entry> all = new ArrayList<>(entries);
            defaults.entries.stream().filter(e -> !has(e.key())).forEach(all::add);
            return new Mapping(place, all);
        }

        Mapping without(String key) {
            return new Mapping(
                    place, entries.stream().filter(e -> !e.key().equals(key)).toList());
        }
    }

    /** A key with its value. */
    record Entry(String key, Place place, Item value) {}
}
