package staunch.limit;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * The mud-gas separator behind the choke manifold: gas leaves by the vent line, mud by a liquid leg that holds the gas back.
 *
 * @param name in the words of the case
 * @param mudLegHeight vertical height of the column of mud that the gas would have to push out, m, where given
 * @param ventLineLength length of the vent line, the straight pipe that its bends stand for included, m, where given
 * @param ventLineDiameter inside diameter of the vent line, m, where given
 * @param gasCapacity gas rate that the maker states, m³/s at 15 °C and one atmosphere, where given
 * @param mudLegDensity of the fluid in the mud leg, kg/m³, 500 to 2700, where it is not the section's mud: gas-cut mud or oil
 *     holds less gas back
 * @param source data sheet, where given
 */
public record GasSeparator(
        String name,
        @Si(value = "m", kind = Kind.LENGTH) OptionalDouble mudLegHeight,
        @Si(value = "m", kind = Kind.LENGTH) OptionalDouble ventLineLength,
        @Si(value = "m", kind = Kind.DIAMETER) OptionalDouble ventLineDiameter,
        @Si(value = "m3/s", kind = Kind.STANDARD) OptionalDouble gasCapacity,
        @Si("kg/m3") OptionalDouble mudLegDensity,
        Optional<Source> source) {
    public GasSeparator {
        Check.text("name of the separator", name);
        mudLegHeight.ifPresent(v -> Check.within("height of the mud leg", v, 0.1, 30, Measure.LENGTH));
        ventLineLength.ifPresent(v -> Check.within("length of the vent line", v, 1, 500, Measure.LENGTH));
        ventLineDiameter.ifPresent(v -> Check.within("inside diameter of the vent line", v, 0.05, 1, Measure.DIAMETER));
        gasCapacity.ifPresent(v -> Check.within("gas capacity of the separator", v, 1e-3, 100, Measure.GAS_RATE));
        mudLegDensity.ifPresent(v -> Check.within("density in the mud leg", v, 500, 2700, Measure.DENSITY));
        Objects.requireNonNull(source, "source");
    }

    /** A separator whose mud leg holds the section's mud. */
    public GasSeparator(
            String name,
            @Si(value = "m", kind = Kind.LENGTH) OptionalDouble mudLegHeight,
            @Si(value = "m", kind = Kind.LENGTH) OptionalDouble ventLineLength,
            @Si(value = "m", kind = Kind.DIAMETER) OptionalDouble ventLineDiameter,
            @Si(value = "m3/s", kind = Kind.STANDARD) OptionalDouble gasCapacity,
            Optional<Source> source) {
        this(name, mudLegHeight, ventLineLength, ventLineDiameter, gasCapacity, OptionalDouble.empty(), source);
    }
}
