package staunch.envelope;

import java.util.Arrays;
import staunch.influx.AnnulusGrid;
import staunch.influx.GasColumn;
import staunch.influx.LowerEnd;

/**
 * Finds the smallest tolerable gas mass over the displacement of a single bubble.
 *
 * <p>States at the limit are walked by the depth of the top of the gas, not by the lower end: with the top at depth t at
 * its limit L(t), the gas column below is fixed and meets the mud line held from bottom at one lower end; the gas between
 * is the tolerable mass m(t). Over lower ends that mass jumps to infinity once the top at its limit has reached the weak
 * point; over tops it is continuous on each segment up to and including that edge, so the edge is met exactly. The
 * tolerance is the least m(t). It is sampled at every break of geometry and limit, at either end of the bubble, and in
 * between, then each low bracket is refined.
 *
 * <p>A workspace for one thread; the walk itself allocates nothing.
 */
final class Displacement {
    /** No amount of gas reaches the limit. */
    static final double UNLIMITED = Double.POSITIVE_INFINITY;

    private static final double SEARCH_TOLERANCE = 1e-2;

    /** A local low this close to the best found so far is worth a search; samples are close enough to miss no more. */
    private static final double NEAR_BEST = 1.05;

    /** Where a step may hide a low. */
    private static final int PARTS_OF_A_STEP = 6;

    private final AnnulusGrid grid;
    private final FormationLimit limit;
    private final GasColumn column;
    private final int samples;

    /** No gas column can meet the mud line from above this pressure. */
    private double greatestMudPressure = Double.POSITIVE_INFINITY;

    /** Whether the mass may swing within a span that has no break. */
    private boolean wavy;

    private double foundTop;
    private double foundBottom;
    private int foundSegment;
    private double bestMass;
    private double bestTop;
    private double bestBottom;
    private int bestSegment;
    private double[] kinks = new double[8];
    private int kinkCount;

    Displacement(AnnulusGrid grid, FormationLimit limit, GasColumn column, int samples) {
        this.grid = grid;
        this.limit = limit;
        this.column = column;
        this.samples = samples;
    }

    /** Measured depth of the top of the gas in the state found last. */
    double foundTop() {
        return foundTop;
    }

    /** Measured depth of the lower end of the gas in the state found last. */
    double foundBottom() {
        return foundBottom;
    }

    /** Segment of the limit that the state found last touches. */
    int foundSegment() {
        return foundSegment;
    }

    /**
     * Largest mass with the lower end at a depth: the gas is filled upwards until its top first meets the limit.
     *
     * @return kg, or {@link #UNLIMITED}
     */
    double massAtLowerEnd(double lowerMeasured, double lowerVertical, double lowerPressure) {
        column.start(lowerVertical, lowerPressure);
        for (int s = limit.segmentAt(lowerMeasured - 1e-9); s >= 0; s--) {
            double from = Math.min(limit.bottom(s), lowerMeasured);
            double zFrom = from == limit.bottom(s) ? limit.bottomVertical(s) : lowerVertical;
            if (excess(s, from, zFrom) >= 0) {
                return found(s, from, lowerMeasured);
            }
            if (excess(s, limit.top(s), limit.topVertical(s)) > 0) {
                return found(s, touch(s, from), lowerMeasured);
            }
        }
        foundTop = Double.NaN;
        return UNLIMITED;
    }

    private double found(int segment, double topMeasured, double lowerMeasured) {
        foundSegment = segment;
        foundTop = topMeasured;
        foundBottom = lowerMeasured;
        return grid.mass(column, topMeasured, lowerMeasured);
    }

    private double excess(int segment, double measured, double vertical) {
        return column.pressure(vertical) - limit.value(segment, measured, vertical);
    }

    /** Depth within a segment where gas pressure equals the limit; it is below at {@code from} and above at the top. */
    private double touch(int segment, double from) {
        return Root.find(
                "top of the gas at its limit", x -> excess(segment, x, vertical(segment, x)), from, limit.top(segment));
    }

