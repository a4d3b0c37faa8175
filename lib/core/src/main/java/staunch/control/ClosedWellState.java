package staunch.control;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.rootfinder.BrentSolver;
import staunch.influx.AnnulusGrid;
import staunch.influx.FlowChannel;
import staunch.influx.GasColumn;
import staunch.influx.SlipConditions;
import staunch.influx.SlipLaw;
import staunch.units.ConvergenceFault;
import staunch.units.Physics;
import staunch.well.Annulus;

/**
 * Mud, gas, mud: a bubble whose lower end stands at a depth, with a pressure at the bottom of the hole. A workspace for one
 * thread: {@link #set} puts it into a state, and everything else is read from that state.
 *
 * <p>Where the gas does not fit below the top of the annulus, the annulus is thought to go on upwards with gas of the density
 * at its top, so that the mud above the gas counts negative: that keeps the balance monotone up to the moment the gas
 * arrives.
 */
final class ClosedWellState {
    /**
     * Pa; far below what any gauge shows, and a hundred times what the balance of volumes, in double precision, tells of
     * bottom-hole pressure.
     */
    private static final double PRESSURE_TOLERANCE = 1e-2;

    private static final double FIRST_STEP = 1e4;
    private static final int MOST_SECANTS = 12;
    private static final int MOST_WIDENINGS = 60;

    /** Gas nowhere in a well is lighter than this share of its density at the lower end, so that a smaller mass fits. */
    private static final double SURELY_FITS = 0.3;

    private final ClosedWell well;
    private final AnnulusGrid grid;
    private final GasColumn column;
    private final double gradient;
    private final double mudCompressibility;
    private final double holeCompliance;
    private final double bottomVertical;
    private final double topVertical;
    private final double bottomAtRest;
    private final double topAtRest;
    private final double stringVolume;

    /** Volume, and its first moment of vertical depth ∫ z dV, from the top of the annulus down to each node. */
    private final double[] volumes;

    private final double[] moments;

    private double mass;
    private double lower;
    private double upper;
    private double bottomHole;
    private double atTop;
    private double mudAbove;
    private double mudBelow;
    private double momentAbove;
    private double momentBelow;
    private final Slope mudSlope = new Slope();
    private final Slope topSlope = new Slope();

    ClosedWellState(ClosedWell well) {
        this.well = well;
        double[] keep =
                well.limits().stream().mapToDouble(PressureLimit::measuredDepth).toArray();
        grid = AnnulusGrid.of(well.annulus(), well.path(), keep);
        column = new GasColumn(well.gas(), well.temperature());
        gradient = Physics.GRAVITY * well.mud().density();
        mudCompressibility = well.yielding().mudCompressibility();
        holeCompliance = well.yielding().holeCompliance();
        bottomVertical = grid.verticalAt(grid.bottom());
        topVertical = grid.verticalDepth(0);
        bottomAtRest = well.atBottomAtRest();
        topAtRest = well.atTopAtRest();
        stringVolume = well.yielding().stringOpen() ? well.annulus().stringVolume() : 0;
        int nodes = grid.pieces() + 1;
        volumes = new double[nodes];
        moments = new double[nodes];
        for (int i = 1; i < nodes; i++) {
            volumes[i] = volumes[i - 1] + grid.volume(grid.measuredDepth(i - 1), grid.measuredDepth(i));
            moments[i] = momentAbove(grid.measuredDepth(i));
        }
        column.start(bottomVertical, well.influx().formationPressure());
        double top = grid.topOfVolume(grid.bottom(), well.influx().volume());
        mass = grid.mass(column, top, grid.bottom());
        set(grid.bottom(), well.influx().formationPressure());
    }

    AnnulusGrid grid() {
        return grid;
    }

