package staunch.ingest;

import java.util.Objects;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * Mud that an offset well was drilled with at a depth. It balanced the pores or it did not; it is no measurement of their
 * pressure.
 *
 * @param verticalDepth below the datum of the well, m
 * @param density kg/m³, 500 to 2700
 * @param type as written; empty where not told
 * @param source where the figure comes from
 */
public record MudRecord(
        @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
        @Si("kg/m3") double density,
        String type,
        Source source) {
    public MudRecord {
        Check.within("vertical depth of the mud", verticalDepth, 0, 20_000, Measure.DEPTH);
        Check.within("density of the mud", density, 500, 2700, Measure.DENSITY);
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(source, "source");
    }
}
