package staunch.control;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Stretch of annulus of a hand calculation.
 *
 * @param capacity volume per length, m³/m, above 0 to 2
 * @param length m, above 0 to 20 000
 */
public record CapacityInterval(
        @Si("m3/m") double capacity,
        @Si(value = "m", kind = Kind.LENGTH) double length) {
    public CapacityInterval {
        Check.within("capacity", capacity, 1e-6, 2, Measure.CAPACITY);
        Check.within("length of the capacity interval", length, 1e-6, 20_000, Measure.LENGTH);
    }

    /** Volume of the whole stretch: capacity times length. */
    @Si("m3")
    public double volume() {
        return capacity * length;
    }
}
