package staunch.ingest;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A line of a header section: {@code MNEM.UNIT value : description {format} | association}.
 *
 * @param mnemonic as written; empty where the line has none
 * @param unit as written, without brackets around it; empty where there is none
 * @param value as written; empty where there is none
 * @param description as written
 * @param format of LAS 3, without braces; empty where there is none
 * @param association of LAS 3; empty where there is none
 * @param decimalComma whether a comma between digits is a decimal mark; in LAS 3 it parts the ends of an interval
 * @param line counted from 1
 */
public record LasItem(
        String mnemonic,
        String unit,
        String value,
        String description,
        String format,
        String association,
        boolean decimalComma,
        int line) {
    public LasItem {
        Objects.requireNonNull(mnemonic, "mnemonic");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(description, "description");
        Objects.requireNonNull(format, "format");
        Objects.requireNonNull(association, "association");
    }

    /** The value as a number in {@link #unit()}, where it is one. */
    public OptionalDouble number() {
        LasNumber number = new LasNumber();
        char[] text = value.toCharArray();
        boolean isNumber = number.parse(text, 0, text.length) && (decimalComma || !number.comma());
        return isNumber ? OptionalDouble.of(number.value()) : OptionalDouble.empty();
    }
}
