package staunch.earth;

import java.util.Objects;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;
import staunch.well.Datum;

/**
 * Hydrostatic pore pressure: p = pₐ + ρ g (z − z₀), with the free water level z₀ at mean sea level, or at ground level on
 * land, and pₐ the standard atmosphere. By definition. A water table below ground is not known to it.
 *
 * @param datum of the well
 * @param waterDensity mean density of the water, kg/m³, 950 to 1250
 */
public record NormalPressure(Datum datum, @Si("kg/m3") double waterDensity) {
    public NormalPressure {
        Objects.requireNonNull(datum, "datum");
        Check.within("density of the pore water", waterDensity, 950, 1250, Measure.DENSITY);
    }

    /** Depth of the free water level below the datum. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double waterLevel() {
        return datum.place() instanceof Datum.OnLand land ? land.groundDepth() : datum.elevation();
    }

    /**
     * Hydrostatic pressure.
     *
     * @param verticalDepth below the datum, m, from the water level to 20 000
     * @throws staunch.units.RangeFault outside that range
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double at(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        Check.within("vertical depth of the hydrostatic pressure", verticalDepth, waterLevel(), 20_000, Measure.DEPTH);
        return Physics.ATMOSPHERE + waterDensity * Physics.GRAVITY * (verticalDepth - waterLevel());
    }

    /**
     * The same as a profile between two depths.
     *
     * @param top m below the datum, not above the water level
     * @param bottom m below the datum, below the top
     */
    public PressureProfile profile(
            @Si(value = "m", kind = Kind.DEPTH) double top, @Si(value = "m", kind = Kind.DEPTH) double bottom) {
        return PressureProfile.of(new double[] {top, bottom}, new double[] {at(top), at(bottom)});
    }
}
