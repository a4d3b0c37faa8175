package staunch.well;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Invented surveys for property tests. */
final class Surveys {
    private Surveys() {}

    /** Wells of two to twelve stations with steps of 10 to 400 m that may build, turn, and go up. */
    static Arbitrary<WellPath> any() {
        Arbitrary<double[]> step = Combinators.combine(
                        Arbitraries.doubles().between(10, 400),
                        Arbitraries.doubles().between(0, 130).map(Math::toRadians),
                        Arbitraries.doubles().between(0, 359).map(Math::toRadians))
                .as((length, inclination, azimuth) -> new double[] {length, inclination, azimuth});
        return step.list().ofMinSize(1).ofMaxSize(11).map(Surveys::path);
    }

    private static WellPath path(List<double[]> steps) {
        List<SurveyStation> stations = new ArrayList<>();
        stations.add(new SurveyStation(0, 0, 0));
        double md = 0;
        for (double[] step : steps) {
            md += step[0];
            stations.add(new SurveyStation(md, step[1], step[2]));
        }
        return WellPath.of(stations);
    }

    static WellPath degrees(double... numbers) {
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i < numbers.length; i += 3) {
            stations.add(new SurveyStation(numbers[i], Math.toRadians(numbers[i + 1]), Math.toRadians(numbers[i + 2])));
        }
        return WellPath.of(stations);
    }
}
