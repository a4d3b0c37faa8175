package staunch.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import staunch.well.WellPath;

/**
 * Splits depths into stretches where a shoe may and may not stand. Every break of rock, hole and casing is a node, a jump
 * with a depth to either side of it, others lie between, since what a shoe meets jumps and has plateaus; between two nodes of
 * different answer the boundary is bisected.
 */
final class ShoeScan {
    /** Distance to which a boundary is found, m. */
    static final double BOUNDARY = 0.02;

    private final WellPath path;
    private final double step;
    private final double[] breaks;
    private final double[] jumps;

    /**
     * @param breaks depths at which something turns
     * @param jumps depths at which something jumps
     */
    ShoeScan(WellPath path, double step, double[] breaks, double[] jumps) {
        this.path = path;
        this.step = step;
        this.breaks = breaks;
        this.jumps = jumps;
    }

    /**
     * @param from measured depth
     * @param to measured depth
     * @param end what the search ends at below
     * @param stands whether a shoe may stand at a depth; asked from several threads
     * @param obstacles what speaks against a depth, asked at the ends of stretches only
     */
    List<ShoeStretch> stretches(
            double from,
            double to,
            ShoeObstacle.Criterion end,
            DoublePredicate stands,
            DoubleFunction<List<ShoeObstacle>> obstacles) {
        double[] nodes = nodes(from, to);
        boolean[] allowed = new boolean[nodes.length];
        IntStream.range(0, nodes.length).parallel().forEach(i -> allowed[i] = stands.test(nodes[i]));
        List<ShoeStretch> stretches = new ArrayList<>();
        double start = from;
        for (int i = 1; i < nodes.length; i++) {
            if (allowed[i - 1] == allowed[i]) {
                continue;
            }
            double above = nodes[i - 1];
            double below = nodes[i];
            while (below - above > BOUNDARY) {
                double middle = 0.5 * (above + below);
                if (stands.test(middle) == allowed[i - 1]) {
                    above = middle;
                } else {
                    below = middle;
                }
            }
            stretches.add(stretch(start, above, allowed[i - 1]));
            start = below;
        }
        stretches.add(stretch(start, to, allowed[nodes.length - 1]));
        return bound(stretches, end, obstacles);
    }

    private ShoeStretch stretch(double from, double to, boolean allowed) {
        return new ShoeStretch(
                from, to, path.verticalDepth(from), path.verticalDepth(to), allowed, List.of(), List.of());
    }

    private static List<ShoeObstacle> end(ShoeObstacle.Criterion criterion) {
        return List.of(new ShoeObstacle(criterion, "", "", ""));
    }

    private static List<ShoeStretch> bound(
            List<ShoeStretch> stretches, ShoeObstacle.Criterion end, DoubleFunction<List<ShoeObstacle>> obstacles) {
        List<ShoeStretch> bound = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            ShoeStretch s = stretches.get(i);
            List<ShoeObstacle> above;
            List<ShoeObstacle> below;
            if (s.allowed()) {
                above = i == 0
                        ? end(ShoeObstacle.Criterion.END_OF_SEARCH)
                        : bound.get(i - 1).boundBelow();
                below = i == stretches.size() - 1
                        ? end(end)
                        : obstacles.apply(stretches.get(i + 1).from());
            } else {
                above = i == 0 ? obstacles.apply(s.from()) : bound.get(i - 1).boundBelow();
                below = obstacles.apply(s.to());
            }
            bound.add(new ShoeStretch(s.from(), s.to(), s.fromVertical(), s.toVertical(), s.allowed(), above, below));
        }
        return bound;
    }

    /** Either side of every jump, with other distances between. */
    ShoeScan sides(double other) {
        double[] sides = Arrays.stream(jumps)
                .flatMap(j -> DoubleStream.of(j - BOUNDARY, j + BOUNDARY))
                .toArray();
        return new ShoeScan(path, other, sides, new double[0]);
    }

    /**
     * Depths looked at between two others, both included.
     *
     * @param from measured depth
     * @param to measured depth
     */
    double[] nodes(double from, double to) {
        TreeSet<Double> nodes = new TreeSet<>(List.of(from, to));
        int count = (int) Math.max(1, Math.ceil((to - from) / step));
        for (int i = 1; i < count; i++) {
            nodes.add(from + (to - from) * i / count);
        }
        for (double depth : breaks) {
            if (depth > from && depth < to) {
                nodes.add(depth);
            }
        }
        for (double depth : jumps) {
            for (double near : new double[] {depth - BOUNDARY, depth, depth + BOUNDARY}) {
                if (near > from && near < to) {
                    nodes.add(near);
                }
            }
        }
        return nodes.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
