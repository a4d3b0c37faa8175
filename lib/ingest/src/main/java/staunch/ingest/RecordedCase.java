package staunch.ingest;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import staunch.design.ChangedCase;
import staunch.design.InputChange;
import staunch.design.Progress;
import staunch.design.Rerun;
import staunch.design.RunRecord;
import staunch.design.WellCase;
import staunch.units.Fault;
import staunch.units.InputFault;

/** Cases rebuilt from what run records hold. */
public final class RecordedCase {
    private static final String RECORD = "run record";

    private RecordedCase() {}

    /**
     * The case that a run was computed from.
     *
     * @throws InputFault where this version of the library finds a fault in it
     */
    public static WellCase of(RunRecord record) {
        return build(tree(record), record);
    }

    /**
     * Holds a later run against an earlier one. Casing designs of the later case that neither run evaluated are named among
     * what is not compared.
     *
     * @param before record of the earlier run
     * @param after record of the later run
     * @param scope which changes are shared out
     * @param progress told how far it has come
     * @throws InputFault where the records are of two wells, share no casing design, or hold inputs that cannot be
     *     understood
     */
    public static Rerun compare(RunRecord before, RunRecord after, Rerun.Scope scope, Progress progress) {
        Rerun rerun = Rerun.of(before, after, between(before, after), scope, progress);
        Set<String> evaluated = new HashSet<>(before.designs());
        evaluated.addAll(after.designs());
        List<String> notCompared = new ArrayList<>();
        if (!rerun.notCompared().isEmpty()) {
            notCompared.add(rerun.notCompared());
        }
        designs(after).stream()
                .filter(d -> !evaluated.contains(d))
                .map(d -> "design \"" + d + "\" of the later case, which neither run evaluated")
                .forEach(notCompared::add);
        return new Rerun(
                rerun.well(), rerun.causes(), rerun.sections(), rerun.notAttributed(), String.join("; ", notCompared));
    }

    /** Names of the casing designs of a recorded case, evaluated or not. */
    private static List<String> designs(RunRecord record) {
        return tree(record).get("designs").stream()
                .filter(Item.Sequence.class::isInstance)
                .flatMap(list -> ((Item.Sequence) list).items().stream())
                .flatMap(design -> ((Item.Mapping) design).text("name").stream())
                .toList();
    }

    /**
     * The case between two runs, to be had with any part of what differs.
     *
     * @throws InputFault where the inputs of a record cannot be understood
     */
    public static ChangedCase between(RunRecord before, RunRecord after) {
        Item.Mapping then = tree(before);
        Item.Mapping now = PumpedAsTests.in(tree(after), then);
        List<InputChange> changes = CaseMixture.changes(then, now);
        Optional<Fault> unusable = fault(then, before);
        return new ChangedCase() {
            @Override
            public List<InputChange> changes() {
                return changes;
            }

            @Override
            public WellCase with(Set<String> made) {
                if (unusable.isPresent() && made.size() < changes.size()) {
                    throw unusable.get();
                }
                return build(CaseMixture.of(then, now, made), before);
            }
        };
    }

    /** What this version finds wrong in an earlier case: a part of it would not be the same case. */
    private static Optional<Fault> fault(Item.Mapping tree, RunRecord record) {
        try {
            build(tree, record);
            return Optional.empty();
        } catch (Fault fault) {
            return Optional.of(fault);
        }
    }

    private static Item.Mapping tree(RunRecord record) {
        try {
            return InputLines.tree(record.inputs(), RECORD);
        } catch (IllegalArgumentException e) {
            throw new InputFault(
                    RECORD, "holds something else than a case: " + e.getMessage(), "evaluate the case anew");
        }
    }

    private static WellCase build(Item.Mapping tree, RunRecord record) {
        FaultLog log = new FaultLog(RECORD);
        CaseDirectory files = CaseDirectory.recorded(record.files(), log);
        Validator validator = new Validator(files, log);
        validator.check(tree, RecordKeys.CASE, true);
        Optional<WellCase> built =
                new CaseBuilder(new Fields(tree, RecordKeys.CASE, validator), validator, log).build(files, List.of());
        if (!log.isEmpty() || built.isEmpty()) {
            CaseFault first = log.all().faults().get(0);
            throw new InputFault(
                    first.field().isEmpty() ? "case" : first.field(),
                    first.problem(),
                    first.hint().isEmpty() ? "change it together with what it depends on" : first.hint());
        }
        return built.get();
    }
}
