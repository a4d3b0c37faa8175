package staunch.units;

import java.util.Objects;

/**
 * Something legal but suspicious, carried into the result and the report.
 *
 * @param subject what it concerns, in the words of the case
 * @param text one sentence that says what was seen and what it may mean
 */
public record Warning(String subject, String text) {
    public Warning {
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(text, "text");
    }
}
