package staunch.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import staunch.envelope.MethodOptions;
import staunch.envelope.OperationsEvaluator;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SectionEvaluator;
import staunch.envelope.SectionInput;
import staunch.envelope.SectionPlan;
import staunch.units.Fault;
import staunch.units.Measure;

/** Evaluates a case with some of its changes and shares out what results changed by. */
final class AttributedRuns {
    /** Tolerance along the section decides nothing that is compared: as few depths as the options allow. */
    private static final double WIDEST_STEP = 1000;

    private final RunRecord before;
    private final RunRecord after;
    private final ChangedCase changed;
    private final List<String> designs;
    private final Progress progress;
    private final Map<Set<String>, Outcome> outcomes = new HashMap<>();
    private final Map<Asked, SectionResult> evaluated = new HashMap<>();
    private final Rerun.Scope scope;
    private final Set<List<String>> followed;
    private final List<Cause> causes = new ArrayList<>();
    private final boolean library;
    private final String notAttributed;

    /** Results of a case with some changes, or why there are none. */
    private record Outcome(List<SectionResult> results, String fault) {
        boolean legal() {
            return fault.isEmpty();
        }
    }

    /** Some changes that are made together, and why. */
    private record Group(List<InputChange> changes, String reason) {
        List<String> names() {
            return changes.stream().map(InputChange::name).toList();
        }
    }

    AttributedRuns(
            RunRecord before,
            RunRecord after,
            ChangedCase changed,
            List<String> designs,
            Rerun.Scope scope,
            Progress progress) {
        this.before = before;
        this.after = after;
        this.changed = changed;
        this.designs = designs;
        this.progress = progress;
        this.scope = scope;
        this.followed = followed();
        boolean same = before.library().equals(after.library());
        List<InputChange> inputs = changed.changes();
        if (inputs.isEmpty() && same && resultsAgree(before.results(), after.results())) {
            library = false;
            notAttributed = "";
            return;
        }
        Outcome start = outcome(Set.of());
        boolean recomputed = start.legal() && resultsAgree(before.results(), start.results());
        library = !same || start.legal() && !recomputed;
        if (library) {
            causes.add(libraryCause(same));
        }
        notAttributed = start.legal()
                ? ""
                : "the earlier case cannot be rebuilt by this version of the library: " + start.fault();
        List<Group> groups = start.legal()
                ? joined(inputs)
                : inputs.stream().map(c -> new Group(List.of(c), "")).toList();
        groups.forEach(g -> causes.add(Cause.of(g.changes(), g.reason())));
    }

    /** Nothing more is to be evaluated. */
    void finish() {
        progress.step(outcomes.size(), outcomes.size(), "done");
    }

    List<Cause> causes() {
        return causes;
    }

    String notAttributed() {
        return notAttributed;
    }

    SectionChange change(String design, String section, Optional<SectionResult> then, Optional<SectionResult> now) {
        if (then.isEmpty() || now.isEmpty() || causes.isEmpty() || !notAttributed.isEmpty()) {
            return new SectionChange(design, section, then, now, List.of(), List.of());
        }
        List<Step> steps = steps(then.get());
        if (steps.isEmpty()) {
            return new SectionChange(design, section, then, now, List.of(), List.of());
        }
        List<SectionChange.Effect> effects = steps.stream()
                .map(s -> new SectionChange.Effect(
                        s.cause(),
                        s.alone().verdict().outcome(),
                        s.reached().verdict().outcome()))
                .toList();
        List<Attribution> attributions = new ArrayList<>();
        for (SectionQuantity quantity : then.get().differing(now.get())) {
            if (scope == Rerun.Scope.ENVELOPE && !quantity.ofEnvelope()) {
                continue;
            }
            attributions.add(attribution(quantity, then.get(), now.get(), steps));
        }
        return new SectionChange(design, section, then, now, effects, attributions);
    }

    /** One cause with the results it is measured from and leads to. */
    private record Step(
            String cause, SectionResult base, SectionResult alone, SectionResult from, SectionResult reached) {}

