package staunch.earth;

import java.util.Objects;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * Shoe of a string of an offset well.
 *
 * @param name of the string
 * @param verticalDepth below the datum of its well, m, 0 to 20 000
 * @param outsideDiameter of the string, m; empty where not told
 * @param source where the figures come from
 */
public record CasingShoe(
        String name,
        @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
        @Si(value = "m", kind = Kind.DIAMETER) OptionalDouble outsideDiameter,
        Source source) {
    public CasingShoe {
        Check.text("name of the casing", name);
        Check.within("vertical depth of the shoe", verticalDepth, 0, 20_000, Measure.DEPTH);
        Objects.requireNonNull(outsideDiameter, "outsideDiameter");
        Objects.requireNonNull(source, "source");
    }
}
