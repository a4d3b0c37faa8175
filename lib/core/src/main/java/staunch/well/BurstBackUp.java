package staunch.well;

import java.util.List;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/** What stands outside a casing against a pressure inside it, where the case says so itself. */
public sealed interface BurstBackUp {
    /**
     * A column of one density from ground level or seabed downwards, nothing resting on it but the atmosphere.
     *
     * @param density kg/m³, 0 (none) to 2700
     */
    record OfDensity(@Si("kg/m3") double density) implements BurstBackUp {
        public OfDensity {
            Check.within("density of the back-up", density, 0, 2700, Measure.DENSITY);
        }
    }

    /**
     * Pressures by vertical depth, straight between them; above the first and below the last there is no back-up.
     *
     * @param points downwards, at least two
     */
    record OfPressures(List<Point> points) implements BurstBackUp {
        public OfPressures {
            points = List.copyOf(points);
            if (points.size() < 2) {
                throw new InputFault("back-up of the casing", "has fewer than two points", "give at least two");
            }
            for (int i = 1; i < points.size(); i++) {
                if (points.get(i).verticalDepth() <= points.get(i - 1).verticalDepth()) {
                    throw new InputFault(
                            "back-up of the casing", "has depths that do not increase", "sort its points downwards");
                }
            }
        }
    }

    /**
     * A pressure outside at a depth.
     *
     * @param verticalDepth m
     * @param pressure Pa absolute
     */
    record Point(
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure) {
        public Point {
            Check.within("vertical depth of the back-up", verticalDepth, 0, 20_000, Measure.DEPTH);
            Check.within("pressure of the back-up", pressure, 1e5, 4e8, Measure.PRESSURE_ABSOLUTE);
        }
    }
}
