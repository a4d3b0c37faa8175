package staunch.ingest;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import staunch.units.Warning;

/**
 * Reads well logs in LAS format, versions 1.2, 2.0 and 3.0 (Canadian Well Logging Society). A file is read whole or not
 * at all; what departs from the standard and has one plain meaning is read and listed in {@link LasFile#warnings()}.
 *
 * <p>Missing are: the value of the NULL item (−999.25 where there is no such item), numbers of 10³⁰ and more, empty
 * values between delimiters, and the words ERR, NaN, NULL, N/A, INF and their like. The index, which is the first curve
 * of the log, has no null value.
 */
public final class LasReader {
    /** Most values, missing ones included, that one file may hold: 40 million numbers take 320 MB. */
    static final int MOST_VALUES = 40_000_000;

    static final int MOST_HEADER_LINES = 100_000;
    static final int MOST_HEADER_TEXT = 20_000_000;

    /** Most room for text in data sections, in bytes, with what each string costs besides its characters. */
    static final long MOST_TEXT = 100_000_000;

    private static final int COST_OF_STRING = 100;

    /** Numbers of undeclared columns that are kept as written too, in case text follows. */
    private static final int MOST_WRITTEN = 500_000;

    private static final double ABSENT = 1e30;
    private static final double USUAL_NULL = -999.25;
    private static final String WORDS =
            " ERR ERROR NAN -NAN NULL NONE N/A NA #N/A INF -INF +INF 1.#INF -1.#INF 1.#QNAN -1.#QNAN -1.#IND 1.#IND ";

    private final Path path;
    private final String file;
    private final Charset charset;
    private final int markLength;

    private final List<LasItem> versionItems = new ArrayList<>();
    private final List<LasItem> well = new ArrayList<>();
    private final List<String> other = new ArrayList<>();
    private final Map<String, List<LasItem>> parameters = new HashMap<>();
    private final Map<String, List<LasItem>> definitions = new HashMap<>();
    private final Map<String, DataSection> data = new LinkedHashMap<>();
    private final Map<String, Integer> departures = new TreeMap<>();
    private final Map<String, Integer> departureLines = new HashMap<>();

    private LasText in;
    private String section = "";
    private LasVersion version = LasVersion.V2_0;
    private boolean wrapped;
    private LasDelimiter delimiter = LasDelimiter.SPACE;
    private boolean delimiterStated;
    private double nullValue = USUAL_NULL;
    private String nullText = "";
    private int headerLines;
    private long values;
    private int headerText;
    private long textBytes;
    private int writtenKept;

    private LasReader(Path path, Charset charset, int markLength) {
        this.path = path;
        this.file = String.valueOf(path.getFileName());
        this.charset = charset;
        this.markLength = markLength;
    }

    /**
     * Reads a file.
     *
     * @throws DataFileFault where it cannot be read: one problem with file, line and section
     */
    public static LasFile read(Path path) throws DataFileFault {
        String name = String.valueOf(path.getFileName());
        try {
            LasText.Head head = LasText.Head.of(path);
            switch (head.content()) {
                case POINT_CLOUD:
                    throw refused(name, "is a LiDAR point cloud, not a well log", "give the log; both end in .las");
                case ZIP:
                    throw refused(name, "is a compressed file", "unpack it first");
                case BINARY:
                    throw refused(name, "is binary, not text", "export the log as LAS 2.0 text");
                case EMPTY:
                    throw refused(name, "is empty", "fetch it again");
                default:
                    break;
            }
            try {
                return new LasReader(path, head.charset(), head.markLength()).read();
            } catch (CharacterCodingException e) {
                if (head.charset() != StandardCharsets.UTF_8 || head.markLength() > 0) {
                    throw refused(name, "is not valid " + head.charset(), "save it as UTF-8");
                }
                return new LasReader(path, LasText.WESTERN, 0).read();
            }
        } catch (NoSuchFileException e) {
            throw refused(name, "does not exist", "check the path");
        } catch (IOException e) {
            String what = Files.isDirectory(path) ? "is a directory" : "cannot be read: " + e.getMessage();
            throw refused(name, what, "check the path");
        }
    }

    private static DataFileFault refused(String file, String problem, String advice) {
        return new DataFileFault(new DataFileFault.Problem(file, 0, "", problem, advice));
    }

