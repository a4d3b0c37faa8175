package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import staunch.earth.TemperatureProfile;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/** More samples and shorter steps change no tolerance by more than a millionth. */
class RefinementLawTest {
    private static final double STABLE = 1e-6;
    private static final double STATION_STEP = 10;
    private static final double TEMPERATURE_STEP = 10;
    private static final int MANY_SAMPLES = 500;

    @Provide
    Arbitrary<AnySection> sections() {
        return AnySection.any();
    }

    private static void stable(Tolerance coarse, Tolerance fine) {
        double expected = AnySection.allowed(fine);
        double tolerance = Double.isInfinite(expected) ? 0 : STABLE * expected;
        assertEquals(expected, AnySection.allowed(coarse), tolerance, coarse + " and " + fine);
    }

    /** A column that starts a hair's breadth above a kink takes one short step and then a long one. */
    @Example
    void stableWithAKinkOfTheTemperatureJustBelowTheShoe() {
        TemperatureProfile line = Wells.standard().temperature();
        for (double below : new double[] {1e-8, 1e-6, 1e-3, 1}) {
            double kink = Wells.SHOE + below;
            TemperatureProfile kinked = TemperatureProfile.of(
                    new double[] {0, kink, 9000}, new double[] {line.at(0), line.at(kink), line.at(9000)});
            stable(
                    Wells.standard().temperature(kinked).drilled(),
                    Wells.standard().drilled());
        }
    }

    /** The lower end passes from beside drill pipe to beside collars between two samples of the top. */
    @Example
    void aLowBetweenTwoSamplesIsFound() {
        stableUnderMorePositionsOfTheBubble(
                new AnySection(1593.435, 302.151, 1128.502, 21.889, -6.682, 9.084, 50.597, 86.722, 0.015));
        stableUnderMorePositionsOfTheBubble(new AnySection(1500, 300, 1100, 20, 0, 0, 16.034, 92.717, 0.002));
    }

    /** Of the seeds 0 to 9999 all are stable; these fourteen were not before kill mud and curves were looked into. */
    @Example
    void stableInAnyWell() {
        LongStream once = LongStream.of(276, 1673, 3152, 3491, 4592, 7462, 7766, 7892, 8288, 8380, 8646, 8793, 9156);
        LongStream.concat(LongStream.range(0, 300), once)
                .forEach(seed -> stable(
                        new RandomWell(seed).drilled(ToleranceSolver.DEFAULT_SAMPLES),
                        new RandomWell(seed).drilled(2 * MANY_SAMPLES)));
    }

    @Property(tries = 60, seed = "1")
    void stableUnderMorePositionsOfTheBubble(@ForAll("sections") AnySection section) {
        Wells wells = section.wells();
        Model model = wells.model();
        ToleranceSolver solver = new ToleranceSolver(
                model.gas().orElseThrow(),
                wells.temperature(),
                model.mudColumn().orElseThrow(),
                MethodOptions.DEFAULT,
                new ToleranceSolver.Circulation(0, OptionalDouble.of(0)),
                MANY_SAMPLES);
        Kick kick = model.kick(Kick.Scenario.DRILLED, section.bottom());
        stable(wells.drilled(), solver.solve(model.hole(section.bottom()), Optional.empty(), kick));
    }

    /** The gas column is integrated between kinks of the temperature: points on the same line shorten its steps. */
    @Property(tries = 60, seed = "1")
    void stableUnderShorterStepsOfTheGasColumn(@ForAll("sections") AnySection section) {
        TemperatureProfile line = section.wells().temperature();
        double[] depths = new double[(int) (9000 / TEMPERATURE_STEP) + 1];
        Arrays.setAll(depths, i -> i * TEMPERATURE_STEP);
        double[] temperatures = Arrays.stream(depths).map(line::at).toArray();
        stable(
                section.wells().drilled(),
                section.wells()
                        .temperature(TemperatureProfile.of(depths, temperatures))
                        .drilled());
    }

    @Property(tries = 60, seed = "1")
    void stableUnderADenserSurvey(@ForAll("sections") AnySection section) {
        WellPath path = WellPath.of(section.stations());
        List<SurveyStation> dense = new ArrayList<>();
        double last = -1;
        for (SurveyStation station : section.stations()) {
            for (double md = last + STATION_STEP; last >= 0 && md < station.measuredDepth() - 1; md += STATION_STEP) {
                dense.add(new SurveyStation(md, path.inclination(md), 0));
            }
            dense.add(station);
            last = station.measuredDepth();
        }
        stable(
                section.wells().drilled(),
                section.wells().path(WellPath.of(dense)).drilled());
    }
}
