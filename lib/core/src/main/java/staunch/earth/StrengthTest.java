package staunch.earth;

import java.util.Objects;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * A leak-off or integrity test, planned or done. It holds at its own depth and is never extended downwards.
 *
 * @param name what the programme calls it
 * @param verticalDepth of the open hole tested, below the datum, m
 * @param pressure at that depth, Pa absolute
 * @param standing what the figure is worth
 * @param testMudDensity mud in the hole during the test, kg/m³, where known
 * @param source where the figure comes from
 */
public record StrengthTest(
        String name,
        @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
        Standing standing,
        @Si("kg/m3") OptionalDouble testMudDensity,
        Source source) {
    public StrengthTest {
        Check.text("name of the strength test", name);
        Check.within("vertical depth of the strength test", verticalDepth, 1, 20_000, Measure.DEPTH);
        Check.within("pressure of the strength test", pressure, 1e5, 4e8, Measure.PRESSURE_ABSOLUTE);
        Objects.requireNonNull(standing, "standing");
        Objects.requireNonNull(testMudDensity, "testMudDensity");
        Objects.requireNonNull(source, "source");
    }
}
