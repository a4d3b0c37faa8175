package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import staunch.control.CirculationMethod;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/** An invented section drawn at random, with every shape that makes the tolerance jump: one for each seed. */
final class RandomWell {
    private static final double END = 8900;

    private final Random random;
    private final Wells wells = Wells.standard();
    private final double shoe;
    private final double bottom;
    private final double overbalance;
    private MethodOptions options = MethodOptions.DEFAULT;

    RandomWell(long seed) {
        random = new Random(seed);
        shoe = between(800, 4000);
        bottom = shoe + between(100, 2500);
        double mud = between(1050, 2000);
        overbalance = once(3) ? between(0, 1e6) : 0;
        wells.depths(shoe, bottom)
                .path(path())
                .mud(mud)
                .pore(1030)
                .intensity(once(4) ? 0 : between(0, 150))
                .strength(strength(mud))
                .hole(hole())
                .string(string())
                .overbalance(overbalance);
        if (once(3)) {
            double top = between(shoe, bottom - 50);
            wells.zone("weak zone", top, top + between(1, 40), mud + between(20, 200));
        }
        if (once(5)) {
            wells.influxDepth(shoe + between(0.5, 1) * (bottom - shoe));
        }
        if (once(5)) {
            options = options.withMethod(CirculationMethod.WAIT_AND_WEIGHT);
        }
        if (once(5)) {
            wells.flowing(between(0.002, 0.02));
            options = options.withAnnularFriction(MethodOptions.AnnularFriction.COUNTED);
        }
        wells.options(options);
    }

    private double between(double least, double greatest) {
        return least + (greatest - least) * random.nextDouble();
    }

    /** True one time in so many. */
    private boolean once(int times) {
        return random.nextInt(times) == 0;
    }

    private WellPath path() {
        if (once(5)) {
            return WellPath.vertical(END);
        }
        double built = Math.toRadians(between(0, 85));
        double toe = Math.toRadians(between(0, 98));
        List<SurveyStation> list = new ArrayList<>();
        list.add(new SurveyStation(0, 0, 0));
        list.add(new SurveyStation(0.4 * shoe, 0, 0));
        list.add(new SurveyStation(0.9 * shoe, built, 0));
        list.add(new SurveyStation(shoe + 0.4 * (bottom - shoe), built, between(0, 1)));
        list.add(new SurveyStation(shoe + 0.8 * (bottom - shoe), toe, 0));
        list.add(new SurveyStation(END, toe, 0));
        return WellPath.of(list);
    }

    private double[] strength(double mud) {
        double window = between(15, 400);
        int n = 2 + random.nextInt(4);
        double[] pairs = new double[2 * n];
        for (int i = 0; i < n; i++) {
            pairs[2 * i] = i == 0 ? 0 : i == n - 1 ? 9000 : shoe * 0.8 + (bottom - shoe * 0.8) * i / n;
            pairs[2 * i + 1] = mud + window + between(-0.4, 0.4) * window;
        }
        return pairs;
    }

    private HoleInterval[] hole() {
        int n = 1 + random.nextInt(5);
        HoleInterval[] hole = new HoleInterval[n];
        double top = shoe;
        for (int i = 0; i < n; i++) {
            double base = i == n - 1 ? bottom : top + between(0.2, 0.8) * (bottom - top) / (n - i);
            hole[i] = new HoleInterval(top, base, between(0.2, 0.4));
            top = base;
        }
        return hole;
    }

    private StringComponent[] string() {
        List<StringComponent> list = new ArrayList<>();
        if (!once(4)) {
            list.add(new StringComponent("collars", between(20, 250), between(0.13, 0.18), 0.07));
        }
        if (once(2)) {
            list.add(new StringComponent("heavyweight", between(50, 400), 0.127, 0.076));
        }
        list.add(new StringComponent("drill pipe", 10, between(0.088, 0.14), 0.08));
        return list.toArray(StringComponent[]::new);
    }

    /** Tolerance of the drilled kick with the open hole cut into so many intervals, besides every break. */
    Tolerance drilled(int samples) {
        Model model = wells.model();
        ToleranceSolver solver = new ToleranceSolver(
                model.gas().orElseThrow(),
                wells.temperature(),
                model.mudColumn().orElseThrow(),
                options,
                new ToleranceSolver.Circulation(overbalance, OptionalDouble.of(0)),
                samples);
        return solver.solve(model.hole(bottom), Optional.empty(), model.kick(Kick.Scenario.DRILLED, bottom));
    }
}
