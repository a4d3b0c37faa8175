package staunch.limit;

import java.util.Objects;
import java.util.Optional;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * Rated working pressure of a piece of equipment.
 *
 * @param equipment what it is, in the words of the case
 * @param pressure rated working pressure, Pa gauge
 * @param source certificate or data sheet, where given
 */
public record PressureRating(
        String equipment,
        @Si(value = "Pa", kind = Kind.GAUGE) double pressure,
        Optional<Source> source) {
    public PressureRating {
        Check.text("name of the equipment", equipment);
        Check.within("rated working pressure of " + equipment, pressure, 1e5, 3e8, Measure.PRESSURE_GAUGE);
        Objects.requireNonNull(source, "source");
    }
}
