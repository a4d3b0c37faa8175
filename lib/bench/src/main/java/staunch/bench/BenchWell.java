package staunch.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
import staunch.envelope.MethodOptions;
import staunch.envelope.SectionPlan;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.limit.PressureEquipment;
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

    private BenchWell() {}

    /** So many designs with so many strings below the conductor, their shoes at different depths, all sections shut in. */
    static WellCase of(int designs, int strings) {
        PressureProfile pore = profile(0, 1030, 1000, 1030, 3000, 1350, 5500, 1850, 6000, 1850);
        PressureProfile strength = profile(0, 1400, 600, 1500, 1500, 1700, 3000, 1900, 5500, 2150, 6000, 2150);
        EarthModel earth = new EarthModel(
                Optional.of(Range.of(pore)),
                Optional.of(Range.of(strength)),
                List.of(),
                List.of(),
                Optional.of(TemperatureProfile.geothermal(new TemperatureProfile.Point(0, 288.15), 0.03, 9000)),
                List.of());
        return new WellCase(
                new CaseHeader(
                        "Bench-1",
                        "invented well for timing",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("invented well")),
                UnitSystem.METRIC,
                new Datum("rotary table", 10, new Datum.OnLand(8)),
                WellPath.vertical(9000),
                earth,
                IntStream.range(0, designs).mapToObj(i -> design(i, strings)).toList(),
                PressureEquipment.NONE,
                MethodOptions.DEFAULT,
                List.of(),
                List.of());
    }

    private static CasingDesign design(int number, int count) {
        double top = 300 + 20 * number;
        List<CasingString> strings = new ArrayList<>(List.of(string("conductor", top, 0.508)));
        List<SectionPlan> sections = new ArrayList<>();
        double above = top;
        for (int i = 0; i <= count; i++) {
            double diameter = 0.40 - 0.25 * i / count;
            double below = i == count ? TOTAL_DEPTH : top + (TOTAL_DEPTH - top) * (i + 1) / (count + 1);
            sections.add(
                    section("hole " + (i + 1), Drilling.SHUT_IN, new HoleInterval(above, below, diameter), mud(below)));
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

    private static SectionPlan section(String name, Drilling drilling, HoleInterval hole, double mud) {
        Criteria criteria = new Criteria(
                "invented rules",
                "timing",
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
                Optional.of(Mud.waterBased("mud", mud)),
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
