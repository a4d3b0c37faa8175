package staunch.control;

import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * A slow-circulating-rate measurement.
 *
 * @param rate pump rate, m³/s
 * @param pumpPressure circulating up the riser or the open annulus, Pa gauge, where measured
 * @param chokeLineFriction loss in the choke line at that rate, Pa, where measured
 */
public record SlowCirculation(
        @Si("m3/s") double rate,
        @Si(value = "Pa", kind = Kind.GAUGE) OptionalDouble pumpPressure,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble chokeLineFriction) {
    public SlowCirculation {
        Check.within("slow circulating rate", rate, 1e-5, 0.2, Measure.FLOW_RATE);
        pumpPressure.ifPresent(v -> Check.within("slow circulating pressure", v, 0, 1e8, Measure.PRESSURE_GAUGE));
        chokeLineFriction.ifPresent(v -> Check.within("choke-line friction", v, 0, 5e7, Measure.PRESSURE_DIFFERENCE));
    }
}
