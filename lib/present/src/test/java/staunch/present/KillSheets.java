package staunch.present;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.ChokeLineLoss;
import staunch.control.FlowingMud;
import staunch.control.FrictionCurve;
import staunch.control.HydrostaticConstant;
import staunch.control.KillSheet;
import staunch.control.KillSheetInput;
import staunch.control.LineBore;
import staunch.control.SlowCirculation;
import staunch.control.StringFriction;
import staunch.fluid.FlowModel;
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

/** Kill sheets of a made-up deviated well, computed by the library. */
public final class KillSheets {
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

    private KillSheets() {}

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

    /** Kill sheet with the stack at surface. */
    public static KillSheet atSurface() {
        return KillSheet.of(input(0, MUD, Optional.empty()));
    }

    /** Kill sheet with the stack on the seabed, heavy with warnings. */
    public static KillSheet subsea() {
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
        double holds = Physics.ATMOSPHERE + Physics.GRAVITY * 1680 * PATH.verticalDepth(SHOE);
        return new KillSheetInput(
                PATH,
                annulus(top),
                mud,
                new KillSheetInput.ShutIn(1.38e6, 2.4e6, 4),
                new KillSheetInput.Pump(
                        0.0164, 1.6, new SlowCirculation(0.008, OptionalDouble.of(2.3e6), OptionalDouble.empty())),
                new KillSheetInput.OpenHoleLimit("9 5/8 in shoe", SHOE, holds),
                new KillSheetInput.KillMud(11.98, 0, 220, 4200),
                subsea,
                new KillSheetInput.Options(HydrostaticConstant.EXACT, StringFriction.BY_BORE, 12));
    }

    /** Friction of the well with the stack on the seabed. */
    public static FrictionCurve friction() {
        return FrictionCurve.of(
                new FrictionCurve.Well(PATH, annulus(400), Optional.of(new LineBore(400, 0.0762))),
                new FlowingMud(1560, new FlowModel.BinghamPlastic(0.03, 6)),
                0.015,
                10);
    }
}
