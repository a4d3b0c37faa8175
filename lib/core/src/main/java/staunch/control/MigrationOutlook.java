package staunch.control;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Migration at the rates of a bracket. The headline is the earliest time to a limit of all of them.
 *
 * @param curves slow, medium, fast
 */
public record MigrationOutlook(List<MigrationCurve> curves) {
    public MigrationOutlook {
        curves = List.copyOf(curves);
    }

    /** The limit reached first at any rate; empty where none is reached. */
    public Optional<MigrationCurve.LimitTime> earliest() {
        return curves.stream()
                .flatMap(c -> c.earliest().stream())
                .min(Comparator.comparingDouble(l -> l.reached().orElseThrow().time()));
    }
}
