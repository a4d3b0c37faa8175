package staunch.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;

/**
 * A table of published values under {@code src/test/resources/reference}. Columns: id, inputs, quantity, value (or
 * published_value), unit, tolerance, method (or formula_or_method), source, how_obtained, note; others are kept.
 *
 * <p>Typical use, one test per row:
 *
 * <pre>{@code
 * @TestFactory
 * Stream<DynamicTest> capacities() {
 *     return ReferenceTable.read("well/annular-capacities.csv")
 *             .tests(r -> r.quantity().equals("annular capacity"),
 *                    r -> r.checkSi(capacity(r.si("hole", DIAMETER), r.si("pipe OD", DIAMETER)), CAPACITY));
 * }
 * }</pre>
 */
public final class ReferenceTable {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private final String name;
    private final List<ReferenceRow> rows;

    private ReferenceTable(String name, List<Map<String, String>> records) {
        this.name = name;
        List<ReferenceRow> all = new ArrayList<>();
        for (Map<String, String> r : records) {
            all.add(new ReferenceRow(name, all.size(), r));
        }
        this.rows = List.copyOf(all);
    }

    /** Reads {@code reference/<name>} from the class path, such as {@code fluid/gas-z.csv}. */
    public static ReferenceTable read(String name) {
        return new ReferenceTable(name, records(name));
    }

    /**
     * A table from records that a test has put into the standard columns itself; the name tells it apart in the report.
     */
    public static ReferenceTable of(String name, List<Map<String, String>> records) {
        return new ReferenceTable(name, records);
    }

    /** Records of {@code reference/<name>} by column name, for files with columns of their own. */
    public static List<Map<String, String>> records(String name) {
        String path = "/reference/" + name;
        try (InputStream in = ReferenceTable.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalArgumentException("No resource " + path);
            }
            return FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8)).stream()
                    .map(CSVRecord::toMap)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Name as given to {@link #read}. */
    public String name() {
        return name;
    }

    /** All rows in file order. */
    public List<ReferenceRow> rows() {
        return rows;
    }

    /** The row with an identifier. */
    public ReferenceRow row(String id) {
        return rows.stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No row " + id + " in " + name));
    }

    /** One test for each row that is chosen; at least one must be. */
    public Stream<DynamicTest> tests(Predicate<ReferenceRow> chosen, Consumer<ReferenceRow> test) {
        List<ReferenceRow> selected = rows.stream().filter(chosen).toList();
        if (selected.isEmpty()) {
            throw new IllegalStateException("No row of " + name + " was chosen");
        }
        return selected.stream().map(r -> DynamicTest.dynamicTest(r.id() + " " + r.quantity(), () -> test.accept(r)));
    }
}
