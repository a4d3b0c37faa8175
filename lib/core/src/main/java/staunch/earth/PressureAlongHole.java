package staunch.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import staunch.units.Kind;
import staunch.units.Si;
import staunch.well.WellPath;

/**
 * A pressure profile read along a stretch of hole.
 *
 * @param nodes by measured depth; between two neighbours the pressure is linear in vertical depth, except across a gap;
 *     two at one depth make a step
 * @param gaps depths that the profile does not cover
 */
public record PressureAlongHole(List<Node> nodes, List<Gap> gaps) {
    public PressureAlongHole {
        nodes = List.copyOf(nodes);
        gaps = List.copyOf(gaps);
    }

    /**
     * One depth.
     *
     * @param measuredDepth m
     * @param verticalDepth m
     * @param pressure Pa absolute
     */
    public record Node(
            @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure) {}

    /**
     * Reads a profile between two measured depths. A level stretch that runs along a step of the profile takes the higher
     * pressure.
     *
     * @throws staunch.units.RangeFault where the stretch leaves the path
     */
    public static PressureAlongHole of(PressureProfile profile, WellPath path, OpenHole hole) {
        TreeSet<Double> depths = new TreeSet<>();
        for (double z : profile.depths()) {
            depths.add(z);
        }
        double[] md = Breaks.of(path, hole.shoeDepth(), hole.bottomDepth(), depths);
        List<Node> nodes = new ArrayList<>();
        List<Gap> gaps = new ArrayList<>();
        if (md.length == 1) {
            double z = path.verticalDepth(md[0]);
            if (profile.covers(z)) {
                nodes.add(new Node(md[0], z, profile.highestAt(z)));
            } else {
                gaps.add(Gap.between(md[0], md[0], z, z));
            }
        }
        for (int i = 1; i < md.length; i++) {
            double above = path.verticalDepth(md[i - 1]);
            double below = path.verticalDepth(md[i]);
            double middle = path.verticalDepth(0.5 * (md[i - 1] + md[i]));
            if (profile.covers(middle)) {
                Line line = profile.pieceAt(middle, true);
                add(nodes, new Node(md[i - 1], above, line.at(above)));
                add(nodes, new Node(md[i], below, line.at(below)));
            } else {
                Gap gap = Gap.between(md[i - 1], md[i], above, below);
                boolean joins = !gaps.isEmpty() && gaps.get(gaps.size() - 1).to() == gap.from();
                if (joins) {
                    gaps.set(gaps.size() - 1, gaps.get(gaps.size() - 1).and(gap));
                } else {
                    gaps.add(gap);
                }
            }
        }
        return new PressureAlongHole(nodes, gaps);
    }

    private static void add(List<Node> nodes, Node node) {
        Node last = nodes.isEmpty() ? null : nodes.get(nodes.size() - 1);
        boolean same = last != null
                && last.measuredDepth() == node.measuredDepth()
                && Math.abs(last.pressure() - node.pressure()) <= 1e-9 * node.pressure();
        if (!same) {
            nodes.add(node);
        }
    }

    /** Highest pressure at a measured depth; empty in a gap or outside the stretch. */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public OptionalDouble highestAt(WellPath path, @Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < nodes.size(); i++) {
            Node here = nodes.get(i);
            if (Math.abs(here.measuredDepth() - measuredDepth) <= Breaks.SAME_DEPTH) {
                highest = Math.max(highest, here.pressure());
            } else if (i > 0
                    && here.measuredDepth() > measuredDepth
                    && nodes.get(i - 1).measuredDepth() < measuredDepth
                    && gaps.stream().noneMatch(g -> g.from() < measuredDepth && g.to() > measuredDepth)) {
                Node above = nodes.get(i - 1);
                double span = here.verticalDepth() - above.verticalDepth();
                double share = span == 0 ? 0 : (path.verticalDepth(measuredDepth) - above.verticalDepth()) / span;
                highest = Math.max(highest, above.pressure() + share * (here.pressure() - above.pressure()));
            }
        }
        return highest > 0 ? OptionalDouble.of(highest) : OptionalDouble.empty();
    }
}
