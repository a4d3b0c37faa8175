package staunch.influx;

import java.util.Arrays;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.units.Si;
import staunch.well.Annulus;
import staunch.well.WellPath;

/**
 * The annulus cut into pieces of one cross-section and one survey arc, with the vertical depth of every node: what the
 * integrals over a gas column run over. Pieces are numbered downwards.
 *
 * <p>On a straight piece the mass of a static gas column is exact, m = A Δp / (g cos θ), since dp = ρ g cos θ ds; on an
 * arc, a near-horizontal piece or for the fixed-gradient gas, ∫ A ρ ds is taken by three-point Gauss–Legendre, whose error
 * over 40 m at a dogleg of 20° in 30 m is below 1e-10 of the mass.
 */
public final class AnnulusGrid {
    private static final double SAME_DEPTH = 1e-6;
    private static final double STRAIGHT = 1e-9;

    /** Rounding of a sum of volumes, as a share of the whole. */
    private static final double SUM_ROUNDING = 1e-13;

    private static final double NEARLY_HORIZONTAL = 0.05;
    private static final double LONGEST_QUADRATURE = 40.0;
    private static final double GAUSS_OFFSET = Math.sqrt(0.6) / 2;

    private final WellPath path;
    private final double[] measured;
    private final double[] vertical;
    private final double[] area;
    private final boolean[] straight;
    private final double[] upperGauss;
    private final double[] middleGauss;
    private final double[] lowerGauss;

    private AnnulusGrid(WellPath path, double[] measured, double[] vertical, double[] area, boolean[] straight) {
        this.path = path;
        this.measured = measured;
        this.vertical = vertical;
        this.area = area;
        this.straight = straight;
        this.upperGauss = new double[area.length];
        this.middleGauss = new double[area.length];
        this.lowerGauss = new double[area.length];
        for (int i = 0; i < area.length; i++) {
            double middle = 0.5 * (measured[i] + measured[i + 1]);
            double offset = GAUSS_OFFSET * (measured[i + 1] - measured[i]);
            upperGauss[i] = verticalDepth(i, middle - offset);
            middleGauss[i] = verticalDepth(i, middle);
            lowerGauss[i] = verticalDepth(i, middle + offset);
        }
    }

    /**
     * Grid of an annulus along a path.
     *
     * @param annulus cross-sections
     * @param path of the hole
     * @param keep measured depths that must be nodes, in any order; those outside the annulus are left out
     */
    public static AnnulusGrid of(Annulus annulus, WellPath path, @Si(value = "m", kind = Kind.DEPTH) double[] keep) {
        int count = annulus.count();
        double[] bottoms = new double[count];
        double[] areas = new double[count];
        for (int i = 0; i < count; i++) {
            bottoms[i] = annulus.bottom(i);
            areas[i] = annulus.area(i);
        }
        return of(annulus.top(0), bottoms, areas, path, keep);
    }

    /**
     * Grid of an annulus that ends at a stack on the seabed, continued to surface by the choke line, which follows the path
     * of the riser.
     *
     * @param annulus from the stack down
     * @param lineArea cross-section of the choke line, m²
     * @param path of riser and hole
     * @param keep measured depths that must be nodes, in any order; those outside are left out
     */
    public static AnnulusGrid withChokeLine(
            Annulus annulus,
            @Si("m2") double lineArea,
            WellPath path,
            @Si(value = "m", kind = Kind.DEPTH) double[] keep) {
        int count = annulus.count() + 1;
        double[] bottoms = new double[count];
        double[] areas = new double[count];
        bottoms[0] = annulus.top(0);
        areas[0] = lineArea;
        for (int i = 1; i < count; i++) {
            bottoms[i] = annulus.bottom(i - 1);
            areas[i] = annulus.area(i - 1);
        }
        return of(0, bottoms, areas, path, keep);
    }

