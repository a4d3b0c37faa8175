package staunch.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import staunch.control.ClosedWell;
import staunch.control.LimitLine;
import staunch.control.PressureLimit;
import staunch.envelope.KickOperations.WatchedDepth;
import staunch.units.Physics;
import staunch.well.CasingString;
import staunch.well.WellPath;

/** The limits of a section as the operations watch them: open hole, casing and equipment. */
final class OperationLimits {
    /** Longest stretch between two depths of the open hole, m; within gas, limit and pressure bend apart by less than 1 kPa. */
    private static final double LONGEST_STRETCH = 100;

    /** Above any pressure of a well: a depth that is followed but has no limit of its own. */
    private static final double NO_LIMIT = 4e8;

    /** A liner top closer to the stack is the casing's own top. */
    private static final double LINER_TOP = 50;

    private static final double SAME_DEPTH = 0.01;

    private final SectionInput input;
    private final WellPath path;
    private final List<LimitLine> lines = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    OperationLimits(SectionInput input, Model model) {
        this.input = input;
        this.path = input.path();
        LimitNodes strength = model.strength().orElseThrow();
        for (int i = 0; i < strength.count(); i++) {
            addNode(strength, i);
            if (i + 1 < strength.count()) {
                addStretch(strength, i);
            }
        }
        if (!strength.unknown().isEmpty()) {
            leftOut.add(strength.unknown() + ": its strength is not known (missing: earth: strength)");
        }
        for (EquipmentLimits.Component component : new EquipmentLimits(input).components()) {
            component.notAssessed().ifPresent(reason -> leftOut.add(component.name() + ": " + reason));
            if (!component.points().isEmpty()) {
                lines.add(line(component));
            }
        }
    }

    private void addNode(LimitNodes strength, int i) {
        double depth = strength.measuredDepth(i);
        double z = strength.verticalDepth(i);
        double limit = strength.limitAt(depth, z);
        if (LimitNodes.isKnown(limit)) {
            lines.add(new LimitLine(
                    strength.weakPoint(depth, z, limit).name(), new double[] {depth}, new double[] {limit}));
        }
    }

    private void addStretch(LimitNodes strength, int i) {
        double from = strength.measuredDepth(i);
        double to = strength.measuredDepth(i + 1);
        int n = Math.max(1, (int) Math.ceil((to - from) / LONGEST_STRETCH));
        double[] depths = new double[n + 1];
        double[] limits = new double[n + 1];
        for (int k = 0; k <= n; k++) {
            depths[k] = k == n ? to : from + (to - from) * k / n;
            double z = path.verticalDepth(depths[k]);
            limits[k] = k == 0
                    ? strength.limitBelow(from, z)
                    : k == n ? strength.limitAbove(to, z) : strength.limitAt(depths[k], z);
            if (!LimitNodes.isKnown(limits[k])) {
                return;
            }
        }
        double middle = 0.5 * (from + to);
        double z = path.verticalDepth(middle);
        lines.add(new LimitLine(
                strength.weakPoint(middle, z, strength.limitAt(middle, z)).name(), depths, limits));
    }

    private static LimitLine line(EquipmentLimits.Component component) {
        return new LimitLine(
                component.name(),
                component.points().stream()
                        .mapToDouble(EquipmentLimits.Point::measuredDepth)
                        .toArray(),
                component.points().stream()
                        .mapToDouble(EquipmentLimits.Point::pressure)
                        .toArray());
    }

    /** Every limit that is known. */
    List<LimitLine> lines() {
        return lines;
    }

    /** Names of the limits of which a part stands above the stack, so that friction of the line to it loads them too. */
    Set<String> aboveStack(double stackDepth) {
        return lines.stream()
                .filter(line -> Arrays.stream(line.measuredDepth()).anyMatch(depth -> depth < stackDepth))
                .map(LimitLine::name)
                .collect(Collectors.toSet());
    }

    /** Components that could not be assessed, each with its reason. */
    List<String> leftOut() {
        return leftOut;
    }

    /** Shoe, weakest point of the formation, liner tops and stack, downwards. */
    static List<WatchedDepth> watched(SectionInput input, Optional<SurfaceLimit> weakest) {
        Map<Double, String> found = new LinkedHashMap<>();
        double stack = input.datum().stackDepth();
        double shoe = input.plan().topDepth();
        found.put(stack, "BOP stack");
        for (CasingString string : input.casing()) {
            if (string.topDepth() > stack + LINER_TOP && string.topDepth() < shoe) {
                found.put(string.topDepth(), string.name() + " top");
            }
        }
        found.put(shoe, "shoe");
        weakest.filter(w -> Math.abs(w.measuredDepth() - shoe) > SAME_DEPTH)
                .ifPresent(w -> found.put(w.measuredDepth(), w.name()));
        return found.entrySet().stream()
                .map(e ->
                        new WatchedDepth(e.getValue(), e.getKey(), input.path().verticalDepth(e.getKey())))
                .sorted((a, b) -> Double.compare(a.measuredDepth(), b.measuredDepth()))
                .toList();
    }

    /** The watched depths, without a limit of their own, followed by every depth of every line below the stack. */
    List<PressureLimit> points(List<WatchedDepth> watched, ClosedWell well) {
        List<PressureLimit> points = new ArrayList<>();
        watched.forEach(w -> points.add(new PressureLimit(w.name(), w.measuredDepth(), NO_LIMIT)));
        for (LimitLine line : lines) {
            double[] depths = line.measuredDepth();
            for (int i = 0; i < depths.length; i++) {
                double pressure = line.pressure()[i];
                if (pressure >= NO_LIMIT) {
                    continue;
                }
                points.add(
                        depths[i] < well.annulus().top()
                                ? ClosedWell.surfaceLimit(line.name(), pressure - Physics.ATMOSPHERE, well)
                                : new PressureLimit(line.name(), depths[i], pressure));
            }
        }
        return points;
    }
}
