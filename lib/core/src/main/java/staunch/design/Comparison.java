package staunch.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import staunch.envelope.MethodOptions;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.WellEnvelope;
import staunch.units.InputFault;

/**
 * Casing designs of a well side by side. Hole sections are matched by their names; sections of one name need not end at
 * the same depth in every design.
 *
 * @param designs names, in the order asked for
 * @param options methods used for all of them
 * @param sections downwards
 * @param steel of each design
 * @param totals every two designs as a whole, steel and cost counted
 */
public record Comparison(
        List<String> designs,
        MethodOptions options,
        List<SectionComparison> sections,
        List<SteelUse> steel,
        List<DesignPair> totals) {
    public Comparison {
        designs = List.copyOf(designs);
        Objects.requireNonNull(options, "options");
        sections = List.copyOf(sections);
        steel = List.copyOf(steel);
        totals = List.copyOf(totals);
    }

    /**
     * Evaluates designs of a case and compares them.
     *
     * @param wellCase that has them
     * @param designs names of two or more
     * @param options methods for all of them
     * @param progress told how far it has come
     * @throws InputFault where fewer than two designs are named, one is named twice or is not in the case
     */
    public static Comparison of(WellCase wellCase, List<String> designs, MethodOptions options, Progress progress) {
        return Study.of(wellCase).withOptions(options).compare(designs, progress);
    }

    /**
     * Compares designs that are evaluated already.
     *
     * @param wellCase that has them
     * @param envelopes of two or more of its designs, by the same methods
     * @throws InputFault where there are fewer than two, two of one design, or where their methods differ
     */
    public static Comparison of(WellCase wellCase, List<WellEnvelope> envelopes) {
        List<String> names = envelopes.stream().map(WellEnvelope::design).toList();
        check(names);
        MethodOptions options = envelopes.get(0).options();
        if (!envelopes.stream().allMatch(e -> e.options().equals(options))) {
            throw new InputFault(
                    "designs to compare", "are evaluated by different methods", "evaluate all with the same options");
        }
        List<SectionComparison> sections = sections(wellCase, envelopes);
        List<SteelUse> steel =
                names.stream().map(n -> SteelUse.of(wellCase.design(n))).toList();
        List<DesignPair> totals = new ArrayList<>();
        for (int i = 0; i < steel.size(); i++) {
            for (int j = i + 1; j < steel.size(); j++) {
                totals.add(DesignPair.of(steel.get(i), steel.get(j), sections));
            }
        }
        return new Comparison(names, options, sections, steel, totals);
    }

    /** Designs that no other dominates as a whole. */
    public List<String> undominated() {
        return undominated(designs, totals);
    }

    static List<String> undominated(List<String> designs, List<DesignPair> pairs) {
        return designs.stream()
                .filter(d -> pairs.stream().noneMatch(p -> p.dominated().equals(Optional.of(d))))
                .toList();
    }

    static void check(List<String> designs) {
        if (designs.size() < 2) {
            throw new InputFault("designs to compare", "are fewer than two", "name two or more designs of the case");
        }
        Set<String> seen = new HashSet<>();
        for (String design : designs) {
            if (!seen.add(design)) {
                throw new InputFault("designs to compare", "name \"" + design + "\" twice", "name each design once");
            }
        }
    }

    /** By depth rather than by the first design, so that the order of the designs does not matter. */
    private static List<SectionComparison> sections(WellCase wellCase, List<WellEnvelope> envelopes) {
        List<String> names = envelopes.stream()
                .flatMap(e -> e.sections().stream())
                .map(Comparison::name)
                .distinct()
                .toList();
        return names.parallelStream()
                .map(name -> SectionComparison.of(name, outcomes(wellCase, name, envelopes)))
                .sorted(Comparator.comparingDouble(Comparison::top)
                        .thenComparingDouble(Comparison::bottom)
                        .thenComparing(SectionComparison::section))
                .toList();
    }

    private static List<SectionOutcome> outcomes(WellCase wellCase, String section, List<WellEnvelope> envelopes) {
        List<SectionOutcome> found = new ArrayList<>();
        for (WellEnvelope envelope : envelopes) {
            Study study = Study.of(wellCase).withDesign(envelope.design()).withOptions(envelope.options());
            envelope.sections().stream()
                    .filter(s -> name(s).equals(section))
                    .forEach(s -> found.add(SectionOutcome.of(envelope.design(), s, study.peaks(section))));
        }
        return found;
    }

    private static String name(SectionEnvelope section) {
        return section.plan().name();
    }

    private static double top(SectionComparison section) {
        return section.outcomes().stream()
                .mapToDouble(SectionOutcome::topDepth)
                .min()
                .orElseThrow();
    }

    private static double bottom(SectionComparison section) {
        return section.outcomes().stream()
                .mapToDouble(SectionOutcome::bottomDepth)
                .min()
                .orElseThrow();
    }
}
