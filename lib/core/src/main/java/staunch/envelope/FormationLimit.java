package staunch.envelope;

import java.util.Arrays;
import staunch.influx.AnnulusGrid;
import staunch.influx.MudColumn;

/**
 * The greatest pressure that the top of a gas column may have at each depth of the open hole, with mud from there up to
 * the shoe: L(s) = min over all exposed depths w at or above s of [ limit(w) + mud column from w down to s ]. Built
 * downwards from the shoe as L = min(L carried by the mud, own limit); each segment remembers which weak point sets it.
 * While mud flows, its friction between w and s adds to the column.
 *
 * <p>For one position of the lower end, weak-point pressure rises with the amount of gas until the top reaches the weak
 * point, so the tolerable amount is reached exactly where the gas pressure at the top first equals L.
 */
final class FormationLimit {
    private final LimitNodes strength;
    private final MudColumn mud;
    private final FrictionProfile friction;
    private final AnnulusGrid grid;
    private int count;
    private double[] top = new double[32];
    private double[] bottom = new double[32];
    private double[] topVertical = new double[32];
    private double[] bottomVertical = new double[32];
    private double[] ownTop = new double[32];
    private double[] ownBottom = new double[32];
    private int[] piece = new int[32];
    private boolean[] own = new boolean[32];
    private double[] weakMeasured = new double[32];
    private double[] weakVertical = new double[32];
    private double[] weakLimit = new double[32];

    private FormationLimit(AnnulusGrid grid, LimitNodes strength, MudColumn mud, FrictionProfile friction) {
        this.grid = grid;
        this.strength = strength;
        this.mud = mud;
        this.friction = friction;
    }

    /**
     * Limit over the pieces of a grid from the shoe down to the bottom of the grid.
     *
     * @param grid whose nodes hold every strength node of the open hole
     * @param strength over the open hole
     * @param mud above the gas
     * @param friction of that mud while it flows; none for a well at rest
     */
    static FormationLimit of(AnnulusGrid grid, LimitNodes strength, MudColumn mud, FrictionProfile friction) {
        FormationLimit limit = new FormationLimit(grid, strength, mud, friction);
        limit.build();
        return limit;
    }

    private void build() {
        double shoe = strength.top();
        double carriedMeasured = shoe;
        double carriedVertical = grid.verticalAt(shoe);
        double carriedLimit = Double.POSITIVE_INFINITY;
        for (int i = 0; i < grid.pieces(); i++) {
            if (grid.measuredDepth(i) < shoe - 1e-6) {
                continue;
            }
            double zTop = grid.verticalDepth(i);
            double zBottom = grid.verticalDepth(i + 1);
            double oTop = strength.limitBelow(grid.measuredDepth(i), zTop);
            double oBottom = strength.limitAbove(grid.measuredDepth(i + 1), zBottom);
            double cTop = Double.isInfinite(carriedLimit)
                    ? Double.POSITIVE_INFINITY
                    : mud.pressure(carriedVertical, carriedLimit, zTop)
                            + frictionBetween(carriedMeasured, grid.measuredDepth(i));
            double atTop = strength.limitAt(grid.measuredDepth(i), zTop);
            if (atTop <= cTop) {
                carriedMeasured = grid.measuredDepth(i);
                carriedVertical = zTop;
                carriedLimit = atTop;
                cTop = atTop;
            }
            double cBottom = mud.pressure(carriedVertical, carriedLimit, zBottom)
                    + frictionBetween(carriedMeasured, grid.measuredDepth(i + 1));
            if (oBottom >= cBottom) {
                add(i, grid.measuredDepth(i), grid.measuredDepth(i + 1), false, oTop, oBottom);
                setWeak(carriedMeasured, carriedVertical, carriedLimit);
                continue;
            }
            // The own limit falls below what the mud carries: it takes over where the two are equal.
            double over = oTop - cTop;
            double under = cBottom - oBottom;
            double share = over + under == 0 ? 0 : over / (over + under);
            double from = grid.measuredDepth(i);
            double crossing = from + share * (grid.measuredDepth(i + 1) - from);
            double oCrossing = oTop + share * (oBottom - oTop);
            if (crossing - from > 1e-6) {
                add(i, from, crossing, false, oTop, oCrossing);
                setWeak(carriedMeasured, carriedVertical, carriedLimit);
            }
            add(i, crossing, grid.measuredDepth(i + 1), true, oCrossing, oBottom);
            carriedMeasured = grid.measuredDepth(i + 1);
            carriedVertical = zBottom;
            carriedLimit = oBottom;
            setWeak(carriedMeasured, carriedVertical, carriedLimit);
        }
    }

    private double frictionBetween(double upper, double lower) {
        return friction.above(lower) - friction.above(upper);
    }

