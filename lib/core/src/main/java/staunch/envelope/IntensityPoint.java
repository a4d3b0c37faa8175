package staunch.envelope;

import java.util.Objects;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Tolerance at section TD for one kick intensity.
 *
 * @param intensity formation pressure above the static mud, as equivalent density, kg/m³
 * @param tolerance the answer
 */
public record IntensityPoint(
        @Si(value = "kg/m3", kind = Kind.DIFFERENCE) double intensity, Tolerance tolerance) {
    public IntensityPoint {
        Objects.requireNonNull(tolerance, "tolerance");
    }
}
