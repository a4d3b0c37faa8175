package staunch.earth;

import java.util.List;
import java.util.Objects;
import staunch.units.Amount;
import staunch.units.UnitSystem;
import staunch.units.Wording;

/**
 * Two pieces of evidence that do not agree. Both are kept.
 *
 * @param first well and name of the one
 * @param second well and name of the other
 * @param text what differs and by how much, in SI units
 * @param amounts quantities the text names, in their order
 */
public record EvidenceConflict(String first, String second, String text, List<Amount> amounts) {
    public EvidenceConflict {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        Objects.requireNonNull(text, "text");
        amounts = List.copyOf(amounts);
    }

    /** A conflict whose text names no quantity. */
    EvidenceConflict(String first, String second, String text) {
        this(first, second, text, List.of());
    }

    /** A conflict with the quantities that its text names. */
    EvidenceConflict(String first, String second, Wording wording) {
        this(first, second, wording.text(), wording.amounts());
    }

    /** What differs, in the given units. */
    public String text(UnitSystem units) {
        return new Wording(text, amounts).in(units);
    }
}
