package staunch.ingest;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the lines of header sections. */
final class LasItems {
    private static final Pattern FORMAT = Pattern.compile("\\{([^{}]*)}");

    /** Colons of a time of day, of its pattern, or of a path. */
    private static final Pattern OTHER_COLONS =
            Pattern.compile("(?i)(?<![a-z])hh:mm(:ss)?(?![a-z])|(?<!\\d)\\d{1,2}:\\d{2}(:\\d{2}(\\.\\d+)?)?(?!\\d)"
                    + "|(?<![a-z])[a-z]:\\\\|://");

    private LasItems() {}

    /**
     * One line; empty where it has neither a period nor a colon.
     *
     * @param curve whether it defines a curve, whose mnemonic may end in a period
     */
    static Optional<LasItem> read(String line, boolean curve, LasVersion version, int number) {
        int colon = colon(line);
        String head = colon < 0 ? line : line.substring(0, colon);
        int dot = dot(head, curve);
        if (dot < 0 && colon < 0) {
            return Optional.empty();
        }
        String mnemonic = (dot < 0 ? head : head.substring(0, dot)).strip();
        String unit = "";
        String value = "";
        if (dot >= 0) {
            String rest = head.substring(dot + 1);
            int space = 0;
            while (space < rest.length() && !Character.isWhitespace(rest.charAt(space))) {
                space++;
            }
            unit = rest.substring(0, space);
            value = rest.substring(space).strip();
        }
        String description = colon < 0 ? "" : line.substring(colon + 1).strip();
        String format = "";
        String association = "";
        if (version == LasVersion.V3_0) {
            int bar = description.lastIndexOf('|');
            if (bar >= 0) {
                association = description.substring(bar + 1).strip();
                description = description.substring(0, bar).strip();
            }
            Matcher m = FORMAT.matcher(description);
            if (m.find()) {
                format = m.group(1).strip();
                description = (description.substring(0, m.start()) + description.substring(m.end())).strip();
            }
        }
        return Optional.of(new LasItem(
                mnemonic, bare(unit), value, description, format, association, version != LasVersion.V3_0, number));
    }

    /** Value and description change places in the well section of version 1.2, except where the value is a number. */
    static LasItem textAfterColon(LasItem item) {
        return switch (item.mnemonic().toUpperCase(Locale.ROOT)) {
            case "STRT", "STOP", "STEP", "NULL" -> item;
            default ->
                new LasItem(
                        item.mnemonic(),
                        item.unit(),
                        item.description(),
                        item.value(),
                        item.format(),
                        item.association(),
                        item.decimalComma(),
                        item.line());
        };
    }

    private static String bare(String unit) {
        boolean bracketed = unit.length() > 1
                && (unit.startsWith("[") && unit.endsWith("]") || unit.startsWith("(") && unit.endsWith(")"));
        return bracketed ? unit.substring(1, unit.length() - 1).strip() : unit;
    }

    /** The period between mnemonic and unit. */
    private static int dot(String head, boolean curve) {
        int twice = curve ? head.indexOf("..") : -1;
        return twice >= 0 ? twice + 1 : head.indexOf('.');
    }

    /** The colon before the description: the first that is neither part of a time of day nor of a path. */
    private static int colon(String line) {
        Matcher other = OTHER_COLONS.matcher(line);
        int from = 0;
        while (true) {
            int next = line.indexOf(':', from);
            if (next < 0) {
                return line.lastIndexOf(':');
            }
            if (!other.find(from == 0 ? 0 : from) || next < other.start()) {
                return next;
            }
            from = other.end();
        }
    }
}
