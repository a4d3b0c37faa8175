package staunch.reference;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;

/** One published value with what leads to it. Every check is written to the report of validation. */
public final class ReferenceRow {
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("\\s*([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*(.*?)\\s*");

    /** Units that only sources use: factor to the SI unit. */
    private static final Map<String, Double> SOURCE_UNITS = Map.of(
            "degR", 5.0 / 9.0,
            "atm", 101_325.0,
            "dbar", 10_000.0,
            "cp", 1e-3);

    private final String table;
    private final int position;
    private final Map<String, String> columns;
    private final Map<String, String> inputs;
    private final String model;

    ReferenceRow(String table, int position, Map<String, String> columns) {
        this(table, position, columns, parsed(columns.getOrDefault("inputs", "")), "");
    }

    private ReferenceRow(
            String table, int position, Map<String, String> columns, Map<String, String> inputs, String model) {
        this.table = table;
        this.position = position;
        this.columns = columns;
        this.inputs = inputs;
        this.model = model;
    }

    private static Map<String, String> parsed(String text) {
        Map<String, String> found = new LinkedHashMap<>();
        for (String part : text.split(";")) {
            int sign = part.indexOf('=');
            if (sign >= 0) {
                found.put(
                        part.substring(0, sign).strip(),
                        part.substring(sign + 1).strip());
            }
        }
        return found;
    }

    /** The same row, its checks reported under the name of one of several models. */
    public ReferenceRow as(String modelName) {
        return new ReferenceRow(table, position, columns, inputs, modelName);
    }

    public String id() {
        return column("id");
    }

    public String quantity() {
        return column("quantity");
    }

    /** Published value in {@link #unit()}. */
    public double published() {
        return Double.parseDouble(columns.containsKey("value") ? column("value") : column("published_value"));
    }

    /** Unit of the published value; empty for a pure number. */
    public String unit() {
        String unit = column("unit");
        return unit.equals("-") ? "" : unit;
    }

    public String method() {
        return columns.containsKey("method") ? column("method") : column("formula_or_method");
    }

    public String source() {
        return column("source");
    }

    public String note() {
        return column("note");
    }

    /** All inputs as printed. */
    public String inputs() {
        return column("inputs");
    }

    /** Any column of the file. */
    public String column(String name) {
        String text = columns.get(name);
        if (text == null) {
            throw new IllegalArgumentException("No column " + name + " in " + table);
        }
        return text;
    }

    /** Whether the inputs name it. */
    public boolean has(String input) {
        return inputs.containsKey(input);
    }

    /** An input as printed, with its unit. */
    public String text(String input) {
        String text = inputs.get(input);
        if (text == null) {
            throw new IllegalArgumentException("Row " + id() + " has no input " + input + ": " + inputs());
        }
        return text;
    }

    /** Number of an input, in the unit it is printed in. */
    public double number(String input) {
        return Double.parseDouble(split(text(input)).group(1));
    }

    /** Unit of an input as printed. */
    public String unitOf(String input) {
        return split(text(input)).group(2);
    }

    /** An input in SI. A pressure is taken as printed: from vacuum where the measure is absolute. */
    public double si(String input, Measure measure) {
        Matcher m = split(text(input));
        return toSi(Double.parseDouble(m.group(1)), m.group(2), measure);
    }

    /** Whether the row carries a tolerance that can be asserted. */
    public boolean hasTolerance() {
        String text = column("tolerance");
        return text.matches("[0-9.eE+-]+( (abs|%))?") && !text.equals("-");
    }

    /** Printed tolerance as an absolute one in {@link #unit()}: "x %" of the published value, "x abs" or plain "x". */
    public double tolerance() {
        Matcher m = split(column("tolerance"));
        double number = Double.parseDouble(m.group(1));
        return m.group(2).equals("%") ? Math.abs(published()) * number / 100 : number;
    }

    /** Asserts a value, in the unit of the row, within the printed tolerance. */
    public void check(double computed) {
        check(computed, tolerance(), "as given with the reference row");
    }

    /** Asserts an SI value within the printed tolerance. */
    public void checkSi(double computedSi, Measure measure) {
        check(fromSi(computedSi, measure));
    }

    /**
     * Asserts a value within a tolerance of its own.
     *
     * @param computed value in the unit of the row
     * @param tolerance absolute, in the unit of the row
     * @param reason why this tolerance: the statement it rests on
     */
    public void check(double computed, double tolerance, String reason) {
        ReferenceReport.add(this, model, computed, tolerance, reason);
        double difference = computed - published();
        assertTrue(
                Math.abs(difference) <= tolerance,
                () -> id() + (model.isEmpty() ? "" : " (" + model + ")") + " " + quantity() + ": published "
                        + published() + ", computed " + computed + " " + unit() + ", difference " + difference
                        + ", tolerance " + tolerance);
    }

    /** An SI value in the unit of the row. */
    public double fromSi(double valueSi, Measure measure) {
        double zero = toSi(0, unit(), measure);
        double one = toSi(1, unit(), measure);
        return (valueSi - zero) / (one - zero);
    }

    String table() {
        return table;
    }

    int position() {
        return position;
    }

    private static double toSi(double value, String unit, Measure measure) {
        Double factor = SOURCE_UNITS.get(unit);
        if (factor != null) {
            return value * factor;
        }
        boolean plainPressure = new Quantity(value, unit).holds(Measure.PRESSURE_DIFFERENCE);
        if (measure.kind() == Kind.ABSOLUTE && plainPressure) {
            return new Quantity(value, unit).si(Measure.PRESSURE_DIFFERENCE);
        }
        return Quantity.of(value, unit).si(measure);
    }

    private static Matcher split(String text) {
        Matcher m = NUMBER_AND_UNIT.matcher(text);
        if (!m.matches()) {
            throw new IllegalArgumentException("Not a number with a unit: " + text);
        }
        return m;
    }
}
