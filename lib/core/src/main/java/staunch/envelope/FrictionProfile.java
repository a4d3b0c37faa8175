package staunch.envelope;

import java.util.Arrays;
import staunch.control.FlowingMud;
import staunch.control.Hydraulics;
import staunch.well.Annulus;

/**
 * Pressure lost to friction in the annulus between each depth and the top of the annulus, with mud flowing all the way at
 * one rate: what adds to the static pressure at that depth. Straight between the depths where the cross-section changes.
 */
final class FrictionProfile {
    /** Nothing flows, or friction is neglected. */
    static final FrictionProfile NONE = new FrictionProfile(new double[0], new double[0]);

    private final double[] depth;
    private final double[] loss;

    private FrictionProfile(double[] depth, double[] loss) {
        this.depth = depth;
        this.loss = loss;
    }

    /**
     * A mud on its way up.
     *
     * @param mud that flows
     * @param rate m³/s
     */
    record Flow(FlowingMud mud, double rate) {}

    static FrictionProfile of(Annulus annulus, Flow flow) {
        double[] depth = new double[annulus.count() + 1];
        double[] loss = new double[annulus.count() + 1];
        depth[0] = annulus.top(0);
        for (int i = 0; i < annulus.count(); i++) {
            depth[i + 1] = annulus.bottom(i);
            loss[i + 1] = Hydraulics.annularLossAbove(annulus, depth[i + 1], flow.mud(), flow.rate());
        }
        return new FrictionProfile(depth, loss);
    }

    /** Loss above a measured depth, Pa. */
    double above(double measuredDepth) {
        int n = depth.length;
        if (n == 0 || measuredDepth <= depth[0]) {
            return 0;
        }
        if (measuredDepth >= depth[n - 1]) {
            return loss[n - 1];
        }
        int i = Arrays.binarySearch(depth, measuredDepth);
        if (i >= 0) {
            return loss[i];
        }
        int below = -i - 1;
        double share = (measuredDepth - depth[below - 1]) / (depth[below] - depth[below - 1]);
        return loss[below - 1] + share * (loss[below] - loss[below - 1]);
    }
}
