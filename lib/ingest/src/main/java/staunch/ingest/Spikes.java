package staunch.ingest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import staunch.units.Amount;
import staunch.units.EquivalentDensity;
import staunch.units.Measure;
import staunch.units.Warning;
import staunch.units.Wording;

/**
 * Pressures of a table that stand apart from their neighbours in depth, and those that share a depth with another one.
 * Nothing is left out because of it: what such a reading is worth is for a person to say, in the table's own column of
 * quality.
 *
 * <p>The rule is the identifier of Hampel, as general texts on outliers have it (from memory): a value is apart where it
 * lies farther from the median m of its window than k · 1.4826 · median |x − m|. The window holds up to three readings on
 * either side in order of depth; x is the equivalent density below the datum of the well, which changes less with depth than
 * the pressure. The factor k of 5 in place of the usual 3, and the least difference of 100 kg/m³, are judgement: rock does
 * change from one reading to the next.
 */
final class Spikes {
    private static final int EITHER_SIDE = 3;
    private static final int FEWEST = 5;
    private static final double FACTOR = 5;
    /** Makes the median absolute deviation a standard deviation where errors are normal. */
    private static final double NORMAL = 1.4826;

    private static final double LEAST_DIFFERENCE = 100;
    /** Two readings at one depth that agree to this, Pa, say the same. */
    private static final double SAME = 1e5;

    private Spikes() {}

    /** How depth, pressure and name of a reading are asked. */
    record Asked<T>(ToDoubleFunction<T> depth, ToDoubleFunction<T> pressure, Function<T, String> name) {}

    private record Reading(int line, String name, double depth, double pressure) {
        double equivalent() {
            return EquivalentDensity.of(pressure, depth);
        }
    }

    /**
     * Warnings of a table, by well and then by depth; the order of the rows makes no difference to them.
     *
     * @param shown name of the file
     * @param group readings that may be held against each other
     */
    static <T> List<Warning> of(String shown, OffsetRows<T> rows, Function<T, String> group, Asked<T> asked) {
        Map<String, List<OffsetRows.Row<T>>> groups = rows.rows().stream()
                .collect(Collectors.groupingBy(
                        r -> r.well() + "\n" + group.apply(r.value()), TreeMap::new, Collectors.toList()));
        List<Warning> warnings = new ArrayList<>();
        for (List<OffsetRows.Row<T>> same : groups.values()) {
            List<Reading> readings = same.stream()
                    .map(r -> new Reading(
                            r.line(),
                            asked.name().apply(r.value()),
                            asked.depth().applyAsDouble(r.value()),
                            asked.pressure().applyAsDouble(r.value())))
                    .sorted(Comparator.comparingDouble(Reading::depth).thenComparingDouble(Reading::pressure))
                    .toList();
            String well = same.get(0).well();
            repeated(shown, well, readings, warnings);
            apart(shown, well, readings, warnings);
        }
        return warnings;
    }

    private static void repeated(String shown, String well, List<Reading> readings, List<Warning> warnings) {
        for (int i = 1; i < readings.size(); i++) {
            Reading one = readings.get(i - 1);
            Reading other = readings.get(i);
            if (one.depth() == other.depth() && other.pressure() - one.pressure() > SAME) {
                warnings.add(new Warning(
                        shown,
                        Wording.of(
                                "lines " + Math.min(one.line(), other.line()) + " and "
                                        + Math.max(one.line(), other.line()) + " of " + well
                                        + " give {} and {} at the same depth of {}; both count.",
                                Amount.of(one.pressure(), Measure.PRESSURE_ABSOLUTE),
                                Amount.of(other.pressure(), Measure.PRESSURE_ABSOLUTE),
                                Amount.of(one.depth(), Measure.DEPTH))));
            }
        }
    }

    private static void apart(String shown, String well, List<Reading> readings, List<Warning> warnings) {
        for (int i = 0; i < readings.size(); i++) {
            double[] window =
                    readings
                            .subList(Math.max(0, i - EITHER_SIDE), Math.min(readings.size(), i + EITHER_SIDE + 1))
                            .stream()
                            .mapToDouble(Reading::equivalent)
                            .toArray();
            if (window.length < FEWEST) {
                continue;
            }
            double median = median(window);
            double spread = NORMAL
                    * median(
                            Arrays.stream(window).map(x -> Math.abs(x - median)).toArray());
            Reading reading = readings.get(i);
            double away = Math.abs(reading.equivalent() - median);
            if (away > LEAST_DIFFERENCE && away > FACTOR * spread) {
                warnings.add(new Warning(
                        shown,
                        Wording.of(
                                "line " + reading.line() + " of " + well + ", \"" + reading.name() + "\", has {} at {},"
                                        + " an equivalent density of {} where its neighbours in depth have {}: perhaps a"
                                        + " spike. It counts; reject it by its quality if it is none of the rock.",
                                Amount.of(reading.pressure(), Measure.PRESSURE_ABSOLUTE),
                                Amount.of(reading.depth(), Measure.DEPTH),
                                Amount.of(reading.equivalent(), Measure.EQUIVALENT_DENSITY),
                                Amount.of(median, Measure.EQUIVALENT_DENSITY))));
            }
        }
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
