package staunch.control;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import staunch.influx.AnnulusGrid;

/**
 * Finds the limit closest to the pressures of a moment: at the depths of the lines, and where a line passes an end of the
 * gas. Between these, mud and limits are linear in vertical depth, so that the least margin is found; within the gas the
 * depths of a line must be close enough together.
 */
final class LimitScan {
    private final AnnulusGrid grid;
    private final String[] name;
    private final double[][] measured;
    private final double[][] vertical;
    private final double[][] limit;

    LimitScan(AnnulusGrid grid, List<LimitLine> lines) {
        this.grid = grid;
        int n = lines.size();
        name = new String[n];
        measured = new double[n][];
        vertical = new double[n][];
        limit = new double[n][];
        for (int i = 0; i < n; i++) {
            name[i] = lines.get(i).name();
            measured[i] = lines.get(i).measuredDepth();
            limit[i] = lines.get(i).pressure();
            vertical[i] = new double[measured[i].length];
            for (int k = 0; k < measured[i].length; k++) {
                vertical[i][k] = grid.verticalAt(measured[i][k]);
            }
        }
    }

    boolean isEmpty() {
        return name.length == 0;
    }

    /**
     * @param pressureAt pressure at a measured depth
     * @param gasEnds measured depths of the ends of the gas
     */
    ClosestLimit closest(DoubleUnaryOperator pressureAt, double... gasEnds) {
        double least = Double.POSITIVE_INFINITY;
        int line = 0;
        double where = 0;
        for (int i = 0; i < name.length; i++) {
            for (int k = 0; k < measured[i].length; k++) {
                double margin = limit[i][k] - pressureAt.applyAsDouble(measured[i][k]);
                if (margin < least) {
                    least = margin;
                    line = i;
                    where = measured[i][k];
                }
            }
        }
        for (double end : gasEnds) {
            double z = grid.verticalAt(end);
            double pressure = pressureAt.applyAsDouble(end);
            for (int i = 0; i < name.length; i++) {
                double margin = limitAt(i, end, z) - pressure;
                if (margin < least) {
                    least = margin;
                    line = i;
                    where = end;
                }
            }
        }
        return new ClosestLimit(name[line], where, least);
    }

    private double limitAt(int line, double depth, double z) {
        double[] md = measured[line];
        double least = Double.POSITIVE_INFINITY;
        for (int k = 1; k < md.length; k++) {
            if (md[k - 1] < depth && depth < md[k]) {
                double span = vertical[line][k] - vertical[line][k - 1];
                double share = span == 0 ? 0.5 : (z - vertical[line][k - 1]) / span;
                least = Math.min(least, limit[line][k - 1] + share * (limit[line][k] - limit[line][k - 1]));
            }
        }
        return least;
    }
}
