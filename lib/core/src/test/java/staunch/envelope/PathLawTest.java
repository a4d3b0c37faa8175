package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/** What the survey must not change. */
class PathLawTest {
    /** Sums of some thousand pressures and depths. */
    private static final double ROUNDING = 1e-9;

    /** To which a tolerance is solved. */
    private static final double STABLE = 1e-6;

    @Provide
    Arbitrary<AnySection> sections() {
        return AnySection.any();
    }

    @Property(tries = 150, seed = "1")
    void verticalEqualsDeviatedAtZeroInclination(
            @ForAll("sections") AnySection any, @ForAll @DoubleRange(min = 0, max = 6.28) double azimuth) {
        AnySection section = any.vertical();
        List<SurveyStation> turned = section.stations().stream()
                .map(s -> new SurveyStation(s.measuredDepth(), 0, s.measuredDepth() > 0 ? azimuth : 0))
                .toList();
        same(section.wells().path(WellPath.vertical(8900)), section.wells().path(WellPath.of(turned)), ROUNDING);
    }

    @Property(tries = 150, seed = "1")
    void aSurveySplitAtAnyStationChangesNothing(
            @ForAll("sections") AnySection section, @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        WellPath path = WellPath.of(section.stations());
        double md = share * section.bottom();
        List<SurveyStation> split = new ArrayList<>(section.stations());
        if (split.stream().anyMatch(s -> Math.abs(s.measuredDepth() - md) < 1e-3)) {
            return;
        }
        split.add(new SurveyStation(md, path.inclination(md), 0));
        split.sort(Comparator.comparingDouble(SurveyStation::measuredDepth));
        same(section.wells(), section.wells().path(WellPath.of(split)), STABLE);
    }

    private static void same(Wells one, Wells other, double tolerance) {
        same(one.drilled(), other.drilled(), tolerance);
        same(one.swabbed(), other.swabbed(), tolerance);
        double maasp = maasp(one);
        assertEquals(maasp, maasp(other), 1e-3 + ROUNDING * Math.abs(maasp), "formation MAASP");
    }

    private static void same(Tolerance one, Tolerance other, double tolerance) {
        double a = AnySection.allowed(one);
        assertEquals(a, AnySection.allowed(other), tolerance * (Double.isInfinite(a) ? 0 : a), one + " and " + other);
    }

    private static double maasp(Wells wells) {
        Model model = wells.model();
        return new MaaspCalculator(wells.input(), model.strength(), model.mudColumn())
                .atSectionMud()
                .orElseThrow()
                .formation()
                .orElseThrow()
                .pressure()
                .orElseThrow();
    }
}
