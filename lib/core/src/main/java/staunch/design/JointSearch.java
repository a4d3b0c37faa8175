package staunch.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import staunch.design.ShoeObstacle.Criterion;
import staunch.design.ShoeSections.Between;
import staunch.well.CasingString;

/**
 * Shoe depths of all strings together, as a search for paths through a graph: a node is a string at one of its candidate
 * depths, an edge a section that holds between two of them. What is not found is proved not to be there on these depths.
 *
 * <p>What a section is checked with, of all strings above it: the one at its top, and where that is a liner those it hangs
 * from, up to the first that is not; a string farther out is covered at every depth and not seen. These depths are the state
 * of a path, its "chain". So an edge found once counts for every choice of the other strings.
 */
final class JointSearch {
    private static final int NONE = -1;
    private static final String NOTHING = "no depths of the strings of this design meet all criteria";

    private final WellCase wellCase;
    private final ShoeProgramme programme;
    private final ShoeSections sections;
    private final List<CasingString> movable;
    private final double[][] candidates;
    private final Map<Edge, Boolean> edges = new ConcurrentHashMap<>();
    private final Map<Edge, Boolean> windows = new ConcurrentHashMap<>();
    private final Map<State, Boolean> reached = new ConcurrentHashMap<>();
    private final Map<State, Boolean> carried = new ConcurrentHashMap<>();

    /** A section: bits of the strings above it that count, number of the string that ends it; their depths, downwards. */
    private record Edge(int chain, int lower, List<Double> depths) {}

    /** A set of strings, those of them at whose depths a question is asked, and these depths. */
    private record State(int strings, int asked, List<Double> depths) {}

    /**
     * @param nodes depths that every string may take; those of each are joined by the boundaries that are met where the
     *     strings are set one after the other from either end
     */
    JointSearch(WellCase wellCase, ShoeProgramme programme, ShoeSections sections, double[] nodes) {
        this(wellCase, programme, sections, nodes, true);
    }

    /** @param boundaries whether the depths are joined by boundaries between them */
    JointSearch(WellCase wellCase, ShoeProgramme programme, ShoeSections sections, double[] nodes, boolean boundaries) {
        this.wellCase = wellCase;
        this.programme = programme;
        this.sections = sections;
        this.movable = programme.movable();
        this.candidates = new double[movable.size()][];
        for (int i = 0; i < candidates.length; i++) {
            int string = i;
            candidates[i] =
                    Arrays.stream(nodes).filter(d -> mayStand(string, d)).toArray();
        }
        if (boundaries) {
            List<TreeSet<Double>> found = new ArrayList<>();
            for (double[] depths : candidates) {
                TreeSet<Double> all = new TreeSet<>();
                Arrays.stream(depths).forEach(all::add);
                found.add(all);
            }
            upwards(movable.size(), programme.bottom(), found);
            downwards(NONE, programme.top(), found);
            for (int i = 0; i < candidates.length; i++) {
                candidates[i] =
                        found.get(i).stream().mapToDouble(Double::doubleValue).toArray();
            }
        }
    }

    double[] candidates(int string) {
        return candidates[string].clone();
    }

    private double deepest(int string) {
        return programme.shutIn(Optional.of(movable.get(string)))
                ? programme.bottom() - ShoeProgramme.LEAST_HOLE
                : Math.min(
                        programme.bottom() - ShoeProgramme.LEAST_HOLE,
                        movable.get(string).shoeDepth());
    }

    private boolean mayStand(int string, double depth) {
        return depth >= programme.top() + ShoeProgramme.LEAST_HOLE
                && depth <= deepest(string)
                && sections.stayOuts(depth).isEmpty();
    }

    /** Boundaries below which a string carries the hole down to one that stands, each then taken as shallow as it may. */
    private void upwards(int lower, double depth, List<TreeSet<Double>> found) {
        for (int i = lower - 1; i >= 0; i--) {
            List<Double> ends = ends(i, lower, depth);
            found.get(i).addAll(ends);
            if (!ends.isEmpty()) {
                upwards(i, ends.get(0), found);
            }
        }
    }

