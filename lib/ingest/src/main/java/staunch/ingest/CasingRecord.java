package staunch.ingest;

import java.util.Objects;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * A string of an offset well's casing programme, or its open hole.
 *
 * @param type as written
 * @param outsideDiameter m, 0.05 to 2; empty for open hole and where not told
 * @param shoe measured depth below the datum of the well, m; for open hole its bottom
 * @param holeDiameter m, 0.05 to 2; empty where not told
 * @param holeDepth measured depth to which the hole was drilled for it, m; empty where not told
 * @param source where the figures come from
 */
public record CasingRecord(
        String type,
        @Si(value = "m", kind = Kind.DIAMETER) OptionalDouble outsideDiameter,
        @Si(value = "m", kind = Kind.DEPTH) double shoe,
        @Si(value = "m", kind = Kind.DIAMETER) OptionalDouble holeDiameter,
        @Si(value = "m", kind = Kind.DEPTH) OptionalDouble holeDepth,
        Source source) {
    public CasingRecord {
        Objects.requireNonNull(type, "type");
        outsideDiameter.ifPresent(d -> Check.within("outside diameter of the casing", d, 0.05, 2, Measure.DIAMETER));
        Check.within("depth of the shoe", shoe, 0, 20_000, Measure.DEPTH);
        holeDiameter.ifPresent(d -> Check.within("diameter of the hole", d, 0.05, 2, Measure.DIAMETER));
        holeDepth.ifPresent(d -> Check.within("depth of the hole", d, 0, 20_000, Measure.DEPTH));
        Objects.requireNonNull(source, "source");
    }
}
