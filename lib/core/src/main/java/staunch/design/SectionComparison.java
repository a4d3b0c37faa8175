package staunch.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One hole section in every casing design that has it.
 *
 * @param section name of the hole section
 * @param outcomes of the designs that have a section of this name, in the order in which the designs were named
 * @param pairs every two of them
 */
public record SectionComparison(String section, List<SectionOutcome> outcomes, List<DesignPair> pairs) {
    public SectionComparison {
        Objects.requireNonNull(section, "section");
        outcomes = List.copyOf(outcomes);
        pairs = List.copyOf(pairs);
    }

    /** What a design reaches; empty where it has no such section. */
    public Optional<SectionOutcome> outcome(String design) {
        return outcomes.stream().filter(o -> o.design().equals(design)).findFirst();
    }

    /** Designs of this section that no other dominates. */
    public List<String> undominated() {
        return Comparison.undominated(
                outcomes.stream().map(SectionOutcome::design).toList(), pairs);
    }

    static SectionComparison of(String section, List<SectionOutcome> outcomes) {
        List<DesignPair> pairs = new ArrayList<>();
        for (int i = 0; i < outcomes.size(); i++) {
            for (int j = i + 1; j < outcomes.size(); j++) {
                pairs.add(DesignPair.of(outcomes.get(i), outcomes.get(j)));
            }
        }
        return new SectionComparison(section, outcomes, pairs);
    }
}
