package staunch.chart;

import java.util.ArrayList;
import java.util.List;
import staunch.envelope.Tolerance;

/** Stretches of neighbouring results that have no finite volume for the same kind of reason. */
final class Runs {
    private Runs() {}

    /**
     * @param first index of the first result in it
     * @param last index of the last
     * @param example one of its results
     * @param of number of results in all
     */
    record Run(int first, int last, Tolerance example, int of) {
        String words() {
            if (example instanceof Tolerance.Unlimited) {
                return "no limit";
            }
            if (example instanceof Tolerance.FailsOnIntensity) {
                return "none, fails on intensity alone";
            }
            return example instanceof Tolerance.NotShutIn ? "not shut in" : "not assessed";
        }

        /** Where the stretch begins and ends along the axis: half-way to its neighbours. */
        double[] edges(double[] axis) {
            double from = first == 0 ? axis[0] : (axis[first - 1] + axis[first]) / 2;
            double to = last == of - 1 ? axis[last] : (axis[last] + axis[last + 1]) / 2;
            return new double[] {from, to};
        }
    }

    static List<Run> of(List<Tolerance> results) {
        List<Run> runs = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= results.size(); i++) {
            if (i == results.size()
                    || results.get(i).getClass() != results.get(first).getClass()) {
                if (!(results.get(first) instanceof Tolerance.Finite)) {
                    runs.add(new Run(first, i - 1, results.get(first), results.size()));
                }
                first = i;
            }
        }
        return runs;
    }
}
