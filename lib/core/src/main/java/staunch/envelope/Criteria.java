package staunch.envelope;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;
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

    /** Rules that ask for nothing yet. */
    public static Criteria of(String name, String owner, Source source) {
        return new Criteria(
                name,
                owner,
                source,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** The same rules with a least tolerance when drilled. */
    public Criteria withDrilledTolerance(Quantity volume) {
        return with(parts ->
                parts.drilledTolerance = OptionalDouble.of(volume.si("required drilled tolerance", Measure.VOLUME)));
    }

    /** The same rules with a least tolerance when swabbed. */
    public Criteria withSwabbedTolerance(Quantity volume) {
        return with(parts ->
                parts.swabbedTolerance = OptionalDouble.of(volume.si("required swabbed tolerance", Measure.VOLUME)));
    }

    /** The same rules with an intensity of the drilled kick, as equivalent density above the mud. */
    public Criteria withKickIntensity(Quantity density) {
        return with(parts ->
                parts.kickIntensity = OptionalDouble.of(density.si("kick intensity", Measure.DENSITY_DIFFERENCE)));
    }

    /** The same rules with a margin below the formation strength. */
    public Criteria withStrengthMargin(Quantity pressure) {
        return with(parts ->
                parts.strengthMargin = OptionalDouble.of(pressure.si("strength margin", Measure.PRESSURE_DIFFERENCE)));
    }

    /** The same rules with a margin between mud and pore pressure, as equivalent density. */
    public Criteria withTripMargin(Quantity density) {
        return with(
                parts -> parts.tripMargin = OptionalDouble.of(density.si("trip margin", Measure.DENSITY_DIFFERENCE)));
    }

    /** The same rules with a margin between mud and strength, as equivalent density. */
    public Criteria withSurgeMargin(Quantity density) {
        return with(
                parts -> parts.surgeMargin = OptionalDouble.of(density.si("surge margin", Measure.DENSITY_DIFFERENCE)));
    }

    private Criteria with(Consumer<Parts> change) {
        Parts parts = new Parts(this);
        change.accept(parts);
        return new Criteria(
                name,
                owner,
                source,
                parts.drilledTolerance,
                parts.swabbedTolerance,
                parts.kickIntensity,
                parts.strengthMargin,
                parts.tripMargin,
                parts.surgeMargin);
    }

    /** What may be changed, while one of it is. */
    private static final class Parts {
        private OptionalDouble drilledTolerance;
        private OptionalDouble swabbedTolerance;
        private OptionalDouble kickIntensity;
        private OptionalDouble strengthMargin;
        private OptionalDouble tripMargin;
        private OptionalDouble surgeMargin;

        Parts(Criteria from) {
            drilledTolerance = from.drilledTolerance;
            swabbedTolerance = from.swabbedTolerance;
            kickIntensity = from.kickIntensity;
            strengthMargin = from.strengthMargin;
            tripMargin = from.tripMargin;
            surgeMargin = from.surgeMargin;
        }
    }
}
