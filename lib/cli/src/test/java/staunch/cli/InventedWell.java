package staunch.cli;

import static staunch.units.Quantities.MPa;
import static staunch.units.Quantities.bar;
import static staunch.units.Quantities.degC;
import static staunch.units.Quantities.kgPerM3;
import static staunch.units.Quantities.litres;
import static staunch.units.Quantities.m;
import static staunch.units.Quantities.m3;
import static staunch.units.Quantities.quantity;

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
import staunch.envelope.OperationsPlan;
import staunch.envelope.SectionPlan;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.fluid.MudBase;
import staunch.fluid.RheometerReadings;
import staunch.limit.GasSeparator;
import staunch.limit.PressureEquipment;
import staunch.limit.PressureRating;
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
        Criteria criteria = Criteria.of("invented rules", "tests", new Source("invented", ""))
                .withDrilledTolerance(m3(4))
                .withSwabbedTolerance(m3(4))
                .withKickIntensity(kgPerM3(60))
                .withStrengthMargin(bar(0))
                .withTripMargin(kgPerM3(0));
        SectionPlan top = section("12 1/4 in", Drilling.DIVERTER, new HoleInterval(500, 3000, 0.31115));
        SectionPlan below = section("8 1/2 in", Drilling.SHUT_IN, new HoleInterval(3000, 4500, 0.2159))
                .withCriteria(criteria);
        WellCase wellCase = WellCase.of(
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
                Datum.onLand("rotary table", m(10), m(8)),
                WellPath.vertical(9000),
                EarthModel.of(
                        gradient(1400),
                        gradient(1860),
                        TemperatureProfile.geothermal(degC(15), quantity("3 degC/100m"), m(9000))),
                new CasingDesign(
                        "base",
                        List.of(string("13 3/8 in casing", 500, 0.33973), string("9 5/8 in casing", 3000, 0.24448)),
                        List.of(top, below)));
        return new WellCase(
                wellCase.header(),
                wellCase.units(),
                wellCase.datum(),
                wellCase.path(),
                wellCase.earth(),
                wellCase.designs(),
                PressureEquipment.NONE.with(
                        Optional.of(new PressureRating("mud pump", 3.45e7, Optional.empty())),
                        Optional.of(new GasSeparator(
                                "separator",
                                OptionalDouble.of(3),
                                OptionalDouble.of(60),
                                OptionalDouble.of(0.2),
                                OptionalDouble.empty(),
                                Optional.empty()))),
                wellCase.options(),
                List.of(new InputFile("case.yaml", "00")),
                List.of());
    }

    private static SectionPlan section(String name, Drilling drilling, HoleInterval hole) {
        return SectionPlan.of(name, drilling, List.of(hole), m(hole.diameter()))
                .withMud(new Mud(
                        "mud",
                        1560,
                        MudBase.WATER,
                        Optional.of(new RheometerReadings(Map.of(600, 60.0, 300, 40.0, 100, 22.0, 6, 8.0, 3, 7.0))),
                        Optional.empty()))
                .withString(new DrillString(List.of(new StringComponent("drill pipe", 10, 0.127, 0.1086))))
                .withGas(GasComposition.sweet(0.65))
                .withSlowCirculations(
                        List.of(new SlowCirculation(0.008, OptionalDouble.of(2.5e6), OptionalDouble.empty())))
                .withPumpOutput(litres(16.4))
                .withActiveVolume(m3(120))
                .withCirculatingOverbalance(bar(0))
                .withChokeHandlingAllowance(bar(0))
                .withOperations(OperationsPlan.NONE
                        .withSurfaceLines(m3(1.5))
                        .withVolumetric(new OperationsPlan.Volumetric(OptionalDouble.of(1e6), OptionalDouble.of(7e5)))
                        .withBullheading(new OperationsPlan.Bullhead(OptionalDouble.empty(), OptionalDouble.of(2e6))));
    }

    private static CasingString string(String name, double shoe, double outside) {
        return CasingString.of(
                        name,
                        CasingInterval.of(m(0), m(shoe), m(outside), m(outside - 0.024))
                                .withGrade("P110")
                                .withYieldStrength(MPa(758))
                                .withBurstRating(MPa(65)))
                .withAllowedBurstShare(0.8);
    }

    private static Range gradient(double density) {
        return Range.of(PressureProfile.ofEquivalentDensity(kgPerM3(density), m(9000)));
    }
}
