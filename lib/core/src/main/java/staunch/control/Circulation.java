package staunch.control;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.numbers.rootfinder.BrentSolver;
import staunch.control.CirculationPoint.Phase;
import staunch.influx.AnnulusGrid;
import staunch.influx.GasColumn;
import staunch.influx.LowerEnd;
import staunch.units.Physics;

/**
 * Circulates a single bubble out of the well with bottom-hole pressure held.
 *
 * <p>The lower end of the gas stands where the annulus volume below it equals the volume pumped (incompressible mud, no
 * slip); pressure there follows from the mud below; the gas column above it is static and real and holds the mass taken, or
 * reaches the choke and leaves. Choke pressure = column up to the choke less the choke line's friction; where that would be
 * negative the choke is fully open and the rest loads the whole well.
 *
 * <p>Friction of the flowing mud in the annulus, where the plan counts it, comes on top: each depth bears the loss above it,
 * with mud taken to flow all the way, and the gas is the denser for it.
 *
 * <p>Driller's method: the influx is circulated out with the original mud, then kill mud follows in a second circulation.
 * Wait-and-weight: kill mud from the start. The kill mud of either just balances the formation on bottom.
 */
public final class Circulation {
    /** Share of the annulus over which the rate of leaving gas is taken. */
    private static final double RATE_SPAN = 1e-4;

    /** Gas nowhere in a well is lighter than this share of its density at the lower end, so that a smaller mass fits. */
    private static final double SURELY_FITS = 0.3;

    private static final double STANDARD_TEMPERATURE = 288.15;
    private static final double VOLUME_TOLERANCE = 1e-9;

    private final CirculationPlan plan;
    private final AnnulusGrid grid;
    private final GasColumn column;
    private final LowerEnd below;
    private final double mass;
    private final double annulusVolume;
    private final double killDensity;
    private final double bottomVertical;
    private final LimitScan limits;

    private Circulation(CirculationPlan plan) {
        this.plan = plan;
        this.grid = plan.grid();
        this.column = plan.column();
        this.bottomVertical = grid.verticalDepth(grid.pieces());
        this.killDensity = (plan.pressures().formation() - Physics.ATMOSPHERE) / (Physics.GRAVITY * bottomVertical);
        this.below = plan.method() == CirculationMethod.WAIT_AND_WEIGHT
                ? MudBelowInflux.withKillMud(
                        grid,
                        plan.mud(),
                        plan.pressures().bottomHole(),
                        new MudBelowInflux.KillMud(killDensity, plan.stringVolume()))
                : MudBelowInflux.original(grid, plan.mud(), plan.pressures().bottomHole());
        this.annulusVolume = grid.volume(grid.top(), grid.bottom());
        column.start(bottomVertical, plan.pressures().formation());
        double top = grid.topOfVolume(grid.bottom(), plan.influxVolume());
        this.mass = grid.mass(column, top, grid.bottom());
        this.limits = new LimitScan(grid, plan.limits());
    }

    /**
     * Runs a circulation.
     *
     * @throws staunch.units.RangeFault where the influx does not fit into the annulus, or a pressure leaves the range of the
     *     gas model
     */
    public static CirculationSchedule run(CirculationPlan plan) {
        return new Circulation(plan).run();
    }

    private CirculationSchedule run() {
        List<State> gas = new ArrayList<>();
        List<CirculationPoint> points = new ArrayList<>();
        for (double volume : volumes()) {
            State here = state(volume);
            here.closest();
            gas.add(here);
            points.add(here.point(gasRate(here)));
        }
        List<CirculationPoint> after = afterGas();
        points.addAll(after);
        CirculationPoint choke = greatest(peak(gas, s -> s.choke).point(0), after, CirculationPoint::chokePressure);
        State gain = peak(gas, s -> s.volume);
        List<CirculationPoint> watched = new ArrayList<>();
        for (int i = 0; i < plan.watched().length; i++) {
            int k = i;
            watched.add(greatest(peak(gas, s -> s.watched[k]).point(0), after, p -> p.watched()[k]));
        }
        CirculationPoint rate = points.stream()
                .max(Comparator.comparingDouble(CirculationPoint::gasRate))
                .orElseThrow();
        return new CirculationSchedule(points, choke, gain.point(0), rate, watched, leastMargin(gas, after), mass);
    }

    private Optional<CirculationPoint> leastMargin(List<State> gas, List<CirculationPoint> after) {
        if (limits.isEmpty()) {
            return Optional.empty();
        }
        State closest = peak(gas, s -> -s.closest().margin());
        closest.closest();
        return Optional.of(greatest(
                closest.point(0), after, p -> -p.closest().orElseThrow().margin()));
    }

    private static CirculationPoint greatest(
            CirculationPoint first, List<CirculationPoint> others, ToDoubleFunction<CirculationPoint> value) {
        CirculationPoint greatest = first;
        for (CirculationPoint other : others) {
            greatest = value.applyAsDouble(other) > value.applyAsDouble(greatest) ? other : greatest;
        }
        return greatest;
    }

