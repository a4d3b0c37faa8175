package staunch.well;

import java.util.List;
import staunch.units.Kind;
import staunch.units.Si;

/** Path of the hole: the only place where measured depth becomes vertical depth. */
public final class WellPath {
    private final List<SurveyStation> stations;

    private WellPath(List<SurveyStation> stations) {
        this.stations = stations;
    }

    /** Path through survey stations. */
    public static WellPath of(List<SurveyStation> stations) {
        return new WellPath(List.copyOf(stations));
    }

    /** Stations as given. */
    public List<SurveyStation> stations() {
        return stations;
    }

    /** Last measured depth of the path. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double end() {
        return stations.get(stations.size() - 1).measuredDepth();
    }
}
