package staunch.design;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import staunch.envelope.Verdict;

/**
 * Two casing designs held against each other, in one hole section or as a whole.
 *
 * <p>A design dominates another where it is no worse in any {@link ComparedValue} and better in at least one. A tolerance is
 * the lesser of what the formation holds and what can be circulated to surface; where a limit of casing or equipment is
 * unknown in both designs, the formation's alone. As a whole, every section that both shut in counts, and weight and cost of
 * steel besides.
 *
 * @param first name of a casing design
 * @param second name of another
 * @param relation of the first to the second
 * @param firstBetter in what the first is better; empty where the two are not compared
 * @param secondBetter in what the second is better; empty where the two are not compared
 * @param notCompared why the two are not compared; empty where they are
 */
public record DesignPair(
        String first,
        String second,
        Relation relation,
        List<ComparedValue> firstBetter,
        List<ComparedValue> secondBetter,
        String notCompared) {
    public DesignPair {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        Objects.requireNonNull(relation, "relation");
        firstBetter = List.copyOf(firstBetter);
        secondBetter = List.copyOf(secondBetter);
        Objects.requireNonNull(notCompared, "notCompared");
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

    /** Name of the design that the other dominates; empty where neither does. */
    Optional<String> dominated() {
        return dominant().map(name -> name.equals(first) ? second : first);
    }

    /** The relation in words. */
    public String statement() {
        return switch (relation) {
            case FIRST_DOMINATES -> first + " dominates " + second;
            case SECOND_DOMINATES -> second + " dominates " + first;
            case EQUAL -> "neither dominates: " + first + " and " + second + " are equal";
            case EACH_BETTER_IN_SOMETHING ->
                "neither dominates: each of " + first + " and " + second + " is better in something";
            case NOT_COMPARED -> first + " and " + second + " are not compared: " + notCompared;
        };
    }

    static DesignPair of(SectionOutcome first, SectionOutcome second) {
        if (notShutIn(first) || notShutIn(second)) {
            String where =
                    !notShutIn(second) ? " in " + first.design() : !notShutIn(first) ? " in " + second.design() : "";
            return notCompared(first.design(), second.design(), "not shut in" + where);
        }
        Tally tally = new Tally(first.design(), second.design());
        for (ComparedValue value : ComparedValue.values()) {
            if (value.ofSection()) {
                tally.add(value, value.of(first, second));
            }
        }
        return tally.pair();
    }

    /** Two whole designs by their sections and their steel; sections that neither shuts in are left out. */
    static DesignPair of(SteelUse first, SteelUse second, List<SectionComparison> sections) {
        Tally tally = new Tally(first.design(), second.design());
        for (SectionComparison section : sections) {
            Optional<SectionOutcome> a = section.outcome(first.design());
            Optional<SectionOutcome> b = section.outcome(second.design());
            if (a.isEmpty() != b.isEmpty()) {
                tally.missing.add((a.isEmpty() ? first : second).design() + " has no section " + section.section());
            } else if (a.isPresent() && !(notShutIn(a.get()) && notShutIn(b.get()))) {
                DesignPair pair = of(a.get(), b.get());
                if (!pair.notCompared().isEmpty()) {
                    tally.missing.add(section.section() + ", " + pair.notCompared());
                }
                tally.firstBetter.addAll(pair.firstBetter());
                tally.secondBetter.addAll(pair.secondBetter());
            }
        }
        tally.add(
                ComparedValue.STEEL,
                new ComparedValue.Pair(OptionalDouble.of(-first.mass()), OptionalDouble.of(-second.mass())));
        tally.add(ComparedValue.COST, cost(first, second));
        return tally.pair();
    }

    /** Costs count where both are known in one currency; else the designs are compared without them. */
    private static ComparedValue.Pair cost(SteelUse first, SteelUse second) {
        boolean comparable = first.cost().isPresent()
                && second.cost().isPresent()
                && first.cost().get().currency().equals(second.cost().get().currency());
        return comparable
                ? new ComparedValue.Pair(
                        OptionalDouble.of(-first.cost().get().amount()),
                        OptionalDouble.of(-second.cost().get().amount()))
                : new ComparedValue.Pair(OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static DesignPair notCompared(String first, String second, String why) {
        return new DesignPair(first, second, Relation.NOT_COMPARED, List.of(), List.of(), why);
    }

    private static boolean notShutIn(SectionOutcome outcome) {
        return outcome.verdict().outcome() == Verdict.Outcome.NOT_SHUT_IN;
    }

    private static final class Tally {
        private final Set<ComparedValue> firstBetter = EnumSet.noneOf(ComparedValue.class);
        private final Set<ComparedValue> secondBetter = EnumSet.noneOf(ComparedValue.class);
        private final List<String> missing = new ArrayList<>();
        private final String first;
        private final String second;

        Tally(String first, String second) {
            this.first = first;
            this.second = second;
        }

        void add(ComparedValue value, ComparedValue.Pair pair) {
            if (pair.known()) {
                int sign = pair.sign();
                if (sign > 0) {
                    firstBetter.add(value);
                } else if (sign < 0) {
                    secondBetter.add(value);
                }
            } else if (!(pair.lacking() && value.mayLack())) {
                String where = pair.lacking() ? "" : " in " + (pair.first().isEmpty() ? first : second);
                missing.add(value.title() + " not known" + where);
            }
        }

        DesignPair pair() {
            if (!missing.isEmpty()) {
                return notCompared(first, second, String.join("; ", missing));
            }
            return new DesignPair(
                    first, second, relation(), new ArrayList<>(firstBetter), new ArrayList<>(secondBetter), "");
        }

        private Relation relation() {
            if (!firstBetter.isEmpty() && !secondBetter.isEmpty()) {
                return Relation.EACH_BETTER_IN_SOMETHING;
            }
            if (!firstBetter.isEmpty()) {
                return Relation.FIRST_DOMINATES;
            }
            return secondBetter.isEmpty() ? Relation.EQUAL : Relation.SECOND_DOMINATES;
        }
    }
}
