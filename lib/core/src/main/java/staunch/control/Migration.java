package staunch.control;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.numbers.rootfinder.BrentSolver;
import staunch.influx.AnnulusGrid;
import staunch.influx.MigrationBracket;
import staunch.influx.SlipLaw;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * A bubble that rises in a closed well, by balance of volume and mass (own derivation). The bubble is one piece, static in
 * its column and of constant mass; mud of constant density stands below and above it. What the mud gives way to makes room
 * for the gas: the mud stored, ∫ (1 + c_m (p − p₀) + c_h (p − p_rest)) dV over the mud, stays what it was at shut-in less
 * filtrate; p₀ is one pressure, p_rest that of the open well at rest at the depth. With both zero the gas keeps its volume and, where nothing else changes, carries its pressure up: bottom-hole
 * pressure then rises by exactly the mud column below it. The growth of the hole around the gas itself is left out.
 *
 * <p>The lower end rises along hole at the drift velocity of the slip law; the time between two depths is the mean of the
 * slownesses at both. It ends where the gas reaches the top of the annulus, where the law lets it stay, or where the hole
 * turns downwards on the way to surface.
 */
public final class Migration {
    private static final int STEPS = 40;
    private static final double DEPTH_TOLERANCE = 1e-6;

    /** Points closer together say nothing about the course of the pressure, m. */
    private static final double LEAST_SPACING = 1;

    /** A pressure that is missed by more lies behind a kink of the curve, Pa. */
    private static final double KINK = 3e4;

    /** How well a moment is met that is only to be a point of the curve, m. */
    private static final double NODE_TOLERANCE = 1e-5;

    /** Rise over which the rise of pressure at shut-in is taken, m. */
    private static final double FIRST_RISE = 1;

    private final ClosedWell well;
    private final SlipLaw law;
    private final ClosedWellState state;
    private final double stored;

    private Migration(ClosedWell well, SlipLaw law) {
        this.well = well;
        this.law = law;
        this.state = new ClosedWellState(well);
        this.stored = state.storedMud();
    }

    /**
     * Lets the gas rise by a slip law.
     *
     * @throws staunch.units.Fault where the law or the gas model does not reach, or the influx does not fit
     */
    public static MigrationCurve run(ClosedWell well, SlipLaw law) {
        return new Migration(well, law).run();
    }

    /**
     * Lets the gas rise at the three rates of a bracket.
     *
     * @throws staunch.units.Fault as {@link #run}
     */
    public static MigrationOutlook bracket(ClosedWell well, MigrationBracket bracket) {
        return new MigrationOutlook(
                bracket.laws().stream().map(law -> run(well, law)).toList());
    }

    /**
     * Rise rate that an observed rise of the surface pressure stands for just after shut-in: the apparent rate of {@link
     * MigrationFormulas#apparentRiseRate} over {@link #shareOfRigidRise}, taken along hole. Filtrate loss would make it
     * higher still and is not counted.
     *
     * @return along hole, m/s
     * @throws InputFault where the surface pressure of this well does not rise with the gas just after shut-in
     */
    @Si("m/s")
    public static double riseRateOf(ClosedWell well, MigrationFormulas.PressureRise observed) {
        double rise = firstRise(well);
        if (rise <= 0) {
            throw new InputFault(
                    "rise of the pressure",
                    "tells no rise rate: the surface pressure of this well does not rise just after shut-in",
                    "observe it for longer, and hold it against the course of the migration");
        }
        return observed.rise() / observed.duration() / (rise / FIRST_RISE);
    }

    /** Rise of the surface pressure while the gas makes its first metre, Pa. */
    private static double firstRise(ClosedWell well) {
        ClosedWellState state = new ClosedWellState(well);
        double stored = state.storedMud();
        double before = state.surfaceGauge();
        state.holdMud(state.grid().bottom() - FIRST_RISE, stored, state.bottomHole());
        return state.surfaceGauge() - before;
    }

    /**
     * Rise of the surface pressure just after shut-in over what the mud gradient times the vertical rise of the gas gives,
     * which is the rise of a rigid well whose gas keeps its pressure. Besides what yields, gas that cools on its way or gets
     * shorter in a wider bore makes it less than 1.
     *
     * @return at or below zero where the surface pressure does not rise at first; above 1 where the gas gets longer in a
     *     narrower bore
     */
    @Si("1")
    public static double shareOfRigidRise(ClosedWell well) {
        double bottom = well.annulus().bottom();
        return firstRise(well)
                / (carriedUp(well, bottom - FIRST_RISE) - well.influx().formationPressure());
    }

