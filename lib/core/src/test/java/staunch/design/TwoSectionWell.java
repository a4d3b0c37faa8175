package staunch.design;

import static staunch.units.Quantities.MPa;
import static staunch.units.Quantities.bar;
import static staunch.units.Quantities.degC;
import static staunch.units.Quantities.kgPerM3;
import static staunch.units.Quantities.m;
import static staunch.units.Quantities.m3;
import static staunch.units.Quantities.quantity;

import java.util.List;
import staunch.earth.EarthModel;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.TemperatureProfile;
import staunch.envelope.Criteria;
import staunch.envelope.Drilling;
import staunch.envelope.SectionPlan;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
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

    private static final Criteria CRITERIA = Criteria.of("invented rules", "tests", new Source("invented", ""))
            .withDrilledTolerance(m3(2))
            .withSwabbedTolerance(m3(2))
            .withKickIntensity(kgPerM3(30))
            .withStrengthMargin(bar(0))
            .withTripMargin(kgPerM3(0));

    private TwoSectionWell() {}

    /** A case with those designs. */
    static WellCase with(CasingDesign... designs) {
        return WellCase.of(
                CaseHeader.of("Tern-3", "invented test well", "invented well"),
                UnitSystem.METRIC,
                Datum.onLand("rotary table", m(10), m(8)),
                WellPath.vertical(9000),
                EarthModel.of(
                        gradient(1400),
                        gradient(1860),
                        TemperatureProfile.geothermal(degC(15), quantity("3 degC/100m"), m(9000))),
                designs);
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
        SectionPlan plan = SectionPlan.of(name, drilling, List.of(hole), m(hole.diameter()))
                .withMud(Mud.waterBased("mud", mud))
                .withString(new DrillString(List.of(new StringComponent("drill pipe", 10, 0.127, 0.1086))))
                .withGas(GasComposition.sweet(0.65))
                .withCirculatingOverbalance(bar(0))
                .withChokeHandlingAllowance(bar(0));
        return drilling == Drilling.SHUT_IN ? plan.withCriteria(CRITERIA) : plan;
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
