package staunch.envelope;

import java.util.Objects;

/**
 * A choice or a default that the result rests on.
 *
 * @param subject what it concerns
 * @param text what was taken
 * @param origin "case", "default" or the source
 */
public record Assumption(String subject, String text, String origin) {
    public Assumption {
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(origin, "origin");
    }
}
