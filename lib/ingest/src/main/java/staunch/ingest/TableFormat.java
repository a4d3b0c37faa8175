package staunch.ingest;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import staunch.units.InputFault;

/**
 * How a table is written, as text or in a workbook (.xlsx). Headings stand in its first line; in text, lines that begin with
 * # are comments.
 *
 * @param delimiter between cells
 * @param decimalMark point or comma
 * @param missing what stands for a missing value besides an empty cell and numbers of 10³⁰ and more, such as "0" or
 *     "-999.25"
 * @param linesOfUnits lines below the heading that hold no values, such as a row of units
 * @param badRows what to do where a row cannot be read
 * @param sheet of a workbook (.xlsx) that has several; empty where it has one, and for text
 */
public record TableFormat(
        char delimiter,
        DecimalMark decimalMark,
        Set<String> missing,
        int linesOfUnits,
        BadRows badRows,
        Optional<String> sheet) {
    /** Commas between cells, decimal points, empty cells for what is missing. */
    public static final TableFormat PLAIN = new TableFormat(',', DecimalMark.POINT, Set.of(), 0, BadRows.REFUSE_FILE);

    /** What parts the whole from the fraction. */
    public enum DecimalMark {
        POINT,
        COMMA
    }

    /** What to do where a row cannot be read: a misprint, a value out of range, an unknown well. */
    public enum BadRows {
        /** Refuse the file with all its problems. */
        REFUSE_FILE,
        /** Leave such rows out and list them with the problem, as long as they are no more than one in ten. */
        LEAVE_OUT
    }

    /** A table in text, or the one sheet of a workbook. */
    public TableFormat(
            char delimiter, DecimalMark decimalMark, Set<String> missing, int linesOfUnits, BadRows badRows) {
        this(delimiter, decimalMark, missing, linesOfUnits, badRows, Optional.empty());
    }

    public TableFormat {
        Objects.requireNonNull(badRows, "badRows");
        Objects.requireNonNull(sheet, "sheet");
        missing = Set.copyOf(missing);
        if (decimalMark == DecimalMark.COMMA && delimiter == ',') {
            throw new InputFault("table format", "has commas both between cells and as decimal marks", "choose one");
        }
        if (linesOfUnits < 0 || linesOfUnits > 10) {
            throw new InputFault("table format", "has " + linesOfUnits + " lines of units", "give 0 to 10");
        }
    }

    /** The same with other signs for a missing value. */
    public TableFormat withMissing(String... signs) {
        return new TableFormat(delimiter, decimalMark, Set.of(signs), linesOfUnits, badRows, sheet);
    }

    /** The same with bad rows left out. */
    public TableFormat leavingOutBadRows() {
        return new TableFormat(delimiter, decimalMark, missing, linesOfUnits, BadRows.LEAVE_OUT, sheet);
    }

    /** The same for a sheet of a workbook. */
    public TableFormat ofSheet(String name) {
        return new TableFormat(delimiter, decimalMark, missing, linesOfUnits, badRows, Optional.of(name));
    }
}