    /** Boundaries above which the hole below a string that stands holds, each then taken as deep as it may. */
    private void downwards(int upper, double depth, List<TreeSet<Double>> found) {
        for (int i = upper + 1; i < movable.size(); i++) {
            List<Double> ends = endsBelow(upper, depth, i);
            found.get(i).addAll(ends);
            if (!ends.isEmpty()) {
                downwards(i, ends.get(ends.size() - 1), found);
            }
        }
    }

    /** Where a string carries the hole down to another at a depth. */
    private List<Double> ends(int upper, int lower, double depth) {
        return boundaries(upper, programme.top(), depth, d -> planned(upper, d, lower, depth));
    }

    /** Where a string may stand below another at a depth. */
    private List<Double> endsBelow(int upper, double depth, int lower) {
        return boundaries(lower, depth, programme.bottom(), d -> planned(upper, depth, lower, d));
    }

    /** Whether a section holds with what its upper string hangs from as planned, or above it where it must be. */
    private boolean planned(int upper, double from, int lower, double to) {
        List<Integer> chain = new ArrayList<>();
        List<Double> depths = new ArrayList<>();
        double depth = from;
        for (int i = upper; i >= 0; i--) {
            chain.add(0, i);
            depths.add(0, depth);
            if (!programme.liner(movable.get(i)) || i == 0) {
                break;
            }
            depth = Math.min(movable.get(i - 1).shoeDepth(), depth - ShoeProgramme.LEAST_HOLE);
        }
        if (lower < movable.size()) {
            depths.add(to);
        }
        return edge(List.copyOf(chain), lower, List.copyOf(depths));
    }

    /** Ends of the stretches of a string's depths over which something holds, to 0.02 m, downwards. */
    private List<Double> boundaries(int string, double from, double to, DoublePredicate holds) {
        double[] depths = Arrays.stream(candidates[string])
                .filter(d -> d >= from + ShoeProgramme.LEAST_HOLE && d <= to - ShoeProgramme.LEAST_HOLE)
                .toArray();
        boolean[] good = new boolean[depths.length];
        IntStream.range(0, depths.length).parallel().forEach(i -> good[i] = holds.test(depths[i]));
        List<Double> ends = new ArrayList<>();
        for (int i = 0; i < depths.length; i++) {
            if (good[i] && (i == 0 || !good[i - 1])) {
                ends.add(i == 0 ? depths[i] : boundary(depths[i - 1], depths[i], holds));
            }
            if (good[i] && (i == depths.length - 1 || !good[i + 1])) {
                ends.add(i == depths.length - 1 ? depths[i] : boundary(depths[i + 1], depths[i], holds));
            }
        }
        return ends;
    }

