package staunch.ingest;

import java.util.Objects;

/**
 * One thing wrong in a case.
 *
 * @param file path relative to the case directory
 * @param line counted from 1; 0 where the fault concerns the file as a whole
 * @param field path of the key, items of lists counted from 1: {@code designs[1].strings[2].shoe}; empty where none
 * @param value text found there; empty where something is missing
 * @param problem sentence without subject: "96 ppg is outside 6 to 22 ppg"
 * @param hint what may have been meant or what to do; may be empty
 */
public record CaseFault(String file, int line, String field, String value, String problem, String hint) {
    public CaseFault {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(problem, "problem");
        Objects.requireNonNull(hint, "hint");
    }

    /** The whole fault in one line: {@code case.yaml:12: sections[2].mud.density: 96 ppg is outside …; 9.6 ppg?}. */
    public String text() {
        return file
                + (line > 0 ? ":" + line : "")
                + (field.isEmpty() ? "" : ": " + field)
                + ": "
                + problem
                + (hint.isEmpty() ? "" : "; " + hint);
    }
}