    private static AnnulusGrid of(double top, double[] bottoms, double[] areas, WellPath path, double[] keep) {
        double bottom = bottoms[bottoms.length - 1];
        double[] stations = path.nodesBetween(top, bottom);
        double[] all = new double[bottoms.length + 1 + stations.length + keep.length];
        int n = 0;
        all[n++] = top;
        for (double b : bottoms) {
            all[n++] = b;
        }
        for (double k : keep) {
            if (k > top && k < bottom) {
                all[n++] = k;
            }
        }
        double[] must = Arrays.copyOf(all, n);
        Arrays.sort(must);
        System.arraycopy(stations, 0, all, n, stations.length);
        n += stations.length;
        double[] nodes = Arrays.copyOf(all, n);
        Arrays.sort(nodes);

        double[] measured = new double[n];
        double[] vertical = new double[n];
        double[] area = new double[n];
        boolean[] straight = new boolean[n];
        int count = 0;
        measured[0] = nodes[0];
        vertical[0] = path.verticalDepth(nodes[0]);
        int interval = 0;
        double rateAbove = Double.NaN;
        boolean mustStay = true;
        for (int i = 1; i < n; i++) {
            double a = measured[count];
            double b = nodes[i];
            boolean asked = Arrays.binarySearch(must, b) >= 0;
            if (b - a < 1e-9) {
                mustStay |= asked;
                continue;
            }
            double middle = 0.5 * (a + b);
            while (bottoms[interval] < middle) {
                interval++;
            }
            double zb = path.verticalDepth(b);
            double rate = (zb - vertical[count]) / (b - a);
            boolean isStraight = Math.abs(path.verticalDepth(middle) - 0.5 * (vertical[count] + zb)) < STRAIGHT;
            boolean joins = count > 0
                    && isStraight
                    && straight[count - 1]
                    && Math.abs(rate - rateAbove) < 1e-12
                    && area[count - 1] == areas[interval]
                    && !mustStay;
            mustStay = asked;
            if (joins) {
                measured[count] = b;
                vertical[count] = zb;
                continue;
            }
            area[count] = areas[interval];
            straight[count] = isStraight;
            rateAbove = rate;
            count++;
            measured[count] = b;
            vertical[count] = zb;
        }
        return new AnnulusGrid(
                path,
                Arrays.copyOf(measured, count + 1),
                Arrays.copyOf(vertical, count + 1),
                Arrays.copyOf(area, count),
                Arrays.copyOf(straight, count));
    }

    /**
     * The part of the grid above a node.
     *
     * @param measuredDepth of the node, m, one of those kept
     * @throws staunch.units.InputFault where no node is there
     */
    public AnnulusGrid above(@Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        int node = pieceAbove(measuredDepth + SAME_DEPTH);
        if (node == 0 || Math.abs(measured[node] - measuredDepth) > SAME_DEPTH) {
            throw new InputFault("depth to cut the annulus at", "is not a node of its grid", "let the grid keep it");
        }
        return new AnnulusGrid(
                path,
                Arrays.copyOf(measured, node + 1),
                Arrays.copyOf(vertical, node + 1),
                Arrays.copyOf(area, node),
                Arrays.copyOf(straight, node));
    }

    /** Number of pieces. */
    public int pieces() {
        return area.length;
    }

    /** Measured depth of a node; piece i lies between node i and node i + 1. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double measuredDepth(int node) {
        return measured[node];
    }

    /** Whether the cross-section changes at a node, so that a bubble's volume there changes slope. */
    public boolean isBreak(int node) {
        return node > 0 && node < area.length && area[node - 1] != area[node];
    }

    /** Whether the path bends anywhere below a measured depth. */
    public boolean isCurvedBelow(@Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        for (int i = area.length - 1; i >= 0 && measured[i + 1] > measuredDepth; i--) {
            if (!straight[i]) {
                return true;
            }
        }
        return false;
    }

    /** Vertical depth of a node. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double verticalDepth(int node) {
        return vertical[node];
    }

    /** Measured depth of the top of the grid. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double top() {
        return measured[0];
    }

    /** Measured depth of the bottom of the grid. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double bottom() {
        return measured[measured.length - 1];
    }

    /** Piece that holds a measured depth; at a node the piece above it, at the top of the grid the first. */
    public int pieceAbove(@Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        int i = Arrays.binarySearch(measured, measuredDepth);
        int node = i >= 0 ? i : -i - 1;
        return Math.min(Math.max(node - 1, 0), area.length - 1);
    }

    /** Vertical depth at a measured depth within a piece, exact on straight pieces and on arcs. */
    double verticalDepth(int piece, double measuredDepth) {
        if (straight[piece]) {
            double share = (measuredDepth - measured[piece]) / (measured[piece + 1] - measured[piece]);
            return vertical[piece] + share * (vertical[piece + 1] - vertical[piece]);
        }
        return path.verticalDepth(measuredDepth);
    }

    /** Vertical depth at any measured depth of the grid. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double verticalAt(@Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        return verticalDepth(pieceAbove(measuredDepth), measuredDepth);
    }

    /** Geometric volume between two measured depths, m³. */
    @Si("m3")
    public double volume(
            @Si(value = "m", kind = Kind.DEPTH) double from, @Si(value = "m", kind = Kind.DEPTH) double to) {
        double sum = 0;
        for (int i = pieceAbove(to); i >= 0 && measured[i + 1] > from; i--) {
            sum += area[i] * (Math.min(to, measured[i + 1]) - Math.max(from, measured[i]));
        }
        return sum;
    }

    /**
     * Measured depth of the top of a volume that fills upwards.
     *
     * @throws RangeFault where the volume does not fit below the top of the grid
     */
    @Si(value = "m", kind = Kind.DEPTH)
    public double topOfVolume(@Si(value = "m", kind = Kind.DEPTH) double bottom, @Si("m3") double volume) {
        double left = volume;
        double from = bottom;
        for (int i = pieceAbove(bottom); i >= 0; i--) {
            double part = area[i] * (from - measured[i]);
            if (part >= left) {
                return from - left / area[i];
            }
            left -= part;
            from = measured[i];
        }
        if (left <= SUM_ROUNDING * volume) {
            return measured[0];
        }
        throw new RangeFault(
                "volume in the annulus", volume, 0, volume - left, Measure.VOLUME, "it is larger than the annulus");
    }

