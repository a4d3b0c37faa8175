package staunch.ingest;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import staunch.units.Amount;
import staunch.units.Fault;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.RangeFault;
import staunch.units.Source;
import staunch.units.UnitFault;
import staunch.units.Wording;

/** Reads a table by the columns that its user names. All problems of the table are found before it is refused. */
final class MappedTable {
    static final long LARGEST = 16_000_000;
    static final int MOST_PROBLEMS = 100;
    private static final double ABSENT = 1e30;
    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d\\d-\\d\\d(T.*)?");
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?([eE][+-]?\\d+)?");
    private static final Pattern THOUSANDS = Pattern.compile("[+-]?\\d{1,3}([,'’ \\u00A0\\u202F]\\d{3})+(\\.\\d+)?");
    /** The numbers that the trade puts where it has none. */
    private static final Pattern FILLER = Pattern.compile("-9+(\\.(0+|25))?");

    private static final int MOST_SHOWN = 200;
    private static final Pattern COMMA = Pattern.compile("[+-]?[\\d.]+,\\d+");

    private final String file;
    private final TableFormat format;
    private final Map<String, Integer> headings = new HashMap<>();
    private final Map<List<String>, Integer> seen = new HashMap<>();
    private final List<DataFileFault.Problem> bad = new ArrayList<>();
    private final Map<Integer, String> badWells = new HashMap<>();

    private MappedTable(String file, TableFormat format) {
        this.file = file;
        this.format = format;
    }

    /** Makes something of a row; a core fault or {@link Bad} is a problem of the file, {@link Skip} leaves the row out. */
    interface RowReader<T> {
        T read(Row row);
    }

    /** A column that a reader needs, with what it must measure; null for text. */
    record Needed(TableColumn column, Measure measure) {}

    static Wording plain(String text) {
        return new Wording(text, List.of());
    }

