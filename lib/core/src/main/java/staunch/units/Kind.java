package staunch.units;

/**
 * What a number of a given SI unit stands for, where the unit alone does not tell: two pressures in pascal may not be
 * compared when one is absolute and the other a gauge reading.
 */
public enum Kind {
    /** The SI unit says it all. */
    PLAIN,
    /** Pressure above vacuum. */
    ABSOLUTE,
    /** Pressure above the standard atmosphere, as a gauge at surface reads it. */
    GAUGE,
    /** Difference of two pressures or of two temperatures: a friction loss, a margin. */
    DIFFERENCE,
    /** Temperature on its scale, not a temperature difference. */
    POINT,
    /** Distance from the well's datum, positive downwards, measured or vertical. */
    DEPTH,
    /** Distance between two points. */
    LENGTH,
    /** Diameter or wall thickness of hole and steel. */
    DIAMETER,
    /** Yield strength or other material stress. */
    STRESS,
    /** Density given as an equivalent: a pressure divided by gravity and vertical depth below the named datum. */
    EQUIVALENT,
    /** Amount of gas as the volume it would fill at 15 °C and one standard atmosphere. */
    STANDARD
}
