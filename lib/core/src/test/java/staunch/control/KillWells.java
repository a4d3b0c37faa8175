package staunch.control;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.well.Annulus;
import staunch.well.AnnulusGeometry;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/** Invented wells for tests. */
final class KillWells {
    private KillWells() {}

    static final DrillString TAPERED = new DrillString(List.of(
            new StringComponent("collars", 150, 0.1651, 0.0714),
            new StringComponent("heavyweight pipe", 100, 0.127, 0.0762),
            new StringComponent("drill pipe 4 in", 1200, 0.1016, 0.0848),
            new StringComponent("drill pipe 5 in", 500, 0.127, 0.1086)));

    /** Casing to 2000 m, open hole to 3000 m. */
    static Annulus annulus(double bit, double top) {
        return annulus(TAPERED, bit, top, 3000);
    }

    static Annulus annulus(DrillString string, double bit, double top, double bottom) {
        return Annulus.of(new AnnulusGeometry(
                List.of(casing(top, 2000, 0.2205)),
                List.of(new HoleInterval(2000, bottom, 0.2159)),
                string,
                bit,
                top,
                bottom));
    }

    static Annulus plugged() {
        return annulus(new DrillString(List.of(new StringComponent("plugged pipe", 100, 0.127, 0))), 3000, 0, 3000);
    }

    static CasingString casing(double top, double shoe, double insideDiameter) {
        CasingInterval interval = new CasingInterval(
                top,
                shoe,
                insideDiameter + 0.024,
                insideDiameter,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0);
        return new CasingString(
                "casing",
                List.of(interval),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** Vertical to a kick-off, then an arc to an inclination, then straight to 3000 m along hole. */
    static WellPath deviated(double kickOff, double inclinationDegrees) {
        return WellPath.of(List.of(
                new SurveyStation(0, 0, 0),
                new SurveyStation(kickOff, 0, 0),
                new SurveyStation(kickOff + 800, Math.toRadians(inclinationDegrees), 0),
                new SurveyStation(3000, Math.toRadians(inclinationDegrees), 0)));
    }
}
