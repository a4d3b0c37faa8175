package staunch.envelope;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.units.Si;

/**
 * Maximum allowable annular surface pressure, as two quantities under separate names. Formation MAASP is static, with the
 * original mud from choke to weak point; it is void once influx is above the weak point.
 *
 * @param mudDensity of the column, kg/m³
 * @param components every component, assessed or not
 * @param formation lowest formation component; empty where not assessed
 * @param lowest lowest of all assessed components; empty where none is
 * @param atMost whether a component could not be assessed, so that the lowest surface limit is an upper bound
 */
public record Maasp(
        @Si("kg/m3") double mudDensity,
        List<SurfaceLimit> components,
        Optional<SurfaceLimit> formation,
        Optional<SurfaceLimit> lowest,
        boolean atMost) {
    public Maasp {
        components = List.copyOf(components);
        Objects.requireNonNull(formation, "formation");
        Objects.requireNonNull(lowest, "lowest");
    }
}
