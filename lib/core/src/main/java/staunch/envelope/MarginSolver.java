package staunch.envelope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import staunch.influx.AnnulusGrid;
import staunch.influx.GasColumn;
import staunch.influx.LowerEnd;

/**
 * Pressures at the shoe and at every exposed depth while an influx of known mass is circulated past them with constant
 * bottom-hole pressure. Positions are taken with either end of the bubble at every break of annulus and limit, and in
 * between; the least margin is refined between the neighbours of the worst position.
 */
final class MarginSolver {
    private static final int POSITIONS = 48;
    private static final int FEW_POSITIONS = 12;
    /** The cusps are positions of their own, and about a smooth low the margin is flat: some pascals over this length. */
    private static final double POSITION_TOLERANCE = 0.05;

    private final ToleranceSolver tolerance;
    private final GasColumn column;
    private final DrilledHole hole;
    private final Kick kick;
    private final LowerEnd mudLine;
    private final double mass;

    private MarginSolver(ToleranceSolver tolerance, InfluxFluid fluid, DrilledHole hole, Kick kick, double volume) {
        this.tolerance = tolerance;
        this.column = fluid.column();
        this.hole = hole;
        this.kick = kick;
        this.mudLine = tolerance.mudLine(hole, kick);
        column.start(hole.verticalDepth(), kick.formationPressure());
        double top = fluid.topOfGasVolume(hole.grid(), hole.measuredDepth(), volume);
        this.mass = hole.grid().mass(column, top, hole.measuredDepth());
    }

    /** Margins over the displacement of an influx that fills a volume of the annulus at shut-in. */
    static InfluxMargin solve(
            ToleranceSolver tolerance, DrilledHole hole, Kick kick, double volume, String volumeBasis) {
        return new MarginSolver(tolerance, tolerance.fineFluid(kick), hole, kick, volume).solve(volume, volumeBasis);
    }

    /** Least margin at the shoe alone, from fewer positions: what a depth of the section needs. */
    static double atShoe(ToleranceSolver tolerance, DrilledHole hole, Kick kick, double volume) {
        MarginSolver solver = new MarginSolver(tolerance, tolerance.fluid(kick), hole, kick, volume);
        double shoe = hole.limit().top(0);
        List<State> states = new ArrayList<>();
        for (int i = 0; i <= FEW_POSITIONS; i++) {
            states.add(solver.rising(hole.measuredDepth() - (hole.measuredDepth() - shoe) * i / FEW_POSITIONS));
        }
        State shutIn = solver.state(
                hole.measuredDepth(), hole.verticalDepth(), kick.formationPressure(), Stage.Moment.SHUT_IN);
        return Math.min(
                shutIn.shoeMargin, solver.refined(solver.withTopsAtBreaks(states), State::shoeMargin).shoeMargin);
    }

    private InfluxMargin solve(double volume, String volumeBasis) {
        double d = hole.measuredDepth();
        double z = hole.verticalDepth();
        double shoe = hole.limit().top(0);
        State shutIn = state(d, z, kick.formationPressure(), Stage.Moment.SHUT_IN);
        List<State> states = new ArrayList<>();
        TreeSet<Double> positions = new TreeSet<>();
        for (int i = 0; i <= POSITIONS; i++) {
            positions.add(shoe + (d - shoe) * i / POSITIONS);
        }
        AnnulusGrid grid = hole.grid();
        for (int i = 1; i < grid.pieces(); i++) {
            if (grid.measuredDepth(i) > shoe && grid.isBreak(i)) {
                positions.add(grid.measuredDepth(i));
            }
        }
        for (double lower : positions.descendingSet()) {
            states.add(rising(lower));
        }
        states = withTopsAtBreaks(states);
        State worst = refined(states, State::least);
        State worstAtShoe = refined(states, State::shoeMargin);
        if (shutIn.least <= worst.least) {
            worst = shutIn;
        }
        double leastAtShoe = Math.min(shutIn.shoeMargin, worstAtShoe.shoeMargin);
        List<InfluxMargin.Point> path = states.stream()
                .map(s -> new InfluxMargin.Point(s.top, s.bottom, s.shoePressure, s.shoeMargin, s.least))
                .toList();
        return new InfluxMargin(
                kick.scenario(),
                volume,
                volumeBasis,
                worst.least,
                leastAtShoe,
                worst.weakPoint(hole.limit(ToleranceSolver.moving(worst.moment))),
                new Stage(worst.moment, worst.top, worst.bottom, worst.bottomHolePressure),
                path);
    }

    /** Adds the positions with the top of the gas at a break of limit or cross-section, where the margin has its cusps. */
    private List<State> withTopsAtBreaks(List<State> downUp) {
        List<State> all = new ArrayList<>(downUp);
        FormationLimit limit = hole.limit(true);
        for (int s = 0; s < limit.segments(); s++) {
            double top = limit.top(s);
            if (s > 0 && !limit.breakBelow(s - 1)) {
                continue;
            }
            for (int i = 1; i < downUp.size(); i++) {
                State deeper = downUp.get(i - 1);
                State higher = downUp.get(i);
                if (deeper.top > top && higher.top < top) {
                    all.add(rising(Root.find(
                            "position of the influx", lower -> rising(lower).top - top, deeper.bottom, higher.bottom)));
                }
            }
        }
        all.sort(Comparator.comparingDouble((State state) -> state.bottom).reversed());
        return all;
    }

    private State rising(double lower) {
        double z = hole.grid().verticalAt(lower);
        double pressure = mudLine.pressure(lower, z);
        return state(
                lower,
                z,
                pressure,
                lower >= hole.measuredDepth() - 1e-6 ? Stage.Moment.START_OF_CIRCULATION : Stage.Moment.RISING);
    }

