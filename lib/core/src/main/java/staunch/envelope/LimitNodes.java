package staunch.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import staunch.earth.ExposedStrength;
import staunch.earth.Gap;
import staunch.earth.OpenHole;
import staunch.envelope.MethodOptions.Estimates;
import staunch.well.CasingString;

/**
 * A pressure limit along the hole as nodes downwards: limit on both sides of each node and at the node itself, linear
 * in vertical depth between nodes, Pa absolute: formation strength less margin over the open hole, or the inside limit of
 * casing and equipment above it. Where nothing is known the limit never governs, and
 * {@link #unknown()} says which depths these are.
 */
final class LimitNodes {
    private static final double NEVER_GOVERNS = 1e12;

    /** Above any pressure in a well, below what stands for "not known" with any mud column subtracted. */
    private static final double LARGEST_KNOWN = 0.5 * NEVER_GOVERNS;

    private static final double SAME_DEPTH = 1e-6;

    private final double[] measured;
    private final double[] vertical;
    private final double[] above;
    private final double[] at;
    private final double[] below;
    private final String[] name;
    private final String[] basis;
    private final String[] basisBelow;
    private final double margin;
    private final String unknown;

    private LimitNodes(int n, double margin, String unknown) {
        this.measured = new double[n];
        this.vertical = new double[n];
        this.above = new double[n];
        this.at = new double[n];
        this.below = new double[n];
        this.name = new String[n];
        this.basis = new String[n];
        this.basisBelow = new String[n];
        this.margin = margin;
        this.unknown = unknown;
    }

    /**
     * @param nodes where anything is known of the strength
     * @param missing field of the case that would mend it where nothing is
     */
    record Answer(Optional<LimitNodes> nodes, String missing) {}

    static Answer of(SectionInput input, Estimates estimates, double margin) {
        SectionPlan plan = input.plan();
        String shoeName = input.casing().stream()
                .max(Comparator.comparingDouble(CasingString::shoeDepth))
                .map(string -> "shoe of " + string.name())
                .orElse("top of the open hole");
        OpenHole hole = new OpenHole(shoeName, plan.topDepth(), plan.bottomDepth(), margin);
        ExposedStrength exposed = ExposedStrength.of(
                input.earth(),
                input.path(),
                hole,
                estimates == Estimates.LIKELY ? ExposedStrength.Estimate.LIKELY : ExposedStrength.Estimate.LOW);
        boolean shoeOnly = input.options().weakPoint() == MethodOptions.WeakPointChoice.SHOE_ONLY;
        if (exposed.unknown() || shoeOnly && exposed.shoe().isEmpty()) {
            return new Answer(Optional.empty(), "earth: strength or a strength test at the shoe");
        }
        List<Gap> gaps = new ArrayList<>(exposed.gaps());
        List<ExposedStrength.Node> nodes = exposed.nodes();
        String unknown = "";
        if (shoeOnly) {
            nodes = List.of(exposed.shoe().get());
            gaps = List.of(new Gap(
                    plan.topDepth(),
                    plan.bottomDepth(),
                    input.path().verticalDepth(plan.topDepth()),
                    input.path().verticalDepth(plan.bottomDepth())));
            unknown = "open hole";
        } else if (!gaps.isEmpty()) {
            boolean onlyShoe = nodes.stream()
                    .allMatch(n -> n.verticalDepth() <= input.path().verticalDepth(plan.topDepth()) + 30);
            unknown = onlyShoe && exposed.shoe().isPresent() ? "open hole" : "part of the open hole";
        }
        return new Answer(Optional.of(of(input, nodes, gaps, margin, unknown)), "");
    }

    private static LimitNodes of(
            SectionInput input, List<ExposedStrength.Node> nodes, List<Gap> gaps, double margin, String unknown) {
        TreeSet<Double> depths =
                new TreeSet<>(List.of(input.plan().topDepth(), input.plan().bottomDepth()));
        nodes.forEach(n -> depths.add(n.measuredDepth()));
        gaps.forEach(g -> depths.addAll(List.of(g.from(), g.to())));
        double[] md = distinct(depths);
        LimitNodes made = new LimitNodes(md.length, margin, unknown);
        for (int i = 0; i < md.length; i++) {
            double depth = md[i];
            made.measured[i] = depth;
            made.vertical[i] = input.path().verticalDepth(depth);
            List<ExposedStrength.Node> here = nodes.stream()
                    .filter(n -> Math.abs(n.measuredDepth() - depth) <= SAME_DEPTH)
                    .toList();
            boolean gapAbove =
                    gaps.stream().anyMatch(g -> g.from() < depth - SAME_DEPTH && g.to() >= depth - SAME_DEPTH);
            boolean gapBelow =
                    gaps.stream().anyMatch(g -> g.from() <= depth + SAME_DEPTH && g.to() > depth + SAME_DEPTH);
            ExposedStrength.Node first = here.isEmpty() ? null : here.get(0);
            ExposedStrength.Node last = here.isEmpty() ? null : here.get(here.size() - 1);
            made.above[i] = first == null || gapAbove ? NEVER_GOVERNS : first.limit();
            made.below[i] = last == null || gapBelow ? NEVER_GOVERNS : last.limit();
            ExposedStrength.Node lowest = first;
            for (ExposedStrength.Node node : here) {
                lowest = node.limit() < lowest.limit() ? node : lowest;
            }
            made.at[i] = lowest == null ? NEVER_GOVERNS : lowest.limit();
            made.name[i] = lowest == null ? "open hole" : lowest.name();
            made.basis[i] = lowest == null ? "" : lowest.basis();
            made.basisBelow[i] = last == null ? "" : last.basis();
        }
        return made;
    }