    private DataFileFault fault(int line, String problem, String advice) {
        return new DataFileFault(
                new DataFileFault.Problem(file, line, section.isEmpty() ? "" : "section " + section, problem, advice));
    }

    private DataFileFault fault(String problem, String advice) {
        return fault(in.number(), problem, advice);
    }

    private void departs(String what) {
        departures.merge(what, 1, Integer::sum);
        departureLines.putIfAbsent(what, in.number());
    }

    private LasFile read() throws IOException, DataFileFault {
        try (LasText text = LasText.open(path, charset, markLength)) {
            in = text;
            DataSection open = null;
            Header header = null;
            while (in.next()) {
                int first = firstCharacter();
                if (first >= 0 && in.line()[first] == '~') {
                    if (open != null) {
                        open.close();
                        open = null;
                    }
                    section = lineText(first).strip();
                    Title title = Title.of(section, version);
                    header = title.kind() == Title.Kind.DATA ? null : headerOf(title);
                    if (header == null) {
                        open = open(title);
                    }
                } else if (open != null) {
                    if (first >= 0 && in.line()[first] != '#') {
                        open.line();
                    }
                } else if (header != null) {
                    headerText += in.length();
                    if (++headerLines > MOST_HEADER_LINES || headerText > MOST_HEADER_TEXT) {
                        throw fault(
                                "brings the header to more than " + MOST_HEADER_LINES + " lines or " + MOST_HEADER_TEXT
                                        + " characters",
                                "check the file");
                    }
                    header.line(first);
                } else if (first >= 0 && in.line()[first] != '#') {
                    throw fault("does not begin a section with ~; this is not a LAS file", "give a well log in LAS");
                }
            }
            if (open != null) {
                open.close();
            }
            if (section.isEmpty()) {
                throw fault(0, "has no section; this is not a LAS file", "give a well log in LAS");
            }
            return result();
        } catch (LasText.LineTooLong e) {
            throw fault("has a line of more than " + LasText.LONGEST_LINE + " characters", "check the file");
        }
    }

    private int firstCharacter() {
        char[] line = in.line();
        for (int i = 0; i < in.length(); i++) {
            if (line[i] > ' ' && line[i] != '\u00a0' && line[i] != '\ufeff') {
                return i;
            }
        }
        return -1;
    }

    private String lineText(int from) {
        return new String(in.line(), from, in.length() - from);
    }

    /** What a section's title says. */
    private record Title(Kind kind, String name, String definition) {
        enum Kind {
            VERSION,
            WELL,
            PARAMETER,
            DEFINITION,
            DATA,
            OTHER
        }

        static final String LOG = "log";

        static Title of(String written, LasVersion version) {
            String text = written.substring(1).strip();
            String reference = "";
            int bar = text.indexOf('|');
            if (bar >= 0) {
                reference = text.substring(bar + 1).strip();
                text = text.substring(0, bar).strip();
            }
            if (version == LasVersion.V3_0) {
                String word = text.split("\\s+", 2)[0];
                String index = "";
                int bracket = word.indexOf('[');
                if (bracket >= 0) {
                    index = word.substring(bracket);
                    word = word.substring(0, bracket);
                }
                String lower = word.toLowerCase(Locale.ROOT);
                for (Kind kind : List.of(Kind.PARAMETER, Kind.DEFINITION, Kind.DATA)) {
                    String ending = "_" + kind.name().toLowerCase(Locale.ROOT);
                    if (lower.endsWith(ending)) {
                        String name = word.substring(0, word.length() - ending.length()) + index;
                        return new Title(kind, name, withoutEnding(reference));
                    }
                }
                if (lower.contains("_")) {
                    return new Title(Kind.OTHER, word + index, "");
                }
            }
            Kind kind =
                    switch (text.isEmpty() ? ' ' : Character.toUpperCase(text.charAt(0))) {
                        case 'V' -> Kind.VERSION;
                        case 'W' -> Kind.WELL;
                        case 'P' -> Kind.PARAMETER;
                        case 'C' -> Kind.DEFINITION;
                        case 'A' -> Kind.DATA;
                        default -> Kind.OTHER;
                    };
            return new Title(kind, LOG, "");
        }

        private static String withoutEnding(String reference) {
            return reference.replaceAll("(?i)_definition", "");
        }

        String key() {
            return key(name);
        }

