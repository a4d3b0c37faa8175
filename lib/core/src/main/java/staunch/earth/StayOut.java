package staunch.earth;

import java.util.Objects;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * Vertical depths at which no casing shoe may stand: a fault, a loss zone, salt, a bed that cannot be drilled out.
 *
 * @param name what the programme calls it
 * @param topVerticalDepth m below the datum
 * @param bottomVerticalDepth m below the datum
 * @param reason why no shoe may stand there
 * @param source where that is written
 */
public record StayOut(
        String name,
        @Si(value = "m", kind = Kind.DEPTH) double topVerticalDepth,
        @Si(value = "m", kind = Kind.DEPTH) double bottomVerticalDepth,
        String reason,
        Source source) {
    public StayOut {
        Check.text("name of the shoe stay-out", name);
        Check.within("top of the shoe stay-out", topVerticalDepth, 0, 20_000, Measure.DEPTH);
        Check.within("bottom of the shoe stay-out", bottomVerticalDepth, 0, 20_000, Measure.DEPTH);
        if (bottomVerticalDepth < topVerticalDepth) {
            throw new InputFault("shoe stay-out \"" + name + "\"", "has its bottom above its top", "check its depths");
        }
        Check.text("reason of the shoe stay-out", reason);
        Objects.requireNonNull(source, "source");
    }

    /** Whether a shoe at that vertical depth would stand in it; its ends belong to it. */
    public boolean holds(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        return verticalDepth >= topVerticalDepth && verticalDepth <= bottomVerticalDepth;
    }
}