    /** The depth nearest to one that is not good, found to 0.02 m, that is. */
    private static double boundary(double bad, double good, DoublePredicate holds) {
        double outside = bad;
        double inside = good;
        while (Math.abs(outside - inside) > ShoeScan.BOUNDARY) {
            double middle = 0.5 * (outside + inside);
            if (holds.test(middle)) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return inside;
    }

    /**
     * Whether the section below a chain holds.
     *
     * @param chain strings by their numbers, downwards; empty at the top of what is searched
     * @param lower string that ends the section; their number at the bottom of what is searched
     * @param depths of the chain, and of the string that ends the section
     */
    private boolean edge(List<Integer> chain, int lower, List<Double> depths) {
        return known(edges, chain, lower, depths, sections::holds);
    }

    /** A question about a section. */
    @FunctionalInterface
    private interface Question {
        boolean test(Between section, Map<CasingString, Double> shoes, Set<CasingString> leftOut);
    }

    private boolean known(
            Map<Edge, Boolean> answers, List<Integer> chain, int lower, List<Double> depths, Question question) {
        int bits = chain.stream().mapToInt(i -> 1 << i).sum();
        Edge key = new Edge(bits, lower, depths);
        Boolean answer = answers.get(key);
        if (answer == null) {
            Map<CasingString, Double> shoes = new HashMap<>();
            Set<CasingString> leftOut = new HashSet<>();
            int upper = chain.isEmpty() ? NONE : chain.get(chain.size() - 1);
            for (int i = 0; i < chain.size(); i++) {
                shoes.put(movable.get(chain.get(i)), depths.get(i));
            }
            for (int i = 0; i < upper; i++) {
                if ((bits >> i & 1) == 0) {
                    leftOut.add(movable.get(i));
                }
            }
            boolean last = lower == movable.size();
            if (!last) {
                shoes.put(movable.get(lower), depths.get(chain.size()));
            }
            Optional<CasingString> above = upper == NONE ? Optional.empty() : Optional.of(movable.get(upper));
            Optional<CasingString> below = last ? Optional.empty() : Optional.of(movable.get(lower));
            answer = question.test(new Between(above, below), shoes, leftOut);
            answers.put(key, answer);
        }
        return answer;
    }

    /** Subsets of the strings by their number, until one works; of several the one with the least steel. */
    List<JointShoes> search() {
        int n = movable.size();
        if (n == 0) {
            return Arrays.stream(JointShoes.Direction.values())
                    .map(d -> nothing(d, "no string can be moved", Optional.empty()))
                    .toList();
        }
        for (int size = 0; size <= n; size++) {
            Map<JointShoes.Direction, List<JointShoes>> working = new EnumMap<>(JointShoes.Direction.class);
            for (int bits = 0; bits < 1 << n; bits++) {
                if (Integer.bitCount(bits) == size) {
                    for (JointShoes joint : solutions(new Kept(bits))) {
                        working.computeIfAbsent(joint.direction(), d -> new ArrayList<>())
                                .add(joint);
                    }
                }
            }
            if (!working.isEmpty()) {
                return working.values().stream().map(JointSearch::lightest).toList();
            }
        }
        Kept all = new Kept((1 << n) - 1);
        return List.of(
                nothing(JointShoes.Direction.BOTTOM_UP, NOTHING, Optional.of(stuckFromBelow(all))),
                nothing(JointShoes.Direction.TOP_DOWN, NOTHING, Optional.of(stuckFromAbove(all))));
    }

    private static JointShoes lightest(List<JointShoes> working) {
        return working.stream()
                .min(Comparator.comparingDouble(
                        j -> SteelUse.of(j.design().orElseThrow()).mass()))
                .orElseThrow();
    }

    private static JointShoes nothing(
            JointShoes.Direction direction, String statement, Optional<JointShoes.Block> block) {
        return new JointShoes(direction, statement, List.of(), List.of(), Optional.empty(), block);
    }

    /** Both ends of what works with these strings; empty where nothing does. */
    private List<JointShoes> solutions(Kept kept) {
        if (kept.size() == 0) {
            double[] none = {};
            return kept.holds(0, none)
                    ? Arrays.stream(JointShoes.Direction.values())
                            .map(d -> result(d, kept, new Path(none, List.of())))
                            .toList()
                    : List.of();
        }
        Optional<Path> up = bottomUp(kept);
        if (up.isEmpty()) {
            return List.of();
        }
        JointShoes shallowest = result(JointShoes.Direction.BOTTOM_UP, kept, up.get());
        return verified(kept, up.get())
                ? List.of(shallowest, result(JointShoes.Direction.TOP_DOWN, kept, topDown(kept)))
                : List.of();
    }

    /** Depths of the strings that are kept, and what bounds each. */
    private record Path(double[] depths, List<List<ShoeObstacle>> bounds) {}

    /** The last string as shallow as any path allows, then the one above it, and so on; each refined between candidates. */
    private Optional<Path> bottomUp(Kept kept) {
        double[] d = new double[kept.size()];
        OptionalDouble[] beyond = new OptionalDouble[d.length];
        for (int i = d.length - 1; i >= 0; i--) {
            int position = i;
            DoublePredicate stands = x -> {
                double[] next = d.clone();
                next[position] = x;
                return mayStand(kept.strings[position], x)
                        && kept.heldFrom(position, next)
                        && kept.reached(position, next);
            };
            double below = i == d.length - 1 ? programme.bottom() : d[i + 1];
            double[] depths = kept.depths(i);
            int count = count(depths, below - ShoeProgramme.LEAST_HOLE);
            int found = 0;
            while (found < count && !stands.test(depths[found])) {
                found++;
            }
            if (found == count) {
                return Optional.empty();
            }
            d[i] = found == 0 ? depths[0] : boundary(depths[found - 1], depths[found], stands);
            beyond[i] = found == 0 ? OptionalDouble.empty() : OptionalDouble.of(d[i] - ShoeScan.BOUNDARY);
        }
        return Optional.of(new Path(d, bounds(kept, d, beyond, Criterion.END_OF_SEARCH)));
    }

    /** The first string as deep as any path allows, then the one below it, and so on. */
    private Path topDown(Kept kept) {
        double[] d = new double[kept.size()];
        OptionalDouble[] beyond = new OptionalDouble[d.length];
        for (int i = 0; i < d.length; i++) {
            int position = i;
            DoublePredicate stands = x -> {
                double[] next = d.clone();
                next[position] = x;
                return mayStand(kept.strings[position], x)
                        && kept.holds(position, next)
                        && kept.carried(position, next);
            };
            double[] depths = kept.depths(i);
            int found = depths.length - 1;
            while (!stands.test(depths[found])) {
                found--;
            }
            boolean last = found == depths.length - 1;
            d[i] = last ? depths[found] : boundary(depths[found + 1], depths[found], stands);
            beyond[i] = last ? OptionalDouble.empty() : OptionalDouble.of(d[i] + ShoeScan.BOUNDARY);
        }
        boolean open = !programme.shutIn(Optional.of(movable.get(kept.strings[0])));
        return new Path(d, bounds(kept, d, beyond, open ? Criterion.NOT_SHUT_IN_ABOVE : Criterion.END_OF_SEARCH));
    }

    /** What is not met just beyond each depth, with all the others as they are. */
    private List<List<ShoeObstacle>> bounds(Kept kept, double[] d, OptionalDouble[] beyond, Criterion first) {
        List<List<ShoeObstacle>> bounds = new ArrayList<>();
        for (int i = 0; i < d.length; i++) {
            List<ShoeObstacle> found = new ArrayList<>();
            if (beyond[i].isPresent()) {
                double[] there = d.clone();
                there[i] = beyond[i].getAsDouble();
                found.addAll(sections.stayOuts(there[i]));
                for (int s = i; s <= d.length; s++) {
                    if (s == i || kept.chainStart[s - 1] <= i) {
                        found.addAll(obstacles(kept, s, there));
                    }
                }
            }
            if (found.isEmpty()) {
                Criterion end = i == 0 ? first : Criterion.END_OF_SEARCH;
                found.add(new ShoeObstacle(end, "", "", ""));
            }
            bounds.add(found);
        }
        return bounds;
    }

    private List<ShoeObstacle> obstacles(Kept kept, int section, double[] d) {
        return sections.obstacles(kept.between(section), kept.shoes(d), kept.leftOut());
    }

    /** Everything together, with every string where it stands. */
    private boolean verified(Kept kept, Path path) {
        return IntStream.rangeClosed(0, kept.size())
                .allMatch(s -> sections.holds(kept.between(s), kept.shoes(path.depths()), kept.leftOut()));
    }

    private JointShoes result(JointShoes.Direction direction, Kept kept, Path path) {
        List<JointShoes.Shoe> shoes = IntStream.range(0, kept.size())
                .mapToObj(i -> new JointShoes.Shoe(
                        kept.string(i).name(),
                        path.depths()[i],
                        wellCase.path().verticalDepth(path.depths()[i]),
                        path.bounds().get(i)))
                .toList();
        Set<CasingString> leftOut = kept.leftOut();
        List<String> names = movable.stream()
                .filter(leftOut::contains)
                .map(CasingString::name)
                .toList();
        String statement = names.isEmpty()
                ? "all " + kept.size() + " strings are needed"
                : kept.size() + " of " + movable.size() + " strings are enough; not needed: "
                        + String.join(", ", names);
        return new JointShoes(
                direction,
                statement,
                shoes,
                names,
                Optional.of(programme.design(kept.shoes(path.depths()), leftOut)),
                Optional.empty());
    }

    /** Each string in turn as shallow as the one below it lets it carry the hole, until none does. */
    private JointShoes.Block stuckFromBelow(Kept all) {
        double[] d = new double[all.size()];
        double below = programme.bottom();
        int at = all.size();
        while (at > 0) {
            List<Double> ends = ends(at - 1, at, below);
            if (ends.isEmpty()) {
                break;
            }
            at--;
            d[at] = ends.get(0);
            below = d[at];
        }
        if (at > 0) {
            double[] depths = all.depths(at - 1);
            int count = count(depths, below - ShoeProgramme.LEAST_HOLE);
            // The shortest hole is the nearest miss.
            d[at - 1] = count == 0 ? below - ShoeProgramme.LEAST_HOLE : depths[count - 1];
            for (int i = at - 2; i >= 0; i--) {
                d[i] = Math.min(all.string(i).shoeDepth(), d[i + 1] - ShoeProgramme.LEAST_HOLE);
            }
        }
        return block(all, at, d);
    }

    /** Each string in turn as deep as the hole below the one above it lets it stand, until it may nowhere. */
    private JointShoes.Block stuckFromAbove(Kept all) {
        double[] d = new double[all.size()];
        double above = programme.top();
        int at = 0;
        while (at < all.size()) {
            List<Double> ends = endsBelow(at - 1, above, at);
            if (ends.isEmpty()) {
                break;
            }
            d[at] = ends.get(ends.size() - 1);
            above = d[at];
            at++;
        }
        if (at < all.size()) {
            double[] depths = all.depths(at);
            int first = first(depths, above + ShoeProgramme.LEAST_HOLE);
            d[at] = first == depths.length ? above + ShoeProgramme.LEAST_HOLE : depths[first];
        }
        return block(all, at, d);
    }

    private JointShoes.Block block(Kept all, int section, double[] d) {
        double from = section == 0 ? programme.top() : d[section - 1];
        double to = section == all.size() ? programme.bottom() : d[section];
        return new JointShoes.Block(
                section == 0
                        ? Optional.empty()
                        : Optional.of(all.string(section - 1).name()),
                from,
                section == all.size()
                        ? Optional.empty()
                        : Optional.of(all.string(section).name()),
                to,
                obstacles(all, section, d));
    }

    /** Strings that are kept, downwards, by their numbers. */
    private final class Kept {
        private final int[] strings;
        private final int[] chainStart;

        Kept(int bits) {
            this.strings = IntStream.range(0, movable.size())
                    .filter(i -> (bits >> i & 1) == 1)
                    .toArray();
            this.chainStart = new int[strings.length];
            for (int i = 0; i < strings.length; i++) {
                boolean hangs = i > 0 && programme.liner(movable.get(strings[i]));
                chainStart[i] = hangs ? chainStart[i - 1] : i;
            }
        }

        int size() {
            return strings.length;
        }

        CasingString string(int position) {
            return movable.get(strings[position]);
        }

        Set<CasingString> leftOut() {
            Set<CasingString> others = new HashSet<>(movable);
            Arrays.stream(strings).mapToObj(movable::get).forEach(others::remove);
            return others;
        }

        Map<CasingString, Double> shoes(double[] d) {
            Map<CasingString, Double> shoes = new HashMap<>();
            IntStream.range(0, size()).forEach(i -> shoes.put(string(i), d[i]));
            return shoes;
        }

        Between between(int section) {
            return new Between(
                    section == 0 ? Optional.empty() : Optional.of(string(section - 1)),
                    section == size() ? Optional.empty() : Optional.of(string(section)));
        }

        double[] depths(int position) {
            return candidates[strings[position]];
        }

        int bits(int from, int to) {
            int bits = 0;
            for (int i = from; i < to; i++) {
                bits |= 1 << strings[i];
            }
            return bits;
        }

        /** Section above the string at a position, or the last one. */
        boolean holds(int section, double[] d) {
            return asked(edges, section, section == 0 ? 0 : chainStart[section - 1], d, sections::holds);
        }

        /** Whether a section meets the pressure window, which no casing but that at its top has a part in. */
        boolean window(int section, double[] d) {
            return asked(windows, section, Math.max(0, section - 1), d, sections::meetsWindow);
        }

        private boolean asked(Map<Edge, Boolean> answers, int section, int from, double[] d, Question question) {
            List<Integer> chain = Arrays.stream(strings, from, section).boxed().toList();
            int lower = section == size() ? movable.size() : strings[section];
            return known(answers, chain, lower, list(d, from, Math.min(section + 1, size())), question);
        }

        /** Whether the section below a string can be refused before it is known what the string hangs from. */
        private boolean refused(int position, double[] d) {
            return chainStart[position] < position && !window(position + 1, d);
        }

        /** Every section of which the depth at a position is the last one that was missing, set from the bottom up. */
        boolean heldFrom(int position, double[] d) {
            if (refused(position, d)) {
                return false;
            }
            if (position == 0 && !holds(0, d)) {
                return false;
            }
            for (int s = position + 1; s <= size() && chainStart[s - 1] <= position; s++) {
                if (chainStart[s - 1] == position && !holds(s, d)) {
                    return false;
                }
            }
            return true;
        }

        /** Whether depths above a position exist that hold with those from there down; those that matter are the state. */
        boolean reached(int position, double[] d) {
            if (position == 0) {
                return true;
            }
            int end = position;
            if (chainStart[position] < position) {
                while (end < size() && chainStart[end] == chainStart[position]) {
                    end++;
                }
            }
            int to = Math.min(end, size() - 1);
            State state = new State(bits(0, position + 1), bits(position, to + 1), list(d, position, to + 1));
            Boolean answer = reached.get(state);
            if (answer == null) {
                answer = above(position, d[position]).parallel().anyMatch(c -> {
                    double[] next = d.clone();
                    next[position - 1] = c;
                    boolean alone = chainStart[position - 1] == position - 1;
                    return alone
                            ? reached(position - 1, next) && heldFrom(position - 1, next)
                            : heldFrom(position - 1, next) && reached(position - 1, next);
                });
                reached.put(state, answer);
            }
            return answer;
        }

        /** Whether depths below a position exist that hold with it and the chain it ends, down to the bottom. */
        boolean carried(int position, double[] d) {
            if (position == size() - 1) {
                return holds(size(), d);
            }
            int from = chainStart[position];
            State state = new State(bits(position + 1, size()), bits(from, position + 1), list(d, from, position + 1));
            Boolean answer = carried.get(state);
            if (answer == null) {
                boolean alone = chainStart[position + 1] == position + 1;
                answer = below(position, d[position]).parallel().anyMatch(c -> {
                    double[] next = d.clone();
                    next[position + 1] = c;
                    return alone
                            ? carried(position + 1, next) && holds(position + 1, next)
                            : holds(position + 1, next) && carried(position + 1, next);
                });
                carried.put(state, answer);
            }
            return answer;
        }

        /** Depths of the string above a position, the deepest first: the shorter the hole, the likelier it holds. */
        private DoubleStream above(int position, double depth) {
            double[] all = depths(position - 1);
            int count = count(all, depth - ShoeProgramme.LEAST_HOLE);
            return IntStream.range(0, count).mapToDouble(i -> all[count - 1 - i]);
        }

        private DoubleStream below(int position, double depth) {
            double[] all = depths(position + 1);
            return Arrays.stream(all, first(all, depth + ShoeProgramme.LEAST_HOLE), all.length);
        }
    }

    private static List<Double> list(double[] d, int from, int to) {
        return Arrays.stream(d, from, to).boxed().toList();
    }

    /** Number of depths not below one. */
    private static int count(double[] depths, double deepest) {
        int at = Arrays.binarySearch(depths, deepest);
        return at >= 0 ? at + 1 : -at - 1;
    }

    /** Number of the first depth not above one. */
    private static int first(double[] depths, double shallowest) {
        int at = Arrays.binarySearch(depths, shallowest);
        return at >= 0 ? at : -at - 1;
    }
}
