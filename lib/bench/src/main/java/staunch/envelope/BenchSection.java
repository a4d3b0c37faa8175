package staunch.envelope;

import static staunch.units.Quantities.MPa;
import static staunch.units.Quantities.bar;
import static staunch.units.Quantities.kgPerM3;
import static staunch.units.Quantities.litres;
import static staunch.units.Quantities.m;
import static staunch.units.Quantities.m3;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.SlowCirculation;
import staunch.earth.EarthModel;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.TemperatureProfile;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.fluid.MudBase;
import staunch.fluid.RheometerReadings;
import staunch.limit.PressureEquipment;
import staunch.limit.PressureRating;
import staunch.units.Physics;
import staunch.units.Source;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.Datum;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.WellPath;

/** An invented section for timing: vertical, 8 1/2 in below 9 5/8 in casing, drill pipe with collars, 200 depths. */
final class BenchSection {
    static final double SHOE = 3000;
    static final double BOTTOM = 4500;
    static final double MUD = 1560;
    static final double INTENSITY = 60;
    static final double STRENGTH = 1860;
    static final double HOLE = 0.2159;
    static final double PIPE = 0.127;
    static final double GAS_GRAVITY = 0.65;

    private static final StringComponent DRILL_PIPE = new StringComponent("drill pipe", 10, PIPE, 0.1086);
    private static final StringComponent COLLARS = new StringComponent("collars", 200, 0.1651, 0.0714);

    private BenchSection() {}

    /** The section as it is timed. */
    static SectionInput input() {
        TemperatureProfile geothermal =
                TemperatureProfile.geothermal(new TemperatureProfile.Point(0, 288.15), 0.03, BOTTOM);
        return input(MethodOptions.DEFAULT, geothermal, new DrillString(List.of(COLLARS, DRILL_PIPE)));
    }

    /** The same with an ideal gas at one temperature in a uniform annulus, for which there is a closed form. */
    static SectionInput closedForm(double temperature) {
        return input(
                with(MethodOptions.DEFAULT.definition(), MethodOptions.GasModel.IDEAL),
                TemperatureProfile.isothermal(temperature),
                new DrillString(List.of(DRILL_PIPE)));
    }

    /** The section with what its operations need: pump, readings of the mud, windows, ratings. */
    static SectionInput ready() {
        SectionInput input = input();
        OperationsPlan operations = OperationsPlan.NONE
                .withSurfaceLines(m3(1.5))
                .withYielding(new OperationsPlan.Yielding(
                        OptionalDouble.of(4.5e-10),
                        OptionalDouble.of(1.5e-10),
                        OptionalDouble.empty(),
                        Optional.of(true)))
                .withVolumetric(new OperationsPlan.Volumetric(OptionalDouble.of(1e6), OptionalDouble.of(7e5)))
                .withBullheading(new OperationsPlan.Bullhead(OptionalDouble.empty(), OptionalDouble.of(2e6)));
        SectionPlan plan = input.plan()
                .withMud(new Mud(
                        "mud",
                        MUD,
                        MudBase.WATER,
                        Optional.of(new RheometerReadings(Map.of(600, 68.0, 300, 42.0, 6, 8.0, 3, 7.0))),
                        Optional.empty()))
                .withSlowCirculations(
                        List.of(new SlowCirculation(0.008, OptionalDouble.of(4e6), OptionalDouble.empty())))
                .withPumpOutput(litres(12))
                .withOperations(operations);
        PressureEquipment equipment = PressureEquipment.NONE.with(
                Optional.of(new PressureRating("pump", 34e6, Optional.empty())), Optional.empty());
        return new SectionInput(
                input.datum(), input.path(), input.earth(), input.casing(), equipment, plan, input.options());
    }

    static SectionInput withDefinition(MethodOptions.ToleranceDefinition definition) {
        SectionInput input = input();
        return new SectionInput(
                input.datum(),
                input.path(),
                input.earth(),
                input.casing(),
                input.equipment(),
                input.plan(),
                with(definition, MethodOptions.DEFAULT.gasModel()));
    }

    private static MethodOptions with(MethodOptions.ToleranceDefinition definition, MethodOptions.GasModel gas) {
        return MethodOptions.DEFAULT.withDefinition(definition).withGasModel(gas);
    }

    private static SectionInput input(MethodOptions options, TemperatureProfile temperature, DrillString string) {
        Criteria criteria = Criteria.of("invented rules", "benchmarks", new Source("invented", ""))
                .withDrilledTolerance(m3(4))
                .withSwabbedTolerance(m3(4))
                .withKickIntensity(kgPerM3(INTENSITY))
                .withStrengthMargin(bar(0))
                .withTripMargin(kgPerM3(0));
        SectionPlan plan = SectionPlan.of(
                        "8 1/2 in", Drilling.SHUT_IN, List.of(new HoleInterval(SHOE, BOTTOM, HOLE)), m(HOLE))
                .withMud(Mud.waterBased("mud", MUD))
                .withString(string)
                .withGas(GasComposition.sweet(GAS_GRAVITY))
                .withCirculatingOverbalance(bar(0))
                .withChokeHandlingAllowance(bar(0))
                .withCriteria(criteria);
        EarthModel earth = EarthModel.of(gradient(1400), gradient(STRENGTH), temperature);
        return new SectionInput(
                new Datum("rotary table", 10, new Datum.OnLand(8)),
                WellPath.vertical(BOTTOM),
                earth,
                List.of(casing()),
                PressureEquipment.NONE,
                plan,
                options);
    }

    private static CasingString casing() {
        return CasingString.of(
                        "9 5/8 in casing",
                        CasingInterval.of(m(0), m(SHOE), m(0.24448), m(0.22049))
                                .withGrade("P110")
                                .withYieldStrength(MPa(758))
                                .withBurstRating(MPa(65)))
                .withAllowedBurstShare(0.8);
    }

    static double pressure(double density, double depth) {
        return Physics.ATMOSPHERE + density * Physics.GRAVITY * depth;
    }

    private static Range gradient(double density) {
        return Range.of(PressureProfile.ofEquivalentDensity(kgPerM3(density), m(BOTTOM)));
    }

    /** Tolerance of an ideal isothermal gas in a uniform vertical annulus, whose top at the shoe governs, m³. */
    static double closedFormVolume(double temperature) {
        double g = Physics.GRAVITY;
        double k = g * GAS_GRAVITY * Physics.MOLAR_MASS_AIR / (Physics.GAS_CONSTANT * temperature);
        double area = Math.PI / 4 * (HOLE * HOLE - PIPE * PIPE);
        double formation = pressure(MUD + INTENSITY, BOTTOM);
        double limit = pressure(STRENGTH, SHOE);
        double length = BOTTOM - SHOE;
        double s = 0;
        for (int i = 0; i < 50; i++) {
            double f = limit * Math.exp(k * s) - formation + MUD * g * (length - s);
            s -= f / (k * limit * Math.exp(k * s) - MUD * g);
        }
        double mass = area * limit * Math.expm1(k * s) / g;
        return area * -Math.log1p(-mass * g / (area * formation)) / k;
    }

    static void check(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException("not timed, since the answer is wrong: " + what);
        }
    }
}
