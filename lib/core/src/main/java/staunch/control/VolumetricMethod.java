package staunch.control;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.rootfinder.BrentSolver;
import staunch.influx.SlipLaw;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * The volumetric method: gas rises in a closed well that cannot be circulated; when bottom-hole pressure has risen to the top
 * of a window, mud is bled at constant casing pressure until it is back at the bottom of the window. Bubble and balances are
 * those of {@link Migration}; the window is p_f + safety to p_f + safety + working pressure. Bottom-hole pressure rises from
 * the formation pressure to the window at the start and stays inside it from then on. Where the gas gets shorter in a wider
 * bore while mud is bled, casing pressure is let fall so that the window's top holds; where it gets longer in a narrower bore
 * while the well is closed, nothing but pumping could hold the bottom of the window, and the shortfall is told. Filtrate loss
 * is not counted.
 *
 * <p>The hand volume of a bleed, Δp C/(k ρ) ({@link MigrationFormulas#volumeOfPressure}), is exact where the gas stays in one
 * bore; the table gives what the well's own annulus asks for.
 */
public final class VolumetricMethod {
    /** Longest rise of the gas between two looks at the window, m. */
    private static final double LONGEST_RISE = 10;

    private static final double DEPTH_TOLERANCE = 1e-7;

    /** Pressures this close are the same, Pa. */
    private static final double SAME = 1;

    private final Plan plan;
    private final ClosedWellState state;
    private final double lowest;
    private final double highest;
    private final List<MigrationPoint> points = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private double stored;
    private double bled;
    private boolean inside;
    private double shortfall;

    private VolumetricMethod(Plan plan) {
        this.plan = plan;
        this.state = new ClosedWellState(plan.well());
        this.stored = state.storedMud();
        this.lowest = plan.well().influx().formationPressure() + plan.safety();
        this.highest = lowest + plan.working();
    }

    /**
     * What is done.
     *
     * @param well shut in on the influx; it must lose no filtrate
     * @param law of the rise
     * @param safety pressure held above the formation's, Pa, 0 to 2e7
     * @param working height of the window, Pa, 1e4 to 2e7
     */
    public record Plan(
            ClosedWell well,
            SlipLaw law,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double safety,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double working) {
        public Plan {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(law, "law");
            Check.within("safety margin", safety, 0, 2e7, Measure.PRESSURE_DIFFERENCE);
            Check.within("working pressure", working, 1e4, 2e7, Measure.PRESSURE_DIFFERENCE);
            Check.within("filtrate loss", well.yielding().filtrateLoss(), 0, 0, Measure.FLOW_RATE);
        }
    }

    /** What a step does. */
    public enum Action {
        WAIT("let the casing pressure rise"),
        BLEED("bleed mud at constant casing pressure");

        private final String title;

        Action(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /**
     * A line of the table.
     *
     * @param action what is done
     * @param end state when it is done
     * @param bled mud bled in this step, m³
     * @param totalBled mud bled since shut-in, m³
     */
    public record Step(
            Action action,
            MigrationPoint end,
            @Si("m3") double bled,
            @Si("m3") double totalBled) {}

    /**
     * The table.
     *
     * @param steps in order
     * @param points all states looked at, in order of time
     * @param ending why it ends
     * @param shortfall how far bottom-hole pressure falls below the window while the well is closed and the gas grows longer
     *     in a narrower bore, Pa; zero where it stays inside
     */
    public record Table(
            List<Step> steps,
            List<MigrationPoint> points,
            MigrationCurve.Ending ending,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double shortfall) {
        public Table {
            steps = List.copyOf(steps);
            points = List.copyOf(points);
            Objects.requireNonNull(ending, "ending");
        }

        /** State in which it ends. */
        public MigrationPoint end() {
            return points.get(points.size() - 1);
        }
    }

    /**
     * Works the table out.
     *
     * @throws staunch.units.Fault where the law or the gas model does not reach
     */
    public static Table run(Plan plan) {
        return new VolumetricMethod(plan).run();
    }

    private Table run() {
        points.add(state.point(0));
        boolean waiting = true;
        double slowness = state.slowness(plan.law());
        double phaseTop = state.atTop();
        while (true) {
            MigrationPoint last = points.get(points.size() - 1);
            double next = Math.max(state.grid().top(), last.lowerEnd() - LONGEST_RISE);
            if (Double.isInfinite(slowness)) {
                return end(waiting, MigrationCurve.Ending.HELD);
            }
            if (next == last.lowerEnd() || state.turnsDown(last.lowerEnd(), next)) {
                return end(waiting, MigrationCurve.Ending.TRAPPED);
            }
            boolean wait = waiting;
            double top = phaseTop;
            put(next, last, wait, top);
            boolean arrives = state.mudAbove() <= 0;
            if (arrives) {
                next = root(
                        s -> {
                            put(s, last, wait, top);
                            return state.mudAbove();
                        },
                        next,
                        last.lowerEnd());
                put(next, last, wait, top);
            }
            boolean turns = wait ? state.bottomHole() >= highest : state.bottomHole() <= lowest;
            if (turns) {
                double edge = wait ? highest : lowest;
                next = root(
                        s -> {
                            put(s, last, wait, top);
                            return state.bottomHole() - edge;
                        },
                        next,
                        last.lowerEnd());
                put(next, last, wait, top);
            }
            double here = state.slowness(plan.law());
            double rise = last.lowerEnd() - next;
            double meanSlowness = Double.isInfinite(here) ? slowness : 0.5 * (slowness + here);
            points.add(state.point(last.time() + rise * meanSlowness));
            slowness = here;
            phaseTop = Math.min(phaseTop, state.atTop());
            if (waiting && inside) {
                shortfall = Math.max(shortfall, lowest - state.bottomHole());
            }
            inside = inside || state.bottomHole() >= lowest;
            if (turns) {
                close(wait);
                waiting = !wait;
                phaseTop = state.atTop();
            } else if (arrives) {
                return end(wait, MigrationCurve.Ending.TOP);
            }
        }
    }

    private Table end(boolean waiting, MigrationCurve.Ending ending) {
        close(waiting);
        return new Table(steps, points, ending, shortfall);
    }

    private void close(boolean waiting) {
        double now = state.storedMud();
        double volume = waiting ? 0 : stored - now;
        stored = waiting ? stored : now;
        bled += volume;
        steps.add(new Step(waiting ? Action.WAIT : Action.BLEED, points.get(points.size() - 1), volume, bled));
    }

    private void put(double lowerEnd, MigrationPoint last, boolean waiting, double top) {
        if (waiting) {
            state.holdMud(lowerEnd, stored, last.bottomHolePressure());
            return;
        }
        state.holdTop(lowerEnd, top, last.bottomHolePressure());
        if (state.bottomHole() > highest) {
            state.set(lowerEnd, highest);
        }
    }

    /** Where the measure is zero; the lower end where it is so close to zero there that solving it anew crosses over. */
    private static double root(DoubleUnaryOperator measure, double upper, double lower) {
        double atUpper = measure.applyAsDouble(upper);
        double atLower = measure.applyAsDouble(lower);
        if (atUpper * atLower > 0 && Math.abs(atLower) < SAME) {
            return lower;
        }
        return atUpper == 0 ? upper : new BrentSolver(1e-15, DEPTH_TOLERANCE, 0).findRoot(measure, upper, lower);
    }
}
