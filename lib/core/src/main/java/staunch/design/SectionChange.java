package staunch.design;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.envelope.Verdict;
import staunch.units.Check;

/**
 * A hole section in two runs.
 *
 * @param design name of the casing design
 * @param section name of the hole section
 * @param before what the earlier run found; empty where it has no such section
 * @param after what the later run found; empty where it has no such section
 * @param effects what each cause makes of the verdict
 * @param attributions for each result that changed
 */
public record SectionChange(
        String design,
        String section,
        Optional<SectionResult> before,
        Optional<SectionResult> after,
        List<Effect> effects,
        List<Attribution> attributions) {
    public SectionChange {
        Check.text("name of the casing design", design);
        Check.text("name of the hole section", section);
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        effects = List.copyOf(effects);
        attributions = List.copyOf(attributions);
    }

    /**
     * Verdict under one cause.
     *
     * @param cause name
     * @param alone outcome with this cause alone, made on the earlier case
     * @param inSequence outcome with this cause and those before it
     */
    public record Effect(String cause, Verdict.Outcome alone, Verdict.Outcome inSequence) {
        public Effect {
            Objects.requireNonNull(cause, "cause");
            Objects.requireNonNull(alone, "alone");
            Objects.requireNonNull(inSequence, "inSequence");
        }
    }

    /** Whether the outcome of the verdict is another one. */
    public boolean flips() {
        return before.isPresent()
                && after.isPresent()
                && before.get().verdict().outcome() != after.get().verdict().outcome();
    }

    /** Whether anything recorded of the section is different. */
    public boolean changed() {
        return !before.equals(after);
    }

    /** Attribution of one result; empty where it did not change. */
    public Optional<Attribution> attribution(SectionQuantity quantity) {
        return attributions.stream().filter(a -> a.quantity() == quantity).findFirst();
    }
}