    /**
     * A point with what the next one starts from.
     *
     * @param slowness time per length of rise, s/m; infinite where the gas stays
     * @param before the point it was reached from; null for the first
     * @param smooth points up to this one that lie on one smooth curve, 1 to 4
     */
    private record Node(MigrationPoint point, double slowness, Node before, int smooth) {

        /** Bottom-hole pressure to be expected at another lower end: the polynomial through the last points. */
        double expected(double lowerEnd) {
            double[] at = new double[smooth];
            double[] difference = new double[smooth];
            int n = 0;
            for (Node node = this; node != null && n < smooth; node = node.before) {
                at[n] = node.lowerEnd();
                difference[n] = node.point.bottomHolePressure();
                n++;
            }
            for (int order = 1; order < n; order++) {
                for (int i = n - 1; i >= order; i--) {
                    difference[i] = (difference[i] - difference[i - 1]) / (at[i] - at[i - order]);
                }
            }
            double sum = difference[n - 1];
            for (int i = n - 2; i >= 0; i--) {
                sum = difference[i] + (lowerEnd - at[i]) * sum;
            }
            return sum;
        }

        double lowerEnd() {
            return point.lowerEnd();
        }

        double watched(int limit) {
            return point.watched(limit);
        }
    }

    private MigrationCurve run() {
        List<Node> nodes = new ArrayList<>();
        nodes.add(new Node(state.point(0), slowness(), null, 1));
        MigrationCurve.Ending ending = MigrationCurve.Ending.TOP;
        for (double next : targets()) {
            Node last = nodes.get(nodes.size() - 1);
            if (state.turnsDown(last.lowerEnd(), next)) {
                ending = MigrationCurve.Ending.TRAPPED;
                break;
            }
            if (Double.isInfinite(last.slowness())) {
                ending = MigrationCurve.Ending.HELD;
                break;
            }
            if (advance(last, next, nodes)) {
                break;
            }
        }
        return new MigrationCurve(law, nodes.stream().map(Node::point).toList(), ending, crossings(nodes));
    }

    /** Lower ends to visit: even steps, breaks of the annulus, watched depths. */
    private Iterable<Double> targets() {
        AnnulusGrid grid = state.grid();
        TreeSet<Double> depths = new TreeSet<>();
        double length = grid.bottom() - grid.top();
        for (int i = 0; i < STEPS; i++) {
            depths.add(grid.top() + length * i / STEPS);
        }
        for (int i = 1; i < grid.pieces(); i++) {
            if (grid.isBreak(i)) {
                depths.add(grid.measuredDepth(i));
            }
        }
        for (PressureLimit limit : well.limits()) {
            depths.add(limit.measuredDepth());
        }
        return depths.headSet(grid.bottom(), false).descendingSet();
    }

    /** Adds the points up to the next lower end; true where the gas has reached the top before. */
    private boolean advance(Node last, double next, List<Node> nodes) {
        Node end = nodeAt(last, next);
        boolean arrives = state.mudAbove() <= 0;
        if (arrives) {
            end = nodeAt(last, root(last, next, MeasuredAt.MUD_ABOVE, 0));
        }
        for (PressureLimit limit : well.limits()) {
            double depth = limit.measuredDepth();
            if (last.point().upperEnd() > depth && end.point().upperEnd() < depth) {
                nodes.add(nodeAt(last, root(last, end.lowerEnd(), MeasuredAt.UPPER_END, depth)));
            }
        }
        nodes.add(end);
        nodes.sort(Comparator.comparingDouble(Node::lowerEnd).reversed());
        return arrives;
    }

    private enum MeasuredAt {
        MUD_ABOVE {
            @Override
            double of(ClosedWellState state) {
                return state.mudAbove();
            }
        },
        UPPER_END {
            @Override
            double of(ClosedWellState state) {
                return state.upperEnd();
            }
        };

        abstract double of(ClosedWellState state);
    }

    /** Lower end between two at which a measure, which falls as the gas rises, has a value. */
    private double root(Node from, double to, MeasuredAt measure, double value) {
        return new BrentSolver(1e-14, NODE_TOLERANCE, 0)
                .findRoot(
                        s -> {
                            nodeAt(from, s);
                            return measure.of(state) - value;
                        },
                        to,
                        from.lowerEnd());
    }

