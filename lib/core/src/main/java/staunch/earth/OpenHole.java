package staunch.earth;

import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Stretch of hole between a casing shoe and the bottom of a section.
 *
 * @param shoeName what results call the shoe, such as "shoe of 9 5/8 in"
 * @param shoeDepth measured depth of the shoe, m
 * @param bottomDepth measured depth of the bottom, m, at or below the shoe
 * @param strengthMargin kept below the strength of the formation, Pa
 */
public record OpenHole(
        String shoeName,
        @Si(value = "m", kind = Kind.DEPTH) double shoeDepth,
        @Si(value = "m", kind = Kind.DEPTH) double bottomDepth,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) double strengthMargin) {
    public OpenHole {
        Check.text("name of the shoe", shoeName);
        Check.within("measured depth of the " + shoeName, shoeDepth, 0, 20_000, Measure.DEPTH);
        Check.within("measured depth of the bottom of the open hole", bottomDepth, 0, 20_000, Measure.DEPTH);
        if (bottomDepth < shoeDepth) {
            throw new InputFault("open hole", "has its bottom above the " + shoeName, "check both depths");
        }
        Check.within("strength margin", strengthMargin, 0, 3e7, Measure.PRESSURE_DIFFERENCE);
    }
}
