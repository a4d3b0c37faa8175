package staunch.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import staunch.envelope.KickCheck;
import staunch.envelope.Maasp;
import staunch.envelope.SectionCheck;
import staunch.envelope.SectionEvaluator;
import staunch.envelope.SectionInput;
import staunch.envelope.SectionPlan;
import staunch.envelope.Verdict;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Designs × sections × scenarios × variants of evidence and method as one table.
 *
 * @param rows by variant, design and section as asked for, drilled before swabbed
 */
public record StudyTable(List<Row> rows) {
    public StudyTable {
        rows = List.copyOf(rows);
    }

    /**
     * One of them.
     *
     * @param variant name of the variant of evidence and method
     * @param design name of the casing design
     * @param section name of the hole section
     * @param topDepth measured depth of the shoe above, m
     * @param bottomDepth measured depth of section TD, m
     * @param kick tolerance of one scenario against its criterion
     * @param maasp at the section's mud density; empty where there is no mud or the section is not shut in
     * @param verdict of the section
     */
    public record Row(
            String variant,
            String design,
            String section,
            @Si(value = "m", kind = Kind.DEPTH) double topDepth,
            @Si(value = "m", kind = Kind.DEPTH) double bottomDepth,
            KickCheck kick,
            Optional<Maasp> maasp,
            Verdict verdict) {
        public Row {
            Objects.requireNonNull(variant, "variant");
            Objects.requireNonNull(design, "design");
            Objects.requireNonNull(section, "section");
            Objects.requireNonNull(kick, "kick");
            Objects.requireNonNull(maasp, "maasp");
            Objects.requireNonNull(verdict, "verdict");
        }
    }

    private record Asked(String variant, String design, SectionPlan plan, SectionInput input) {}

    static StudyTable of(List<String> designs, List<StudyVariant> variants) {
        different("designs of the study", designs);
        different(
                "variants of the study",
                variants.stream().map(StudyVariant::name).toList());
        List<Asked> asked = new ArrayList<>();
        for (StudyVariant variant : variants) {
            for (String design : designs) {
                Study study = Study.of(variant.wellCase()).withDesign(design).withOptions(variant.options());
                for (SectionPlan plan : study.wellCase().design(design).sections()) {
                    asked.add(new Asked(variant.name(), design, plan, study.input(plan.name())));
                }
            }
        }
        List<SectionInput> inputs = asked.stream().map(Asked::input).distinct().toList();
        List<SectionCheck> found =
                inputs.parallelStream().map(SectionEvaluator::check).toList();
        Map<SectionInput, SectionCheck> byInput = new HashMap<>();
        for (int i = 0; i < inputs.size(); i++) {
            byInput.put(inputs.get(i), found.get(i));
        }
        List<Row> rows = new ArrayList<>();
        for (Asked a : asked) {
            SectionCheck check = byInput.get(a.input());
            for (KickCheck kick : List.of(check.drilled(), check.swabbed())) {
                rows.add(new Row(
                        a.variant(),
                        a.design(),
                        a.plan().name(),
                        a.plan().topDepth(),
                        a.plan().bottomDepth(),
                        kick,
                        check.maasp(),
                        check.verdict()));
            }
        }
        return new StudyTable(rows);
    }

    private static void different(String what, List<String> names) {
        if (names.isEmpty()) {
            throw new InputFault(what, "are none", "name at least one");
        }
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (!seen.add(name)) {
                throw new InputFault(what, "name \"" + name + "\" twice", "name each once");
            }
        }
    }
}
