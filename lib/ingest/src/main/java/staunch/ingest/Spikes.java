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
import staunch.earth.PumpingTest;
import staunch.units.Amount;
import staunch.units.EquivalentDensity;
import staunch.units.Measure;
import staunch.units.Warning;
import staunch.units.Wording;

/**
 * Readings of a series that stand apart from their neighbours, and readings of a table that share a depth with another one.
 * Nothing is left out because of it: what such a reading is worth is for a person to say.
 *
 * <p>The rule is the identifier of Hampel, as general texts on outliers have it (from memory): a value is apart where it
 * lies farther from the middle m of its window than k · 1.4826 · median |x − m|. The window holds up to three readings on
 * either side. The middle is the median of the window where the series is about level ({@link #aroundMedian}), and the
 * robust line of Theil and Sen through the neighbours where it rises or falls ({@link #aroundLine}): slope and height of the
 * line are medians too (from memory). The factor k of 5 in place of the usual 3, and the least difference that counts, are
 * judgement: rock does change from one reading to the next.
 */
final class Spikes {
    private static final int EITHER_SIDE = 3;
    private static final int FEWEST = 5;
    private static final double FACTOR = 5;
    /** Makes the median absolute deviation a standard deviation where errors are normal. */
    private static final double NORMAL = 1.4826;

    /** Least difference of equivalent densities, kg/m³. */
    private static final double LEAST_DIFFERENCE = 100;
    /** Least difference of pressures at a gauge, Pa, and as a share of the greatest of the curve. */
    private static final double LEAST_AT_GAUGE = 3e5;

    private static final double LEAST_SHARE = 0.05;
    /** Two readings at one depth that agree to this, Pa, say the same. */
    private static final double SAME = 1e5;

    private Spikes() {}

    /** How depth, pressure and name of a reading are asked. */
    record Asked<T>(ToDoubleFunction<T> depth, ToDoubleFunction<T> pressure, Function<T, String> name) {}

    /**
     * A value that stands apart.
     *
     * @param index in the series
     * @param expected what its neighbours let expect
     */
    record Apart(int index, double expected) {}

