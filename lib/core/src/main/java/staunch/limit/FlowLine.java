package staunch.limit;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Choke line, kill line or riser.
 *
 * @param name in the words of the case
 * @param length from the stack to surface, m
 * @param insideDiameter m
 * @param rating rated working pressure, Pa gauge, where given
 * @param fluidDensity fluid standing in it at shut-in, kg/m³, where it is not the mud in the well
 */
public record FlowLine(
        String name,
        @Si(value = "m", kind = Kind.LENGTH) double length,
        @Si(value = "m", kind = Kind.DIAMETER) double insideDiameter,
        Optional<PressureRating> rating,
        @Si("kg/m3") OptionalDouble fluidDensity) {
    public FlowLine {
        Check.text("name of the line", name);
        Check.within("length of the " + name, length, 0, 5000, Measure.LENGTH);
        Check.within("inside diameter of the " + name, insideDiameter, 0.01, 1.0, Measure.DIAMETER);
        Objects.requireNonNull(rating, "rating");
        fluidDensity.ifPresent(v -> Check.within("density of the fluid in the " + name, v, 700, 2700, Measure.DENSITY));
    }
}
