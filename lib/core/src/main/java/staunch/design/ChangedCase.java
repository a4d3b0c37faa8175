package staunch.design;

import java.util.List;
import java.util.Set;

/** A case between two runs: what differs in its input, and the case with some of the differences only. */
public interface ChangedCase {
    /** What differs, in the order in which it is told and made; names differ. */
    List<InputChange> changes();

    /**
     * The earlier case with some of the changes made; with none it is the earlier case.
     *
     * @param made names of the changes
     * @throws staunch.units.Fault where these changes alone give no legal case, with the reason
     */
    WellCase with(Set<String> made);
}