    /** A step for each cause; none where the section is not there at every one of them. */
    private List<Step> steps(SectionResult recorded) {
        List<Step> steps = new ArrayList<>();
        Optional<SectionResult> start = find(outcome(Set.of()), recorded);
        if (start.isEmpty()) {
            return List.of();
        }
        // What is recorded is rounded as what is computed: without a library cause they are the same.
        SectionResult reached = recorded;
        Set<String> made = new LinkedHashSet<>();
        for (int i = 0; i < causes.size(); i++) {
            Cause cause = causes.get(i);
            if (cause.kind() == InputChange.Kind.LIBRARY) {
                steps.add(new Step(cause.name(), recorded, start.get(), reached, start.get()));
                reached = start.get();
                continue;
            }
            Set<String> own = new HashSet<>();
            cause.changes().forEach(c -> own.add(c.name()));
            made.addAll(own);
            Optional<SectionResult> alone = find(outcome(own), recorded);
            Optional<SectionResult> next = find(outcome(Set.copyOf(made)), recorded);
            if (alone.isEmpty() || next.isEmpty()) {
                return List.of();
            }
            steps.add(new Step(cause.name(), start.get(), alone.get(), reached, next.get()));
            reached = next.get();
        }
        return steps;
    }

    private static Attribution attribution(
            SectionQuantity quantity, SectionResult then, SectionResult now, List<Step> steps) {
        Measure measure = quantity.measureOfChange();
        List<Attribution.Share> shares = new ArrayList<>();
        for (Step step : steps) {
            shares.add(new Attribution.Share(
                    step.cause(),
                    measure,
                    difference(quantity, step.base(), step.alone()),
                    difference(quantity, step.from(), step.reached()),
                    step.alone().value(quantity).outcome(),
                    step.reached().value(quantity).outcome()));
        }
        OptionalDouble total = difference(quantity, then, now);
        return new Attribution(
                quantity,
                measure,
                total,
                shares,
                remainder(quantity, total, shares, Attribution.Share::alone),
                remainder(quantity, total, shares, Attribution.Share::inSequence));
    }

    private static OptionalDouble difference(SectionQuantity quantity, SectionResult from, SectionResult to) {
        return from.value(quantity).changeTo(to.value(quantity));
    }

    private static OptionalDouble remainder(
            SectionQuantity quantity,
            OptionalDouble total,
            List<Attribution.Share> shares,
            Function<Attribution.Share, OptionalDouble> which) {
        if (total.isEmpty() || shares.stream().anyMatch(s -> which.apply(s).isEmpty())) {
            return OptionalDouble.empty();
        }
        double sum =
                shares.stream().mapToDouble(s -> which.apply(s).getAsDouble()).sum();
        return ResultValue.rounded(quantity, total.getAsDouble() - sum);
    }

    /** The changes in groups of which each alone, and each with those before it, gives a legal case. */
    private List<Group> joined(List<InputChange> changes) {
        List<Group> groups = new ArrayList<>();
        changes.forEach(c -> groups.add(new Group(List.of(c), "")));
        while (joinOnce(groups)) {
            // Each round makes one group fewer, and all changes together are the later case.
        }
        return groups;
    }

    private boolean joinOnce(List<Group> groups) {
        for (int i = 0; i < groups.size() && groups.size() > 1; i++) {
            Outcome alone = outcome(names(List.of(groups.get(i))));
            if (!alone.legal()) {
                join(groups, i, partner(groups, i), alone.fault());
                return true;
            }
        }
        for (int i = 0; i + 1 < groups.size(); i++) {
            Outcome prefix = outcome(names(groups.subList(0, i + 1)));
            if (!prefix.legal()) {
                join(groups, i, i + 1, prefix.fault());
                return true;
            }
        }
        return false;
    }

    /** The first group with which this one is legal, or else another that is not legal alone, or the next best. */
    private int partner(List<Group> groups, int i) {
        for (int k = 0; k < groups.size(); k++) {
            if (k != i && outcome(names(List.of(groups.get(i), groups.get(k)))).legal()) {
                return k;
            }
        }
        for (int k = 0; k < groups.size(); k++) {
            if (k != i && !outcome(names(List.of(groups.get(k)))).legal()) {
                return k;
            }
        }
        return i == 0 ? 1 : i - 1;
    }

