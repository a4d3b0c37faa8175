package staunch.units;

import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A value as a person writes it: a number and a unit. It lives at the edges only; calculations take SI doubles, which
 * {@link #si(Measure)} gives after checking that the unit can hold the wanted measure.
 *
 * @param value number as written
 * @param unit symbol as written, empty for a pure number
 */
public record Quantity(double value, String unit) {
    private static final Pattern TEXT = Pattern.compile(
            "\\s*([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)(?:\\s+(\\d+)/(\\d+))?\\s*(\\S*)\\s*");

    public Quantity {
        Objects.requireNonNull(unit, "unit");
        if (!Double.isFinite(value)) {
            throw new UnitFault("quantity", "is not a finite number: " + value, "give a number and a unit");
        }
    }

    /**
     * Reads "9.6 ppg", "12.25 in", "13 3/8 in" or "0.65".
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
        Matcher m = TEXT.matcher(text == null ? "" : text);
        if (!m.matches()) {
            String advice = text != null && text.matches(".*\\d,\\d.*")
                    ? "write the decimal mark as a point, without thousands separators"
                    : "write a number and a unit, such as 9.6 ppg";
            throw new UnitFault(field, "is not a quantity: \"" + text + "\"", advice);
        }
        double value = Double.parseDouble(m.group(1));
        if (m.group(2) != null) {
            double denominator = Double.parseDouble(m.group(3));
            if (denominator == 0) {
                throw new UnitFault(field, "has a fraction with denominator zero: \"" + text + "\"", "mend it");
            }
            value += Math.copySign(Double.parseDouble(m.group(2)) / denominator, value);
        }
        String unit = m.group(4);
        if (UnitSymbol.named(unit).isEmpty()) {
            throw new UnitFault(
                    field, "has an unknown unit \"" + unit + "\"", "see the list of units in the documentation");
        }
        return new Quantity(value, unit);
    }

    /** A quantity in field units of the notebook helpers: {@code Quantity.of(500, "psi")}. */
    public static Quantity of(double value, String unit) {
        Quantity q = new Quantity(value, unit);
        if (UnitSymbol.named(unit).isEmpty()) {
            throw new UnitFault(
                    "quantity", "has an unknown unit \"" + unit + "\"", "see the list of units in the documentation");
        }
        return q;
    }

    /**
     * Value in the SI unit of a measure. A plain psi, bar, kPa or MPa is read as a gauge pressure where an absolute one
     * is wanted, as the trade writes it; psia, bara, kPaa and MPaa are absolute.
     *
     * @throws UnitFault where the unit cannot hold the measure
     */
    public double si(Measure measure) {
        return si("quantity", measure);
    }

    /**
     * Value in the SI unit of a measure, naming the field in the fault.
     *
     * @throws UnitFault where the unit cannot hold the measure
     */
    public double si(String field, Measure measure) {
        for (UnitSymbol symbol : UnitSymbol.named(unit)) {
            UnitSymbol.LinearMap map = symbol.toSi(measure);
            if (map != null) {
                boolean readAsGauge = measure == Measure.PRESSURE_ABSOLUTE && !unit.endsWith("a");
                return map.toSi(value) + (readAsGauge ? Physics.ATMOSPHERE : 0.0);
            }
        }
        if (measure == Measure.PRESSURE_ABSOLUTE && holds(Measure.PRESSURE_GAUGE)) {
            return si(field, Measure.PRESSURE_GAUGE) + Physics.ATMOSPHERE;
        }
        if (measure == Measure.PRESSURE_GAUGE && holds(Measure.PRESSURE_ABSOLUTE)) {
            return si(field, Measure.PRESSURE_ABSOLUTE) - Physics.ATMOSPHERE;
        }
        throw new UnitFault(
                field,
                "\"" + text() + "\" is not a " + measure.title(),
                "use one of " + String.join(", ", usable(measure)));
    }

    /** Whether the unit can hold a measure. */
    public boolean holds(Measure measure) {
        return UnitSymbol.named(unit).stream().anyMatch(u -> u.toSi(measure) != null);
    }

    /** Number and unit as a person writes them. */
    public String text() {
        String number = UnitSystem.trimmed(value);
        return unit.isEmpty() ? number : number + " " + unit;
    }

    private static List<String> usable(Measure measure) {
        return UnitSymbol.symbolsFor(measure).stream().filter(s -> !s.isEmpty()).toList();
    }
}
