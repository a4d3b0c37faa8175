package staunch.units;

/**
 * Short names for quantities, to be imported statically in a notebook: {@code psi(500)}, {@code ppg(10.5)},
 * {@code ft(9800)}, {@code quantity("13 3/8 in")}. Each takes the number as written in its unit.
 */
public final class Quantities {
    private Quantities() {}

    /**
     * Reads a number and a unit.
     *
     * @throws UnitFault where the text is not a number followed by a known unit
     */
    public static Quantity quantity(String text) {
        return Quantity.parse(text);
    }

    /** Metres. */
    public static Quantity m(double value) {
        return new Quantity(value, "m");
    }

    /** Feet. */
    public static Quantity ft(double value) {
        return new Quantity(value, "ft");
    }

    /** Inches. */
    public static Quantity in(double value) {
        return new Quantity(value, "in");
    }

    /** Millimetres. */
    public static Quantity mm(double value) {
        return new Quantity(value, "mm");
    }

    /** Cubic metres. */
    public static Quantity m3(double value) {
        return new Quantity(value, "m3");
    }

    /** Barrels of 42 US gallons. */
    public static Quantity bbl(double value) {
        return new Quantity(value, "bbl");
    }

    /** Litres. */
    public static Quantity litres(double value) {
        return new Quantity(value, "l");
    }

    /** Litres per metre. */
    public static Quantity litresPerMetre(double value) {
        return new Quantity(value, "l/m");
    }

    /** Barrels per foot. */
    public static Quantity bblPerFt(double value) {
        return new Quantity(value, "bbl/ft");
    }

    /** Pounds per square inch, gauge where a pressure on its own is meant. */
    public static Quantity psi(double value) {
        return new Quantity(value, "psi");
    }

    /** Pounds per square inch above vacuum. */
    public static Quantity psia(double value) {
        return new Quantity(value, "psia");
    }

    /** Bar, gauge where a pressure on its own is meant. */
    public static Quantity bar(double value) {
        return new Quantity(value, "bar");
    }

    /** Bar above vacuum. */
    public static Quantity bara(double value) {
        return new Quantity(value, "bara");
    }

    /** Kilopascal, gauge where a pressure on its own is meant. */
    public static Quantity kPa(double value) {
        return new Quantity(value, "kPa");
    }

    /** Megapascal, gauge where a pressure on its own is meant. */
    public static Quantity MPa(double value) {
        return new Quantity(value, "MPa");
    }

    /** Pounds per square inch and foot. */
    public static Quantity psiPerFt(double value) {
        return new Quantity(value, "psi/ft");
    }

    /** Pounds per US gallon. */
    public static Quantity ppg(double value) {
        return new Quantity(value, "ppg");
    }

    /** Specific gravity: grams per cubic centimetre. */
    public static Quantity sg(double value) {
        return new Quantity(value, "sg");
    }

    /** Kilograms per cubic metre. */
    public static Quantity kgPerM3(double value) {
        return new Quantity(value, "kg/m3");
    }

    /** Kilograms. */
    public static Quantity kg(double value) {
        return new Quantity(value, "kg");
    }

    /** Pounds per foot. */
    public static Quantity lbPerFt(double value) {
        return new Quantity(value, "lb/ft");
    }

    /** Kilograms per metre. */
    public static Quantity kgPerM(double value) {
        return new Quantity(value, "kg/m");
    }

    /** Degrees Celsius. */
    public static Quantity degC(double value) {
        return new Quantity(value, "degC");
    }

    /** Degrees Fahrenheit. */
    public static Quantity degF(double value) {
        return new Quantity(value, "degF");
    }

    /** Degrees of arc. */
    public static Quantity deg(double value) {
        return new Quantity(value, "deg");
    }

    /** US gallons per minute. */
    public static Quantity gpm(double value) {
        return new Quantity(value, "gpm");
    }

    /** Litres per minute. */
    public static Quantity litresPerMinute(double value) {
        return new Quantity(value, "l/min");
    }

    /** Barrels per minute. */
    public static Quantity bblPerMinute(double value) {
        return new Quantity(value, "bbl/min");
    }

    /** Minutes. */
    public static Quantity minutes(double value) {
        return new Quantity(value, "min");
    }

    /** Hours. */
    public static Quantity hours(double value) {
        return new Quantity(value, "h");
    }

    /** Strokes per minute. */
    public static Quantity spm(double value) {
        return new Quantity(value, "spm");
    }
}