    /** Puts the lower end and the bottom-hole pressure. */
    void set(double lowerEnd, double pressure) {
        lower = lowerEnd;
        bottomHole = pressure;
        double z = grid.verticalAt(lowerEnd);
        column.start(z, pressure - gradient * (bottomVertical - z));
        mudBelow = volumes[volumes.length - 1] - volumeAbove(lowerEnd);
        momentBelow = moments[moments.length - 1] - momentAbove(lowerEnd);
        boolean fits = mass < SURELY_FITS * column.density(z) * volumeAbove(lowerEnd);
        double capacity = fits ? mass : grid.mass(column, grid.top(), lowerEnd);
        if (capacity >= mass) {
            upper = grid.topOfMass(column, lowerEnd, mass);
            double zUpper = grid.verticalAt(upper);
            atTop = column.pressure(zUpper) - gradient * (zUpper - topVertical);
            mudAbove = volumeAbove(upper);
            momentAbove = momentAbove(upper);
        } else {
            upper = grid.top();
            atTop = column.pressure(topVertical);
            mudAbove = -(mass - capacity) / column.density(topVertical);
            momentAbove = topVertical * mudAbove;
        }
    }

    private double volumeAbove(double measuredDepth) {
        int i = grid.pieceAbove(measuredDepth);
        double above = grid.measuredDepth(i);
        double share = (measuredDepth - above) / (grid.measuredDepth(i + 1) - above);
        return volumes[i] + share * (volumes[i + 1] - volumes[i]);
    }

    /** Moment from the top down to a depth, by Simpson's rule on its piece: exact on a straight one. */
    private double momentAbove(double measuredDepth) {
        int i = grid.pieceAbove(measuredDepth);
        double above = grid.measuredDepth(i);
        double volume = volumeAbove(measuredDepth) - volumes[i];
        double middle = grid.verticalAt(0.5 * (above + measuredDepth));
        return moments[i] + volume * (grid.verticalDepth(i) + 4 * middle + grid.verticalAt(measuredDepth)) / 6;
    }

    /**
     * Mud in the well, as the volume it would take at the pressure at rest at the top: mud counts its pressure from there,
     * the hole that of its own depth in the open well at rest. Mud in the string stays where it is; the string itself does not
     * grow, as its pressure rises inside and outside alike.
     */
    double storedMud() {
        double below = bottomHole - bottomAtRest;
        double above = atTop - topAtRest;
        double excess = mudBelow * (bottomHole - topAtRest)
                - gradient * (bottomVertical * mudBelow - momentBelow)
                + mudAbove * above
                + gradient * (momentAbove - topVertical * mudAbove);
        return mudBelow
                + mudAbove
                + mudCompressibility * excess
                + holeCompliance * (mudBelow * below + mudAbove * above)
                + mudCompressibility * stringVolume * below;
    }

    /** Finds the bottom-hole pressure at which the well holds a volume of mud. */
    void holdMud(double lowerEnd, double stored, double guess) {
        solve(
                lowerEnd,
                p -> {
                    set(lowerEnd, p);
                    return storedMud() - stored;
                },
                guess,
                mudSlope);
    }

    /** Finds the bottom-hole pressure at which a pressure stands at the top of the annulus. */
    void holdTop(double lowerEnd, double pressure, double guess) {
        solve(
                lowerEnd,
                p -> {
                    set(lowerEnd, p);
                    return atTop - pressure;
                },
                guess,
                topSlope);
    }

    /** Slope of a balance over bottom-hole pressure, from the last two roots. */
    private static final class Slope {
        private static final double APART = 1;
        private static final double LARGEST_CHANGE = 0.2;

        private double at;
        private double value;
        private double atBefore;
        private double valueBefore;

        boolean known() {
            return value > 0;
        }

        double expected(double lowerEnd) {
            if (!(valueBefore > 0)) {
                return value;
            }
            double change = (value - valueBefore) / (at - atBefore) * (lowerEnd - at);
            return Math.abs(change) < LARGEST_CHANGE * value ? value + change : value;
        }

        void seen(double lowerEnd, double slope) {
            if (Math.abs(lowerEnd - at) > APART) {
                atBefore = at;
                valueBefore = value;
            }
            at = lowerEnd;
            value = slope;
        }

        void forget() {
            value = 0;
            valueBefore = 0;
        }
    }

