package staunch.ingest;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import staunch.units.Fault;

/**
 * Takes pumping curves as the strength tests that they give, where an earlier record has a strength test in the place of the
 * curve: records of format 1 hold what was picked alone, and the same test is no change.
 */
final class PumpedAsTests {
    private static final String EVIDENCE = "offset_evidence";

    private PumpedAsTests() {}

    static Item.Mapping in(Item.Mapping now, Item.Mapping then) {
        Set<String> tests = names(then, EvidenceRows.TESTS);
        tests.removeAll(names(then, PumpedRows.TESTS));
        tests.retainAll(names(now, PumpedRows.TESTS));
        if (tests.isEmpty()) {
            return now;
        }
        FaultLog log = new FaultLog("run record");
        Validator validator = new Validator(CaseDirectory.recorded(List.of(), log), log);
        validator.check(now, RecordKeys.CASE, true);
        Item.Mapping evidence = (Item.Mapping) now.get(EVIDENCE).orElseThrow();
        Optional<EvidenceRows> rows;
        try {
            rows = new Fields(now, RecordKeys.CASE, validator).nested(EVIDENCE).map(EvidenceRows::of);
        } catch (Fault unreadable) {
            // What is wrong with the later case is told where it is built.
            return now;
        }
        if (!log.isEmpty() || rows.isEmpty()) {
            return now;
        }
        List<Item.Entry> entries = new ArrayList<>(evidence.entries());
        Set<String> replaced = Set.of(
                EvidenceRows.TESTS,
                EvidenceRows.POINTS,
                EvidenceRows.EVENTS,
                EvidenceRows.SHOES,
                EvidenceRows.LOGS,
                PumpedRows.TESTS);
        entries.removeIf(e -> replaced.contains(e.key()));
        entries.addAll(rows.get().asTests(tests).entries(evidence.place()));
        List<Item.Entry> whole = new ArrayList<>();
        for (Item.Entry entry : now.entries()) {
            whole.add(
                    entry.key().equals(EVIDENCE)
                            ? new Item.Entry(EVIDENCE, entry.place(), new Item.Mapping(evidence.place(), entries))
                            : entry);
        }
        return new Item.Mapping(now.place(), whole);
    }

    private static Set<String> names(Item.Mapping tree, String list) {
        Set<String> names = new HashSet<>();
        if (tree.get(EVIDENCE).orElse(tree) instanceof Item.Mapping evidence
                && evidence.get(list).orElse(null) instanceof Item.Sequence rows) {
            rows.items().forEach(i -> ((Item.Mapping) i).text("name").ifPresent(names::add));
        }
        return names;
    }
}