    /**
     * Inside limits of casing and equipment from the top of the annulus to the shoe; below it nothing governs. Between the
     * two ends of a stretch of casing the limit is linear; elsewhere only the points count.
     */
    static LimitNodes of(SectionInput input, List<EquipmentLimits.Component> components) {
        TreeSet<Double> depths =
                new TreeSet<>(List.of(0.0, input.plan().topDepth(), input.plan().bottomDepth()));
        components.forEach(c -> c.points().forEach(p -> depths.add(p.measuredDepth())));
        double[] md = distinct(depths);
        LimitNodes made = new LimitNodes(md.length, 0, "");
        Arrays.fill(made.above, NEVER_GOVERNS);
        Arrays.fill(made.at, NEVER_GOVERNS);
        Arrays.fill(made.below, NEVER_GOVERNS);
        Arrays.fill(made.name, "");
        Arrays.fill(made.basis, "");
        Arrays.fill(made.basisBelow, "");
        for (int i = 0; i < md.length; i++) {
            made.measured[i] = md[i];
            made.vertical[i] = input.path().verticalDepth(md[i]);
        }
        for (EquipmentLimits.Component component : components) {
            List<EquipmentLimits.Point> points = component.points();
            for (int k = 0; k < points.size(); k++) {
                EquipmentLimits.Point point = points.get(k);
                made.lower(component, made.node(point.measuredDepth()), point.pressure());
                if (k > 0) {
                    made.lower(component, points.get(k - 1), point);
                }
            }
        }
        return made;
    }

    /** Lowers the limit between two points, at the nodes of other components between them too. */
    private void lower(EquipmentLimits.Component component, EquipmentLimits.Point from, EquipmentLimits.Point to) {
        int first = node(from.measuredDepth());
        int last = node(to.measuredDepth());
        double span = to.verticalDepth() - from.verticalDepth();
        for (int i = first; i <= last && first < last; i++) {
            double share = span == 0 ? 0 : (vertical[i] - from.verticalDepth()) / span;
            double pressure = from.pressure() + share * (to.pressure() - from.pressure());
            if (i > first) {
                above[i] = Math.min(above[i], pressure);
            }
            if (i < last) {
                below[i] = Math.min(below[i], pressure);
                basisBelow[i] = component.name();
            }
            if (i > first && i < last) {
                lower(component, i, pressure);
            }
        }
    }

    private void lower(EquipmentLimits.Component component, int i, double pressure) {
        if (pressure < at[i]) {
            at[i] = pressure;
            name[i] = component.name();
            basis[i] = component.type().title();
        }
    }

    private static double[] distinct(TreeSet<Double> depths) {
        double[] kept = new double[depths.size()];
        int n = 0;
        for (double d : depths) {
            if (n == 0 || d - kept[n - 1] > SAME_DEPTH) {
                kept[n++] = d;
            }
        }
        return Arrays.copyOf(kept, n);
    }

    double top() {
        return measured[0];
    }

    int count() {
        return measured.length;
    }

    double measuredDepth(int node) {
        return measured[node];
    }

    double verticalDepth(int node) {
        return vertical[node];
    }

    /** Lowest limit at a node; whether it is known says {@link #known}. */
    double limit(int node) {
        return at[node];
    }

    boolean known(int node) {
        return at[node] < NEVER_GOVERNS;
    }

    /** Whether a limit comes from a known strength. */
    static boolean isKnown(double limit) {
        return limit < LARGEST_KNOWN;
    }

    boolean knownAt(double depth, double z) {
        return isKnown(limitAt(depth, z));
    }

    double[] measuredDepths() {
        return measured;
    }

    double margin() {
        return margin;
    }

    /** Depths of which nothing is known, in plain words; empty where all is. */
    String unknown() {
        return unknown;
    }

    /** Limit just above a measured depth. */
    double limitAbove(double depth, double z) {
        int i = node(depth);
        return i >= 0 ? above[i] : between(-i - 2, z);
    }

    /** Limit just below a measured depth. */
    double limitBelow(double depth, double z) {
        int i = node(depth);
        return i >= 0 ? below[i] : between(-i - 2, z);
    }

    /** Lowest limit at a measured depth, both sides and a test of that very depth counted. */
    double limitAt(double depth, double z) {
        int i = node(depth);
        return i >= 0 ? Math.min(at[i], Math.min(above[i], below[i])) : between(-i - 2, z);
    }

    private int node(double depth) {
        int i = Arrays.binarySearch(measured, depth);
        if (i >= 0) {
            return i;
        }
        int after = -i - 1;
        if (after < measured.length && measured[after] - depth < SAME_DEPTH) {
            return after;
        }
        if (after > 0 && depth - measured[after - 1] < SAME_DEPTH) {
            return after - 1;
        }
        return i;
    }

    private double between(int i, double z) {
        if (below[i] == NEVER_GOVERNS || above[i + 1] == NEVER_GOVERNS) {
            return NEVER_GOVERNS;
        }
        double span = vertical[i + 1] - vertical[i];
        double share = Math.abs(span) < 1e-9 ? 0.5 : (z - vertical[i]) / span;
        return below[i] + share * (above[i + 1] - below[i]);
    }

    WeakPoint weakPoint(double measuredDepth, double verticalDepth, double limit) {
        int i = node(measuredDepth);
        if (i >= 0) {
            return new WeakPoint(name[i], measuredDepth, verticalDepth, limit + margin, limit, basis[i]);
        }
        int piece = -i - 2;
        boolean inside = name[piece].equals(name[piece + 1]);
        return new WeakPoint(
                inside ? name[piece] : "open hole",
                measuredDepth,
                verticalDepth,
                limit + margin,
                limit,
                basisBelow[piece]);
    }
}
