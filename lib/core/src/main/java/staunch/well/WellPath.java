package staunch.well;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * Path of the hole by minimum curvature: the only place where measured depth becomes vertical depth.
 *
 * <p>Between two stations the hole is an arc of a circle that is tangent to both directions. With the unit tangents t₁
 * and t₂, the dogleg β between them, the length L along hole and the unit vector n in the plane of the arc, at right
 * angles to t₁ and turned towards t₂, a point at the share f of the arc lies at
 *
 * <pre>  r(f) = r₁ + L/β · [ sin(fβ) t₁ + (1 − cos(fβ)) n ],    t(f) = cos(fβ) t₁ + sin(fβ) n</pre>
 *
 * (Taylor, H.L. and Mason, C.M., "A systematic approach to well surveying calculations", SPE Journal, December 1972;
 * with f = 1 it is the usual ratio-factor form of Zaremba 1973). Every look-up uses the arc itself, so a survey split at
 * any point of its arcs gives the same path. Look-ups allocate nothing and take O(log n).
 */
public final class WellPath {
    /** Depths that differ by less are one depth: a ten-thousandth of a hair, far below any survey's accuracy. */
    private static final double SAME_DEPTH = 1e-6;

    private static final double DEEPEST = 20_000;
    private static final int NEWTON_STEPS = 80;

    private final List<SurveyStation> stations;
    private final boolean tieInAssumed;
    private final double[] md;
    private final double[] tvd;
    private final double[] north;
    private final double[] east;
    // Of the arc that begins at the station: tangent there, normal, dogleg.
    private final double[] tangentNorth;
    private final double[] tangentEast;
    private final double[] tangentDown;
    private final double[] normalNorth;
    private final double[] normalEast;
    private final double[] normalDown;
    private final double[] dogleg;
    // Stations and the depths between them where vertical depth turns, with their vertical depths.
    private final double[] node;
    private final double[] nodeVertical;

    private WellPath(List<SurveyStation> stations) {
        this.stations = stations;
        this.tieInAssumed = stations.get(0).measuredDepth() > 0;
        int shift = tieInAssumed ? 1 : 0;
        int n = stations.size() + shift;
        md = new double[n];
        tvd = new double[n];
        north = new double[n];
        east = new double[n];
        tangentNorth = new double[n];
        tangentEast = new double[n];
        tangentDown = new double[n];
        normalNorth = new double[n];
        normalEast = new double[n];
        normalDown = new double[n];
        dogleg = new double[n];
        tangentDown[0] = 1;
        for (int i = shift; i < n; i++) {
            SurveyStation s = stations.get(i - shift);
            double lateral = Math.sin(s.inclination());
            md[i] = s.measuredDepth();
            tangentNorth[i] = lateral * Math.cos(s.azimuth());
            tangentEast[i] = lateral * Math.sin(s.azimuth());
            tangentDown[i] = Math.cos(s.inclination());
        }
        for (int i = 0; i < n - 1; i++) {
            bend(i);
            double length = md[i + 1] - md[i];
            tvd[i + 1] = tvd[i] + along(i, length, tangentDown[i], normalDown[i]);
            north[i + 1] = north[i] + along(i, length, tangentNorth[i], normalNorth[i]);
            east[i + 1] = east[i] + along(i, length, tangentEast[i], normalEast[i]);
        }
        double[] nodes = new double[2 * n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            nodes[count++] = md[i];
            double turn = turn(i);
            if (!Double.isNaN(turn)) {
                nodes[count++] = turn;
            }
        }
        node = Arrays.copyOf(nodes, count);
        nodeVertical = Arrays.stream(node).map(this::verticalDepth).toArray();
    }

