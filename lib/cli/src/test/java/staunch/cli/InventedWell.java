package staunch.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.SlowCirculation;
import staunch.design.CaseHeader;
import staunch.design.CasingDesign;
import staunch.design.InputFile;
import staunch.design.WellCase;
import staunch.earth.EarthModel;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.TemperatureProfile;
import staunch.envelope.Criteria;
import staunch.envelope.Drilling;
import staunch.envelope.MethodOptions;
import staunch.envelope.OperationsPlan;
import staunch.envelope.SectionPlan;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.fluid.MudBase;
import staunch.fluid.RheometerReadings;
import staunch.limit.GasSeparator;
import staunch.limit.PressureEquipment;
import staunch.limit.PressureRating;
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

/** An invented vertical land well of two sections, the upper one on a diverter. */
final class InventedWell {
    private InventedWell() {}

    static WellCase wellCase() {
        SectionPlan top =
                section("12 1/4 in", Drilling.DIVERTER, new HoleInterval(500, 3000, 0.31115), Optional.empty());
        Criteria criteria = new Criteria(
                "invented rules",
                "tests",
                new Source("invented", ""),
                OptionalDouble.of(4),
                OptionalDouble.of(4),
                OptionalDouble.of(60),
                OptionalDouble.of(0),
                OptionalDouble.of(0),
                OptionalDouble.empty());
        SectionPlan below =
                section("8 1/2 in", Drilling.SHUT_IN, new HoleInterval(3000, 4500, 0.2159), Optional.of(criteria));
        EarthModel earth = new EarthModel(
                Optional.of(Range.of(gradient(1400))),
                Optional.of(Range.of(gradient(1860))),
                List.of(),
                List.of(),
                Optional.of(TemperatureProfile.geothermal(new TemperatureProfile.Point(0, 288.15), 0.03, 9000)),
                List.of());
        return new WellCase(
                new CaseHeader(
                        "Tern-2",
                        "invented test well",
                        Optional.of("A"),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("invented well")),
                UnitSystem.METRIC,
                new Datum("rotary table", 10, new Datum.OnLand(8)),
                WellPath.vertical(9000),
                earth,
                List.of(new CasingDesign(
                        "base",
                        List.of(string("13 3/8 in casing", 500, 0.33973), string("9 5/8 in casing", 3000, 0.24448)),
                        List.of(top, below))),
                PressureEquipment.NONE.with(
                        Optional.of(new PressureRating("mud pump", 3.45e7, Optional.empty())),
                        Optional.of(new GasSeparator(
                                "separator",
                                OptionalDouble.of(3),
                                OptionalDouble.of(60),
                                OptionalDouble.of(0.2),
                                OptionalDouble.empty(),
                                Optional.empty()))),
                MethodOptions.DEFAULT,
                List.of(new InputFile("case.yaml", "00")),
                List.of());
    }

    private static SectionPlan section(String name, Drilling drilling, HoleInterval hole, Optional<Criteria> criteria) {
        return new SectionPlan(
                name,
                drilling,
                List.of(hole),
                hole.diameter(),
                Optional.of(new Mud(
                        "mud",
                        1560,
                        MudBase.WATER,
                        Optional.of(new RheometerReadings(Map.of(600, 60.0, 300, 40.0, 100, 22.0, 6, 8.0, 3, 7.0))),
                        Optional.empty())),
                Optional.of(new DrillString(List.of(new StringComponent("drill pipe", 10, 0.127, 0.1086)))),
                0,
                OptionalDouble.empty(),
                Optional.of(GasComposition.sweet(0.65)),
                List.of(new SlowCirculation(0.008, OptionalDouble.of(2.5e6), OptionalDouble.empty())),
                OptionalDouble.of(0.0164),
                OptionalDouble.of(120),
                OptionalDouble.empty(),
                OptionalDouble.of(0),
                OptionalDouble.of(0),
                criteria,
                operations());
    }

    private static OperationsPlan operations() {
        OperationsPlan none = OperationsPlan.NONE;
        return new OperationsPlan(
                none.influx(),
                none.killRate(),
                OptionalDouble.of(1.5),
                none.killMud(),
                none.killSheet(),
                none.startUpSteps(),
                none.yielding(),
                none.migration(),
                new OperationsPlan.Volumetric(OptionalDouble.of(1e6), OptionalDouble.of(7e5)),
                none.lubrication(),
                new OperationsPlan.Bullhead(OptionalDouble.empty(), OptionalDouble.of(2e6)));
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
