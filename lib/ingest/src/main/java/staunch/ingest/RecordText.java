package staunch.ingest;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How values and rows are written in one line of a run record. */
final class RecordText {
    static final String BETWEEN = " | ";

    private RecordText() {}

    /** A row: its keys with their values. */
    static String row(Item.Mapping row) {
        return row.entries().stream()
                .map(e -> e.key() + " " + escaped(((Item.Scalar) e.value()).text()))
                .collect(Collectors.joining(BETWEEN));
    }

    /** A row in one line to sort rows by, whatever it holds: its values, then those of the blocks and lists in it. */
    static String sortingLine(Item item) {
        if (item instanceof Item.Sequence list) {
            return list.items().stream().map(RecordText::sortingLine).collect(Collectors.joining(BETWEEN));
        }
        if (item instanceof Item.Mapping row) {
            Map<Boolean, List<Item.Entry>> entries =
                    row.entries().stream().collect(Collectors.partitioningBy(e -> e.value() instanceof Item.Scalar));
            return row(new Item.Mapping(row.place(), entries.get(true)))
                    + entries.get(false).stream()
                            .map(e -> BETWEEN + e.key() + " " + sortingLine(e.value()))
                            .collect(Collectors.joining());
        }
        return escaped(((Item.Scalar) item).text());
    }

    /** Text without ends of lines and bars of its own. */
    static String escaped(String text) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '\\' -> line.append("\\\\");
                case '|' -> line.append("\\!");
                case '\n' -> line.append("\\n");
                case '\r' -> line.append("\\r");
                default -> {
                    if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || edge(text, i)) {
                        line.append(String.format("\\u%04x", (int) c));
                    } else {
                        line.append(c);
                    }
                }
            }
        }
        return line.toString();
    }

    /** Blanks at the ends would be lost or change unseen. */
    private static boolean edge(String text, int i) {
        return text.charAt(i) == ' ' && (i == 0 || i == text.length() - 1);
    }

    /**
     * What was escaped.
     *
     * @throws IllegalArgumentException where a backslash stands before something else
     */
    static String plain(String line) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c != '\\') {
                text.append(c);
                continue;
            }
            i++;
            char code = i < line.length() ? line.charAt(i) : ' ';
            switch (code) {
                case '\\' -> text.append('\\');
                case '!' -> text.append('|');
                case 'n' -> text.append('\n');
                case 'r' -> text.append('\r');
                case 'u' -> {
                    if (i + 5 > line.length()) {
                        throw new IllegalArgumentException("a code is cut off");
                    }
                    text.append((char) Integer.parseInt(line.substring(i + 1, i + 5), 16));
                    i += 4;
                }
                default -> throw new IllegalArgumentException("a backslash stands alone");
            }
        }
        return text.toString();
    }
}