    /**
     * Path through survey stations. Where the first station lies below measured depth zero, the hole is taken to leave
     * the datum vertically and to bend evenly to that station: a tie-in at surface that {@link #tieInAssumed()} tells
     * of.
     *
     * @param stations at least one, measured depths increasing
     * @throws InputFault where there is no station, depths do not increase, or two neighbours point exactly opposite ways
     */
    public static WellPath of(List<SurveyStation> stations) {
        if (stations == null || stations.isEmpty()) {
            throw new InputFault("survey", "has no station", "give at least one");
        }
        List<SurveyStation> copy = List.copyOf(stations);
        for (int i = 1; i < copy.size(); i++) {
            double above = copy.get(i - 1).measuredDepth();
            double here = copy.get(i).measuredDepth();
            if (here == above) {
                throw new InputFault("survey", "has two stations at measured depth " + here + " m", "keep one of them");
            }
            if (here < above) {
                throw new InputFault(
                        "survey",
                        "has measured depth " + here + " m after " + above + " m",
                        "sort its stations downwards");
            }
        }
        return new WellPath(copy);
    }

    /**
     * Vertical hole from the datum to a measured depth.
     *
     * @param end m, above 0 to 20 000
     * @throws RangeFault outside that range
     */
    public static WellPath vertical(@Si(value = "m", kind = Kind.DEPTH) double end) {
        Check.within("end of the vertical path", end, SAME_DEPTH, DEEPEST, Measure.DEPTH);
        return of(List.of(new SurveyStation(0, 0, 0), new SurveyStation(end, 0, 0)));
    }

    /**
     * The same path, carried on straight in its last direction: an assumption that the caller makes knowingly.
     *
     * @param end new end, measured depth, m, not above the present one, up to 20 000
     * @throws RangeFault where it lies above the present end or below 20 000 m
     */
    public WellPath extendedTo(@Si(value = "m", kind = Kind.DEPTH) double end) {
        Check.within("new end of the path", end, end(), DEEPEST, Measure.DEPTH);
        if (end - end() <= SAME_DEPTH) {
            return this;
        }
        SurveyStation last = stations.get(stations.size() - 1);
        List<SurveyStation> longer = new ArrayList<>(stations);
        longer.add(new SurveyStation(end, last.inclination(), last.azimuth()));
        return new WellPath(List.copyOf(longer));
    }

    /** Stations as given. */
    public List<SurveyStation> stations() {
        return stations;
    }

    /** Whether the first station lies below the datum, so that the way to it is an assumption. */
    public boolean tieInAssumed() {
        return tieInAssumed;
    }

    /** Last measured depth of the path. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double end() {
        return md[md.length - 1];
    }

    /**
     * Vertical depth below the datum.
     *
     * @param measuredDepth m, 0 to {@link #end()}
     * @throws RangeFault outside the path
     */
    @Si(value = "m", kind = Kind.DEPTH)
    public double verticalDepth(@Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        int i = arc(measuredDepth);
        return tvd[i] + along(i, measuredDepth - md[i], tangentDown[i], normalDown[i]);
    }

    /**
     * Metres of vertical depth per metre along hole: the cosine of the inclination; negative where the hole goes up.
     *
     * @param measuredDepth m, 0 to {@link #end()}
     * @throws RangeFault outside the path
     */
    @Si("1")
    public double verticalRate(@Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        int i = arc(measuredDepth);
        return direction(i, angle(i, measuredDepth - md[i]), tangentDown[i], normalDown[i]);
    }

    /**
     * Distance north of the well's origin.
     *
     * @param measuredDepth m, 0 to {@link #end()}
     * @throws RangeFault outside the path
     */
    @Si(value = "m", kind = Kind.LENGTH)
    public double north(@Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        int i = arc(measuredDepth);
        return north[i] + along(i, measuredDepth - md[i], tangentNorth[i], normalNorth[i]);
    }

    /**
     * Distance east of the well's origin.
     *
     * @param measuredDepth m, 0 to {@link #end()}
     * @throws RangeFault outside the path
     */
    @Si(value = "m", kind = Kind.LENGTH)
    public double east(@Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        int i = arc(measuredDepth);
        return east[i] + along(i, measuredDepth - md[i], tangentEast[i], normalEast[i]);
    }

    /**
     * Angle from vertical.
     *
     * @param measuredDepth m, 0 to {@link #end()}
     * @return rad, 0 to π
     * @throws RangeFault outside the path
     */
    @Si("rad")
    public double inclination(@Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        int i = arc(measuredDepth);
        double x = angle(i, measuredDepth - md[i]);
        double lateral = Math.hypot(
                direction(i, x, tangentNorth[i], normalNorth[i]), direction(i, x, tangentEast[i], normalEast[i]));
        return Math.atan2(lateral, direction(i, x, tangentDown[i], normalDown[i]));
    }

