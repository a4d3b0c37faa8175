package staunch.bench;

import static staunch.units.Quantities.MPa;
import static staunch.units.Quantities.bar;
import static staunch.units.Quantities.degC;
import static staunch.units.Quantities.kgPerM3;
import static staunch.units.Quantities.m;
import static staunch.units.Quantities.m3;
import static staunch.units.Quantities.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import staunch.design.CaseHeader;
import staunch.design.CasingDesign;
import staunch.design.WellCase;
import staunch.earth.EarthModel;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.TemperatureProfile;
import staunch.envelope.Criteria;
import staunch.envelope.Drilling;
import staunch.envelope.SectionPlan;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.units.Physics;
import staunch.units.Source;
import staunch.units.UnitSystem;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.Datum;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.WellPath;

/** An invented vertical well of many strings, whose pore pressure grows faster than its depth. */
final class BenchWell {
    private static final double TOTAL_DEPTH = 5500;

    private static final Criteria CRITERIA = Criteria.of("invented rules", "timing", new Source("invented", ""))
            .withDrilledTolerance(m3(2))
            .withSwabbedTolerance(m3(2))
            .withKickIntensity(kgPerM3(30))
            .withStrengthMargin(bar(0))
            .withTripMargin(kgPerM3(20))
            .withSurgeMargin(kgPerM3(20));

    private BenchWell() {}

    /** So many designs with so many strings below the conductor, their shoes at different depths, all sections shut in. */
    static WellCase of(int designs, int strings) {
        PressureProfile pore = profile(0, 1030, 1000, 1030, 3000, 1350, 5500, 1850, 6000, 1850);
        PressureProfile strength = profile(0, 1400, 600, 1500, 1500, 1700, 3000, 1900, 5500, 2150, 6000, 2150);
        return WellCase.of(
                CaseHeader.of("Bench-1", "invented well for timing", "invented well"),
                UnitSystem.METRIC,
                Datum.onLand("rotary table", m(10), m(8)),
                WellPath.vertical(9000),
                EarthModel.of(
                        Range.of(pore),
                        Range.of(strength),
                        TemperatureProfile.geothermal(degC(15), quantity("3 degC/100m"), m(9000))),
                IntStream.range(0, designs).mapToObj(i -> design(i, strings)).toArray(CasingDesign[]::new));
    }

    private static CasingDesign design(int number, int count) {
        double top = 300 + 20 * number;
        List<CasingString> strings = new ArrayList<>(List.of(string("conductor", top, 0.508)));
        List<SectionPlan> sections = new ArrayList<>();
        double above = top;
        for (int i = 0; i <= count; i++) {
            double diameter = 0.40 - 0.25 * i / count;
            double below = i == count ? TOTAL_DEPTH : top + (TOTAL_DEPTH - top) * (i + 1) / (count + 1);
            sections.add(section("hole " + (i + 1), new HoleInterval(above, below, diameter), mud(below)));
            if (i < count) {
                strings.add(string("string " + (i + 1), below, diameter - 0.03));
            }
            above = below;
        }
        return new CasingDesign("design " + (number + 1), strings, sections);
    }

    /** Above the pore pressure at a depth, which is linear in depth between its points. */
    private static double mud(double depth) {
        double atThree = 1350 * 3000;
        double weight = depth <= 3000
                ? 1030 * 1000 + (atThree - 1030 * 1000) * (depth - 1000) / 2000
                : atThree + (1850 * 5500 - atThree) * (depth - 3000) / 2500;
        return weight / depth + 40;
    }

    private static SectionPlan section(String name, HoleInterval hole, double mud) {
        return SectionPlan.of(name, Drilling.SHUT_IN, List.of(hole), m(hole.diameter()))
                .withMud(Mud.waterBased("mud", mud))
                .withString(new DrillString(List.of(new StringComponent("drill pipe", 10, 0.0889, 0.07))))
                .withGas(GasComposition.sweet(0.65))
                .withCirculatingOverbalance(bar(0))
                .withChokeHandlingAllowance(bar(0))
                .withCriteria(CRITERIA);
    }

    private static CasingString string(String name, double shoe, double outside) {
        return CasingString.of(
                        name,
                        CasingInterval.of(m(0), m(shoe), m(outside), m(outside - 0.02))
                                .withGrade("P110")
                                .withYieldStrength(MPa(758))
                                .withBurstRating(MPa(190)))
                .withAllowedBurstShare(0.8);
    }

    private static PressureProfile profile(double... depthsAndDensities) {
        int n = depthsAndDensities.length / 2;
        double[] z = new double[n];
        double[] p = new double[n];
        for (int i = 0; i < n; i++) {
            z[i] = depthsAndDensities[2 * i];
            p[i] = Physics.ATMOSPHERE + depthsAndDensities[2 * i + 1] * Physics.GRAVITY * z[i];
        }
        return PressureProfile.of(z, p);
    }
}