        static String key(String name) {
            return name.toLowerCase(Locale.ROOT);
        }

        /** Keys under which the definition of a data section may stand, the likeliest first. */
        List<String> definitionKeys() {
            return definition.isEmpty() ? List.of(key(), key(name.replaceAll("\\[.*", ""))) : List.of(key(definition));
        }
    }

    /** Takes the lines of a header section. */
    private interface Header {
        void line(int first) throws DataFileFault;
    }

    private Header headerOf(Title title) throws DataFileFault {
        return switch (title.kind()) {
            case VERSION -> items(versionItems, false, this::versionItem);
            case WELL -> items(well, false, this::wellItem);
            case PARAMETER -> items(parameters.computeIfAbsent(title.key(), k -> new ArrayList<>()), false, item -> {});
            case DEFINITION -> {
                if (definitions.containsKey(title.key())) {
                    throw fault("is given twice", "keep one of the two, or number them [1], [2] as LAS 3 does");
                }
                List<LasItem> list = new ArrayList<>();
                definitions.put(title.key(), list);
                yield items(list, true, item -> {});
            }
            default -> first -> other.add(lineText(0).stripTrailing());
        };
    }

    private interface ItemCheck {
        void accept(LasItem item) throws DataFileFault;
    }

    private Header items(List<LasItem> into, boolean curve, ItemCheck check) {
        return first -> {
            if (first < 0 || in.line()[first] == '#') {
                return;
            }
            String text = lineText(first);
            LasItem item = LasItems.read(text, curve, version, in.number())
                    .orElseThrow(() -> fault(
                            "\"" + shortened(text.strip()) + "\" has neither a period nor a colon",
                            "write MNEM.UNIT value : description, or begin it with # as a comment"));
            if (into == well && version == LasVersion.V1_2) {
                item = LasItems.textAfterColon(item);
            }
            check.accept(item);
            into.add(item);
        };
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }

    private void versionItem(LasItem item) throws DataFileFault {
        switch (item.mnemonic().toUpperCase(Locale.ROOT)) {
            case "VERS" -> {
                OptionalDouble number = item.number();
                version = (number.isPresent() ? LasVersion.of(number.getAsDouble()) : Optional.<LasVersion>empty())
                        .orElseThrow(() -> fault(
                                "version \"" + item.value() + "\" is not known", "versions 1.2, 2.0 and 3.0 are read"));
            }
            case "WRAP" -> {
                String answer = item.value().toUpperCase(Locale.ROOT);
                if (!answer.equals("YES") && !answer.equals("NO")) {
                    throw fault("WRAP is \"" + item.value() + "\"", "write YES or NO");
                }
                wrapped = answer.equals("YES");
            }
            case "DLM" -> {
                delimiter = LasDelimiter.named(item.value())
                        .orElseThrow(() -> fault("DLM is \"" + item.value() + "\"", "write SPACE, TAB or COMMA"));
                delimiterStated = true;
            }
            default -> {}
        }
    }

    private void wellItem(LasItem item) throws DataFileFault {
        if (item.mnemonic().equalsIgnoreCase("NULL")) {
            OptionalDouble number = item.number();
            if (number.isEmpty() && !item.value().isEmpty()) {
                throw fault("NULL is \"" + item.value() + "\", not a number", "write a number such as -999.25");
            }
            if (number.isPresent()) {
                nullValue = number.getAsDouble();
                nullText = item.value();
            }
        }
    }

    private DataSection open(Title title) throws DataFileFault {
        if (data.containsKey(title.key())) {
            throw fault("is given twice", "keep one of the two, or number them [1], [2] as LAS 3 does");
        }
        List<LasItem> definition = null;
        for (String key : title.definitionKeys()) {
            definition = definition == null ? definitions.get(key) : definition;
        }
        if (definition == null || definition.isEmpty()) {
            throw fault("holds data whose curves no section before it defines", "add the section of curves");
        }
        DataSection opened = new DataSection(title, definition);
        data.put(title.key(), opened);
        return opened;
    }

    /** Values of one data section while they come in. */
    private final class DataSection {
        private final Title title;
        private final boolean log;
        private final int line = in.number();
        private final List<LasItem> definition;
        private final List<String> names;
        private final LasColumn[] columns;
        private final boolean[] declaredNumber;
        private final LasTokens tokens = new LasTokens();
        private final LasNumber number = new LasNumber();
        private final Map<String, String> known = new HashMap<>();
        private LasDelimiter mark = delimiter;
        private int[] ends = {};
        private int next;
        private int rowLine;