    private double vertical(int segment, double measured) {
        double span = limit.bottom(segment) - limit.top(segment);
        if (measured == limit.top(segment) || span == 0) {
            return limit.topVertical(segment);
        }
        return measured == limit.bottom(segment) ? limit.bottomVertical(segment) : grid.verticalAt(measured);
    }

    /**
     * Mass of the gas with its top at a depth, at the limit there, and its lower end on the mud line.
     *
     * @return kg, or {@link #UNLIMITED} where the column does not meet the mud line above the bottom
     */
    double massAtTop(int segment, double topMeasured, LowerEnd mudLine) {
        if (!limit.known(segment)) {
            foundTop = Double.NaN;
            return UNLIMITED;
        }
        double zTop = vertical(segment, topMeasured);
        double atTop = limit.value(segment, topMeasured, zTop);
        if (atTop >= greatestMudPressure) {
            foundTop = Double.NaN;
            return UNLIMITED;
        }
        column.start(zTop, atTop);
        double a = topMeasured;
        if (column.pressure(zTop) <= mudLine.pressure(topMeasured, zTop)) {
            foundTop = topMeasured;
            foundBottom = topMeasured;
            foundSegment = segment;
            return 0;
        }
        int piece = limit.piece(segment);
        for (int i = piece; i < grid.pieces(); i++) {
            double b = grid.measuredDepth(i + 1);
            if (b <= a) {
                continue;
            }
            double zb = grid.verticalDepth(i + 1);
            double fb = column.pressure(zb) - mudLine.pressure(b, zb);
            if (fb <= 0) {
                foundTop = topMeasured;
                foundBottom = meet(mudLine, a, b);
                foundSegment = segment;
                return grid.mass(column, topMeasured, foundBottom);
            }
            a = b;
        }
        foundTop = Double.NaN;
        return UNLIMITED;
    }

    /** Depth where the gas pressure meets the mud line, between one where it lies above and one where it lies below. */
    private double meet(LowerEnd mudLine, double above, double below) {
        return Root.find(
                "lower end of the gas",
                x -> {
                    double z = grid.verticalAt(x);
                    return column.pressure(z) - mudLine.pressure(x, z);
                },
                above,
                below);
    }

    /**
     * Smallest mass over all tops; {@link #UNLIMITED} where no state reaches the limit.
     *
     * @param mudLine pressure of the mud below the gas
     * @param bends measured depths at which it bends
     */
    double leastMassWhileRising(LowerEnd mudLine, double[] bends) {
        bestMass = UNLIMITED;
        kinkCount = 0;
        wavy = bends.length > 0 || grid.isCurvedBelow(limit.top(0));
        greatestMudPressure = 0;
        for (int i = 0; i <= grid.pieces(); i++) {
            greatestMudPressure =
                    Math.max(greatestMudPressure, mudLine.pressure(grid.measuredDepth(i), grid.verticalDepth(i)));
        }
        for (int i = grid.pieces() - 1; i > 0 && grid.measuredDepth(i) > limit.top(0); i--) {
            if (grid.isBreak(i)) {
                lowerEndAt(grid.measuredDepth(i), grid.verticalDepth(i), mudLine);
            }
        }
        for (double bend : bends) {
            if (bend > limit.top(0)) {
                lowerEndAt(bend, grid.verticalAt(bend), mudLine);
            }
        }
        double spacing = (limit.bottom(limit.segments() - 1) - limit.top(0)) / samples;
        int first = 0;
        for (int s = 0; s < limit.segments(); s++) {
            if (limit.breakBelow(s)) {
                scanBetweenKinks(first, s, spacing, mudLine);
                first = s + 1;
            }
        }
        foundTop = bestTop;
        foundBottom = bestBottom;
        foundSegment = bestSegment;
        return bestMass;
    }

