package staunch.present;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.Bullheading;
import staunch.control.ChokeLineLoss;
import staunch.control.Circulation;
import staunch.control.CirculationMethod;
import staunch.control.CirculationPlan;
import staunch.control.CirculationSchedule;
import staunch.control.ClosedWell;
import staunch.control.HydrostaticConstant;
import staunch.control.KillSheet;
import staunch.control.KillSheetInput;
import staunch.control.LineBore;
import staunch.control.LubricateAndBleed;
import staunch.control.Migration;
import staunch.control.MigrationOutlook;
import staunch.control.PressureLimit;
import staunch.control.SlowCirculation;
import staunch.control.StringFriction;
import staunch.control.VolumetricMethod;
import staunch.earth.TemperatureProfile;
import staunch.fluid.DeviationFactor;
import staunch.fluid.Gas;
import staunch.fluid.GasComposition;
import staunch.fluid.PseudoCriticalCorrelation;
import staunch.fluid.RealGas;
import staunch.influx.AnnulusGrid;
import staunch.influx.GasColumn;
import staunch.influx.MigrationBracket;
import staunch.influx.MudColumn;
import staunch.units.Physics;
import staunch.well.Annulus;
import staunch.well.AnnulusGeometry;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/** Operations on a made-up deviated well, computed by the library. */
public final class OperationFixtures {
    private static final double MUD = 1300;
    private static final double BOTTOM = 3000;
    private static final double SHOE = 1800;

    private static final WellPath PATH = WellPath.of(List.of(
            new SurveyStation(0, 0, 0),
            new SurveyStation(900, 0, 0),
            new SurveyStation(1700, Math.toRadians(50), 0),
            new SurveyStation(BOTTOM, Math.toRadians(50), 0)));

    private static final DrillString STRING = new DrillString(List.of(
            new StringComponent("collars", 120, 0.1651, 0.0714),
            new StringComponent("heavyweight pipe", 150, 0.127, 0.0762),
            new StringComponent("drill pipe", BOTTOM - 270, 0.127, 0.1086)));

    private OperationFixtures() {}

    private static Annulus annulus(double top) {
        CasingInterval interval = new CasingInterval(
                top,
                SHOE,
                0.2445,
                0.2205,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0);
        CasingString casing = new CasingString(
                "9 5/8 in casing",
                List.of(interval),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        return Annulus.of(new AnnulusGeometry(
                List.of(casing), List.of(new HoleInterval(SHOE, BOTTOM, 0.2159)), STRING, BOTTOM, top, BOTTOM));
    }

    private static double vertical() {
        return PATH.verticalDepth(BOTTOM);
    }

    private static double formation() {
        return Physics.ATMOSPHERE + Physics.GRAVITY * (MUD + 60) * vertical();
    }

    private static Gas gas() {
        return RealGas.of(
                new GasComposition(0.65, 0, 0.02, 0),
                PseudoCriticalCorrelation.SUTTON_1985,
                DeviationFactor.DRANCHUK_ABOU_KASSEM);
    }

    private static TemperatureProfile temperature() {
        return TemperatureProfile.of(new double[] {0, 4000}, new double[] {288.15, 400.15});
    }

    /** Limits that are watched: one on the casing at the stack, one at the shoe. */
    public static List<PressureLimit> limits() {
        return List.of(
                new PressureLimit("9 5/8 in casing", 0, 2.5e7),
                new PressureLimit(
                        "9 5/8 in shoe", SHOE, Physics.ATMOSPHERE + Physics.GRAVITY * 1680 * PATH.verticalDepth(SHOE)));
    }

    /** The influx circulated out. */
    public static CirculationSchedule schedule(CirculationMethod method) {
        Annulus annulus = annulus(0);
        double[] watched =
                limits().stream().mapToDouble(PressureLimit::measuredDepth).toArray();
        AnnulusGrid grid = AnnulusGrid.of(annulus, PATH, watched);
        return Circulation.run(new CirculationPlan(
                grid,
                new GasColumn(gas(), temperature()),
                MudColumn.constant(MUD),
                method,
                new CirculationPlan.Pressures(formation(), formation() + 3.5e5, 0),
                4,
                annulus.stringVolume(),
                new CirculationPlan.Pump(0.008, OptionalDouble.of(0.0164)),
                watched));
    }

    /** The well shut in on the influx. */
    public static ClosedWell closedWell() {
        return new ClosedWell(
                PATH,
                annulus(0),
                gas(),
                temperature(),
                new ClosedWell.WellMud(MUD, 0.03, MUD),
                new ClosedWell.Influx(formation(), 4),
                new ClosedWell.Yielding(0.45e-9, 0.1e-9, true, 0),
                limits());
    }

    /** The well left closed. */
    public static MigrationOutlook outlook() {
        return Migration.bracket(closedWell(), MigrationBracket.PUBLISHED);
    }

    /** The same without anything that yields. */
    public static MigrationOutlook rigidOutlook() {
        return Migration.bracket(closedWell().rigid(), MigrationBracket.PUBLISHED);
    }

    /** What the volumetric method is to hold. */
    public static VolumetricMethod.Plan volumetricPlan() {
        return new VolumetricMethod.Plan(closedWell(), MigrationBracket.PUBLISHED.medium(), 1e6, 7e5);
    }

    /** Mud lubricated in on gas at the top. */
    public static LubricateAndBleed.Table lubricateAndBleed() {
        return LubricateAndBleed.run(new LubricateAndBleed.Plan(
                closedWell(), 500, formation() + 1e6, 7e5, new LubricateAndBleed.Lubricant(MUD + 60, 1, 0.5)));
    }

    /** The influx pumped back. */
    public static Bullheading.Plan bullheadingPlan() {
        return new Bullheading.Plan(closedWell(), formation() + 2e6, MUD + 60, 1e6, 3.45e7);
    }

    /** Kill sheet with the stack at surface. */
    public static KillSheet killSheet() {
        return KillSheet.of(input(0, MUD, Optional.empty()));
    }

    /** Kill sheet with the stack on the seabed, heavy with warnings. */
    public static KillSheet subseaKillSheet() {
        return KillSheet.of(input(
                400,
                1560,
                Optional.of(new KillSheetInput.Subsea(
                        new ChokeLineLoss.Line(
                                new LineBore(400, 0.0762),
                                List.of(new SlowCirculation(0.008, OptionalDouble.of(2.3e6), OptionalDouble.of(3.9e6))),
                                1560,
                                1560,
                                Optional.empty()),
                        OptionalDouble.of(1030),
                        52,
                        5))));
    }

    private static KillSheetInput input(double top, double mud, Optional<KillSheetInput.Subsea> subsea) {
        PressureLimit shoe = limits().get(1);
        return new KillSheetInput(
                PATH,
                annulus(top),
                mud,
                new KillSheetInput.ShutIn(1.38e6, 2.4e6, 4),
                new KillSheetInput.Pump(
                        0.0164, 1.6, new SlowCirculation(0.008, OptionalDouble.of(2.3e6), OptionalDouble.empty())),
                new KillSheetInput.OpenHoleLimit(shoe.name(), shoe.measuredDepth(), shoe.pressure()),
                new KillSheetInput.KillMud(11.98, 0, 220, 4200),
                subsea,
                new KillSheetInput.Options(HydrostaticConstant.EXACT, StringFriction.BY_BORE, 12));
    }
}
