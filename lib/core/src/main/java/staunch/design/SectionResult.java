package staunch.design;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.Verdict;
import staunch.units.Check;
import staunch.units.InputFault;

/**
 * What a run found for one hole section of one casing design.
 *
 * @param design name of the casing design
 * @param section name of the hole section
 * @param verdict with the limit that governs
 * @param values every {@link SectionQuantity}, in its order
 */
public record SectionResult(String design, String section, Verdict verdict, List<ResultValue> values) {
    public SectionResult {
        Check.text("name of the casing design", design);
        Check.text("name of the hole section", section);
        Objects.requireNonNull(verdict, "verdict");
        values = List.copyOf(values);
        if (!values.stream().map(ResultValue::quantity).toList().equals(List.of(SectionQuantity.values()))) {
            throw new InputFault(
                    "results of section \"" + section + "\"", "are not complete", "give every quantity once, in order");
        }
    }

    /** What was found for a section. */
    public static SectionResult of(String design, SectionEnvelope section) {
        return new SectionResult(
                design,
                section.plan().name(),
                section.verdict(),
                Arrays.stream(SectionQuantity.values()).map(q -> q.of(section)).toList());
    }

    /** One of its values. */
    public ResultValue value(SectionQuantity quantity) {
        return values.get(quantity.ordinal());
    }

    boolean isOf(SectionResult other) {
        return design.equals(other.design) && section.equals(other.section);
    }
}
