package staunch.design;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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

/** An invented vertical land well: a top hole on a diverter, below it a section that is shut in. */
final class TwoSectionWell {
    static final String TOP = "12 1/4 in";
    static final String BELOW = "8 1/2 in";

    private TwoSectionWell() {}

    /** A case with those designs. */
    static WellCase with(CasingDesign... designs) {
        EarthModel earth = new EarthModel(
                Optional.of(Range.of(gradient(1400))),
                Optional.of(Range.of(gradient(1860))),
                List.of(),
                List.of(),
                Optional.of(TemperatureProfile.geothermal(new TemperatureProfile.Point(0, 288.15), 0.03, 9000)),
                List.of());
        return new WellCase(
                new CaseHeader(
                        "Tern-3",
                        "invented test well",
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
                Arrays.asList(designs),
                PressureEquipment.NONE,
                MethodOptions.DEFAULT,
                List.of(),
                List.of());
    }

    /** A design with its second shoe at a depth, m, and a mud of that density below it, kg/m³. */
    static CasingDesign design(String name, double shoe, double mud) {
        return new CasingDesign(
                name,
                List.of(string("13 3/8 in casing", 500, 0.33973), string("9 5/8 in casing", shoe, 0.24448)),
                List.of(
                        section(TOP, Drilling.DIVERTER, new HoleInterval(500, shoe, 0.31115), 1200),
                        section(BELOW, Drilling.SHUT_IN, new HoleInterval(shoe, 4500, 0.2159), mud)));
    }

    private static SectionPlan section(String name, Drilling drilling, HoleInterval hole, double mud) {
        Criteria criteria = new Criteria(
                "invented rules",
                "tests",
                new Source("invented", ""),
                OptionalDouble.of(2),
                OptionalDouble.of(2),
                OptionalDouble.of(30),
                OptionalDouble.of(0),
                OptionalDouble.of(0),
                OptionalDouble.empty());
        return new SectionPlan(
                name,
                drilling,
                List.of(hole),
                hole.diameter(),
                Optional.of(Mud.waterBased("mud", mud)),
                Optional.of(new DrillString(List.of(new StringComponent("drill pipe", 10, 0.127, 0.1086)))),
                0,
                Optional.of(GasComposition.sweet(0.65)),
                List.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0),
                OptionalDouble.of(0),
                drilling == Drilling.SHUT_IN ? Optional.of(criteria) : Optional.empty());
    }

    private static CasingString string(String name, double shoe, double outside) {
        return new CasingString(
                name,
                List.of(new CasingInterval(
                        0,
                        shoe,
                        outside,
                        outside - 0.024,
                        Optional.of("P110"),
                        OptionalDouble.of(758e6),
                        OptionalDouble.of(65e6),
                        OptionalDouble.empty(),
                        0)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0.8),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static PressureProfile gradient(double density) {
        double deep = Physics.ATMOSPHERE + density * Physics.GRAVITY * 9000;
        return PressureProfile.of(new double[] {0, 9000}, new double[] {Physics.ATMOSPHERE, deep});
    }
}
