package staunch.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.envelope.Verdict;
import staunch.units.Check;
import staunch.units.Measure;

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

    private static final OptionalDouble NONE = OptionalDouble.of(0);

    /** Whether the outcome of the verdict is another one. */
    public boolean flips() {
        return before.isPresent()
                && after.isPresent()
                && before.get().verdict().outcome() != after.get().verdict().outcome();
    }

    /** Whether anything that both runs have of the section is different. */
    public boolean changed() {
        return before.isEmpty() || after.isEmpty() || !before.get().agrees(after.get());
    }

    /** Quantities whose values differ, of those that both runs have; empty where one has no such section. */
    public List<SectionQuantity> differing() {
        return before.isPresent() && after.isPresent() ? before.get().differing(after.get()) : List.of();
    }

    /**
     * How much a result changed.
     *
     * @param quantity that changed
     * @param measure of the change
     * @param value value after less value before, SI; empty where one of them is no number
     */
    public record Difference(SectionQuantity quantity, Measure measure, OptionalDouble value) {
        public Difference {
            Objects.requireNonNull(quantity, "quantity");
            Objects.requireNonNull(measure, "measure");
            Objects.requireNonNull(value, "value");
        }
    }

    /** How much a result changed, whether or not that is shared out. */
    public Difference difference(SectionQuantity quantity) {
        OptionalDouble value = before.isPresent() && after.isPresent()
                ? before.get().value(quantity).changeTo(after.get().value(quantity))
                : OptionalDouble.empty();
        return new Difference(quantity, quantity.measureOfChange(), value);
    }

    /**
     * Which causes have a part in the change of a result or of the verdict.
     *
     * @param quantity that changed
     * @return their numbers among the {@link #effects}, counted from 0; empty where the result did not change
     */
    public List<Integer> causesWithPart(SectionQuantity quantity) {
        Optional<Attribution> attribution = attribution(quantity);
        if (attribution.isEmpty() || before.isEmpty()) {
            return List.of();
        }
        List<Integer> found = new ArrayList<>();
        Verdict.Outcome earlier = before.get().verdict().outcome();
        Verdict.Outcome reached = earlier;
        for (int i = 0; i < effects.size(); i++) {
            Attribution.Share share = attribution.get().shares().get(i);
            boolean none = share.alone().equals(NONE)
                    && share.inSequence().equals(NONE)
                    && effects.get(i).alone() == earlier
                    && effects.get(i).inSequence() == reached;
            if (!none) {
                found.add(i);
            }
            reached = effects.get(i).inSequence();
        }
        return found;
    }

    /** Attribution of one result; empty where it did not change. */
    public Optional<Attribution> attribution(SectionQuantity quantity) {
        return attributions.stream().filter(a -> a.quantity() == quantity).findFirst();
    }
}
