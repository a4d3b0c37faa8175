package staunch.report;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import staunch.envelope.Assumption;

/** What several sections assume alike, told once; a section then tells only what it assumes by itself. */
record SharedAssumptions(List<Assumption> shared) {
    /** @param each assumptions of each section; sections without any do not count */
    static SharedAssumptions of(List<List<Assumption>> each) {
        List<List<Assumption>> given = each.stream().filter(a -> !a.isEmpty()).toList();
        if (given.size() < 2) {
            return new SharedAssumptions(List.of());
        }
        Set<Assumption> everywhere = new HashSet<>(given.get(0));
        given.forEach(everywhere::retainAll);
        return new SharedAssumptions(
                given.get(0).stream().filter(everywhere::contains).distinct().toList());
    }

    /** Those of a section that are not shared. */
    List<Assumption> rest(List<Assumption> ofSection) {
        return ofSection.stream().filter(a -> !shared.contains(a)).toList();
    }
}