        DataSection(Title title, List<LasItem> definition) {
            this.title = title;
            this.log = title.key().equals(Title.LOG);
            this.definition = definition;
            this.names = names(definition);
            this.columns = new LasColumn[definition.size()];
            this.declaredNumber = new boolean[columns.length];
            for (int i = 0; i < columns.length; i++) {
                String format = definition.get(i).format().toUpperCase(Locale.ROOT);
                boolean text = !format.isEmpty() && !format.matches("A?[FEI].*");
                declaredNumber[i] = !format.isEmpty() && !text;
                columns[i] = new LasColumn(text, !log && !declaredNumber[i]);
            }
        }

        void line() throws DataFileFault {
            boolean rowPerLine = !wrapped || !log;
            if (!tokens.cut(in.line(), in.length(), mark)) {
                throw fault("has a quote that is not closed", "close it");
            }
            int wanted = columns.length;
            if (mark != LasDelimiter.SPACE) {
                tokens.dropEmptyBeyond(rowPerLine ? wanted : 0);
            }
            if (rowPerLine && (tokens.count() != wanted || endsInComma())) {
                repair(wanted);
            }
            if (rowPerLine && tokens.count() != wanted) {
                throw fault(
                        "has " + tokens.count() + (tokens.count() == 1 ? " value" : " values") + " where " + wanted
                                + (wanted == 1 ? " curve is" : " curves are") + " defined",
                        "check the line and the section that defines the curves");
            }
            if (next == 0) {
                rowLine = in.number();
            }
            if (next + tokens.count() > wanted) {
                throw fault(
                        "brings the row begun in line " + rowLine + " to " + (next + tokens.count()) + " values where "
                                + wanted + " curves are defined",
                        "check the row");
            }
            values += tokens.count();
            if (values > MOST_VALUES) {
                throw fault("brings the file to more than " + MOST_VALUES + " values", "export fewer curves or depths");
            }
            for (int t = 0; t < tokens.count(); t++) {
                value(next + t, t);
            }
            next = (next + tokens.count()) % wanted;
            if (rowPerLine && mark == LasDelimiter.SPACE) {
                keepEnds();
            }
        }

        private boolean endsInComma() {
            return mark == LasDelimiter.SPACE
                    && !delimiterStated
                    && columns[0].rows() == 0
                    && tokens.end(0) > tokens.start(0)
                    && in.line()[tokens.end(0) - 1] == ',';
        }

        private void keepEnds() {
            if (ends.length != columns.length) {
                ends = tokens.ends();
                return;
            }
            for (int i = 0; i < ends.length; i++) {
                ends[i] = tokens.end(i);
            }
        }

        private void repair(int wanted) throws DataFileFault {
            if (mark == LasDelimiter.SPACE && tokens.count() < wanted) {
                tokens.partAtSigns(in.line());
                if (tokens.count() < wanted) {
                    tokens.partAtColumns(in.line(), ends);
                }
                if (tokens.count() == wanted) {
                    departs("numbers that run into each other, parted at the sign or at the end of the column");
                    return;
                }
            }
            boolean firstRow = columns[0].rows() == 0;
            if (firstRow && !delimiterStated && mark == LasDelimiter.SPACE) {
                tokens.cut(in.line(), in.length(), LasDelimiter.COMMA);
                tokens.dropEmptyBeyond(wanted);
                if (tokens.count() == wanted) {
                    mark = LasDelimiter.COMMA;
                    departs("commas between the values, although no delimiter is stated");
                    return;
                }
            }
            tokens.cut(in.line(), in.length(), mark);
        }

