package staunch.envelope;

import java.util.Objects;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * What a section must meet: the user's own rules, never the library's.
 *
 * @param name of the rule set
 * @param owner who answers for it
 * @param source where it is written
 * @param drilledTolerance least influx volume to be tolerated when drilled, m³ at bottom hole, where set
 * @param swabbedTolerance least influx volume to be tolerated when swabbed, m³ at bottom hole, where set
 * @param kickIntensity pressure of the drilled kick above the mud, as equivalent density, kg/m³, where set
 * @param strengthMargin kept below the formation strength, Pa, where set
 * @param tripMargin kept between mud and pore pressure, as equivalent density, kg/m³, where set
 * @param surgeMargin kept between mud and strength less its margin, as equivalent density, kg/m³, where set
 */
public record Criteria(
        String name,
        String owner,
        Source source,
        @Si("m3") OptionalDouble drilledTolerance,
        @Si("m3") OptionalDouble swabbedTolerance,
        @Si(value = "kg/m3", kind = Kind.DIFFERENCE) OptionalDouble kickIntensity,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble strengthMargin,
        @Si(value = "kg/m3", kind = Kind.DIFFERENCE) OptionalDouble tripMargin,
        @Si(value = "kg/m3", kind = Kind.DIFFERENCE) OptionalDouble surgeMargin) {
    public Criteria {
        Check.text("name of the criteria", name);
        Check.text("owner of the criteria", owner);
        Objects.requireNonNull(source, "source");
        drilledTolerance.ifPresent(v -> Check.within("required drilled tolerance", v, 0, 200, Measure.VOLUME));
        swabbedTolerance.ifPresent(v -> Check.within("required swabbed tolerance", v, 0, 200, Measure.VOLUME));
        kickIntensity.ifPresent(v -> Check.within("kick intensity", v, 0, 1000, Measure.DENSITY_DIFFERENCE));
        strengthMargin.ifPresent(v -> Check.within("strength margin", v, 0, 3e7, Measure.PRESSURE_DIFFERENCE));
        tripMargin.ifPresent(v -> Check.within("trip margin", v, 0, 1000, Measure.DENSITY_DIFFERENCE));
        surgeMargin.ifPresent(v -> Check.within("surge margin", v, 0, 1000, Measure.DENSITY_DIFFERENCE));
    }
}
