package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.units.Amount;
import staunch.units.UnitSystem;
import staunch.units.Wording;

/**
 * A choice or a default that the result rests on.
 *
 * @param subject what it concerns
 * @param text what was taken, in SI units
 * @param origin "case", "default" or the source
 * @param amounts quantities the text names, in their order
 */
public record Assumption(String subject, String text, String origin, List<Amount> amounts) {
    public Assumption {
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(origin, "origin");
        amounts = List.copyOf(amounts);
    }

    /** An assumption that names no quantity. */
    public Assumption(String subject, String text, String origin) {
        this(subject, text, origin, List.of());
    }

    /** What was taken, in the given units. */
    public String text(UnitSystem units) {
        return new Wording(text, amounts).in(units);
    }
}
