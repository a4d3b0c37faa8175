package staunch.ingest;

import java.util.Locale;
import java.util.Optional;

/** What stands between the values of a data line. */
public enum LasDelimiter {
    /** Any number of spaces and tabs. */
    SPACE,
    /** One tab; spaces around a value do not count. */
    TAB,
    /** One comma; spaces around a value do not count. */
    COMMA;

    static Optional<LasDelimiter> named(String text) {
        return switch (text.strip().toUpperCase(Locale.ROOT)) {
            case "", "SPACE" -> Optional.of(SPACE);
            case "TAB" -> Optional.of(TAB);
            case "COMMA", "," -> Optional.of(COMMA);
            default -> Optional.empty();
        };
    }
}
