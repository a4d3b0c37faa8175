package staunch.envelope;

import java.util.List;
import java.util.Objects;

/**
 * Largest influx that can be circulated to surface within the limits of casing, wellhead, BOP stack, choke line and
 * manifold, whatever the formation holds.
 *
 * @param tolerance the answer for every component that could be assessed
 * @param leftOut components that could not be, each with its reason; where there are any the answer reads "at most"
 */
public record SurfaceTolerance(Tolerance tolerance, List<String> leftOut) {
    public SurfaceTolerance {
        Objects.requireNonNull(tolerance, "tolerance");
        leftOut = List.copyOf(leftOut);
    }

    /** Whether every component could be assessed. */
    public boolean complete() {
        return leftOut.isEmpty() && !(tolerance instanceof Tolerance.NotAssessed);
    }
}