    /**
     * Dogleg severity of the arc that holds a depth: dogleg over length along hole. At a station it is that of the arc
     * below.
     *
     * @param measuredDepth m, 0 to {@link #end()}
     * @throws RangeFault outside the path
     */
    @Si("rad/m")
    public double doglegSeverity(@Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        int i = arc(measuredDepth);
        return md.length == 1 ? 0 : dogleg[i] / (md[i + 1] - md[i]);
    }

    /** Greatest angle from vertical anywhere on the path, between stations too. */
    @Si("rad")
    public double greatestInclination() {
        double greatest = inclination(end());
        for (int i = 0; i < md.length - 1; i++) {
            greatest = Math.max(greatest, inclination(md[i]));
            // The vertical part of the tangent, cos x t + sin x n, is least half a turn past atan2(n, t).
            double x = Math.atan2(-normalDown[i], -tangentDown[i]);
            if (x > 0 && x < dogleg[i]) {
                greatest = Math.max(greatest, inclination(md[i] + (md[i + 1] - md[i]) * x / dogleg[i]));
            }
        }
        return greatest;
    }

    /**
     * Measured depths strictly between two depths at which the path changes: its stations, and the points inside an arc
     * where the hole stops going down or up. Between two neighbours vertical depth is monotone.
     *
     * @param top measured depth, m
     * @param bottom measured depth, m, not above the top
     * @return increasing; empty where the path does not change in between
     * @throws RangeFault outside the path
     * @throws InputFault where bottom lies above top
     */
    @Si(value = "m", kind = Kind.DEPTH)
    public double[] nodesBetween(
            @Si(value = "m", kind = Kind.DEPTH) double top, @Si(value = "m", kind = Kind.DEPTH) double bottom) {
        checkOrder(top, bottom);
        arc(top);
        int first = firstDeeper(top);
        return Arrays.copyOfRange(node, first, Math.max(first, firstNotBelow(bottom)));
    }

