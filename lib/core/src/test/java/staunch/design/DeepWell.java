package staunch.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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

    private DeepWell() {}

    /** So many strings between a conductor and the last hole, all needed or nearly so. */
    static WellCase of(int strings) {
        return with(
                strings,
                profile(0, 1030, 1000, 1030, 3000, 1350, 5500, 1850, 6000, 1850),
                profile(0, 1400, 600, 1500, 1500, 1700, 3000, 1900, 5500, 2150, 6000, 2150));
    }

    /** One gradient of each. */
    static WellCase easy(int strings) {
        return with(strings, profile(0, 1050, 6000, 1050), profile(0, 1900, 6000, 1900));
    }

    private static WellCase with(int strings, PressureProfile pore, PressureProfile strength) {
        WellCase base = TwoSectionWell.with(design(strings));
        EarthModel e = base.earth();
        EarthModel earth = new EarthModel(
                Optional.of(Range.of(pore)),
                Optional.of(Range.of(strength)),
                List.of(),
                List.of(),
                e.temperature(),
                List.of());
        return new WellCase(
                base.header(),
                base.units(),
                base.datum(),
                base.path(),
                earth,
                base.designs(),
                base.equipment(),
                base.options(),
                base.files(),
                base.warnings());
    }

    /** A conductor at 300 m, then strings at even distances. */
    private static CasingDesign design(int count) {
        List<CasingString> strings = new ArrayList<>(List.of(string("conductor", 300, 0.508)));
        List<SectionPlan> sections = new ArrayList<>();
        double above = 300;
        for (int i = 0; i <= count; i++) {
            double diameter = 0.40 - 0.25 * i / count;
            double below = i == count ? TOTAL_DEPTH : 300 + (TOTAL_DEPTH - 300) * (i + 1) / (count + 1);
            Drilling drilling = Drilling.SHUT_IN;
            sections.add(section("hole " + (i + 1), drilling, new HoleInterval(above, below, diameter)));
            if (i < count) {
                strings.add(string("string " + (i + 1), below, diameter - 0.03));
            }
            above = below;
        }
        return new CasingDesign("planned", strings, sections);
    }

    private static SectionPlan section(String name, Drilling drilling, HoleInterval hole) {
        Criteria criteria = new Criteria(
                "invented rules",
                "tests",
                new Source("invented", ""),
                OptionalDouble.of(2),
                OptionalDouble.of(2),
                OptionalDouble.of(30),
                OptionalDouble.of(0),
                OptionalDouble.of(20),
                OptionalDouble.of(20));
        return new SectionPlan(
                name,
                drilling,
                List.of(hole),
                hole.diameter(),
                Optional.of(Mud.waterBased("mud", 1500)),
                Optional.of(new DrillString(List.of(new StringComponent("drill pipe", 10, 0.0889, 0.07)))),
                0,
                Optional.of(GasComposition.sweet(0.65)),
                List.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0),
                OptionalDouble.of(0),
                Optional.of(criteria));
    }

    private static CasingString string(String name, double shoe, double outside) {
        return new CasingString(
                name,
                List.of(new CasingInterval(
                        0,
                        shoe,
                        outside,
                        outside - 0.02,
                        Optional.of("P110"),
                        OptionalDouble.of(758e6),
                        OptionalDouble.of(1.9e8),
                        OptionalDouble.empty(),
                        0)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0.8),
                OptionalDouble.empty(),
                OptionalDouble.empty());
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
