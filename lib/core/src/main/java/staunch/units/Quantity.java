package staunch.units;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A value as a person writes it: a number and a unit. It lives at the edges only; calculations take SI doubles, which
 * {@link #si(Measure)} gives after checking that the unit can hold the wanted measure.
 *
 * @param value number as written
 * @param unit symbol as written, empty for a pure number
 */
public record Quantity(double value, String unit) {
    private static final String DIGITS = "[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?";

    /** Number, or whole number with a fraction, or fraction; then a unit that does not begin like a number. */
    private static final Pattern TEXT = Pattern.compile("\\s*(?:"
            + "(?<sign>[+-]?)(?:(?<whole>\\d+)(?:\\s+|-))?(?<over>\\d+)/(?<under>\\d+)"
            + "|(?<number>" + DIGITS + "))"
            + "\\s*(?<unit>[^\\s.,+\\-\\d]\\S*|1|1/\\S+)?\\s*");

    private static final Pattern COMMA = Pattern.compile(".*\\d,\\d.*");

    private static final String WRITE_POINT = "write the decimal mark as a point, without thousands separators";
    private static final String WRITE_BOTH = "write a number and a unit, such as 9.6 ppg";

    public Quantity {
        check("quantity", value, unit);
    }

    /**
     * Reads "9.6 ppg", "12.25 in", "13 3/8 in", "13-3/8 in", "1e-9 1/Pa" or "0.65".
     *
     * @throws UnitFault where the text is not a number followed by a known unit
     */
    public static Quantity parse(String text) {
        return parse("quantity", text);
    }

    /**
     * Reads a quantity, naming the field in the fault.
     *
     * @throws UnitFault where the text is not a number followed by a known unit
     */
    public static Quantity parse(String field, String text) {
        if (text == null || text.isBlank()) {
            throw new UnitFault(field, "is empty", WRITE_BOTH);
        }
        Matcher m = TEXT.matcher(text);
        if (!m.matches()) {
            throw new UnitFault(
                    field,
                    "is not a quantity: \"" + text + "\"",
                    COMMA.matcher(text).matches() ? WRITE_POINT : WRITE_BOTH);
        }
        double value = m.group("number") != null ? Double.parseDouble(m.group("number")) : fraction(field, text, m);
        String unit = m.group("unit") == null ? "" : m.group("unit");
        check(field, value, unit);
        return new Quantity(value, unit);
    }

    private static double fraction(String field, String text, Matcher m) {
        double under = Double.parseDouble(m.group("under"));
        if (under == 0) {
            throw new UnitFault(field, "has a fraction with denominator zero: \"" + text + "\"", WRITE_BOTH);
        }
        double whole = m.group("whole") == null ? 0 : Double.parseDouble(m.group("whole"));
        double value = whole + Double.parseDouble(m.group("over")) / under;
        return m.group("sign").equals("-") ? -value : value;
    }

    private static void check(String field, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new UnitFault(field, "is not a finite number: " + value, WRITE_BOTH);
        }
        if (unit == null) {
            throw new UnitFault(field, "has no unit", WRITE_BOTH);
        }
        if (UnitSymbol.named(unit).isEmpty()) {
            String advice = UnitSymbol.meant(unit)
                    .map(known -> "write \"" + known + "\"")
                    .orElseGet(() -> near(UnitSymbol.near(unit)));
            throw new UnitFault(field, "has an unknown unit \"" + unit + "\"", advice);
        }
    }

    private static String near(List<String> known) {
        return known.isEmpty()
                ? "docs/units.md lists the units"
                : known.stream().map(k -> "\"" + k + "\"").collect(Collectors.joining(" or ", "is ", " meant?"));
    }

    /**
     * A quantity of a number and a unit.
     *
     * @throws UnitFault where the number is not finite or the unit unknown
     */
    public static Quantity of(double value, String unit) {
        return new Quantity(value, unit);
    }

    /**
     * Value in the SI unit of a measure.
     *
     * @throws UnitFault where the unit cannot hold the measure
     * @throws RangeFault below absolute zero or below vacuum
     */
    public double si(Measure measure) {
        return si("quantity", measure);
    }

    /**
     * Value in the SI unit of a measure, naming the field in the fault. Where an absolute pressure is wanted, a unit that
     * does not say so (psi, bar, kPa, MPa, Pa) is read as a gauge pressure, as the trade writes it, and the standard
     * atmosphere is added; psia, bara, kPaa and MPaa are absolute. Where a gauge pressure is wanted, those four lose the
     * atmosphere. A difference of pressures takes neither of the marked units.
     *
     * @throws UnitFault where the unit cannot hold the measure
     * @throws RangeFault below absolute zero or below vacuum
     */
    public double si(String field, Measure measure) {
        double si = unchecked(field, measure);
        if (measure == Measure.TEMPERATURE || measure == Measure.PRESSURE_ABSOLUTE) {
            Check.atLeast(field, si, 0, measure);
        }
        return si;
    }

    private double unchecked(String field, Measure measure) {
        UnitSymbol symbol = UnitSymbol.named(unit, measure);
        if (symbol != null) {
            boolean readAsGauge = measure == Measure.PRESSURE_ABSOLUTE && symbol.statedKind() != Kind.ABSOLUTE;
            return symbol.toSi(measure).toSi(value) + (readAsGauge ? Physics.ATMOSPHERE : 0.0);
        }
        if (measure == Measure.PRESSURE_ABSOLUTE && holds(Measure.PRESSURE_GAUGE)) {
            return unchecked(field, Measure.PRESSURE_GAUGE) + Physics.ATMOSPHERE;
        }
        if (measure == Measure.PRESSURE_GAUGE && holds(Measure.PRESSURE_ABSOLUTE)) {
            return unchecked(field, Measure.PRESSURE_ABSOLUTE) - Physics.ATMOSPHERE;
        }
        throw new UnitFault(
                field,
                "\"" + text() + "\" " + (unit.isEmpty() ? "has no unit of " : "is not a ") + measure.title(),
                "use one of " + String.join(", ", measure.usualUnits()));
    }

    /** Symbols of all units that can hold a measure, in alphabetical order. */
    public static List<String> unitsFor(Measure measure) {
        return UnitSymbol.symbols().stream()
                .filter(s -> !s.isEmpty() && UnitSymbol.named(s, measure) != null)
                .toList();
    }

    /** Whether the unit can hold a measure. */
    public boolean holds(Measure measure) {
        return UnitSymbol.named(unit, measure) != null;
    }

    /** Number and unit as a person writes them. */
    public String text() {
        String number = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