    private void add(int pieceIndex, double from, double to, boolean isOwn, double oTop, double oBottom) {
        if (count == top.length) {
            int n = 2 * count;
            top = Arrays.copyOf(top, n);
            bottom = Arrays.copyOf(bottom, n);
            topVertical = Arrays.copyOf(topVertical, n);
            bottomVertical = Arrays.copyOf(bottomVertical, n);
            ownTop = Arrays.copyOf(ownTop, n);
            ownBottom = Arrays.copyOf(ownBottom, n);
            piece = Arrays.copyOf(piece, n);
            own = Arrays.copyOf(own, n);
            weakMeasured = Arrays.copyOf(weakMeasured, n);
            weakVertical = Arrays.copyOf(weakVertical, n);
            weakLimit = Arrays.copyOf(weakLimit, n);
        }
        top[count] = from;
        bottom[count] = to;
        topVertical[count] = grid.verticalAt(from);
        bottomVertical[count] = grid.verticalAt(to);
        ownTop[count] = oTop;
        ownBottom[count] = oBottom;
        piece[count] = pieceIndex;
        own[count] = isOwn;
        count++;
    }

    private void setWeak(double measured, double vertical, double limit) {
        weakMeasured[count - 1] = measured;
        weakVertical[count - 1] = vertical;
        weakLimit[count - 1] = limit;
    }

    int segments() {
        return count;
    }

    /**
     * Whether the boundary below a segment is more than a survey station: a change of cross-section, of weak point, of
     * the slope of the limit, or a step of it.
     */
    boolean breakBelow(int s) {
        if (s == count - 1 || own[s] != own[s + 1] || grid.isBreak(piece[s + 1]) && piece[s] != piece[s + 1]) {
            return true;
        }
        if (!own[s]) {
            return weakMeasured[s] != weakMeasured[s + 1];
        }
        return Math.abs(ownBottom[s] - ownTop[s + 1]) > 1 || Math.abs(ownSlope(s) - ownSlope(s + 1)) > 1;
    }

    private double ownSlope(int s) {
        double span = bottomVertical[s] - topVertical[s];
        return Math.abs(span) < 1e-6 ? 0 : (ownBottom[s] - ownTop[s]) / span;
    }

    double top(int segment) {
        return top[segment];
    }

    double bottom(int segment) {
        return bottom[segment];
    }

    double topVertical(int segment) {
        return topVertical[segment];
    }

    double bottomVertical(int segment) {
        return bottomVertical[segment];
    }

    int piece(int segment) {
        return piece[segment];
    }

    /** Whether the limit of a segment is set by its own depth rather than by a shallower weak point. */
    boolean own(int segment) {
        return own[segment];
    }

    /** Whether the formation at the top of a segment sets the limit there. */
    boolean weakPointAtTop(int segment) {
        return own[segment] || segment > 0 && own[segment - 1] || weakMeasured[segment] == top[segment];
    }

    /** Whether a known strength limits the gas in a segment. */
    boolean known(int segment) {
        return LimitNodes.isKnown(own[segment] ? ownBottom[segment] : weakLimit[segment]);
    }

    /** L within a segment at a depth of that segment. */
    double value(int segment, double measured, double vertical) {
        if (!own[segment]) {
            return mud.pressure(weakVertical[segment], weakLimit[segment], vertical)
                    + frictionBetween(weakMeasured[segment], measured);
        }
        return ownLimit(segment, vertical);
    }

    /** Formation limit itself within a segment. */
    double ownLimit(int segment, double vertical) {
        double span = bottomVertical[segment] - topVertical[segment];
        if (Math.abs(span) < 1e-9) {
            return Math.min(ownTop[segment], ownBottom[segment]);
        }
        double share = (vertical - topVertical[segment]) / span;
        return ownTop[segment] + share * (ownBottom[segment] - ownTop[segment]);
    }

    /** Lowest formation limit at the top of a segment, a test of that very depth counted. */
    double limitAtTop(int segment) {
        return strength.limitAt(top[segment], topVertical[segment]);
    }

    /** L at the bottom of the hole. */
    double atBottom() {
        double carried = value(count - 1, bottom[count - 1], bottomVertical[count - 1]);
        return Math.min(carried, strength.limitAt(bottom[count - 1], bottomVertical[count - 1]));
    }

    /** Segment that holds a measured depth, the deeper one at a boundary. */
    int segmentAt(double measuredDepth) {
        int i = count - 1;
        while (i > 0 && top[i] > measuredDepth) {
            i--;
        }
        return i;
    }

    /** The weak point behind L at a depth of a segment. */
    WeakPoint weakPoint(int segment, double measuredDepth) {
        return own[segment]
                ? ownPoint(segment, measuredDepth)
                : strength.weakPoint(weakMeasured[segment], weakVertical[segment], weakLimit[segment]);
    }

    /** The formation at a depth of a segment, whether or not it sets L there. */
    WeakPoint ownPoint(int segment, double measuredDepth) {
        double z = grid.verticalAt(measuredDepth);
        return strength.weakPoint(measuredDepth, z, ownLimit(segment, z));
    }
}
