package staunch.ingest;

import java.util.List;
import java.util.stream.Collectors;

/** A case that cannot be used, with everything that is wrong in it, ordered by file and line. */
public final class CaseFaults extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<CaseFault> faults;

    CaseFaults(List<CaseFault> faults) {
        super(faults.stream().map(CaseFault::text).collect(Collectors.joining(System.lineSeparator())));
        this.faults = List.copyOf(faults);
    }

    /** Every fault, the case file's first, then those of the files it names, each by line. */
    public List<CaseFault> faults() {
        return faults;
    }
}
