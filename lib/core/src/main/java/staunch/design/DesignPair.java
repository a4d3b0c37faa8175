package staunch.design;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.envelope.KickResult;
import staunch.envelope.Maasp;
import staunch.envelope.SurfaceLimit;
import staunch.envelope.SurfaceTolerance;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;

/**
 * Two casing designs held against each other in one hole section.
 *
 * <p>A design dominates another where it is no worse in tolerance of the drilled kick, tolerance of the swabbed kick,
 * formation MAASP and least shoe margin, and better in at least one. A tolerance is the lesser of what the formation
 * holds and what can be circulated to surface; where a limit of casing or equipment is unknown in both designs, the
 * formation's alone.
 *
 * @param first name of a casing design
 * @param second name of another
 * @param relation of the first to the second
 */
public record DesignPair(String first, String second, Relation relation) {
    /** Relative difference below which two values are the same: what the searches for them may leave. */
    private static final double SAME = 1e-6;

    public DesignPair {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        Objects.requireNonNull(relation, "relation");
    }

    /** How two designs stand to each other. */
    public enum Relation {
        FIRST_DOMINATES,
        SECOND_DOMINATES,
        EQUAL,
        EACH_BETTER_IN_SOMETHING,
        NOT_COMPARED
    }

    /** Name of the design that dominates; empty where neither does. */
    public Optional<String> dominant() {
        return switch (relation) {
            case FIRST_DOMINATES -> Optional.of(first);
            case SECOND_DOMINATES -> Optional.of(second);
            case EQUAL, EACH_BETTER_IN_SOMETHING, NOT_COMPARED -> Optional.empty();
        };
    }

    /** The relation in words. */
    public String statement() {
        return switch (relation) {
            case FIRST_DOMINATES -> first + " dominates " + second;
            case SECOND_DOMINATES -> second + " dominates " + first;
            case EQUAL -> "neither dominates: " + first + " and " + second + " are equal";
            case EACH_BETTER_IN_SOMETHING ->
                "neither dominates: each of " + first + " and " + second + " is better in something";
            case NOT_COMPARED ->
                "neither dominates: " + first + " and " + second
                        + " are not compared, since the section is not shut in or a value is missing";
        };
    }

    static DesignPair of(SectionOutcome first, SectionOutcome second) {
        return new DesignPair(first.design(), second.design(), relation(first, second));
    }

    private static Relation relation(SectionOutcome first, SectionOutcome second) {
        if (notShutIn(first) || notShutIn(second)) {
            return Relation.NOT_COMPARED;
        }
        List<Values> all = List.of(
                Values.ofTolerance(first.drilled(), second.drilled()),
                Values.ofTolerance(first.swabbed(), second.swabbed()),
                new Values(formationMaasp(first), formationMaasp(second)));
        Values margin = new Values(first.leastShoeMargin(), second.leastShoeMargin());
        // No criterion and no detectable gain: there is no influx whose margin could be compared.
        boolean noMargin = margin.first.isEmpty() && margin.second.isEmpty();
        if (!all.stream().allMatch(Values::known) || !(noMargin || margin.known())) {
            return Relation.NOT_COMPARED;
        }
        boolean firstBetter = all.stream().anyMatch(v -> v.sign() > 0) || !noMargin && margin.sign() > 0;
        boolean secondBetter = all.stream().anyMatch(v -> v.sign() < 0) || !noMargin && margin.sign() < 0;
        if (firstBetter && secondBetter) {
            return Relation.EACH_BETTER_IN_SOMETHING;
        }
        if (firstBetter) {
            return Relation.FIRST_DOMINATES;
        }
        return secondBetter ? Relation.SECOND_DOMINATES : Relation.EQUAL;
    }

    private static boolean notShutIn(SectionOutcome outcome) {
        return outcome.verdict().outcome() == Verdict.Outcome.NOT_SHUT_IN;
    }

    private static OptionalDouble formationMaasp(SectionOutcome outcome) {
        return outcome.maasp()
                .flatMap(Maasp::formation)
                .map(SurfaceLimit::pressure)
                .orElse(OptionalDouble.empty());
    }

    /** One quantity of both designs, the greater the better. */
    private record Values(OptionalDouble first, OptionalDouble second) {
        static Values ofTolerance(KickResult first, KickResult second) {
            boolean complete = first.circulatedToSurface().complete();
            if (complete != second.circulatedToSurface().complete()) {
                return new Values(OptionalDouble.empty(), OptionalDouble.empty());
            }
            return new Values(rank(first, complete), rank(second, complete));
        }

        private static OptionalDouble rank(KickResult kick, boolean toSurface) {
            OptionalDouble formation = rank(kick.tolerance());
            SurfaceTolerance surface = kick.circulatedToSurface();
            if (!toSurface || formation.isEmpty()) {
                return formation;
            }
            return OptionalDouble.of(
                    Math.min(formation.getAsDouble(), rank(surface.tolerance()).orElse(Double.POSITIVE_INFINITY)));
        }

        /** Order of tolerances: no limit above any volume, any volume above none, the lesser shortfall above the greater. */
        private static OptionalDouble rank(Tolerance tolerance) {
            if (tolerance instanceof Tolerance.Finite finite) {
                return OptionalDouble.of(finite.volume());
            }
            if (tolerance instanceof Tolerance.FailsOnIntensity fails) {
                return OptionalDouble.of(-fails.shortfall());
            }
            return tolerance instanceof Tolerance.Unlimited
                    ? OptionalDouble.of(Double.POSITIVE_INFINITY)
                    : OptionalDouble.empty();
        }

        boolean known() {
            return first.isPresent() && second.isPresent();
        }

        int sign() {
            double a = first.getAsDouble();
            double b = second.getAsDouble();
            boolean finite = Double.isFinite(a) && Double.isFinite(b);
            boolean same = finite && Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
            return same ? 0 : Double.compare(a, b);
        }
    }
}
