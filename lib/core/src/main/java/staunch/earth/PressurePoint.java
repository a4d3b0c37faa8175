package staunch.earth;

import java.util.Objects;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * A pore pressure measured in a formation.
 *
 * @param name what the report calls it
 * @param verticalDepth below the datum of its well, m, 1 to 20 000
 * @param pressure Pa absolute, 0.1 to 400 MPa
 * @param quality what it is worth
 * @param source where the figure comes from
 */
public record PressurePoint(
        String name,
        @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
        Quality quality,
        Source source) {
    public PressurePoint {
        Check.text("name of the pressure point", name);
        Check.within("vertical depth of the pressure point", verticalDepth, 1, 20_000, Measure.DEPTH);
        Check.within("formation pressure", pressure, 1e5, 4e8, Measure.PRESSURE_ABSOLUTE);
        Objects.requireNonNull(quality, "quality");
        Objects.requireNonNull(source, "source");
    }
}