    /** Gas at the choke: the fall of the mass that fits into the well, per volume pumped, times the pump rate. */
    private double gasRate(State here) {
        if (here.phase != Phase.INFLUX_LEAVING) {
            return 0;
        }
        double span = RATE_SPAN * annulusVolume;
        double beside = here.pumped + span <= annulusVolume ? here.pumped + span : here.pumped - span;
        double perVolume = (here.mass - fits(beside)) / (beside - here.pumped);
        return perVolume * plan.pump().rate() / standardDensity();
    }

    /** Mass of gas that the annulus holds above a lower end. */
    private double fits(double pumped) {
        double lower = lowerEnd(pumped);
        startColumn(lower);
        return grid.mass(column, grid.top(), lower);
    }

    /** Even steps, every break of the annulus at either end of the gas, and the top of the gas at each watched depth. */
    private TreeSet<Double> volumes() {
        TreeSet<Double> volumes = new TreeSet<>();
        for (int i = 0; i <= plan.steps(); i++) {
            volumes.add(annulusVolume * i / plan.steps());
        }
        for (int i = 1; i < grid.pieces(); i++) {
            if (grid.isBreak(i)) {
                volumes.add(grid.volume(grid.measuredDepth(i), grid.bottom()));
                volumeWithTopAt(grid.measuredDepth(i)).ifPresent(volumes::add);
            }
        }
        for (double depth : plan.watched()) {
            volumeWithTopAt(depth).ifPresent(volumes::add);
        }
        volumeWithTopAt(grid.top()).ifPresent(volumes::add);
        volumes.removeIf(v -> v > annulusVolume);
        return volumes;
    }