    private static class Stop extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Stop(String message) {
            super(message, null, false, false);
        }
    }

    /** Reason to leave a row out. */
    static final class Skip extends Stop {
        private static final long serialVersionUID = 1L;

        Skip(String reason) {
            super(reason);
        }
    }

    private static final class Bad extends Stop {
        private static final long serialVersionUID = 1L;
        private final transient Wording problem;
        private final transient Wording advice;
        private final String column;

        Bad(String column, Wording problem, Wording advice) {
            super(problem.text());
            this.problem = problem;
            this.column = column;
            this.advice = advice;
        }

        Bad(String column, String problem, String advice) {
            this(column, plain(problem), plain(advice));
        }
    }

    /** Reads every row below the heading. */
    static <T> OffsetRows<T> read(
            Path path, TableFormat format, TableColumn well, List<Needed> needed, RowReader<T> reader)
            throws DataFileFault {
        String name = String.valueOf(path.getFileName());
        MappedTable table = new MappedTable(name, format);
        Reading<T> reading = table.new Reading<>(well, needed, reader);
        if (isWorkbook(path, name)) {
            Workbook.read(path, name, format.sheet(), reading::take);
        } else {
            table.csv(text(path, name), reading);
        }
        return reading.rows();
    }

    private static boolean isWorkbook(Path path, String name) throws DataFileFault {
        try {
            if (Files.size(path) > LARGEST) {
                throw refused(name, "is larger than " + LARGEST / 1_000_000 + " MB", "cut it down");
            }
            return LasText.Head.of(path).content() == LasText.Content.ZIP;
        } catch (NoSuchFileException e) {
            throw refused(name, "does not exist", "check the path");
        } catch (IOException e) {
            throw refused(name, "cannot be read: " + e.getMessage(), "check the path");
        }
    }

    private static String text(Path path, String name) throws DataFileFault {
        try {
            LasText.Head head = LasText.Head.of(path);
            switch (head.content()) {
                case EMPTY:
                    throw refused(name, "is empty", "fetch it again");
                case BINARY, POINT_CLOUD:
                    throw refused(
                            name, "is binary, perhaps an old .xls or a locked workbook", "save it as .xlsx or CSV");
                default:
                    break;
            }
            byte[] bytes = Files.readAllBytes(path);
            try {
                return decode(bytes, head.markLength(), head.charset());
            } catch (CharacterCodingException e) {
                if (head.charset() != StandardCharsets.UTF_8 || head.markLength() > 0) {
                    throw refused(name, "is not valid " + head.charset(), "save it as UTF-8");
                }
                return new String(bytes, LasText.WESTERN);
            }
        } catch (IOException e) {
            throw refused(name, "cannot be read: " + e.getMessage(), "check the path");
        }
    }

    private static String decode(byte[] bytes, int from, Charset charset) throws IOException {
        try (InputStreamReader in = new InputStreamReader(
                new ByteArrayInputStream(bytes, from, bytes.length - from),
                charset.newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT))) {
            StringBuilder text = new StringBuilder(bytes.length);
            char[] buffer = new char[8192];
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                text.append(buffer, 0, n);
            }
            return text.toString();
        }
    }

    private static DataFileFault refused(String file, String problem, String advice) {
        return new DataFileFault(new DataFileFault.Problem(file, 0, "", problem, advice));
    }

    private void bad(int line, String well, String place, Wording problem, Wording advice) {
        bad.add(new DataFileFault.Problem(file, line, place, problem, advice));
        badWells.put(line, well);
    }

    private void csv(String text, Reading<?> reading) throws DataFileFault {
        CSVFormat csv = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(format.delimiter())
                .setCommentMarker('#')
                .setIgnoreSurroundingSpaces(true)
                .setIgnoreEmptyLines(true)
                .get();
        // The parser's line number counts ends of lines, so that the last line needs one too.
        try (CSVParser parser = CSVParser.parse(text + "\n", csv)) {
            for (CSVRecord record : parser) {
                reading.take(record.stream().map(Cell::text).toList(), (int) parser.getCurrentLineNumber());
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            throw new DataFileFault(new DataFileFault.Problem(
                    file,
                    CsvTable.line(e),
                    "",
                    "is not CSV: a quoted cell is not closed or goes on behind its quote",
                    "check the quotes"));
        }
    }

    /** What has been read so far, row by row. */
    private final class Reading<T> {
        private final TableColumn well;
        private final List<Needed> needed;
        private final RowReader<T> reader;
        private final List<OffsetRows.Row<T>> rows = new ArrayList<>();
        private final List<OffsetRows.LeftOut> leftOut = new ArrayList<>();
        private int number;
        private int width;

        Reading(TableColumn well, List<Needed> needed, RowReader<T> reader) {
            this.well = well;
            this.needed = needed;
            this.reader = reader;
        }

        void take(List<Cell> cells, int line) throws DataFileFault {
            if (number == 0) {
                width = cells.size();
                heading(cells, line, needed);
            } else if (number <= format.linesOfUnits()) {
                units(cells, line, needed);
            } else {
                if (cells.size() != width) {
                    bad(
                            line,
                            "",
                            "",
                            plain("has " + cells.size() + " cells where the heading has " + width),
                            plain("check delimiter and decimal mark"));
                } else {
                    row(new Row(cells, line), well, needed, reader, rows, leftOut);
                }
            }
            number++;
        }

        OffsetRows<T> rows() throws DataFileFault {
            if (number == 0) {
                throw refused(file, "has no heading", "write the names of the columns in the first line");
            }
            // Of many bad rows the mapping is to blame rather than the rows.
            int read = rows.size() + leftOut.size();
            if (!bad.isEmpty() && (format.badRows() == TableFormat.BadRows.REFUSE_FILE || 9 * bad.size() > read)) {
                throw new DataFileFault(bad.subList(0, Math.min(bad.size(), MOST_PROBLEMS)));
            }
            for (DataFileFault.Problem p : bad) {
                String place = p.place().isEmpty() ? "" : p.place() + ": ";
                leftOut.add(new OffsetRows.LeftOut(
                        p.line(), badWells.get(p.line()), p.problem().within(place, "")));
            }
            leftOut.sort(Comparator.comparingInt(OffsetRows.LeftOut::line));
            return new OffsetRows<>(file, rows, leftOut);
        }
    }

    private void heading(List<Cell> cells, int line, List<Needed> needed) throws DataFileFault {
        List<DataFileFault.Problem> problems = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Cell cell : cells) {
            names.add(cell.text());
        }
        if (needed.stream().noneMatch(n -> names.contains(n.column().heading()))) {
            throw new DataFileFault(new DataFileFault.Problem(
                    file,
                    line,
                    "",
                    "has none of the columns "
                            + needed.stream()
                                    .map(n -> n.column().heading())
                                    .distinct()
                                    .collect(Collectors.joining(", ")),
                    names.size() == 1
                            ? "its first line reads \"" + shortened(names.get(0))
                                    + "\": check the delimiter, and whether that is the heading"
                            : "its columns are " + shortened(String.join(", ", names))));
        }
        for (Needed n : needed) {
            String heading = n.column().heading();
            int at = names.indexOf(heading);
            if (at < 0) {
                problems.add(new DataFileFault.Problem(
                        file,
                        line,
                        heading,
                        "is not a column of the table",
                        "its columns are " + shortened(String.join(", ", names))));
            } else if (names.lastIndexOf(heading) != at) {
                problems.add(new DataFileFault.Problem(
                        file, line, heading, "is a column given twice", "rename one of them"));
            } else {
                headings.put(heading, at);
            }
            if (n.measure() != null) {
                try {
                    Quantity.of(1, n.column().unit()).si(heading, n.measure());
                } catch (Fault e) {
                    problems.add(new DataFileFault.Problem(
                            file, line, heading, "cannot be in \"" + n.column().unit() + "\": " + e.getMessage(), ""));
                }
            }
        }
        if (!problems.isEmpty()) {
            throw new DataFileFault(problems);
        }
    }

    private static String shortened(String text) {
        String plain = text.replace("\t", "<tab>").replaceAll("\\p{Cntrl}", "?");
        return plain.length() <= MOST_SHOWN ? plain : plain.substring(0, MOST_SHOWN) + " …";
    }

    /** A row of data taken for one of units would be lost without a word. */
    private void units(List<Cell> cells, int line, List<Needed> needed) throws DataFileFault {
        for (Needed n : needed) {
            int at = headings.get(n.column().heading());
            if (n.measure() != null
                    && at < cells.size()
                    && NUMBER.matcher(cells.get(at).text()).matches()) {
                throw new DataFileFault(new DataFileFault.Problem(
                        file,
                        line,
                        n.column().heading(),
                        "holds the number " + cells.get(at).text() + " where a line of units is stated",
                        "state how many lines of units there are, or put the missing one in"));
            }
        }
    }

    private <T> void row(
            Row row,
            TableColumn well,
            List<Needed> needed,
            RowReader<T> reader,
            List<OffsetRows.Row<T>> rows,
            List<OffsetRows.LeftOut> leftOut) {
        String name = row.text(well).orElse("");
        try {
            if (name.isEmpty()) {
                throw new Bad(well.heading(), "is empty", "name the well");
            }
            T value = reader.read(row);
            Integer same = seen.putIfAbsent(row.mapped(needed), row.line);
            if (same != null) {
                throw new Skip("repeats line " + same);
            }
            rows.add(new OffsetRows.Row<>(name, value, row.line, row.used));
        } catch (Skip e) {
            leftOut.add(new OffsetRows.LeftOut(row.line, name, e.getMessage()));
        } catch (Bad e) {
            bad(row.line, name, e.column, e.problem, e.advice);
        } catch (Fault e) {
            bad(row.line, name, row.last, e.wording(), plain(""));
        }
    }

    /** A row while it is read. */
    final class Row {
        private final List<Cell> cells;
        private final int line;
        private final List<OffsetRows.Written> used = new ArrayList<>();
        private final Map<String, Double> values = new HashMap<>();
        private String last = "";

        private Row(List<Cell> cells, int line) {
            this.cells = cells;
            this.line = line;
        }

        private List<String> mapped(List<Needed> needed) {
            return needed.stream().map(n -> cell(n.column()).text()).toList();
        }

        private Cell cell(TableColumn column) {
            return cells.get(headings.get(column.heading()));
        }

        /** Cell as written; empty where missing. */
        Optional<String> text(TableColumn column) {
            String cell = cell(column).text();
            return cell.isEmpty() || format.missing().contains(cell) ? Optional.empty() : Optional.of(cell);
        }

        /** Number in SI; empty where missing. */
        OptionalDouble number(TableColumn column, Measure measure) {
            last = column.heading();
            Optional<String> cell = text(column);
            if (cell.isEmpty()) {
                return OptionalDouble.empty();
            }
            String number = cell.get();
            if (DATE.matcher(number).matches()) {
                throw new Bad(last, "holds the date " + number, "write a number, and format the cell as one");
            }
            if (number.startsWith("#")) {
                throw new Bad(last, "holds the error " + number, "mend the formula, or leave the cell empty");
            }
            if (format.decimalMark() == TableFormat.DecimalMark.POINT
                    && COMMA.matcher(number).matches()) {
                throw new Bad(
                        last, "\"" + number + "\" has a comma", "say that commas are decimal marks, or take it out");
            }
            if (format.decimalMark() == TableFormat.DecimalMark.COMMA
                    && !cell(column).number()) {
                if (number.contains(".")) {
                    throw new Bad(
                            last, "\"" + number + "\" has a point where commas are decimal marks", "check the format");
                }
                number = number.replace(',', '.');
            }
            Quantity quantity;
            try {
                quantity = Quantity.parse(last, number + " " + column.unit());
            } catch (UnitFault e) {
                throw new Bad(
                        last,
                        "\"" + cell.get() + "\" is not a number",
                        THOUSANDS.matcher(number).matches()
                                ? "write it without thousands separators"
                                : "write the number alone, in " + column.unit()
                                        + ", or name it as a sign for a missing value");
            }
            if (Math.abs(quantity.value()) >= ABSENT) {
                return OptionalDouble.empty();
            }
            used.add(new OffsetRows.Written(last, (cell.get() + " " + column.unit()).strip()));
            values.put(last, quantity.value());
            try {
                return OptionalDouble.of(quantity.si(last, measure));
            } catch (RangeFault e) {
                throw new Bad(
                        last,
                        Wording.of(cited(column) + " lies below {}", new Amount(e.lowest(), measure, 6)),
                        plain(
                                FILLER.matcher(number).matches()
                                        ? "name it as a sign for a missing value, if it is one"
                                        : "check it and its unit"));
            }
        }

        /** Says which column is to blame for what is found wrong from here on. */
        void about(TableColumn column) {
            last = column.heading();
        }

        /** Number as written, of a column that was read. */
        double written(TableColumn column) {
            return values.get(column.heading());
        }

        /** Number as written and unit, of a column that was read. */
        String cited(TableColumn column) {
            // The quotes part number and unit, so that no quantity of a message is found in what it cites.
            return "\"" + cell(column).text() + "\" " + column.unit();
        }

        int line() {
            return line;
        }

        /** Number in SI; the row is left out where it is missing. */
        double needed(TableColumn column, Measure measure) {
            return number(column, measure).orElseThrow(() -> new Skip(column.heading() + " is not given"));
        }

        /** Choice that a word makes. */
        <T> T choice(WordColumn<T> choice) {
            if (choice.always().isPresent()) {
                return choice.always().get();
            }
            TableColumn column = choice.column().orElseThrow();
            String word = text(column).orElseThrow(() -> new Skip(column.heading() + " is not given"));
            T chosen = choice.words().get(word);
            if (chosen == null) {
                throw new Bad(
                        column.heading(),
                        "has the word \"" + word + "\", which is not mapped",
                        "map it; mapped are "
                                + String.join(
                                        ", ",
                                        choice.words().keySet().stream()
                                                .sorted()
                                                .toList()));
            }
            return chosen;
        }

        /** Exception that refuses the file because of this row. */
        RuntimeException problem(TableColumn column, String problem, String advice) {
            return new Bad(column.heading(), problem, advice);
        }

        /** The same, with quantities. */
        RuntimeException problem(TableColumn column, Wording problem, Wording advice) {
            return new Bad(column.heading(), problem, advice);
        }

        /** Where the row and its columns stand. */
        Source source(TableColumn... columns) {
            StringBuilder place = new StringBuilder("line " + line);
            for (int i = 0; i < columns.length; i++) {
                place.append(i == 0 ? ", " : " and ").append(columns[i].heading());
            }
            return new Source(file, place.toString());
        }
    }
}