    /**
     * Values that stand apart from the median of their window; none below five values.
     *
     * @param values by depth or time, about level over seven readings
     * @param least difference that counts
     */
    static List<Apart> aroundMedian(double[] values, double least) {
        List<Apart> apart = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            double[] window = Arrays.copyOfRange(
                    values, Math.max(0, i - EITHER_SIDE), Math.min(values.length, i + EITHER_SIDE + 1));
            double middle = median(window);
            double spread =
                    median(Arrays.stream(window).map(x -> Math.abs(x - middle)).toArray());
            if (window.length >= FEWEST && isApart(values[i] - middle, spread, least)) {
                apart.add(new Apart(i, middle));
            }
        }
        return apart;
    }

    /**
     * Values that stand apart from a line through their neighbours on both sides; the first and the last two have too few of
     * them, and a value at a bend of the series is none.
     *
     * @param at where the values lie, not falling
     * @param values of the series, about straight over seven readings
     * @param least difference that counts
     */
    static List<Apart> aroundLine(double[] at, double[] values, double least) {
        List<Apart> apart = new ArrayList<>();
        for (int i = 2; i < values.length - 2; i++) {
            List<Integer> near = new ArrayList<>();
            for (int j = Math.max(0, i - EITHER_SIDE); j <= Math.min(values.length - 1, i + EITHER_SIDE); j++) {
                if (j != i) {
                    near.add(j);
                }
            }
            double[] slopes = near.stream()
                    .flatMap(j -> near.stream()
                            .filter(k -> at[k] > at[j])
                            .map(k -> (values[k] - values[j]) / (at[k] - at[j])))
                    .mapToDouble(Double::doubleValue)
                    .toArray();
            if (slopes.length == 0) {
                continue;
            }
            double slope = median(slopes);
            double height = median(
                    near.stream().mapToDouble(j -> values[j] - slope * at[j]).toArray());
            double spread = median(near.stream()
                    .mapToDouble(j -> Math.abs(values[j] - height - slope * at[j]))
                    .toArray());
            double expected = height + slope * at[i];
            if (isApart(values[i] - expected, spread, least) && beyondNeighbours(values, i)) {
                apart.add(new Apart(i, expected));
            }
        }
        return apart;
    }

    /** A reading that lies between those beside it belongs to a step of the series. */
    private static boolean beyondNeighbours(double[] values, int i) {
        return (values[i] - values[i - 1]) * (values[i] - values[i + 1]) > 0;
    }

    private static boolean isApart(double away, double spread, double least) {
        return Math.abs(away) > least && Math.abs(away) > FACTOR * NORMAL * spread;
    }

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
        double[] equivalent = readings.stream().mapToDouble(Reading::equivalent).toArray();
        for (Apart apart : aroundMedian(equivalent, LEAST_DIFFERENCE)) {
            Reading reading = readings.get(apart.index());
            warnings.add(new Warning(
                    shown,
                    Wording.of(
                            "line " + reading.line() + " of " + well + ", \"" + reading.name() + "\", has {} at {},"
                                    + " an equivalent density of {} where its neighbours in depth have {}: perhaps a"
                                    + " spike. It counts; reject it by its quality if it is none of the rock.",
                            Amount.of(reading.pressure(), Measure.PRESSURE_ABSOLUTE),
                            Amount.of(reading.depth(), Measure.DEPTH),
                            Amount.of(reading.equivalent(), Measure.EQUIVALENT_DENSITY),
                            Amount.of(apart.expected(), Measure.EQUIVALENT_DENSITY))));
        }
    }

    /**
     * Readings of pumping curves that stand apart from a line through their neighbours by more than 3 bar and by more than
     * 5 % of the median pressure of the curve.
     *
     * @param shown name of the file
     */
    static List<Warning> ofPumping(String shown, String well, PumpingTest test) {
        List<Warning> warnings = new ArrayList<>();
        apartWhilePumping(test.pumped())
                .forEach(a -> warnings.add(new Warning(
                        shown,
                        told(
                                well + ": " + test.name(),
                                Amount.of(test.pumped().get(a.index()).pressure(), Measure.PRESSURE_GAUGE),
                                new Amount(test.pumped().get(a.index()).volume(), Measure.VOLUME, 4),
                                "pumped",
                                a))));
        double[] time =
                test.shutIn().stream().mapToDouble(PumpingTest.ShutIn::time).toArray();
        double[] pressure =
                test.shutIn().stream().mapToDouble(PumpingTest.ShutIn::pressure).toArray();
        for (Apart a : aroundLine(time, pressure, least(pressure))) {
            warnings.add(new Warning(
                    shown,
                    told(
                            well + ": " + test.name(),
                            Amount.of(pressure[a.index()], Measure.PRESSURE_GAUGE),
                            new Amount(time[a.index()], Measure.TIME, 4),
                            "after the pump stopped",
                            a)));
        }
        return warnings;
    }

    static List<Apart> apartWhilePumping(List<PumpingTest.Pumped> readings) {
        double[] volume =
                readings.stream().mapToDouble(PumpingTest.Pumped::volume).toArray();
        double[] pressure =
                readings.stream().mapToDouble(PumpingTest.Pumped::pressure).toArray();
        return aroundLine(volume, pressure, least(pressure));
    }

    private static Wording told(String test, Amount pressure, Amount where, String when, Apart apart) {
        return Wording.of(
                test + " has {} at {} " + when + " where the readings beside it let expect {}: perhaps a misreading."
                        + " It counts; take its row out if it is one.",
                pressure,
                where,
                Amount.of(apart.expected(), Measure.PRESSURE_GAUGE));
    }

    /** The greatest pressure may be the spike itself: the median stands for the size of the curve. */
    private static double least(double[] pressure) {
        return pressure.length == 0 ? LEAST_AT_GAUGE : Math.max(LEAST_AT_GAUGE, LEAST_SHARE * median(pressure));
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
