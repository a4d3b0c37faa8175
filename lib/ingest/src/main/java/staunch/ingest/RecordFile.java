package staunch.ingest;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import staunch.design.InputFile;
import staunch.design.InputLine;
import staunch.design.ResultValue;
import staunch.design.RunRecord;
import staunch.design.SectionQuantity;
import staunch.design.SectionResult;
import staunch.envelope.Verdict;
import staunch.units.Fault;

/**
 * Run records as text: one value a line, in a fixed order, numbers in SI with a fixed number of digits. Two records can be
 * held against each other by any program that compares texts. The last line is the SHA-256 of all lines above it, so that
 * a damaged record is known as such.
 */
public final class RecordFile {
    private static final int FORMAT = 2;
    private static final int LIMIT = 64 << 20;
    private static final String HEAD = "staunch run record, format ";
    private static final Pattern FIRST = Pattern.compile(Pattern.quote(HEAD) + "(\\d{1,9})");
    private static final Pattern LAST = Pattern.compile("end = ([0-9a-f]{64})");
    private static final Pattern RESULT =
            Pattern.compile("\\[(?<design>[^\\]]+)\\]\\[(?<section>[^\\]]+)\\]\\.(?<what>[a-z_]+)");
    private static final Pattern VALUE = Pattern.compile("(?:none|(?<number>-?\\d+(?:\\.\\d+)?) (?<unit>\\S+))"
            + Pattern.quote(RecordText.BETWEEN) + "(?<outcome>.*)");
    private static final String EQUALS = " = ";

    private RecordFile() {}

    /** Parts of a record, in their order. */
    private enum Part {
        RUN("run"),
        FILES("files"),
        TABLES("tables"),
        INPUT("input"),
        RESULTS("results");

        private final String title;

        Part(String title) {
            this.title = "[" + title + "]";
        }
    }

    /** A record as text; equal records give equal text. */
    public static String text(RunRecord record) {
        StringBuilder text = new StringBuilder(HEAD).append(FORMAT).append('\n');
        open(text, Part.RUN);
        line(text, "library", record.library());
        line(text, "well", record.well());
        open(text, Part.FILES);
        record.files().forEach(f -> line(text, RecordText.escaped(f.path()), f.sha256()));
        open(text, Part.TABLES);
        record.tables().forEach(t -> line(text, t.path(), t.value()));
        open(text, Part.INPUT);
        record.inputs().forEach(i -> {
            if (i.path().endsWith("]")) {
                // The cells of a row are escaped one by one.
                text.append(i.path()).append(EQUALS).append(i.value()).append('\n');
            } else {
                line(text, i.path(), i.value());
            }
        });
        open(text, Part.RESULTS);
        record.results().forEach(r -> results(text, r));
        text.append('\n');
        String end = "end = " + sha256(text.toString());
        return text.append(end).append('\n').toString();
    }

    private static void open(StringBuilder text, Part part) {
        text.append('\n').append(part.title).append('\n');
    }

    private static void line(StringBuilder text, String path, String value) {
        text.append(path).append(EQUALS).append(RecordText.escaped(value)).append('\n');
    }

    private static void results(StringBuilder text, SectionResult result) {
        String path = "[" + bracketed(result.design()) + "][" + bracketed(result.section()) + "].";
        line(text, path + "verdict", Form.Choice.name(result.verdict().outcome()));
        line(text, path + "statement", result.verdict().statement());
        if (!result.verdict().governing().isEmpty()) {
            line(text, path + "governing", result.verdict().governing());
        }
        for (ResultValue value : result.values()) {
            String number = value.value().isPresent()
                    ? BigDecimal.valueOf(value.value().getAsDouble())
                                    .setScale(value.decimals(), RoundingMode.HALF_EVEN)
                                    .toPlainString()
                            + " " + value.measure().siUnit()
                    : "none";
            text.append(path)
                    .append(Form.Choice.name(value.quantity()))
                    .append(EQUALS)
                    .append(number)
                    .append(RecordText.BETWEEN)
                    .append(RecordText.escaped(value.outcome()))
                    .append('\n');
        }
    }

    static String bracketed(String name) {
        return RecordText.escaped(name).replace("]", "\\u005d").replace("[", "\\u005b");
    }