    /** Searches between the neighbours of the smallest sample. */
    private State refined(List<State> states, ToDoubleFunction<State> margin) {
        int best = 0;
        for (int i = 1; i < states.size(); i++) {
            if (margin.applyAsDouble(states.get(i)) < margin.applyAsDouble(states.get(best))) {
                best = i;
            }
        }
        double from = states.get(Math.min(best + 1, states.size() - 1)).bottom;
        double to = states.get(Math.max(best - 1, 0)).bottom;
        State[] found = {states.get(best)};
        Minimum.search(
                lower -> {
                    State state = rising(lower);
                    double value = margin.applyAsDouble(state);
                    if (value < margin.applyAsDouble(found[0])) {
                        found[0] = state;
                    }
                    return value;
                },
                from,
                to,
                POSITION_TOLERANCE);
        return found[0];
    }

    private State state(double lower, double lowerVertical, double lowerPressure, Stage.Moment moment) {
        column.start(lowerVertical, lowerPressure);
        double top = hole.grid().topOfMass(column, lower, mass);
        boolean moving = moment != Stage.Moment.SHUT_IN;
        FormationLimit limit = hole.limit(moving);
        State state = new State();
        state.top = top;
        state.bottom = lower;
        state.moment = moment;
        double atInflux = moving ? tolerance.circulatingPressure(hole, kick) : kick.formationPressure();
        state.bottomHolePressure =
                hole.onBottom(circulating(atInflux, hole.measuredDepth(), hole.verticalDepth(), moving), moving);
        double zTop = hole.grid().verticalAt(top);
        double atTop = column.pressure(zTop);
        for (int s = 0; s < limit.segments(); s++) {
            if (limit.top(s) >= top && limit.top(s) <= lower) {
                double z = limit.topVertical(s);
                state.take(
                        limit.limitAtTop(s) - circulating(column.pressure(z), limit.top(s), z, moving),
                        s,
                        limit.top(s));
            }
            if (limit.bottom(s) >= top && limit.bottom(s) <= lower) {
                double z = limit.bottomVertical(s);
                state.take(
                        limit.ownLimit(s, z) - circulating(column.pressure(z), limit.bottom(s), z, moving),
                        s,
                        limit.bottom(s));
            }
            if (limit.top(s) > lower) {
                double z = limit.topVertical(s);
                state.take(
                        limit.limitAtTop(s) - circulating(mudLine.pressure(limit.top(s), z), limit.top(s), z, moving),
                        s,
                        limit.top(s));
            }
            if (limit.bottom(s) > lower) {
                double z = limit.bottomVertical(s);
                state.take(
                        limit.ownLimit(s, z)
                                - circulating(mudLine.pressure(limit.bottom(s), z), limit.bottom(s), z, moving),
                        s,
                        limit.bottom(s));
            }
        }
        if (hole.volumeBelowInflux() > 0) {
            double mudLine = circulating(atInflux, hole.measuredDepth(), hole.verticalDepth(), moving);
            state.takeBelow(hole.greatestWithoutGas(moving) - mudLine, hole.weakPointWithoutGas(moving));
        }
        double shoe = limit.top(0);
        double zShoe = limit.topVertical(0);
        if (top > shoe) {
            int s = limit.segmentAt(top);
            state.take(limit.value(s, top, zTop) - circulating(atTop, top, zTop, moving), s, top, true);
            state.shoePressure = tolerance.mud().pressure(zTop, atTop, zShoe)
                    - hole.frictionAbove(top, moving)
                    + hole.frictionAbove(shoe, moving);
        } else {
            state.shoePressure = lower >= shoe ? column.pressure(zShoe) : mudLine.pressure(shoe, zShoe);
        }
        state.shoePressure = circulating(state.shoePressure, shoe, zShoe, moving);
        state.shoeMargin = limit.limitAtTop(0) - state.shoePressure;
        return state;
    }

    /**
     * With friction of the choke line above what the choke must hold, the choke is fully open and friction sets the
     * pressure: exact above the gas, an upper bound in it and below.
     */
    private double circulating(double pressure, double measured, double vertical, boolean moving) {
        return moving ? Math.max(pressure, tolerance.chokeFullyOpen(hole, measured, vertical)) : pressure;
    }

    private static final class State {
        private double top;
        private double bottom;
        private double least = Double.POSITIVE_INFINITY;
        private double shoePressure;
        private double shoeMargin;
        private int weakSegment;
        private double weakDepth;
        private boolean weakAboveGas;
        private WeakPoint below;
        private Stage.Moment moment;
        private double bottomHolePressure;

        /** A depth in or below the gas. */
        void take(double margin, int segment, double depth) {
            take(margin, segment, depth, false);
        }

        private void take(double margin, int segment, double depth, boolean aboveGas) {
            if (margin < least) {
                least = margin;
                weakSegment = segment;
                weakDepth = depth;
                weakAboveGas = aboveGas;
                below = null;
            }
        }

        /** A depth below the influx, with mud down to it. */
        void takeBelow(double margin, WeakPoint point) {
            if (margin < least) {
                least = margin;
                below = point;
            }
        }

        WeakPoint weakPoint(FormationLimit limit) {
            if (below != null) {
                return below;
            }
            return weakAboveGas ? limit.weakPoint(weakSegment, weakDepth) : limit.ownPoint(weakSegment, weakDepth);
        }

        double least() {
            return least;
        }

        double shoeMargin() {
            return shoeMargin;
        }
    }
}
