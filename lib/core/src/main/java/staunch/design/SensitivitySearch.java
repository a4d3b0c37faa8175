package staunch.design;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import staunch.envelope.KickCheck;
import staunch.envelope.Maasp;
import staunch.envelope.SectionCheck;
import staunch.envelope.SectionEvaluator;
import staunch.envelope.SectionInput;
import staunch.envelope.SurfaceLimit;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;
import staunch.units.Fault;

/** Varies one input at a time. */
final class SensitivitySearch {
    /** Steps to either side of the base at which the verdict is asked. */
    private static final int STEPS = 24;

    /** Part of the reach to which a flip is found. */
    private static final double SAME = 1e-5;

    private final String design;
    private final SectionInput input;
    private final SectionCheck base;

    SensitivitySearch(String design, SectionInput input) {
        this.design = design;
        this.input = input;
        this.base = SectionEvaluator.check(input);
    }

    Sensitivity search() {
        List<Sensitivity.Input> inputs = Arrays.asList(SensitiveInput.values()).parallelStream()
                .map(this::varied)
                .sorted(Comparator.comparingDouble(i -> -i.span().orElse(-1)))
                .toList();
        return new Sensitivity(design, input.plan().name(), effect(base), inputs);
    }

    private Sensitivity.Input varied(SensitiveInput which) {
        OptionalDouble value =
                base.verdict().outcome() == Verdict.Outcome.NOT_SHUT_IN ? OptionalDouble.empty() : which.base(input);
        if (value.isEmpty()) {
            String reason = base.verdict().outcome() == Verdict.Outcome.NOT_SHUT_IN
                    ? base.verdict().statement()
                    : "the case does not give it";
            return new Sensitivity.Input(
                    which,
                    which.measure(),
                    value,
                    OptionalDouble.empty(),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    Optional.empty(),
                    reason,
                    new Sensitivity.NotVaried(reason));
        }
        SensitiveInput.Swing swing = which.swing(input);
        return new Sensitivity.Input(
                which,
                which.measure(),
                value,
                swing.low(),
                effect(which, swing.low()),
                swing.high(),
                effect(which, swing.high()),
                swing.basis(),
                flip(which, value.getAsDouble()));
    }

    private Optional<Sensitivity.Effect> effect(SensitiveInput which, OptionalDouble value) {
        return value.isPresent() ? check(which, value.getAsDouble()).map(SensitivitySearch::effect) : Optional.empty();
    }

    /** Empty where the value lies outside what a model can take. */
    private Optional<SectionCheck> check(SensitiveInput which, double value) {
        try {
            return Optional.of(SectionEvaluator.check(which.with(input, value)));
        } catch (Fault outside) {
            return Optional.empty();
        }
    }

    private static Sensitivity.Effect effect(SectionCheck check) {
        return new Sensitivity.Effect(
                check.drilled().tolerance(),
                check.swabbed().tolerance(),
                margin(check),
                check.maasp()
                        .flatMap(Maasp::formation)
                        .map(SurfaceLimit::pressure)
                        .orElse(OptionalDouble.empty()),
                check.verdict());
    }

    private static OptionalDouble margin(SectionCheck check) {
        return Stream.of(check.drilled(), check.swabbed())
                .flatMapToDouble(SensitivitySearch::margins)
                .min();
    }

    private static DoubleStream margins(KickCheck kick) {
        return Stream.of(kick.tolerance(), kick.circulatedToSurface().tolerance())
                .filter(t -> t instanceof Tolerance.Finite && kick.required().isPresent())
                .mapToDouble(
                        t -> ((Tolerance.Finite) t).volume() - kick.required().getAsDouble());
    }

    /**
     * Outwards from the base in steps to both sides at once, so that the flip nearest to the base is met first; then
     * bisection. A verdict that flips and flips back within a step may be missed.
     */
    private Sensitivity.Flip flip(SensitiveInput which, double value) {
        double step = which.reach() / STEPS;
        double from = Math.max(value - which.reach(), which.least(input));
        double[] last = {value, value};
        boolean[] open = {true, true};
        for (int i = 1; i <= STEPS && (open[0] || open[1]); i++) {
            for (int side = 0; side < 2; side++) {
                if (!open[side]) {
                    continue;
                }
                double next = side == 0 ? Math.max(value - i * step, from) : value + i * step;
                Optional<SectionCheck> there = next == last[side] ? Optional.empty() : check(which, next);
                if (there.isEmpty()) {
                    open[side] = false;
                } else if (flips(there.get())) {
                    return bisected(which, last[side], next, there.get());
                } else {
                    last[side] = next;
                }
            }
        }
        return new Sensitivity.DoesNotFlip(which.measure(), last[0], last[1]);
    }

    private boolean flips(SectionCheck check) {
        return check.verdict().outcome() != base.verdict().outcome();
    }

    private Sensitivity.Flip bisected(SensitiveInput which, double same, double other, SectionCheck beyond) {
        double a = same;
        double b = other;
        SectionCheck found = beyond;
        while (Math.abs(b - a) > SAME * which.reach()) {
            double middle = 0.5 * (a + b);
            Optional<SectionCheck> check = check(which, middle);
            if (check.isPresent() && flips(check.get())) {
                b = middle;
                found = check.get();
            } else {
                a = middle;
            }
        }
        return new Sensitivity.FlipsAt(which.measure(), b, found.verdict());
    }
}
