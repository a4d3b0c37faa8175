package staunch.ingest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import staunch.units.Fault;
import staunch.units.UnitSystem;

/** Collects the faults of one case. The same fault reached by two ways, as in a shared section, counts once. */
final class FaultLog {
    private static final int MOST_PER_FILE = 100;

    private final String mainFile;
    private final Set<CaseFault> faults = new LinkedHashSet<>();
    private UnitSystem units = UnitSystem.SI;

    FaultLog(String mainFile) {
        this.mainFile = mainFile;
    }

    /** Units in which faults of the records are told. */
    void units(UnitSystem chosen) {
        this.units = chosen;
    }

    UnitSystem units() {
        return units;
    }

    void add(Place place, String value, String problem, String hint) {
        faults.add(new CaseFault(place.file(), place.line(), place.field(), value, problem, hint));
    }

    void add(Place place, Fault fault) {
        add(place, "", fault.text(units), "");
    }

    /** Every problem of a data file, under the name by which it is shown. */
    void add(String shown, DataFileFault fault) {
        for (DataFileFault.Problem p : fault.problems()) {
            add(
                    new Place(shown, p.line(), p.place()),
                    "",
                    p.problem().in(units),
                    p.advice().in(units));
        }
    }

    boolean isEmpty() {
        return faults.isEmpty();
    }

    /**
     * Builds something; a fault on the way is recorded at the place, and what an earlier fault made impossible is left
     * out.
     */
    <T> Optional<T> attempt(Place place, Supplier<T> build) {
        try {
            return Optional.of(build.get());
        } catch (Incomplete | Unreadable alreadyRecorded) {
            return Optional.empty();
        } catch (Fault fault) {
            add(place, fault);
            return Optional.empty();
        }
    }

    CaseFaults all() {
        List<CaseFault> sorted = faults.stream()
                .sorted(Comparator.comparing((CaseFault f) -> !f.file().equals(mainFile))
                        .thenComparing(CaseFault::file)
                        .thenComparingInt(CaseFault::line)
                        .thenComparing(CaseFault::field)
                        .thenComparing(CaseFault::problem))
                .toList();
        return new CaseFaults(capped(sorted));
    }

    /** A table with a wrong unit has a fault in every row: the first of each file are enough to mend it. */
    private static List<CaseFault> capped(List<CaseFault> sorted) {
        List<CaseFault> shown = new ArrayList<>();
        Map<String, Integer> count = new HashMap<>();
        for (CaseFault fault : sorted) {
            if (count.merge(fault.file(), 1, Integer::sum) <= MOST_PER_FILE) {
                shown.add(fault);
            } else if (count.get(fault.file()) == MOST_PER_FILE + 1) {
                long more = sorted.stream()
                                .filter(f -> f.file().equals(fault.file()))
                                .count()
                        - MOST_PER_FILE;
                shown.add(new CaseFault(
                        fault.file(),
                        fault.line(),
                        "",
                        "",
                        "has " + more + " more faults from here on",
                        "mend the first"));
            }
        }
        return shown;
    }

    /** Thrown where a value is needed that is missing or wrong; the fault itself is recorded already. */
    static final class Incomplete extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Incomplete() {
            super("a fault is recorded", null, false, false);
        }
    }

    /** Thrown where a file is so wrong that reading on makes no sense; the fault itself is recorded already. */
    static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Unreadable() {
            super("a fault is recorded", null, false, false);
        }
    }
}