    private static void join(List<Group> groups, int i, int k, String reason) {
        int first = Math.min(i, k);
        Group a = groups.get(first);
        Group b = groups.remove(Math.max(i, k));
        List<InputChange> both = new ArrayList<>(a.changes());
        both.addAll(b.changes());
        groups.set(first, new Group(both, a.reason().isEmpty() ? reason : a.reason()));
    }

    private static Set<String> names(List<Group> groups) {
        Set<String> names = new HashSet<>();
        groups.forEach(g -> names.addAll(g.names()));
        return names;
    }

    private Outcome outcome(Set<String> made) {
        Outcome known = outcomes.get(made);
        if (known == null) {
            known = evaluated(made);
            outcomes.put(Set.copyOf(made), known);
            progress.step(
                    outcomes.size(),
                    Math.max(outcomes.size() + 1L, 2L * changed.changes().size() + 1L),
                    "runs");
        }
        return known;
    }

    private Outcome evaluated(Set<String> made) {
        if (made.size() == changed.changes().size() && !made.isEmpty()) {
            return new Outcome(after.results(), "");
        }
        try {
            WellCase wellCase = changed.with(made);
            MethodOptions few = wellCase.options().withDepths(WIDEST_STEP, 1);
            List<Asked> asked = new ArrayList<>();
            for (String design : designs) {
                Study study = Study.of(wellCase).withDesign(design).withOptions(few);
                for (SectionPlan plan : wellCase.design(design).sections()) {
                    List<String> section = List.of(design, plan.name());
                    asked.add(new Asked(design, study.input(plan.name()), followed.contains(section)));
                }
            }
            asked.parallelStream()
                    .filter(a -> !evaluated.containsKey(a))
                    .map(a -> Map.entry(a, a.evaluate()))
                    .toList()
                    .forEach(e -> evaluated.put(e.getKey(), e.getValue()));
            return new Outcome(asked.stream().map(evaluated::get).toList(), "");
        } catch (Fault fault) {
            return new Outcome(List.of(), fault.getMessage());
        }
    }

    /** A section to be evaluated; what most changes leave as it was is evaluated once. */
    private record Asked(String design, SectionInput input, boolean followed) {
        SectionResult evaluate() {
            SectionEnvelope envelope = SectionEvaluator.evaluate(input, done -> {});
            return followed
                    ? SectionResult.of(design, envelope, OperationsEvaluator.evaluate(input))
                    : SectionResult.of(design, envelope);
        }
    }

    /** Sections of which what follows an influx differs between the runs: the only ones for which it is shared out. */
    private Set<List<String>> followed() {
        if (scope == Rerun.Scope.ENVELOPE) {
            return Set.of();
        }
        Set<List<String>> found = new HashSet<>();
        for (SectionResult now : after.results()) {
            before.results().stream()
                    .filter(now::isOf)
                    .filter(then -> then.differing(now).stream().anyMatch(q -> !q.ofEnvelope()))
                    .forEach(then -> found.add(List.of(now.design(), now.section())));
        }
        return found;
    }

    /** Whether two runs found the same for every section that both have. */
    private boolean resultsAgree(List<SectionResult> some, List<SectionResult> others) {
        return some.stream()
                .filter(s -> designs.contains(s.design()))
                .allMatch(s -> others.stream().filter(s::isOf).allMatch(s::agrees));
    }

    private static Optional<SectionResult> find(Outcome outcome, SectionResult like) {
        return outcome.results().stream().filter(like::isOf).findFirst();
    }

    private Cause libraryCause(boolean same) {
        String name = same
                ? "library: results differ from those recorded, although the version is " + after.library()
                : "library " + before.library() + " → " + after.library();
        ChangedField field =
                new ChangedField("version of the library", "", before.library(), after.library(), Optional.empty());
        return Cause.of(List.of(new InputChange(name, InputChange.Kind.LIBRARY, List.of(field))), "");
    }
}