    /** Mass of the gas of a column between two measured depths, kg. */
    @Si("kg")
    public double mass(
            GasColumn column,
            @Si(value = "m", kind = Kind.DEPTH) double from,
            @Si(value = "m", kind = Kind.DEPTH) double to) {
        double sum = 0;
        double lower = to;
        for (int i = pieceAbove(to); i >= 0 && measured[i + 1] > from; i--) {
            double upper = Math.max(from, measured[i]);
            sum += pieceMass(column, i, upper, lower);
            lower = upper;
        }
        return sum;
    }

    /**
     * Measured depth of the top of a gas mass that fills upwards from a depth.
     *
     * @throws RangeFault where the gas does not fit below the top of the grid
     */
    @Si(value = "m", kind = Kind.DEPTH)
    public double topOfMass(
            GasColumn column, @Si(value = "m", kind = Kind.DEPTH) double bottom, @Si("kg") double mass) {
        double top = topWithin(column, bottom, mass);
        if (Double.isNaN(top)) {
            throw new RangeFault(
                    "gas in the annulus",
                    mass,
                    0,
                    mass(column, top(), bottom),
                    Measure.MASS,
                    "it is larger than the annulus can hold");
        }
        return top;
    }

    /** Whether a gas mass that fills upwards from a depth fits below the top of the grid. */
    public boolean fits(GasColumn column, @Si(value = "m", kind = Kind.DEPTH) double bottom, @Si("kg") double mass) {
        return !Double.isNaN(topWithin(column, bottom, mass));
    }

    /** NaN where the gas does not fit. The column is not looked at above the top of the gas. */
    private double topWithin(GasColumn column, double bottom, double mass) {
        double left = mass;
        double from = bottom;
        for (int i = pieceAbove(bottom); i >= 0; i--) {
            double part = pieceMass(column, i, measured[i], from);
            if (part >= left) {
                return withinPiece(column, i, from, left);
            }
            left -= part;
            from = measured[i];
        }
        return Double.NaN;
    }

    /** Newton on the length, which converges in a few steps as density hardly changes over a piece. */
    private double withinPiece(GasColumn column, int piece, double bottom, double mass) {
        double low = measured[piece];
        double high = bottom;
        double top = bottom - mass / (area[piece] * column.density(verticalDepth(piece, bottom)));
        for (int k = 0; k < 60; k++) {
            if (!(top >= low && top <= high)) {
                top = 0.5 * (low + high);
            }
            double error = pieceMass(column, piece, top, bottom) - mass;
            if (error > 0) {
                low = top;
            } else {
                high = top;
            }
            double step = error / (area[piece] * column.density(verticalDepth(piece, top)));
            top += step;
            if (Math.abs(step) < 1e-10) {
                break;
            }
        }
        return Math.min(Math.max(top, measured[piece]), bottom);
    }

    private double pieceMass(GasColumn column, int piece, double upper, double lower) {
        double length = lower - upper;
        if (length <= 0) {
            return 0;
        }
        boolean ownWeight = column.gas().weighsItsMass();
        if (straight[piece] && ownWeight) {
            double rate = (vertical[piece + 1] - vertical[piece]) / (measured[piece + 1] - measured[piece]);
            if (Math.abs(rate) > NEARLY_HORIZONTAL && length > 1) {
                double below = column.pressure(verticalDepth(piece, lower));
                double above = column.pressure(verticalDepth(piece, upper));
                return area[piece] * (below - above) / (Physics.GRAVITY * rate);
            }
        }
        if (length <= LONGEST_QUADRATURE && upper == measured[piece] && lower == measured[piece + 1]) {
            return area[piece]
                    * length
                    / 18
                    * (5 * density(column, upperGauss[piece], ownWeight)
                            + 8 * density(column, middleGauss[piece], ownWeight)
                            + 5 * density(column, lowerGauss[piece], ownWeight));
        }
        int parts = (int) Math.ceil(length / LONGEST_QUADRATURE);
        double h = length / parts;
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            double middle = upper + (i + 0.5) * h;
            sum += 5 * density(column, verticalDepth(piece, middle - GAUSS_OFFSET * h), ownWeight)
                    + 8 * density(column, verticalDepth(piece, middle), ownWeight)
                    + 5 * density(column, verticalDepth(piece, middle + GAUSS_OFFSET * h), ownWeight);
        }
        return area[piece] * h / 18 * sum;
    }

    private static double density(GasColumn column, double z, boolean ownWeight) {
        return ownWeight ? column.columnDensity(z) : column.density(z);
    }
}