    /**
     * Reads a record.
     *
     * @throws DataFileFault where the file is no run record, is damaged, or was written by a newer version
     */
    public static RunRecord read(Path file) throws DataFileFault {
        Objects.requireNonNull(file, "file");
        return new Reading(String.valueOf(file.getFileName())).of(lines(file));
    }

    private static List<String> lines(Path file) throws DataFileFault {
        String name = String.valueOf(file.getFileName());
        if (!Files.isRegularFile(file)) {
            throw fault(name, 0, "is not there", "name a file that an earlier run left");
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(LIMIT + 1);
        } catch (IOException e) {
            throw fault(name, 0, "cannot be read", "check the rights on it");
        }
        if (bytes.length > LIMIT) {
            throw fault(name, 0, "is larger than " + (LIMIT >> 20) + " MiB", "name a run record");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            // A program that keeps versions of files may have changed the ends of lines.
            return List.of(text.replace("\r\n", "\n").split("\n", -1));
        } catch (CharacterCodingException e) {
            throw fault(name, 0, "is no text in UTF-8", "name a run record");
        }
    }

    private static DataFileFault fault(String file, int line, String problem, String advice) {
        return new DataFileFault(new DataFileFault.Problem(file, line, "", problem, advice));
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Takes a record apart. */
    private static final class Reading {
        private static final String DAMAGED = "take the record from where it was kept, or run the earlier case again";

        private final String file;
        private final Map<Part, List<Line>> parts = new EnumMap<>(Part.class);

        Reading(String file) {
            this.file = file;
        }

        private record Line(int number, String path, String value) {}

        RunRecord of(List<String> lines) throws DataFileFault {
            Matcher first = FIRST.matcher(lines.get(0));
            if (!first.matches()) {
                throw fault(file, 1, "is no run record", "name a file that an earlier run left");
            }
            int format = Integer.parseInt(first.group(1));
            if (format > FORMAT) {
                throw fault(
                        file,
                        1,
                        "is of format " + format + ", written by a newer version; this one reads " + FORMAT,
                        "use that version, or run the earlier case with this one");
            }
            check(lines);
            split(lines);
            try {
                return record();
            } catch (Fault e) {
                throw fault(file, 0, "holds no complete run: " + e.getMessage(), DAMAGED);
            }
        }

        /** The last line tells whether those above it are as they were written. */
        private void check(List<String> lines) throws DataFileFault {
            int last = lines.size() - 1;
            while (last > 0 && lines.get(last).isEmpty()) {
                last--;
            }
            Matcher end = LAST.matcher(lines.get(last));
            if (!end.matches()) {
                throw fault(file, last + 1, "is cut off: its last line is missing", DAMAGED);
            }
            String above = String.join("\n", lines.subList(0, last)) + "\n";
            if (!sha256(above).equals(end.group(1))) {
                throw fault(file, 0, "is damaged: its lines are not as they were written", DAMAGED);
            }
        }

        private void split(List<String> lines) throws DataFileFault {
            Part part = null;
            for (int i = 1; i < lines.size(); i++) {
                String line = lines.get(i);
                Part opened = Stream.of(Part.values())
                        .filter(p -> p.title.equals(line))
                        .findFirst()
                        .orElse(null);
                if (opened != null) {
                    part = opened;
                } else if (!line.isEmpty() && !LAST.matcher(line).matches()) {
                    int at = equalsSign(line);
                    if (part == null || at < 0) {
                        throw fault(file, i + 1, "is no line of a run record", DAMAGED);
                    }
                    parts.computeIfAbsent(part, p -> new ArrayList<>())
                            .add(new Line(i + 1, line.substring(0, at), line.substring(at + EQUALS.length())));
                }
            }
        }

        /** The first outside brackets: a name in them may hold one too. */
        private static int equalsSign(String line) {
            int depth = 0;
            for (int i = 0; i < line.length(); i++) {
                char c = line.charAt(i);
                depth += c == '[' ? 1 : c == ']' ? -1 : 0;
                if (depth == 0 && line.startsWith(EQUALS, i)) {
                    return i;
                }
            }
            return -1;
        }

        private List<Line> part(Part part) {
            return parts.getOrDefault(part, List.of());
        }

        private RunRecord record() throws DataFileFault {
            Map<String, String> run = new LinkedHashMap<>();
            for (Line line : part(Part.RUN)) {
                run.put(line.path(), plain(line, line.value()));
            }
            List<InputFile> files = new ArrayList<>();
            for (Line line : part(Part.FILES)) {
                files.add(new InputFile(plain(line, line.path()), line.value()));
            }
            List<InputLine> tables = new ArrayList<>();
            for (Line line : part(Part.TABLES)) {
                tables.add(new InputLine(line.path(), plain(line, line.value())));
            }
            List<InputLine> inputs = new ArrayList<>();
            for (Line line : part(Part.INPUT)) {
                boolean row = line.path().endsWith("]");
                inputs.add(new InputLine(line.path(), row ? line.value() : plain(line, line.value())));
            }
            return new RunRecord(
                    run.getOrDefault("library", ""), run.getOrDefault("well", ""), files, tables, inputs, results());
        }

        private List<SectionResult> results() throws DataFileFault {
            Map<List<String>, Map<String, Line>> sections = new LinkedHashMap<>();
            for (Line line : part(Part.RESULTS)) {
                Matcher m = RESULT.matcher(line.path());
                if (!m.matches()) {
                    throw fault(file, line.number(), "is no result", DAMAGED);
                }
                sections.computeIfAbsent(
                                List.of(plain(line, m.group("design")), plain(line, m.group("section"))),
                                k -> new LinkedHashMap<>())
                        .put(m.group("what"), line);
            }
            List<SectionResult> results = new ArrayList<>();
            for (Map.Entry<List<String>, Map<String, Line>> section : sections.entrySet()) {
                results.add(result(section.getKey(), section.getValue()));
            }
            return results;
        }

        private SectionResult result(List<String> name, Map<String, Line> lines) throws DataFileFault {
            Line outcome = need(lines, "verdict", name);
            Verdict.Outcome known = Stream.of(Verdict.Outcome.values())
                    .filter(o -> Form.Choice.name(o).equals(outcome.value()))
                    .findFirst()
                    .orElseThrow(() -> fault(file, outcome.number(), "is no verdict", DAMAGED));
            Line statement = need(lines, "statement", name);
            Line governing = lines.getOrDefault("governing", new Line(0, "", ""));
            List<ResultValue> values = new ArrayList<>();
            boolean operations = Stream.of(SectionQuantity.values())
                    .filter(q -> q.part() != SectionQuantity.Part.ENVELOPE)
                    .anyMatch(q -> lines.containsKey(Form.Choice.name(q)));
            for (SectionQuantity quantity : SectionQuantity.values()) {
                // Records of format 1 hold the envelope alone.
                if (operations || quantity.part() == SectionQuantity.Part.ENVELOPE) {
                    values.add(value(quantity, need(lines, Form.Choice.name(quantity), name)));
                }
            }
            return new SectionResult(
                    name.get(0),
                    name.get(1),
                    new Verdict(known, plain(statement, statement.value()), plain(governing, governing.value())),
                    values);
        }

        private Line need(Map<String, Line> lines, String what, List<String> section) throws DataFileFault {
            Line line = lines.get(what);
            if (line == null) {
                throw fault(
                        file,
                        0,
                        "lacks " + what + " of section \"" + section.get(1) + "\", design \"" + section.get(0) + "\"",
                        DAMAGED);
            }
            return line;
        }

        private ResultValue value(SectionQuantity quantity, Line line) throws DataFileFault {
            Matcher m = VALUE.matcher(line.value());
            boolean unit = m.matches()
                    && (m.group("unit") == null
                            || m.group("unit").equals(quantity.measure().siUnit()));
            if (!unit) {
                throw fault(file, line.number(), "is no " + quantity.measure().title(), DAMAGED);
            }
            OptionalDouble number = m.group("number") == null
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Double.parseDouble(m.group("number")));
            return new ResultValue(quantity, quantity.measure(), number, plain(line, m.group("outcome")));
        }

        private String plain(Line line, String text) throws DataFileFault {
            try {
                return RecordText.plain(text);
            } catch (IllegalArgumentException e) {
                throw fault(file, line.number(), "holds a broken escape: " + e.getMessage(), DAMAGED);
            }
        }
    }
}