        private void value(int column, int t) throws DataFileFault {
            LasColumn into = columns[column];
            char[] line = in.line();
            int from = tokens.start(t);
            int to = tokens.end(t);
            boolean isNumber = number.parse(line, from, to) && (version != LasVersion.V3_0 || !number.comma());
            if (!into.isText() && isNumber) {
                double value = number.value();
                if (number.comma()) {
                    departs("commas as decimal marks");
                }
                boolean index = log && column == 0;
                if (Math.abs(value) >= ABSENT) {
                    into.addMissing();
                    departs("numbers of 1e30 or more, taken as missing");
                } else if (value == nullValue && !index) {
                    into.addMissing();
                } else {
                    if (into.wantsWritten() && ++writtenKept > MOST_WRITTEN) {
                        into.forgetWritten();
                    }
                    into.addNumber(value, into.wantsWritten() ? new String(line, from, to - from) : null);
                }
                return;
            }
            String text = new String(line, from, to - from);
            if (text.isEmpty() || isNull(text)) {
                missing(column, text);
            } else if (!into.isText() && isWordForMissing(text)) {
                departs("\"" + text + "\" in place of a number, taken as missing");
                missing(column, text);
            } else if (into.isText()
                    || !declaredNumber[column]
                            && into.canBecomeText()
                            && !text.chars().allMatch(c -> "0123456789.,+".indexOf(c) >= 0)) {
                String same = known.putIfAbsent(text, text);
                if (same == null) {
                    textBytes += 2L * text.length() + COST_OF_STRING;
                }
                if (textBytes > MOST_TEXT) {
                    throw fault("brings the file to more text than " + MOST_TEXT / 1_000_000 + " MB", "export less");
                }
                into.addText(same == null ? text : same);
            } else {
                throw fault(
                        "\"" + shortened(text) + "\" is not a number in curve " + names.get(column),
                        "correct it, with a decimal point and no thousands separators, or write the null value");
            }
        }

        private void missing(int column, String text) throws DataFileFault {
            if (log && column == 0) {
                throw fault("has no index: \"" + text + "\"", "give every row its depth or time");
            }
            columns[column].addMissing();
        }

        private boolean isNull(String text) {
            if (!nullText.isEmpty() && text.equals(nullText)) {
                return true;
            }
            char[] c = text.toCharArray();
            return number.parse(c, 0, c.length) && number.value() == nullValue;
        }

        private boolean isWordForMissing(String text) {
            return text.chars().allMatch(c -> c == '-') || WORDS.contains(" " + text.toUpperCase(Locale.ROOT) + " ");
        }

        void close() throws DataFileFault {
            if (next != 0) {
                throw fault(
                        rowLine,
                        "begins a row that ends after " + next + " values where " + columns.length
                                + " curves are defined",
                        "the file may be cut off; fetch it again");
            }
            for (LasColumn column : columns) {
                column.close();
            }
            known.clear();
        }

        List<LasCurve> curves() {
            List<LasCurve> curves = new ArrayList<>();
            for (int i = 0; i < columns.length; i++) {
                curves.add(new LasCurve(names.get(i), definition.get(i), columns[i]));
            }
            return curves;
        }
    }

