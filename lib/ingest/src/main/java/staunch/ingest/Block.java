package staunch.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The keys that may stand together.
 *
 * @param name for the reference and the schema
 * @param keys in the order of the reference
 * @param alternatives groups of keys of which exactly one must be given
 */
record Block(String name, List<Key> keys, List<List<String>> alternatives) {
    Block {
        keys = List.copyOf(keys);
        alternatives = List.copyOf(alternatives);
    }

    static Block of(String name, Key... keys) {
        return new Block(name, List.of(keys), List.of());
    }

    Block exactlyOne(String... names) {
        List<List<String>> more = new ArrayList<>(alternatives);
        more.add(List.of(names));
        return new Block(name, keys, more);
    }

    Optional<Key> key(String key) {
        return keys.stream().filter(k -> k.name().equals(key)).findFirst();
    }

    List<String> names() {
        return keys.stream().map(Key::name).toList();
    }
}
