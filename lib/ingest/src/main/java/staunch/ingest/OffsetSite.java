package staunch.ingest;

import java.util.Objects;
import java.util.Optional;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.well.Datum;
import staunch.well.WellPath;

/**
 * An offset wellbore as far as depths need it. A sidetrack is a wellbore of its own.
 *
 * @param name as the tables name it
 * @param datum zero of its depths, and the sea or ground below
 * @param path its survey; without one, rows with measured depths are left out
 */
public record OffsetSite(String name, Datum datum, Optional<WellPath> path) {
    public OffsetSite {
        Check.text("name of the offset well", name);
        Objects.requireNonNull(datum, "datum");
        Objects.requireNonNull(path, "path");
    }

    /** Depth of a level below the datum. */
    double depthOf(DepthColumns.Level level) {
        boolean atSea = datum.place() instanceof Datum.AtSea;
        switch (level) {
            case MEAN_SEA_LEVEL:
                return datum.elevation();
            case MUDLINE:
                if (!atSea) {
                    throw new InputFault(
                            "depth level", "is the mudline, but " + name + " stands on land", "say ground");
                }
                return datum.groundOrSeabedDepth();
            case GROUND:
                if (atSea) {
                    throw new InputFault("depth level", "is the ground, but " + name + " stands at sea", "say mudline");
                }
                return datum.groundOrSeabedDepth();
            default:
                return 0;
        }
    }
}