    /**
     * Root of a function that rises with bottom-hole pressure: secants from a guess with the slope that is expected, a bracket
     * where they fail.
     */
    private void solve(double lowerEnd, DoubleUnaryOperator rising, double guess, Slope expected) {
        double least = gradient * (bottomVertical - grid.verticalAt(lowerEnd)) + 1e3;
        double p = Math.max(guess, least);
        double f = rising.applyAsDouble(p);
        if (!expected.known()) {
            expected.seen(lowerEnd, (rising.applyAsDouble(p + FIRST_STEP) - f) / FIRST_STEP);
            set(lowerEnd, p);
        }
        double slope = expected.expected(lowerEnd);
        for (int i = 0; i < MOST_SECANTS; i++) {
            double next = p - f / slope;
            if (Math.abs(next - p) < PRESSURE_TOLERANCE) {
                return;
            }
            if (!(next > least)) {
                break;
            }
            double there = rising.applyAsDouble(next);
            double seen = (there - f) / (next - p);
            if (seen > 0) {
                slope = seen;
                expected.seen(lowerEnd, slope);
            }
            p = next;
            f = there;
        }
        bracket(lowerEnd, rising, p);
        expected.forget();
    }

    private void bracket(double lowerEnd, DoubleUnaryOperator rising, double guess) {
        double least = gradient * (bottomVertical - grid.verticalAt(lowerEnd)) + 1e3;
        double near = Math.max(guess, least);
        double here = rising.applyAsDouble(near);
        double far = near;
        double there = here;
        double width = FIRST_STEP;
        for (int i = 0; there * here > 0; i++) {
            if (i == MOST_WIDENINGS) {
                throw new ConvergenceFault(
                        "bottom-hole pressure of the closed well", "no balance with the gas at " + lowerEnd + " m");
            }
            near = far;
            here = there;
            far = here < 0 ? near + width : Math.max(near - width, 0.5 * (near + least));
            there = rising.applyAsDouble(far);
            width *= 2;
        }
        double low = Math.min(near, far);
        double high = Math.max(near, far);
        set(lowerEnd, new BrentSolver(1e-15, PRESSURE_TOLERANCE, 1e-15).findRoot(rising, low, high));
    }

    double lowerEnd() {
        return lower;
    }

    double upperEnd() {
        return upper;
    }

    double bottomHole() {
        return bottomHole;
    }

    /** Pressure at the top of the annulus, Pa absolute. */
    double atTop() {
        return atTop;
    }

    /** Pressure at the surface gauge. */
    double surfaceGauge() {
        return atTop - topAtRest;
    }

    double mudAbove() {
        return mudAbove;
    }

    double gasVolume() {
        return grid.volume(upper, lower);
    }

    double gasDensityAtLowerEnd() {
        return column.density(grid.verticalAt(lower));
    }

    double pressureAt(double measuredDepth) {
        double z = grid.verticalAt(measuredDepth);
        if (measuredDepth >= lower) {
            return bottomHole - gradient * (bottomVertical - z);
        }
        return measuredDepth <= upper ? atTop + gradient * (z - topVertical) : column.pressure(z);
    }

    double[] watched() {
        return well.limits().stream()
                .mapToDouble(l -> pressureAt(l.measuredDepth()))
                .toArray();
    }

    /** Time per length of rise, s/m; infinite where the gas stays. */
    double slowness(SlipLaw law) {
        Annulus annulus = well.annulus();
        int i = 0;
        while (i < annulus.count() - 1 && annulus.bottom(i) < lower) {
            i++;
        }
        return 1
                / law.driftVelocity(new SlipConditions(
                        new FlowChannel(annulus.holeDiameter(i), annulus.pipeDiameter(i)),
                        Math.min(well.path().inclination(lower), Math.PI / 2),
                        well.mud().density(),
                        well.mud().viscosity(),
                        gasDensityAtLowerEnd(),
                        0,
                        0.5));
    }

    /** Whether the hole goes down anywhere on the way up from one depth to another. */
    boolean turnsDown(double from, double to) {
        double[] turns = well.path().nodesBetween(to, from);
        double last = well.path().verticalDepth(from);
        for (int i = turns.length - 1; i >= -1; i--) {
            double here = well.path().verticalDepth(i >= 0 ? turns[i] : to);
            if (here > last + 1e-6) {
                return true;
            }
            last = here;
        }
        return false;
    }

    MigrationPoint point(double time) {
        return new MigrationPoint(time, lower, upper, surfaceGauge(), bottomHole, gasVolume(), watched());
    }
}
