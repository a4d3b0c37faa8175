package staunch.ingest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import staunch.units.Amount;
import staunch.units.Measure;
import staunch.units.Warning;
import staunch.units.Wording;

/**
 * Finds what two files both hold, as where one folder is handed in under two names or a report repeats another. What is the
 * same in well, kind, depth and pressure counts once. What shares well, kind and depth alone counts, and is said.
 */
final class Duplicates {
    private final Map<Key, List<Earlier>> seen = new HashMap<>();

    private record Key(String well, String kind, double depth) {}

    private record Earlier(String file, int line, double pressure) {}

    /** The rows that no earlier file holds; the others are among those left out. */
    <T> OffsetRows<T> without(
            String shown, OffsetRows<T> rows, Function<T, String> kind, Spikes.Asked<T> asked, List<Warning> warnings) {
        List<OffsetRows.Row<T>> kept = new ArrayList<>();
        List<OffsetRows.LeftOut> leftOut = new ArrayList<>(rows.leftOut());
        for (OffsetRows.Row<T> row : rows.rows()) {
            double depth = FixedDigits.round(asked.depth().applyAsDouble(row.value()));
            double pressure = FixedDigits.round(asked.pressure().applyAsDouble(row.value()));
            List<Earlier> there =
                    seen.computeIfAbsent(new Key(row.well(), kind.apply(row.value()), depth), k -> new ArrayList<>());
            List<Earlier> others =
                    there.stream().filter(e -> !e.file().equals(shown)).toList();
            Optional<Earlier> same =
                    others.stream().filter(e -> e.pressure() == pressure).findFirst();
            if (same.isPresent()) {
                leftOut.add(new OffsetRows.LeftOut(
                        row.line(),
                        row.well(),
                        "is the same in well, depth and pressure as line "
                                + same.get().line() + " of " + same.get().file()));
                continue;
            }
            for (Earlier other : others) {
                warnings.add(new Warning(
                        shown,
                        Wording.of(
                                "line " + row.line() + " of " + row.well() + " has {} at {}, where line " + other.line()
                                        + " of " + other.file() + " has {}: perhaps the same twice; both count.",
                                Amount.of(pressure, Measure.PRESSURE_ABSOLUTE),
                                Amount.of(depth, Measure.DEPTH),
                                Amount.of(other.pressure(), Measure.PRESSURE_ABSOLUTE))));
            }
            there.add(new Earlier(shown, row.line(), pressure));
            kept.add(row);
        }
        return new OffsetRows<>(rows.file(), kept, leftOut);
    }
}
