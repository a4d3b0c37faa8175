package staunch.well;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.UnitSystem;

/** The casing that the annulus sees: at each depth the innermost of the strings set, the parent above a liner's top. */
public final class CasingProfile {
    private final List<Stretch> stretches;

    private CasingProfile(List<Stretch> stretches) {
        this.stretches = stretches;
    }

    /**
     * A stretch of one weight and grade that is exposed to the annulus.
     *
     * @param string it belongs to
     * @param interval weight and grade
     * @param from measured depth of the exposed top, m
     * @param to measured depth of the exposed bottom, m
     */
    public record Stretch(
            CasingString string,
            CasingInterval interval,
            @Si(value = "m", kind = Kind.DEPTH) double from,
            @Si(value = "m", kind = Kind.DEPTH) double to) {}

    /**
     * Profile of the strings set.
     *
     * @param strings in any order; none for a hole without casing
     * @throws InputFault where a string does not fit into the one around it, or where a stretch between the highest top
     *     and the deepest shoe is not cased
     */
    public static CasingProfile of(List<CasingString> strings) {
        TreeSet<Double> breaks = new TreeSet<>();
        for (CasingString string : strings) {
            for (CasingInterval interval : string.intervals()) {
                breaks.add(interval.topDepth());
                breaks.add(interval.bottomDepth());
            }
        }
        List<Stretch> found = new ArrayList<>();
        Double above = null;
        for (Double depth : breaks) {
            if (above != null) {
                Stretch here = innermost(strings, above, depth);
                Stretch last = found.isEmpty() ? null : found.get(found.size() - 1);
                if (last != null && last.string() == here.string() && last.interval() == here.interval()) {
                    found.set(found.size() - 1, new Stretch(last.string(), last.interval(), last.from(), depth));
                } else {
                    found.add(here);
                }
            }
            above = depth;
        }
        return new CasingProfile(List.copyOf(found));
    }

    private static Stretch innermost(List<CasingString> strings, double from, double to) {
        double middle = 0.5 * (from + to);
        Stretch inner = null;
        for (CasingString string : strings) {
            for (CasingInterval interval : string.intervals()) {
                if (middle < interval.topDepth() || middle > interval.bottomDepth()) {
                    continue;
                }
                Stretch other = new Stretch(string, interval, from, to);
                if (inner == null) {
                    inner = other;
                } else {
                    boolean narrower =
                            interval.insideDiameter() < inner.interval().insideDiameter();
                    checkNested(narrower ? other : inner, narrower ? inner : other);
                    inner = narrower ? other : inner;
                }
            }
        }
        if (inner == null) {
            throw new InputFault(
                    "casing between " + depth(from) + " and " + depth(to),
                    "is missing",
                    "let a liner begin above the shoe of the string that carries it");
        }
        return inner;
    }

    private static void checkNested(Stretch inner, Stretch outer) {
        if (inner.interval().outsideDiameter() >= outer.interval().insideDiameter()) {
            throw new InputFault(
                    "casing string \"" + inner.string().name() + "\"",
                    "with outside diameter " + diameter(inner.interval().outsideDiameter())
                            + " does not fit into \"" + outer.string().name() + "\" with inside diameter "
                            + diameter(outer.interval().insideDiameter()),
                    "check the diameters, and which strings are set in this section");
        }
    }

    /**
     * Checks that a string fits into the hole it is run in.
     *
     * @param string to be run
     * @param hole intervals drilled for it; what lies above or below them is not looked at
     * @throws InputFault where an interval of the string is as large as the hole or larger
     */
    public static void checkFits(CasingString string, List<HoleInterval> hole) {
        for (CasingInterval casing : string.intervals()) {
            for (HoleInterval open : hole) {
                boolean meet = casing.topDepth() < open.bottomDepth() && casing.bottomDepth() > open.topDepth();
                if (meet && casing.outsideDiameter() >= open.diameter()) {
                    throw new InputFault(
                            "casing string \"" + string.name() + "\"",
                            "with outside diameter " + diameter(casing.outsideDiameter())
                                    + " is larger than the hole of "
                                    + diameter(open.diameter()) + " between " + depth(open.topDepth()) + " and "
                                    + depth(open.bottomDepth()),
                            "check the diameters of casing and hole");
                }
            }
        }
    }

    /** Stretches from the top down, contiguous; empty where no casing is set. */
    public List<Stretch> stretches() {
        return stretches;
    }

    /** Stretches below a depth, the first cut there. */
    public List<Stretch> stretchesBelow(@Si(value = "m", kind = Kind.DEPTH) double top) {
        return stretches.stream()
                .filter(s -> s.to() > top)
                .map(s -> new Stretch(s.string(), s.interval(), Math.max(top, s.from()), s.to()))
                .toList();
    }

    /**
     * Measured depth of the deepest shoe.
     *
     * @throws InputFault where no casing is set
     */
    @Si(value = "m", kind = Kind.DEPTH)
    public double shoeDepth() {
        if (stretches.isEmpty()) {
            throw new InputFault("casing shoe", "is missing", "set a casing string above this section");
        }
        return stretches.get(stretches.size() - 1).to();
    }

    /**
     * String whose shoe is the deepest.
     *
     * @throws InputFault where no casing is set
     */
    public CasingString shoeString() {
        shoeDepth();
        return stretches.get(stretches.size() - 1).string();
    }

    static String diameter(double value) {
        return UnitSystem.SI.precise(value, Measure.DIAMETER) + " (" + UnitSystem.FIELD.precise(value, Measure.DIAMETER)
                + ")";
    }

    static String depth(double value) {
        return UnitSystem.SI.precise(value, Measure.DEPTH);
    }
}