    private OptionalDouble volumeWithTopAt(double depth) {
        DoubleUnaryOperator heldBelow = volume -> {
            double lower = lowerEnd(volume);
            if (lower <= depth) {
                return -mass;
            }
            startColumn(lower);
            return grid.mass(column, depth, lower) - mass;
        };
        double last = grid.volume(depth, grid.bottom());
        if (heldBelow.applyAsDouble(0) <= 0 || last <= 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(new BrentSolver(1e-14, VOLUME_TOLERANCE, 1e-12).findRoot(heldBelow, 0, last));
    }

    /** Begins the column at a lower end; its vertical depth. */
    private double startColumn(double lower) {
        double z = grid.verticalAt(lower);
        column.start(z, below.pressure(lower, z) + loss(lower));
        return z;
    }

    private double loss(double measuredDepth) {
        return plan.lossAbove().applyAsDouble(measuredDepth);
    }

    private double lowerEnd(double pumped) {
        return pumped >= annulusVolume ? grid.top() : grid.topOfVolume(grid.bottom(), pumped);
    }

    /**
     * State of the greatest value: about every state that stands above its neighbours and misses the greatest by no more than
     * it stands above them, the curve is searched for its peak.
     */
    private State peak(List<State> states, ToDoubleFunction<State> value) {
        int last = states.size() - 1;
        double[] values = states.stream().mapToDouble(value).toArray();
        int best = 0;
        for (int i = 1; i <= last; i++) {
            best = values[i] > values[best] ? i : best;
        }
        State greatest = states.get(best);
        double found = values[best];
        for (int i = 0; i <= last; i++) {
            int before = Math.max(i - 1, 0);
            int after = Math.min(i + 1, last);
            double overBefore = values[i] - values[before];
            double overAfter = values[i] - values[after];
            double over = Math.max(overBefore, overAfter);
            boolean stands = Math.min(overBefore, overAfter) >= 0 && over > 0;
            if (i != best && !(stands && values[i] + over >= values[best])) {
                continue;
            }
            State refined = refined(states.get(before), states.get(i), states.get(after), value);
            double there = value.applyAsDouble(refined);
            if (there > found) {
                greatest = refined;
                found = there;
            }
        }
        return greatest;
    }

    private State refined(State before, State middle, State after, ToDoubleFunction<State> value) {
        double at = new BrentOptimizer(1e-10, VOLUME_TOLERANCE)
                .optimize(
                        new MaxEval(200),
                        GoalType.MAXIMIZE,
                        new UnivariateObjectiveFunction(v -> value.applyAsDouble(state(v))),
                        new SearchInterval(before.pumped, after.pumped, middle.pumped))
                .getPoint();
        State refined = state(at);
        refined.closest();
        return refined;
    }

    private State state(double pumped) {
        double lower = lowerEnd(pumped);
        double z = startColumn(lower);
        State s = new State();
        s.pumped = pumped;
        s.bottom = lower;
        boolean surelyFits = mass < SURELY_FITS * column.density(z) * grid.volume(grid.top(), lower);
        double fits = surelyFits ? Double.POSITIVE_INFINITY : grid.mass(column, grid.top(), lower);
        boolean leaving = fits <= mass;
        s.mass = leaving ? fits : mass;
        s.top = leaving ? grid.top() : grid.topOfMass(column, lower, mass);
        s.phase = leaving ? Phase.INFLUX_LEAVING : Phase.INFLUX_RISING;
        s.volume = grid.volume(s.top, lower);
        double zTop = grid.verticalAt(s.top);
        double atTop = column.pressure(zTop);
        double surface = plan.mud().pressure(zTop, atTop, grid.verticalDepth(0)) - loss(s.top) - Physics.ATMOSPHERE;
        double excess = excess(surface);
        s.choke = surface + excess - plan.pressures().chokeLineFriction();
        s.bottomHole = plan.pressures().bottomHole() + loss(grid.bottom()) + excess;
        s.zTop = zTop;
        s.atTop = atTop;
        s.excess = excess;
        s.watched = watchedBy(s::pressureAt);
        return s;
    }

    private double[] watchedBy(DoubleUnaryOperator pressureAt) {
        double[] watched = plan.watched();
        for (int i = 0; i < watched.length; i++) {
            watched[i] = pressureAt.applyAsDouble(watched[i]);
        }
        return watched;
    }

    /** What even a fully open choke adds to the whole well. */
    private double excess(double surface) {
        return Math.max(0, plan.pressures().chokeLineFriction() - surface);
    }

    private double standardDensity() {
        return column.gas().density(Physics.ATMOSPHERE, STANDARD_TEMPERATURE);
    }

    private List<CirculationPoint> afterGas() {
        List<CirculationPoint> points = new ArrayList<>();
        boolean drillers = plan.method() == CirculationMethod.DRILLERS;
        double before = drillers ? 0 : Math.max(0, annulusVolume - plan.stringVolume());
        if (drillers) {
            points.add(withoutGas(Phase.KILL_MUD_DOWN, 0, 0));
            points.add(withoutGas(Phase.KILL_MUD_DOWN, plan.stringVolume(), 0));
        }
        for (int i = 1; i <= plan.steps(); i++) {
            double kill = before + (annulusVolume - before) * i / plan.steps();
            points.add(withoutGas(Phase.KILL_MUD_UP, plan.stringVolume() + kill, kill));
        }
        return points;
    }

    private CirculationPoint withoutGas(Phase phase, double pumped, double killInAnnulus) {
        double front = lowerEnd(killInAnnulus);
        double zFront = grid.verticalAt(front);
        double atFront = plan.pressures().bottomHole() - killDensity * Physics.GRAVITY * (bottomVertical - zFront);
        double surface = plan.mud().pressure(zFront, atFront, grid.verticalDepth(0)) - Physics.ATMOSPHERE;
        double excess = excess(surface);
        DoubleUnaryOperator pressureAt = depth -> {
            double z = grid.verticalAt(depth);
            return excess
                    + loss(depth)
                    + (depth < front
                            ? plan.mud().pressure(zFront, atFront, z)
                            : atFront + killDensity * Physics.GRAVITY * (z - zFront));
        };
        return new CirculationPoint(
                phase,
                pumped,
                pumped / plan.pump().rate(),
                strokes(pumped),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                surface + excess - plan.pressures().chokeLineFriction(),
                plan.pressures().bottomHole() + loss(grid.bottom()) + excess,
                watchedBy(pressureAt),
                0,
                0,
                0,
                limits.isEmpty() ? Optional.empty() : Optional.of(limits.closest(pressureAt, front)));
    }

    private OptionalDouble strokes(double pumped) {
        OptionalDouble output = plan.pump().output();
        return output.isPresent() ? OptionalDouble.of(pumped / output.getAsDouble()) : output;
    }

    private final class State {
        private Phase phase;
        private double pumped;
        private double top;
        private double bottom;
        private double mass;
        private double volume;
        private double choke;
        private double bottomHole;
        private double[] watched;
        private double zTop;
        private double atTop;
        private double excess;
        private ClosestLimit closest;

        /** Pressure at a depth; within the gas only as long as the column is that of this state. */
        double pressureAt(double depth) {
            double z = grid.verticalAt(depth);
            double p = depth < top
                    ? plan.mud().pressure(zTop, atTop, z) - loss(top) + loss(depth)
                    : depth <= bottom ? column.pressure(z) : below.pressure(depth, z) + loss(depth);
            return p + excess;
        }

        /** Closest limit; worked out at the first call, which must follow the making of this state. */
        ClosestLimit closest() {
            if (closest == null && !limits.isEmpty()) {
                closest = limits.closest(this::pressureAt, top, bottom);
            }
            return closest;
        }

        CirculationPoint point(double gasRate) {
            return new CirculationPoint(
                    phase,
                    pumped,
                    pumped / plan.pump().rate(),
                    strokes(pumped),
                    OptionalDouble.of(top),
                    OptionalDouble.of(bottom),
                    choke,
                    bottomHole,
                    watched,
                    volume,
                    mass,
                    gasRate,
                    Optional.ofNullable(closest));
        }
    }
}
