package staunch.earth;

import java.util.Objects;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * A zone known to be weaker than the strength profile says: depleted sand, fault, karst.
 *
 * @param name what the programme calls it
 * @param topVerticalDepth m below the datum
 * @param bottomVerticalDepth m below the datum
 * @param strength equivalent density it holds, kg/m³ from the datum, constant over the zone
 * @param source where the figure comes from
 */
public record WeakZone(
        String name,
        @Si(value = "m", kind = Kind.DEPTH) double topVerticalDepth,
        @Si(value = "m", kind = Kind.DEPTH) double bottomVerticalDepth,
        @Si(value = "kg/m3", kind = Kind.EQUIVALENT) double strength,
        Source source) {
    public WeakZone {
        Check.text("name of the weak zone", name);
        Check.within("top of the weak zone", topVerticalDepth, 1, 20_000, Measure.DEPTH);
        Check.within("bottom of the weak zone", bottomVerticalDepth, 1, 20_000, Measure.DEPTH);
        if (bottomVerticalDepth < topVerticalDepth) {
            throw new InputFault("weak zone \"" + name + "\"", "has its bottom above its top", "check its depths");
        }
        Check.within("strength of the weak zone", strength, 500, 3000, Measure.EQUIVALENT_DENSITY);
        Objects.requireNonNull(source, "source");
    }
}
