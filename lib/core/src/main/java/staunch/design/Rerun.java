package staunch.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.units.Check;
import staunch.units.InputFault;

/**
 * Two runs of a well held against each other: what changed, by how much, and because of what.
 *
 * <p>Each cause is made alone on the earlier case, and in sequence, each after those before it. What the causes do only
 * together remains when they are summed one by one, and is shown. Changes that give no legal case without each other count
 * as one cause.
 *
 * @param well name of the well
 * @param causes the library first, then changes of the input in the order of the case file
 * @param sections those whose verdict flips first, then those that changed otherwise, then the rest; each downwards
 * @param notAttributed why nothing is attributed although something changed; empty where it is
 * @param notCompared what one of the records lacks, so that it is not compared; empty where nothing is
 */
public record Rerun(
        String well, List<Cause> causes, List<SectionChange> sections, String notAttributed, String notCompared) {
    private static final String WITHOUT_OPERATIONS =
            "what follows an influx in time, since the earlier record does not hold it";

    /** Which changes are shared out among their causes; all are shown. */
    public enum Scope {
        /**
         * Those of the envelope, and of what follows an influx in each section where that changed: the operations of the
         * section are evaluated for each cause, which takes most of the time.
         */
        ALL,
        /** Those of the envelope alone. */
        ENVELOPE
    }

    public Rerun {
        Check.text("name of the well", well);
        causes = List.copyOf(causes);
        sections = List.copyOf(sections);
        Objects.requireNonNull(notAttributed, "notAttributed");
        Objects.requireNonNull(notCompared, "notCompared");
    }

    /**
     * Holds a later run against an earlier one.
     *
     * @param before record of the earlier run
     * @param after record of the later run
     * @param changed the case between them
     * @param scope which changes are shared out
     * @param progress told how far it has come
     * @throws InputFault where the records are of two wells or share no casing design
     */
    public static Rerun of(RunRecord before, RunRecord after, ChangedCase changed, Scope scope, Progress progress) {
        if (!before.well().equals(after.well())) {
            throw new InputFault(
                    "run record",
                    "is of well \"" + before.well() + "\", the case of \"" + after.well() + "\"",
                    "name a record of the same well");
        }
        List<String> designs =
                after.designs().stream().filter(before.designs()::contains).toList();
        if (designs.isEmpty()) {
            throw new InputFault(
                    "run record",
                    "has results of " + before.designs() + ", the run of " + after.designs(),
                    "evaluate a casing design that both have");
        }
        AttributedRuns runs = new AttributedRuns(before, after, changed, designs, scope, progress);
        List<SectionChange> sections = new ArrayList<>();
        for (String design : designs) {
            after.resultsOf(design)
                    .forEach(now ->
                            sections.add(runs.change(design, now.section(), find(before, now), Optional.of(now))));
            before.resultsOf(design)
                    .filter(then -> find(after, then).isEmpty())
                    .forEach(then ->
                            sections.add(runs.change(design, then.section(), Optional.of(then), Optional.empty())));
        }
        runs.finish();
        // The sort is stable: within each group the order of the run remains.
        sections.sort(Comparator.comparingInt(s -> s.flips() ? 0 : s.changed() ? 1 : 2));
        return new Rerun(
                after.well(), runs.causes(), sections, runs.notAttributed(), notCompared(before, after, sections));
    }

    private static String notCompared(RunRecord before, RunRecord after, List<SectionChange> sections) {
        List<String> found = new ArrayList<>();
        found.addAll(onlyIn(before, after, "the earlier run"));
        found.addAll(onlyIn(after, before, "the later run"));
        if (sections.stream()
                .anyMatch(s -> s.before().isPresent()
                        && s.after().filter(SectionResult::hasOperations).isPresent()
                        && !s.before().get().hasOperations())) {
            found.add(WITHOUT_OPERATIONS);
        }
        return String.join("; ", found);
    }

    private static List<String> onlyIn(RunRecord one, RunRecord other, String name) {
        return one.designs().stream()
                .filter(d -> !other.designs().contains(d))
                .map(d -> "design \"" + d + "\", which only " + name + " has")
                .toList();
    }

    private static Optional<SectionResult> find(RunRecord record, SectionResult like) {
        return record.results().stream().filter(like::isOf).findFirst();
    }

    /** Whether neither input, methods and library nor any result is different. */
    public boolean nothingChanged() {
        return causes.isEmpty() && sections.stream().noneMatch(SectionChange::changed);
    }

    /** Sections whose verdict is another one. */
    public List<SectionChange> flips() {
        return sections.stream().filter(SectionChange::flips).toList();
    }

    /**
     * One section.
     *
     * @throws InputFault where there is none of these names
     */
    public SectionChange section(String design, String section) {
        return sections.stream()
                .filter(s -> s.design().equals(design) && s.section().equals(section))
                .findFirst()
                .orElseThrow(() -> new InputFault(
                        "hole section \"" + section + "\" of design \"" + design + "\"",
                        "is not in the runs",
                        "use one of "
                                + sections.stream()
                                        .map(s -> s.design() + ", " + s.section())
                                        .toList()));
    }
}
