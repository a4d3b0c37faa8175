package staunch.ingest;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import staunch.units.Measure;
import staunch.units.Quantity;

/**
 * Reads a CSV file whose columns are keys of a block. Units stand in the heading ("md [m]") or in a second row of units;
 * each cell becomes the same text as in YAML ("1200 m"), so that both are checked alike.
 */
final class CsvTable {
    private static final int MOST_ROWS = 100_000;
    private static final Pattern LINE = Pattern.compile("line:? ?(\\d+)");
    private static final Pattern HEADING = Pattern.compile("\\s*([^\\[\\]]*?)\\s*(?:\\[\\s*([^\\[\\]]*?)\\s*])?\\s*");

    private final String file;
    private final Block block;
    private final FaultLog log;
    private final List<String> names = new ArrayList<>();
    private final List<String> units = new ArrayList<>();

    private CsvTable(String file, Block block, FaultLog log) {
        this.file = file;
        this.block = block;
        this.log = log;
    }

    /**
     * Rows of a file.
     *
     * @throws FaultLog.Unreadable where there are none or the heading is wrong; the faults are in the log
     */
    static List<Item.Mapping> read(String text, String file, Block block, FaultLog log) {
        return new CsvTable(file, block, log).rows(text);
    }

    private List<Item.Mapping> rows(String text) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setCommentMarker('#')
                .setIgnoreSurroundingSpaces(true)
                .setIgnoreEmptyLines(true)
                .get();
        // The line counter of the parser counts ends of lines, so that the last line needs one too.
        try (CSVParser parser = CSVParser.parse(text + "\n", format)) {
            return rows(parser);
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            throw stop(
                    line(e),
                    "",
                    "is not CSV: a quoted cell is not closed or goes on behind its quote",
                    "check the quotes");
        }
    }

    /** Line that the parser of CSV complains of. */
    static int line(Exception e) {
        Throwable cause = e.getCause() == null ? e : e.getCause();
        Matcher line = LINE.matcher(String.valueOf(cause.getMessage()).replaceAll("\\s+", " "));
        return line.find() ? Integer.parseInt(line.group(1)) : 1;
    }

    private List<Item.Mapping> rows(CSVParser parser) {
        Iterator<CSVRecord> records = parser.iterator();
        if (!records.hasNext()) {
            throw stop(1, "", "is empty", "write a heading such as " + example());
        }
        CSVRecord heading = records.next();
        heading(heading, (int) parser.getCurrentLineNumber());
        List<Item.Mapping> rows = new ArrayList<>();
        boolean first = true;
        while (records.hasNext()) {
            CSVRecord record = records.next();
            int line = (int) parser.getCurrentLineNumber();
            boolean unitsRow = first && isUnits(record);
            first = false;
            if (unitsRow) {
                units(record);
                continue;
            }
            if (rows.isEmpty()) {
                checkUnits();
            }
            if (record.size() != names.size()) {
                log.add(
                        new Place(file, line, ""),
                        "",
                        "has " + record.size() + " cells where the heading has " + names.size(),
                        "check the commas; write the decimal mark as a point");
                continue;
            }
            rows.add(row(record, line));
            if (rows.size() > MOST_ROWS) {
                throw stop(line, "", "has more than " + MOST_ROWS + " rows", "thin it out");
            }
        }
        if (rows.isEmpty()) {
            throw stop(1, "", "has no rows below its heading", "write at least one");
        }
        return rows;
    }

    private void heading(CSVRecord record, int line) {
        if (record.size() == 1 && record.get(0).contains(";")) {
            throw stop(line, "", "is separated by semicolons", "separate the columns with commas");
        }
        Set<String> seen = new HashSet<>();
        boolean wrong = false;
        boolean missing = false;
        for (String cell : record) {
            Matcher m = HEADING.matcher(cell);
            String name = m.matches() ? m.group(1) : cell;
            String unit = m.matches() && m.group(2) != null ? m.group(2) : "";
            Place place = new Place(file, line, name);
            if (block.key(name).isEmpty()) {
                log.add(place, name, "is not a column of " + block.name(), Words.hint(name, block.names()));
                wrong = true;
            } else if (!unit.isEmpty() && !known(name).contains(unit)) {
                log.add(
                        place,
                        cell,
                        "\"" + unit + "\" is not a unit of " + name,
                        Words.nearest(unit, known(name))
                                .map(u -> "did you mean " + u + "?")
                                .orElse("see the units in the reference"));
                wrong = true;
            } else if (!seen.add(name)) {
                log.add(place, name, "is a column given twice", "keep one of them");
                wrong = true;
            }
            names.add(name);
            units.add(unit);
        }
        for (Key key : block.keys()) {
            if (key.needed() && !wrong && !names.contains(key.name())) {
                log.add(new Place(file, line, key.name()), "", "is a column that is missing", "add it");
                missing = true;
            }
        }
        if (wrong || missing) {
            throw new FaultLog.Unreadable();
        }
    }

    /** Every column of quantities has its unit. */
    private void checkUnits() {
        boolean wrong = false;
        for (int i = 0; i < names.size(); i++) {
            List<String> known = known(names.get(i));
            if (!known.isEmpty() && !known.contains("1") && units.get(i).isEmpty()) {
                log.add(
                        new Place(file, 1, names.get(i)),
                        "",
                        "is a column without a unit",
                        "write the unit in the heading, as in " + names.get(i) + " [" + usual(names.get(i)) + "]");
                wrong = true;
            }
        }
        if (wrong) {
            throw new FaultLog.Unreadable();
        }
    }

    private String usual(String column) {
        return block.key(column).orElseThrow().form() instanceof Form.Amount amount
                ? amount.measure().usualUnits().get(0)
                : "sg";
    }

    /** Whether every cell of a column that wants a unit is one, in a table whose heading has none. */
    private boolean isUnits(CSVRecord record) {
        boolean any = false;
        for (int i = 0; i < Math.min(record.size(), names.size()); i++) {
            List<String> known = known(names.get(i));
            if (!known.isEmpty() && !record.get(i).isEmpty()) {
                if (!known.contains(bare(record.get(i)))) {
                    return false;
                }
                any = true;
            }
        }
        return any && units.stream().allMatch(String::isEmpty);
    }

    private static String bare(String unit) {
        return unit.replaceAll("^\\[\\s*(.*?)\\s*]$", "$1");
    }

    /** Units that a column may have; none for text. */
    private List<String> known(String column) {
        Form form = block.key(column).orElseThrow().form();
        if (form instanceof Form.Amount amount) {
            return Quantity.unitsFor(amount.measure());
        }
        if (form instanceof Form.RockPressure) {
            return Stream.of(Measure.EQUIVALENT_DENSITY, Measure.PRESSURE_GRADIENT, Measure.PRESSURE_ABSOLUTE)
                    .flatMap(m -> Quantity.unitsFor(m).stream())
                    .toList();
        }
        return List.of();
    }

    private void units(CSVRecord record) {
        for (int i = 0; i < Math.min(record.size(), units.size()); i++) {
            if (!known(names.get(i)).isEmpty()) {
                units.set(i, bare(record.get(i)));
            }
        }
    }

    private Item.Mapping row(CSVRecord record, int line) {
        Place place = new Place(file, line, "");
        List<Item.Entry> entries = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            String cell = record.get(i);
            if (!cell.isEmpty()) {
                String text = units.get(i).isEmpty() ? cell : cell + " " + units.get(i);
                Place at = new Place(file, line, names.get(i));
                entries.add(new Item.Entry(names.get(i), at, new Item.Scalar(at, text)));
            }
        }
        return new Item.Mapping(place, entries);
    }

    private String example() {
        return String.join(
                ",", block.keys().stream().filter(Key::needed).map(Key::name).toList());
    }

    private FaultLog.Unreadable stop(int line, String field, String problem, String hint) {
        log.add(new Place(file, line, field), "", problem, hint);
        return new FaultLog.Unreadable();
    }
}
