package staunch.fluid;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Fluid shut in between rigid walls: Δp = ΔV / (c V), for changes of volume that are small against the whole.
 *
 * @param volume V, m³, above 0 and up to 1e5
 * @param compressibility c of the fluid, 1/Pa, 1e-12 to 2e-9
 */
public record ClosedVolume(
        @Si("m3") double volume, @Si("1/Pa") double compressibility) {
    public ClosedVolume {
        Check.within("volume shut in", volume, 1e-6, 1e5, Measure.VOLUME);
        Check.within("compressibility of the fluid shut in", compressibility, 1e-12, 2e-9, Measure.COMPRESSIBILITY);
    }

    /** Rise of pressure by a volume pumped in. */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public double pressureRise(@Si("m3") double pumped) {
        return pumped / (compressibility * volume);
    }

    /** Volume to pump in for a rise of pressure. */
    @Si("m3")
    public double volumeToPump(@Si(value = "Pa", kind = Kind.DIFFERENCE) double pressureRise) {
        return compressibility * volume * pressureRise;
    }
}
