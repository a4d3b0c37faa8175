package staunch.design;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SectionOperations;
import staunch.envelope.Verdict;
import staunch.units.Check;
import staunch.units.InputFault;

/**
 * What a run found for one hole section of one casing design.
 *
 * @param design name of the casing design
 * @param section name of the hole section
 * @param verdict with the limit that governs
 * @param values every {@link SectionQuantity}, in its order; or those of the envelope alone, as records of format 1 have
 *     them
 */
public record SectionResult(String design, String section, Verdict verdict, List<ResultValue> values) {
    private static final List<SectionQuantity> ALL = List.of(SectionQuantity.values());
    private static final List<SectionQuantity> ENVELOPE =
            ALL.stream().filter(SectionQuantity::ofEnvelope).toList();

    public SectionResult {
        Check.text("name of the casing design", design);
        Check.text("name of the hole section", section);
        Objects.requireNonNull(verdict, "verdict");
        values = List.copyOf(values);
        List<SectionQuantity> quantities =
                values.stream().map(ResultValue::quantity).toList();
        if (!quantities.equals(ALL) && !quantities.equals(ENVELOPE)) {
            throw new InputFault(
                    "results of section \"" + section + "\"", "are not complete", "give every quantity once, in order");
        }
    }

    /** What was found for a section: its envelope, and what follows an influx in time. */
    public static SectionResult of(String design, SectionEnvelope section, SectionOperations operations) {
        return new SectionResult(
                design,
                section.plan().name(),
                section.verdict(),
                ALL.stream().map(q -> q.of(section, operations)).toList());
    }

    /** Its envelope alone. */
    static SectionResult of(String design, SectionEnvelope section) {
        return new SectionResult(
                design,
                section.plan().name(),
                section.verdict(),
                ENVELOPE.stream().map(q -> q.of(section)).toList());
    }

    /** One of its values; a quantity that is not on record has neither number nor place. */
    public ResultValue value(SectionQuantity quantity) {
        return has(quantity)
                ? values.get(quantity.ordinal())
                : new ResultValue(quantity, quantity.measure(), OptionalDouble.empty(), "not on record");
    }

    /** Whether a quantity is on record. */
    public boolean has(SectionQuantity quantity) {
        return quantity.ordinal() < values.size();
    }

    /** Whether what follows an influx in time is on record. */
    boolean hasOperations() {
        return values.size() == ALL.size();
    }

    /** Quantities whose values differ, of those that both have. */
    public List<SectionQuantity> differing(SectionResult other) {
        return ALL.stream()
                .filter(q -> has(q) && other.has(q) && !value(q).equals(other.value(q)))
                .toList();
    }

    /** Whether verdict and every value that both have are the same. */
    boolean agrees(SectionResult other) {
        return verdict.equals(other.verdict) && differing(other).isEmpty();
    }

    boolean isOf(SectionResult other) {
        return design.equals(other.design) && section.equals(other.section);
    }
}
