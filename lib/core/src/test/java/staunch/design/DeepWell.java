package staunch.design;

import static staunch.units.Quantities.MPa;
import static staunch.units.Quantities.bar;
import static staunch.units.Quantities.kgPerM3;
import static staunch.units.Quantities.m;
import static staunch.units.Quantities.m3;

import java.util.ArrayList;
import java.util.List;
import staunch.earth.EarthModel;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.envelope.Criteria;
import staunch.envelope.Drilling;
import staunch.envelope.SectionPlan;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.units.Physics;
import staunch.units.Source;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;

/** An invented vertical well of many strings, whose pore pressure grows faster than its depth. */
final class DeepWell {
    private static final double TOTAL_DEPTH = 5500;

    private static final Criteria CRITERIA = Criteria.of("invented rules", "tests", new Source("invented", ""))
            .withDrilledTolerance(m3(2))
            .withSwabbedTolerance(m3(2))
            .withKickIntensity(kgPerM3(30))
            .withStrengthMargin(bar(0))
            .withTripMargin(kgPerM3(20))
            .withSurgeMargin(kgPerM3(20));

    private DeepWell() {}

    /** So many strings between a conductor and the last hole, all needed or nearly so. */
    static WellCase of(int strings) {
        return weaker(strings, 0, false);
    }

    /** The same with a strength lower by so much, kg/m³; the second and all further strings hung as liners, or not. */
    static WellCase weaker(int strings, double by, boolean liners) {
        return with(
                design(strings, liners),
                profile(0, 1030, 1000, 1030, 3000, 1350, 5500, 1850, 6000, 1850),
                profile(
                        0, 1400 - by, 600, 1500 - by, 1500, 1700 - by, 3000, 1900 - by, 5500, 2150 - by, 6000,
                        2150 - by));
    }

    /** One gradient of each. */
    static WellCase easy(int strings) {
        return with(design(strings, false), profile(0, 1050, 6000, 1050), profile(0, 1900, 6000, 1900));
    }

    private static WellCase with(CasingDesign design, PressureProfile pore, PressureProfile strength) {
        WellCase base = TwoSectionWell.with(design);
        return WellCase.of(
                base.header(),
                base.units(),
                base.datum(),
                base.path(),
                EarthModel.of(
                        Range.of(pore),
                        Range.of(strength),
                        base.earth().temperature().orElseThrow()),
                base.designs().get(0));
    }

    /** A conductor at 300 m, then strings at even distances. */
    private static CasingDesign design(int count, boolean liners) {
        List<CasingString> strings = new ArrayList<>(List.of(string("conductor", 0, 300, 0.508)));
        List<SectionPlan> sections = new ArrayList<>();
        double above = 300;
        for (int i = 0; i <= count; i++) {
            double diameter = 0.40 - 0.25 * i / count;
            double below = i == count ? TOTAL_DEPTH : 300 + (TOTAL_DEPTH - 300) * (i + 1) / (count + 1);
            sections.add(section("hole " + (i + 1), new HoleInterval(above, below, diameter), 1500));
            if (i < count) {
                strings.add(string("string " + (i + 1), liners && i > 0 ? above - 100 : 0, below, diameter - 0.03));
            }
            above = below;
        }
        return new CasingDesign("planned", strings, sections);
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

    private static CasingString string(String name, double top, double shoe, double outside) {
        return CasingString.of(
                        name,
                        CasingInterval.of(m(top), m(shoe), m(outside), m(outside - 0.02))
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
