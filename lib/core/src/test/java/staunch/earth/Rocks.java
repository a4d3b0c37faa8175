package staunch.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Physics;
import staunch.units.Source;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/** Invented earth models for tests. */
final class Rocks {
    static final Source SOURCE = new Source("invented", "");

    private Rocks() {}

    /** Absolute pressure of an equivalent density at a depth. */
    static double pressure(double density, double verticalDepth) {
        return Physics.ATMOSPHERE + density * Physics.GRAVITY * verticalDepth;
    }

    /** Profile from depth, equivalent density, depth, equivalent density … */
    static PressureProfile profile(double... pairs) {
        double[] depth = new double[pairs.length / 2];
        double[] pressure = new double[pairs.length / 2];
        for (int i = 0; i < depth.length; i++) {
            depth[i] = pairs[2 * i];
            pressure[i] = pressure(pairs[2 * i + 1], depth[i]);
        }
        return PressureProfile.of(depth, pressure);
    }

    static StrengthTest test(String name, double verticalDepth, double density, Standing standing) {
        return new StrengthTest(
                name, verticalDepth, pressure(density, verticalDepth), standing, OptionalDouble.empty(), SOURCE);
    }

    static WeakZone zone(String name, double top, double bottom, double density) {
        return new WeakZone(name, top, bottom, density, SOURCE);
    }

    static EarthModel earth(Optional<Range> strength, List<StrengthTest> tests, List<WeakZone> zones) {
        return new EarthModel(Optional.empty(), strength, tests, zones, Optional.empty(), List.of());
    }

    static WellPath path(double... degrees) {
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i < degrees.length; i += 2) {
            stations.add(new SurveyStation(degrees[i], Math.toRadians(degrees[i + 1]), 0));
        }
        return WellPath.of(stations);
    }
}