    /** State with the lower end at a depth above an earlier point. */
    private Node nodeAt(Node before, double lowerEnd) {
        double rise = before.lowerEnd() - lowerEnd;
        double time = before.point().time() + rise * before.slowness();
        double loss = well.yielding().filtrateLoss();
        double expected = before.expected(lowerEnd);
        state.holdMud(lowerEnd, stored - loss * time, expected);
        double here = slowness();
        if (!Double.isInfinite(here)) {
            time = before.point().time() + 0.5 * rise * (before.slowness() + here);
            if (loss > 0) {
                // Once more settles it: the rate hardly depends on how much filtrate was lost.
                state.holdMud(lowerEnd, stored - loss * time, state.bottomHole());
            }
        }
        if (rise <= LEAST_SPACING) {
            return new Node(state.point(time), here, before.before(), before.smooth());
        }
        boolean kinked = Math.abs(state.bottomHole() - expected) > KINK;
        return new Node(state.point(time), here, before, kinked ? 2 : Math.min(4, before.smooth() + 1));
    }

    private double slowness() {
        return state.slowness(law);
    }

    private List<MigrationCurve.LimitTime> crossings(List<Node> nodes) {
        List<MigrationCurve.LimitTime> found = new ArrayList<>();
        for (int k = 0; k < well.limits().size(); k++) {
            found.add(new MigrationCurve.LimitTime(well.limits().get(k), firstCrossing(nodes, k)));
        }
        return found;
    }

    /**
     * First point at which a limit is reached. Between points a curve has a peak only where a point stands out above both
     * neighbours, since every place where it kinks at a watched depth is a point; such a peak is searched too.
     */
    private Optional<MigrationPoint> firstCrossing(List<Node> nodes, int k) {
        double limit = well.limits().get(k).pressure();
        for (int i = 0; i < nodes.size(); i++) {
            Node here = nodes.get(i);
            if (here.watched(k) >= limit) {
                return Optional.of(i == 0 ? here.point() : crossing(nodes.get(i - 1), here.lowerEnd(), k));
            }
            boolean peak = i > 0 && i < nodes.size() - 1 && mayPeak(nodes, i, k, limit);
            if (peak) {
                Node before = nodes.get(i - 1);
                Node top = peak(before, here, nodes.get(i + 1), k);
                if (top.watched(k) >= limit) {
                    return Optional.of(crossing(before, top.lowerEnd(), k));
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Whether a curve may have a peak about a point that reaches the limit: the point stands above both neighbours, and
     * misses the limit by no more than it stands above them.
     */
    private static boolean mayPeak(List<Node> nodes, int i, int k, double limit) {
        double here = nodes.get(i).watched(k);
        double overBefore = here - nodes.get(i - 1).watched(k);
        double overAfter = here - nodes.get(i + 1).watched(k);
        return overBefore >= 0 && overAfter >= 0 && here + Math.max(overBefore, overAfter) >= limit;
    }

    private MigrationPoint crossing(Node before, double to, int k) {
        double limit = well.limits().get(k).pressure();
        double at = new BrentSolver(1e-14, DEPTH_TOLERANCE, 0)
                .findRoot(s -> nodeAt(before, s).watched(k) - limit, to, before.lowerEnd());
        return nodeAt(before, at).point();
    }

    /** Golden-section search of the peak about a point. */
    private Node peak(Node before, Node middle, Node after, int k) {
        double share = 0.5 * (Math.sqrt(5) - 1);
        double a = after.lowerEnd();
        double b = before.lowerEnd();
        Node best = middle;
        while (b - a > 1e-3) {
            double c = b - share * (b - a);
            double d = a + share * (b - a);
            Node atC = nodeAt(before, c);
            Node atD = nodeAt(before, d);
            Node higher = atC.watched(k) > atD.watched(k) ? atC : atD;
            if (higher.watched(k) > best.watched(k)) {
                best = higher;
            }
            if (higher == atC) {
                b = d;
            } else {
                a = c;
            }
        }
        return best;
    }

    /** Pressure of a column of the mud per metre of vertical depth: the rise of a rigid well for each metre of rise. */
    @Si("Pa/m")
    public static double rigidRise(ClosedWell well) {
        return Physics.GRAVITY * well.mud().density();
    }

    /** Bottom-hole pressure of a rigid well whose gas keeps its pressure: formation pressure plus the column below it. */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public static double carriedUp(ClosedWell well, @Si(value = "m", kind = Kind.DEPTH) double lowerEnd) {
        double rise =
                well.path().verticalDepth(well.annulus().bottom()) - well.path().verticalDepth(lowerEnd);
        return well.influx().formationPressure() + rigidRise(well) * rise;
    }
}