    private static List<String> names(List<LasItem> definition) {
        Map<String, Integer> total = new HashMap<>();
        List<String> names = new ArrayList<>();
        for (LasItem item : definition) {
            String name = item.mnemonic().isEmpty() ? "UNKNOWN" : item.mnemonic();
            total.merge(name.toUpperCase(Locale.ROOT), 1, Integer::sum);
            names.add(name);
        }
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < names.size(); i++) {
            String key = names.get(i).toUpperCase(Locale.ROOT);
            if (total.get(key) > 1) {
                names.set(i, names.get(i) + ":" + seen.merge(key, 1, Integer::sum));
            }
        }
        return names;
    }

    private LasFile result() throws DataFileFault {
        List<Warning> warnings = new ArrayList<>();
        if (charset.equals(LasText.WESTERN)) {
            warnings.add(new Warning("encoding", "Not UTF-8; characters beyond ASCII read as windows-1252."));
        }
        absent(warnings, versionItems, "VERS", "read as version 2.0");
        absent(warnings, versionItems, "WRAP", "read as not wrapped");
        absent(warnings, well, "NULL", "−999.25 read as missing");
        departures.forEach((what, count) -> warnings.add(new Warning(
                "data", "Found " + what + ": " + count + " times, first in line " + departureLines.get(what) + ".")));
        DataSection log = data.remove(Title.LOG);
        List<LasCurve> curves = List.of();
        if (log != null) {
            curves = log.curves();
        } else if (definitions.containsKey(Title.LOG)) {
            curves = new ArrayList<>();
            List<LasItem> definition = definitions.get(Title.LOG);
            List<String> names = names(definition);
            for (int i = 0; i < names.size(); i++) {
                curves.add(new LasCurve(names.get(i), definition.get(i), new LasColumn(false, false)));
            }
        } else if (data.isEmpty()) {
            throw fault(0, "defines no curve", "give a log with a section of curves");
        }
        curveWarnings(curves, log != null || !data.isEmpty(), warnings);
        List<LasTable> tables = new ArrayList<>();
        for (DataSection d : data.values()) {
            tables.add(new LasTable(
                    d.title.name(), parameters.getOrDefault(d.title.key(), List.of()), d.curves(), d.line));
        }
        return new LasFile(
                file,
                version,
                charset.name(),
                wrapped,
                delimiter,
                versionItems,
                well,
                parameters.getOrDefault(Title.LOG, List.of()),
                other,
                curves,
                tables,
                warnings);
    }

    private static void absent(List<Warning> warnings, List<LasItem> items, String mnemonic, String how) {
        if (items.stream().noneMatch(i -> i.mnemonic().equalsIgnoreCase(mnemonic))) {
            warnings.add(new Warning(mnemonic, "The file does not state " + mnemonic + "; " + how + "."));
        }
    }

    private void curveWarnings(List<LasCurve> curves, boolean anyData, List<Warning> warnings) {
        if (!anyData || !curves.isEmpty() && curves.get(0).rows() == 0) {
            warnings.add(new Warning("data", "The log has no rows."));
        }
        for (LasCurve curve : curves) {
            if (curve.definition().mnemonic().isEmpty()) {
                warnings.add(new Warning(
                        curve.name(), "Line " + curve.definition().line() + " defines a curve without a mnemonic."));
            } else if (!curve.name().equals(curve.definition().mnemonic())) {
                warnings.add(new Warning(
                        curve.name(),
                        "Several curves are called " + curve.definition().mnemonic() + "."));
            }
        }
        if (!curves.isEmpty() && !curves.get(0).isText() && curves.get(0).rows() > 0) {
            checkOrder(curves.get(0), warnings);
            checkUnit(curves.get(0), warnings);
            checkEnd("STRT", curves.get(0), 0, warnings);
            checkEnd("STOP", curves.get(0), curves.get(0).rows() - 1, warnings);
        }
    }

    private static void checkOrder(LasCurve index, List<Warning> warnings) {
        int rows = index.rows();
        boolean down = index.number(rows - 1).orElseThrow() >= index.number(0).orElseThrow();
        int wrong = 0;
        double first = 0;
        for (int row = 1; row < rows; row++) {
            double here = index.number(row).orElseThrow();
            double before = index.number(row - 1).orElseThrow();
            if (down ? here <= before : here >= before) {
                first = wrong++ == 0 ? here : first;
            }
        }
        if (wrong > 0) {
            warnings.add(new Warning(
                    index.name(),
                    "The index repeats itself or turns back in " + wrong + " rows, first at " + first + "."));
        }
    }

    private void checkUnit(LasCurve index, List<Warning> warnings) {
        for (LasItem item : well) {
            boolean end =
                    item.mnemonic().equalsIgnoreCase("STRT") || item.mnemonic().equalsIgnoreCase("STOP");
            if (end
                    && !item.unit().isEmpty()
                    && !index.unit().isEmpty()
                    && !item.unit().equalsIgnoreCase(index.unit())) {
                warnings.add(new Warning(
                        item.mnemonic(),
                        "Stated in " + item.unit() + ", while the index is in " + index.unit()
                                + "; find out which is right."));
            }
        }
    }

    private void checkEnd(String mnemonic, LasCurve index, int row, List<Warning> warnings) {
        for (LasItem item : well) {
            OptionalDouble stated = item.number();
            OptionalDouble found = index.number(row);
            if (item.mnemonic().equalsIgnoreCase(mnemonic) && stated.isPresent() && found.isPresent()) {
                double scale = Math.max(Math.abs(stated.getAsDouble()), 1);
                if (Math.abs(stated.getAsDouble() - found.getAsDouble()) > 1e-6 * scale) {
                    warnings.add(new Warning(
                            mnemonic,
                            "Stated as " + item.value() + ", but the " + (row == 0 ? "first" : "last") + " row has "
                                    + found.getAsDouble() + "; the rows count."));
                }
            }
        }
    }
}
