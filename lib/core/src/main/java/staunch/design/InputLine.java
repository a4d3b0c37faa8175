package staunch.design;

import java.util.Objects;
import staunch.units.Check;

/**
 * One line of what a run was computed from.
 *
 * @param path of the value in the case; a row of a list ends in {@code []}
 * @param value as text: numbers in SI with a fixed number of digits and their unit
 */
public record InputLine(String path, String value) {
    public InputLine {
        Check.text("path of an input", path);
        Objects.requireNonNull(value, "value");
    }
}
