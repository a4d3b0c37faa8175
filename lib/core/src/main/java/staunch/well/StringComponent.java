package staunch.well;

import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.Si;

/**
 * A part of the drill string.
 *
 * @param name drill pipe, heavyweight, collars, mud motor …
 * @param length m; of the uppermost component the least length, since it reaches to surface
 * @param outsideDiameter m, of the body
 * @param insideDiameter m; zero for a plugged part
 */
public record StringComponent(
        String name,
        @Si(value = "m", kind = Kind.LENGTH) double length,
        @Si(value = "m", kind = Kind.DIAMETER) double outsideDiameter,
        @Si(value = "m", kind = Kind.DIAMETER) double insideDiameter) {
    public StringComponent {
        Check.text("name of the string component", name);
        Check.within("length of the string component", length, 0.01, 20_000, Measure.LENGTH);
        Check.within("outside diameter of the string component", outsideDiameter, 0.02, 1.2, Measure.DIAMETER);
        Check.within("inside diameter of the string component", insideDiameter, 0, 1.2, Measure.DIAMETER);
        if (insideDiameter >= outsideDiameter) {
            throw new InputFault(
                    "string component \"" + name + "\"",
                    "has an inside diameter not below its outside diameter",
                    "check them");
        }
    }

    /** In units as written. */
    public static StringComponent of(String name, Quantity length, Quantity outsideDiameter, Quantity insideDiameter) {
        return new StringComponent(
                name,
                length.si("length of the string component", Measure.LENGTH),
                outsideDiameter.si("outside diameter of the string component", Measure.DIAMETER),
                insideDiameter.si("inside diameter of the string component", Measure.DIAMETER));
    }
}
