package staunch.ingest;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds what a misspelt word may have meant. */
final class Words {
    /** Names up to this length that differ by a letter are two names rather than a slip. */
    private static final int SHORT = 3;

    private Words() {}

    /** The known word nearest to one, where it is near enough to be a slip. */
    static Optional<String> nearest(String word, Collection<String> known) {
        LevenshteinDistance distance = LevenshteinDistance.getDefaultInstance();
        int allowed = Math.max(1, Math.min(3, word.length() / 3));
        String plain = plain(word);
        return known.stream()
                .filter(k -> !k.isEmpty() && distance.apply(plain, plain(k)) <= allowed)
                .min(Comparator.comparingInt((String k) -> distance.apply(plain, plain(k)))
                        .thenComparing(k -> distance.apply(word, k))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** The same for a name that holds numbers, as of wells: another number is another name. */
    static Optional<String> nearestOfNumber(String name, Collection<String> known) {
        String digits = name.replaceAll("\\D", "");
        return nearest(
                name,
                known.stream()
                        .filter(k -> k.replaceAll("\\D", "").equals(digits))
                        .filter(k -> name.length() > SHORT || plain(k).equals(plain(name)))
                        .toList());
    }

    /** "did you mean X?", or the list of known words. */
    static String hint(String word, Collection<String> known) {
        return nearest(word, known)
                .map(k -> "did you mean " + k + "?")
                .orElse("use one of " + String.join(", ", known));
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[\\s-]", "_");
    }
}
