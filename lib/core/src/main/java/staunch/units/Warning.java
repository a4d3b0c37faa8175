package staunch.units;

import java.util.List;
import java.util.Objects;

/**
 * Something legal but suspicious, carried into the result and the report.
 *
 * @param subject what it concerns, in the words of the case
 * @param text one sentence that says what was seen and what it may mean, in SI units
 * @param amounts quantities the text names, in their order
 */
public record Warning(String subject, String text, List<Amount> amounts) {
    public Warning {
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(text, "text");
        amounts = List.copyOf(amounts);
    }

    /** A warning that names no quantity. */
    public Warning(String subject, String text) {
        this(subject, text, List.of());
    }

    /** A warning with the quantities it names. */
    public Warning(String subject, Wording wording) {
        this(subject, wording.text(), wording.amounts());
    }

    /** The sentence in the given units. */
    public String text(UnitSystem units) {
        return new Wording(text, amounts).in(units);
    }
}
