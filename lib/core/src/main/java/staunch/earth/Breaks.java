package staunch.earth;

import java.util.Arrays;
import java.util.Collection;
import java.util.TreeSet;
import staunch.well.WellPath;

/** Measured depths that cut a stretch of hole into pieces with no given vertical depth and no turn inside. */
final class Breaks {
    /** Depths that differ by less are one depth. */
    static final double SAME_DEPTH = 1e-6;

    private Breaks() {}

    static double[] of(WellPath path, double top, double bottom, Collection<Double> verticalDepths) {
        TreeSet<Double> found = new TreeSet<>();
        for (double md : path.nodesBetween(top, bottom)) {
            found.add(md);
        }
        for (double z : verticalDepths) {
            for (double md : path.measuredDepthsAt(z, top, bottom)) {
                found.add(md);
            }
        }
        double[] all = new double[found.size() + 2];
        int count = 0;
        all[count++] = top;
        for (double md : found) {
            if (md - all[count - 1] > SAME_DEPTH && bottom - md > SAME_DEPTH) {
                all[count++] = md;
            }
        }
        if (bottom - top > SAME_DEPTH) {
            all[count++] = bottom;
        }
        return Arrays.copyOf(all, count);
    }
}
