package staunch.earth;

import java.util.Objects;

/**
 * Two pieces of evidence that do not agree. Both are kept.
 *
 * @param first well and name of the one
 * @param second well and name of the other
 * @param text what differs and by how much
 */
public record EvidenceConflict(String first, String second, String text) {
    public EvidenceConflict {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        Objects.requireNonNull(text, "text");
    }
}