    private void lowerEndAt(double measured, double vertical, LowerEnd mudLine) {
        double mass = massAtLowerEnd(measured, vertical, mudLine.pressure(measured, vertical));
        keep(mass);
        if (mass != UNLIMITED) {
            addKink(foundTop);
        }
    }

    private void keep(double mass) {
        if (mass < bestMass) {
            bestMass = mass;
            bestTop = foundTop;
            bestBottom = foundBottom;
            bestSegment = foundSegment;
        }
    }

    /** Mass with the top at a depth of the span of segments first to last, at whose ends the span's own side counts. */
    private double at(int first, int last, double t, LowerEnd mudLine) {
        int segment = first;
        while (segment < last && limit.bottom(segment) < t) {
            segment++;
        }
        double mass = massAtTop(segment, t, mudLine);
        keep(mass);
        return mass;
    }

    /** Keeps the tops at which the lower end meets a change of cross-section: there the mass changes slope. */
    private void addKink(double top) {
        if (kinkCount == kinks.length) {
            kinks = Arrays.copyOf(kinks, 2 * kinkCount);
        }
        kinks[kinkCount++] = top;
    }

    private void scanBetweenKinks(int first, int last, double spacing, LowerEnd mudLine) {
        double from = limit.top(first);
        double to = limit.bottom(last);
        Arrays.sort(kinks, 0, kinkCount);
        for (int i = 0; i < kinkCount; i++) {
            if (kinks[i] > from + SEARCH_TOLERANCE && kinks[i] < to - SEARCH_TOLERANCE) {
                scan(first, last, from, kinks[i], spacing, mudLine);
                from = kinks[i];
            }
        }
        scan(first, last, from, to, spacing, mudLine);
    }

    private void scan(int first, int last, double from, double to, double spacing, LowerEnd mudLine) {
        int n = Math.max(2, (int) Math.ceil((to - from) / spacing));
        if (!wavy) {
            scan(first, last, from, to, n, mudLine);
            return;
        }
        // Along a curve, or behind kill mud, a step may hide a low: those that come near the best are looked into.
        double h = (to - from) / n;
        double above = at(first, last, from, mudLine);
        for (int i = 1; i <= n; i++) {
            double end = i == n ? to : from + i * h;
            double below = at(first, last, end, mudLine);
            if (Math.min(above, below) < NEAR_BEST * bestMass) {
                scan(first, last, from + (i - 1) * h, end, PARTS_OF_A_STEP, mudLine);
            }
            above = below;
        }
    }

    /** Samples a span without breaks and searches each bracket whose middle is the lowest. */
    private void scan(int first, int last, double from, double to, int n, LowerEnd mudLine) {
        double h = (to - from) / n;
        double m0 = at(first, last, from, mudLine);
        double m1 = at(first, last, from + h, mudLine);
        if (m0 <= m1) {
            searchEnd(first, last, from, from + h, mudLine);
        }
        for (int i = 2; i <= n; i++) {
            double m2 = at(first, last, i == n ? to : from + i * h, mudLine);
            if (m1 < m0 && m1 <= m2 && m1 < NEAR_BEST * bestMass) {
                search(first, last, from + (i - 2) * h, i == n ? to : from + i * h, mudLine);
            }
            m0 = m1;
            m1 = m2;
        }
        if (m1 < m0) {
            searchEnd(first, last, to, to - h, mudLine);
        }
    }

    /** An end that is the lowest sample hides a low within the first step only where the mass falls inwards. */
    private void searchEnd(int first, int last, double end, double inner, LowerEnd mudLine) {
        double atEnd = at(first, last, end, mudLine);
        if (atEnd < NEAR_BEST * bestMass && at(first, last, end + 1e-3 * (inner - end), mudLine) < atEnd) {
            search(first, last, Math.min(end, inner), Math.max(end, inner), mudLine);
        }
    }

    private void search(int first, int last, double from, double to, LowerEnd mudLine) {
        Minimum.search(t -> at(first, last, t, mudLine), from, to, SEARCH_TOLERANCE);
    }
}