    /**
     * Every measured depth between two depths that has a given vertical depth: more than one where the hole goes up and
     * down. Of a stretch that runs level at that vertical depth both ends are given.
     *
     * @param verticalDepth m
     * @param top measured depth, m
     * @param bottom measured depth, m, not above the top
     * @return increasing; empty where the stretch does not reach that vertical depth
     * @throws RangeFault outside the path
     * @throws InputFault where bottom lies above top
     */
    @Si(value = "m", kind = Kind.DEPTH)
    public double[] measuredDepthsAt(
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "m", kind = Kind.DEPTH) double top,
            @Si(value = "m", kind = Kind.DEPTH) double bottom) {
        checkOrder(top, bottom);
        int first = firstDeeper(top);
        int last = Math.max(first, firstNotBelow(bottom));
        double[] found = new double[last - first + 2];
        int count = 0;
        double a = top;
        double za = verticalDepth(a) - verticalDepth;
        if (za == 0) {
            found[count++] = a;
        }
        for (int k = first; k <= last; k++) {
            double b = k < last ? node[k] : bottom;
            double zb = (k < last ? nodeVertical[k] : verticalDepth(b)) - verticalDepth;
            if (zb == 0) {
                if (b > a) {
                    found[count++] = b;
                }
            } else if (za * zb < 0) {
                found[count++] = crossing(verticalDepth, a, b);
            }
            a = b;
            za = zb;
        }
        return Arrays.copyOf(found, count);
    }

    /** Index of the first node deeper than a depth. */
    private int firstDeeper(double depth) {
        int i = Arrays.binarySearch(node, depth);
        return i >= 0 ? i + 1 : -i - 1;
    }

    /** Index of the first node not shallower than a depth. */
    private int firstNotBelow(double depth) {
        int i = Arrays.binarySearch(node, depth);
        return i >= 0 ? i : -i - 1;
    }

    /** Newton's method held inside a bracket on a stretch where vertical depth is monotone. */
    private double crossing(double verticalDepth, double top, double bottom) {
        double low = top;
        double high = bottom;
        boolean falling = verticalDepth(top) > verticalDepth;
        double x = 0.5 * (low + high);
        for (int k = 0; k < NEWTON_STEPS && high - low > 1e-12 * Math.max(1, high); k++) {
            double miss = verticalDepth(x) - verticalDepth;
            if (miss == 0) {
                return x;
            }
            if (miss < 0 == falling) {
                high = x;
            } else {
                low = x;
            }
            double next = x - miss / verticalRate(x);
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - x) <= 1e-13 * Math.max(1, high)) {
                return next;
            }
            x = next;
        }
        return x;
    }

    /** Measured depth inside the arc where vertical depth turns; NaN where it does not. */
    private double turn(int i) {
        if (i == md.length - 1 || dogleg[i] == 0 || (tangentDown[i] == 0 && normalDown[i] == 0)) {
            return Double.NaN;
        }
        // cos x t + sin x n = 0 has one root in [0, π).
        double x = Math.atan2(tangentDown[i], -normalDown[i]);
        if (x < 0) {
            x += Math.PI;
        }
        return x > 0 && x < dogleg[i] ? md[i] + (md[i + 1] - md[i]) * x / dogleg[i] : Double.NaN;
    }

    private int arc(double measuredDepth) {
        if (!(measuredDepth >= -SAME_DEPTH && measuredDepth <= end() + SAME_DEPTH)) {
            throw new RangeFault(
                    "measured depth asked of the well path",
                    measuredDepth,
                    0,
                    end(),
                    Measure.DEPTH,
                    "extend the survey in the case");
        }
        int last = md.length - 2;
        if (last <= 0) {
            return 0;
        }
        int low = 0;
        int high = last;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (md[middle] <= measuredDepth) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    private void bend(int i) {
        double dn = tangentNorth[i + 1] - tangentNorth[i];
        double de = tangentEast[i + 1] - tangentEast[i];
        double dd = tangentDown[i + 1] - tangentDown[i];
        double chord = Math.sqrt(dn * dn + de * de + dd * dd);
        double sn = tangentNorth[i + 1] + tangentNorth[i];
        double se = tangentEast[i + 1] + tangentEast[i];
        double sd = tangentDown[i + 1] + tangentDown[i];
        double sum = Math.sqrt(sn * sn + se * se + sd * sd);
        // Half angles keep their accuracy for the smallest and the largest doglegs; the arc cosine would not.
        double beta = 2 * Math.atan2(chord, sum);
        if (beta < 1e-12) {
            return;
        }
        if (sum < 1e-9) {
            throw new InputFault(
                    "survey",
                    "turns by half a turn between " + md[i] + " m and " + md[i + 1] + " m",
                    "check inclination and azimuth of these stations");
        }
        // t2 less its part along t1, written with the chord so that a small dogleg keeps its digits.
        double part = -0.5 * chord * chord;
        double un = dn - part * tangentNorth[i];
        double ue = de - part * tangentEast[i];
        double ud = dd - part * tangentDown[i];
        double size = Math.sqrt(un * un + ue * ue + ud * ud);
        normalNorth[i] = un / size;
        normalEast[i] = ue / size;
        normalDown[i] = ud / size;
        dogleg[i] = beta;
    }

    private double angle(int i, double along) {
        return dogleg[i] == 0 ? 0 : dogleg[i] * along / (md[i + 1] - md[i]);
    }

    private double along(int i, double along, double tangent, double normal) {
        double beta = dogleg[i];
        if (beta == 0) {
            return along * tangent;
        }
        double radius = (md[i + 1] - md[i]) / beta;
        double half = 0.5 * along / radius;
        double sine = Math.sin(half);
        return 2 * radius * sine * (Math.cos(half) * tangent + sine * normal);
    }

    private double direction(int i, double x, double tangent, double normal) {
        return dogleg[i] == 0 ? tangent : Math.cos(x) * tangent + Math.sin(x) * normal;
    }

    private static void checkOrder(double top, double bottom) {
        if (bottom < top) {
            throw new InputFault("stretch of the well path", "has its bottom above its top", "exchange them");
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WellPath that && stations.equals(that.stations);
    }

    @Override
    public int hashCode() {
        return stations.hashCode();
    }

    @Override
    public String toString() {
        return "WellPath" + stations;
    }
}
