package staunch.ingest;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import staunch.design.InputLine;

/** The canonical keys of a case as the lines of a run record, and back: a value a line, a row of a table a line. */
final class InputLines {
    private static final String ROW = "[]";

    private InputLines() {}

    static List<InputLine> of(Item.Mapping canonical) {
        List<InputLine> lines = new ArrayList<>();
        collect(canonical, RecordKeys.CASE, "", lines);
        return lines;
    }

    private static void collect(Item.Mapping mapping, Block block, String path, List<InputLine> lines) {
        for (Item.Entry entry : mapping.entries()) {
            String here = path.isEmpty() ? entry.key() : path + "." + entry.key();
            Form form = block.key(entry.key()).orElseThrow().form();
            if (entry.value() instanceof Item.Mapping nested) {
                collect(nested, nested(form), here, lines);
            } else if (entry.value() instanceof Item.Sequence list) {
                collect(list, ((Form.Rows) form).block(), here, lines);
            } else {
                lines.add(new InputLine(here, ((Item.Scalar) entry.value()).text()));
            }
        }
    }

    private static void collect(Item.Sequence list, Block block, String path, List<InputLine> lines) {
        Set<String> names = new HashSet<>();
        for (Item item : list.items()) {
            Item.Mapping row = (Item.Mapping) item;
            if (isFlat(block)) {
                lines.add(new InputLine(path + ROW, RecordText.row(row)));
                continue;
            }
            Optional<String> name = row.text("name");
            String unique = name.orElse("#1");
            for (int i = 2; !names.add(unique); i++) {
                unique = name.map(n -> n + " ").orElse("") + "#" + i;
            }
            collect(row, block, path + "[" + RecordFile.bracketed(unique) + "]", lines);
        }
    }

    /** Whether every key of a block holds one value. */
    static boolean isFlat(Block block) {
        return block.keys().stream()
                .map(Key::form)
                .noneMatch(f -> f instanceof Form.Nested
                        || f instanceof Form.Rows
                        || f instanceof Form.Csv
                        || f instanceof Form.NameOrNested);
    }

    static Block nested(Form form) {
        return form instanceof Form.Nested nested ? nested.block() : ((Form.NameOrNested) form).block();
    }

    /**
     * The keys that gave the lines.
     *
     * @param file named in faults
     * @throws IllegalArgumentException where a line is none that {@link #of} gives; its text names the line
     */
    static Item.Mapping tree(List<InputLine> lines, String file) {
        Map<String, Object> root = new LinkedHashMap<>();
        for (InputLine line : lines) {
            try {
                put(root, line);
            } catch (RuntimeException e) {
                throw new IllegalArgumentException("\"" + line.path() + "\" is no value of a case", e);
            }
        }
        return mapping(root, new Place(file, 0, ""));
    }

    private static void put(Map<String, Object> root, InputLine line) {
        Map<String, Object> node = root;
        String path = line.path();
        int from = 0;
        while (true) {
            int end = from;
            while (end < path.length() && path.charAt(end) != '.' && path.charAt(end) != '[') {
                end++;
            }
            String key = path.substring(from, end);
            if (end == path.length()) {
                if (node.put(key, line.value()) != null) {
                    throw new IllegalArgumentException("given twice");
                }
                return;
            }
            if (path.charAt(end) == '.') {
                node = child(node, key);
                from = end + 1;
                continue;
            }
            int close = path.indexOf(']', end);
            String name = path.substring(end + 1, close);
            if (name.isEmpty()) {
                rows(node, key).add(row(line.value()));
                return;
            }
            node = child(child(node, key + ROW), name);
            if (close + 1 == path.length() || path.charAt(close + 1) != '.') {
                throw new IllegalArgumentException("no key behind the name");
            }
            from = close + 2;
        }
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> child(Map<String, Object> node, String key) {
        return (Map<String, Object>) node.computeIfAbsent(key, k -> new LinkedHashMap<String, Object>());
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> rows(Map<String, Object> node, String key) {
        return (List<Map<String, Object>>) node.computeIfAbsent(key, k -> new ArrayList<Map<String, Object>>());
    }

    private static Map<String, Object> row(String text) {
        Map<String, Object> row = new LinkedHashMap<>();
        for (String cell : text.split(java.util.regex.Pattern.quote(RecordText.BETWEEN))) {
            int blank = cell.indexOf(' ');
            if (row.put(cell.substring(0, blank), RecordText.plain(cell.substring(blank + 1))) != null) {
                throw new IllegalArgumentException("given twice");
            }
        }
        return row;
    }

    @SuppressWarnings("unchecked")
    private static Item.Mapping mapping(Map<String, Object> node, Place place) {
        List<Item.Entry> entries = new ArrayList<>();
        node.forEach((key, value) -> {
            boolean named = key.endsWith(ROW);
            String name = named ? key.substring(0, key.length() - ROW.length()) : key;
            Place at = place.key(name, 0);
            Item item;
            if (value instanceof String text) {
                item = new Item.Scalar(at, text);
            } else if (value instanceof List<?> rows) {
                item = sequence((List<Map<String, Object>>) rows, at);
            } else if (named) {
                item = sequence(
                        ((Map<String, Object>) value)
                                .values().stream()
                                        .map(row -> (Map<String, Object>) row)
                                        .toList(),
                        at);
            } else {
                item = mapping((Map<String, Object>) value, at);
            }
            entries.add(new Item.Entry(name, at, item));
        });
        return new Item.Mapping(place, entries);
    }

    private static Item.Sequence sequence(List<Map<String, Object>> rows, Place place) {
        List<Item> items = new ArrayList<>();
        rows.forEach(row -> items.add(mapping(row, place.item(items.size() + 1, 0))));
        return new Item.Sequence(place, items);
    }
}
