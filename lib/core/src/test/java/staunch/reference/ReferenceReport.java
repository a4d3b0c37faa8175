package staunch.reference;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Keeps what the reference tests of this run compared, and writes it to {@code target/reference}, one file per table.
 * A file is written anew at the first check of its table in a run.
 */
final class ReferenceReport {
    static final String[] COLUMNS = {
        "table",
        "position",
        "id",
        "model",
        "quantity",
        "unit",
        "published",
        "computed",
        "difference",
        "tolerance",
        "reason",
        "inputs",
        "method",
        "source"
    };

    private record Key(int position, String model) implements Comparable<Key> {
        private static final Comparator<Key> ORDER =
                Comparator.comparingInt(Key::position).thenComparing(Key::model);

        @Override
        public int compareTo(Key other) {
            return ORDER.compare(this, other);
        }
    }

    private static final Map<String, Map<Key, Object[]>> TABLES = new TreeMap<>();

    private ReferenceReport() {}

    static Path folder() {
        return Path.of(System.getProperty("basedir", "."), "target", "reference");
    }

    static synchronized void add(ReferenceRow row, String model, double computed, double tolerance, String reason) {
        Map<Key, Object[]> lines = TABLES.computeIfAbsent(row.table(), t -> new TreeMap<>());
        Object[] line = {
            row.table(),
            row.position(),
            row.id(),
            model,
            row.quantity(),
            row.unit(),
            row.published(),
            computed,
            computed - row.published(),
            tolerance,
            reason,
            row.inputs(),
            row.method(),
            row.source()
        };
        lines.put(new Key(row.position(), model), line);
        write(row.table(), lines);
    }

    private static void write(String table, Map<Key, Object[]> lines) {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader(COLUMNS).get();
        try {
            Files.createDirectories(folder());
            Path file = folder().resolve(table.replace('/', '-'));
            try (CSVPrinter out = format.print(file, StandardCharsets.UTF_8)) {
                for (Object[] line : lines.values()) {
                    out.printRecord(line);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
