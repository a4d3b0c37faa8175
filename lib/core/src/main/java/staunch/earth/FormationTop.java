package staunch.earth;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Top of a formation.
 *
 * @param name of the formation
 * @param verticalDepth m below the datum
 */
public record FormationTop(
        String name, @Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
    public FormationTop {
        Check.text("name of the formation", name);
        Check.within("top of formation " + name, verticalDepth, 0, 20_000, Measure.DEPTH);
    }
}
