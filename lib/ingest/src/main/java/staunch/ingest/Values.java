package staunch.ingest;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Quantity;
import staunch.units.RangeFault;
import staunch.units.UnitFault;
import staunch.units.UnitSystem;

/** Turns the text of a value into a number, or into a problem with what may have been meant. */
final class Values {
    private static final Pattern UNIT = Pattern.compile("[\\s\\d.+/-]*\\d\\.?\\s*([^\\s\\d.].*)");
    private static final double LEAST_EQUIVALENT = 500;
    private static final double GREATEST_EQUIVALENT = 3000;
    private static final double LEAST_PRESSURE = 1e5;
    private static final double GREATEST_PRESSURE = 4e8;

    private Values() {}

    /** Outcome of reading a value. */
    sealed interface Reading<T> {}

    record Good<T>(T value) implements Reading<T> {}

    record Bad<T>(String problem, String hint) implements Reading<T> {
        <U> Bad<U> as() {
            return new Bad<>(problem, hint);
        }
    }

    /** Pressure in the rock as given. */
    sealed interface Rock {}

    /** Equivalent density from the datum of equivalent densities, kg/m³; a gradient is one too. */
    record Equivalent(double density) implements Rock {}

    /** Pressure, Pa absolute. */
    record Pressure(double absolute) implements Rock {}

    static Reading<Double> amount(String text, Form.Amount form) {
        Reading<Quantity> parsed = quantity(text, form.measure());
        if (parsed instanceof Bad<Quantity> bad) {
            return bad.as();
        }
        Quantity q = ((Good<Quantity>) parsed).value();
        if (!q.holds(form.measure()) && !holdsOtherKind(q, form.measure())) {
            return wrongUnit(text, q, form);
        }
        OptionalDouble inside = inside(q, form);
        if (inside.isPresent()) {
            return new Good<>(FixedDigits.round(inside.getAsDouble(), form.lowest(), form.highest()));
        }
        if (form.measure() == Measure.TEMPERATURE && si(q, Measure.TEMPERATURE).isEmpty()) {
            return new Bad<>(q.text() + " is below absolute zero", hint(q, form));
        }
        String problem = q.text() + " is outside " + range(q, form);
        return new Bad<>(problem, hint(q, form));
    }

    private static boolean holdsOtherKind(Quantity q, Measure measure) {
        return (measure == Measure.PRESSURE_ABSOLUTE && q.holds(Measure.PRESSURE_GAUGE))
                || (measure == Measure.PRESSURE_GAUGE && q.holds(Measure.PRESSURE_ABSOLUTE));
    }

    private static Reading<Quantity> quantity(String text, Measure measure) {
        if (text.isBlank()) {
            return new Bad<>("is empty", "write a number and a unit, such as " + example(measure));
        }
        try {
            return new Good<>(Quantity.parse(text));
        } catch (UnitFault fault) {
            Matcher m = UNIT.matcher(text);
            if (m.matches() && fault.getMessage().contains("unknown unit")) {
                String unit = m.group(1).strip();
                String nearest = Words.nearest(unit, Quantity.unitsFor(measure))
                        .map(u -> "did you mean " + u + "?")
                        .orElse("use " + String.join(", ", common(measure)));
                return new Bad<>("\"" + text + "\" has an unknown unit \"" + unit + "\"", nearest);
            }
            String hint = text.matches(".*\\d,\\d.*")
                    ? "write the decimal mark as a point, without thousands separators"
                    : "write a number and a unit, such as " + example(measure);
            return new Bad<>("\"" + text + "\" is not a quantity", hint);
        }
    }

    private static Reading<Double> wrongUnit(String text, Quantity q, Form.Amount form) {
        List<String> units = common(form.measure());
        if (!q.unit().isEmpty()) {
            return new Bad<>("\"" + text + "\" is not a " + form.measure().title(), "use " + String.join(", ", units));
        }
        List<String> fitting = units.stream()
                .filter(u -> inside(q.value(), u, form).isPresent())
                .map(u -> Quantity.of(q.value(), u).text())
                .toList();
        return new Bad<>(
                "\"" + text + "\" has no unit",
                fitting.isEmpty() ? "use " + String.join(", ", units) : "write " + String.join(" or ", fitting));
    }

    /** Units in which people write a measure. */
    private static List<String> common(Measure measure) {
        return measure.usualUnits();
    }

    static String range(Quantity q, Form.Amount form) {
        Measure measure = form.measure();
        UnitSystem shown = q.holds(measure)
                ? UnitSystem.SI.with(measure, q.unit().isEmpty() ? "1" : q.unit(), 3)
                : UnitSystem.FIELD;
        String unit = shown.symbol(measure).equals("1") ? "" : " " + shown.symbol(measure);
        return inwards(shown.fromSi(form.lowest(), measure), RoundingMode.CEILING) + " to "
                + inwards(shown.fromSi(form.highest(), measure), RoundingMode.FLOOR) + unit;
    }

    /** A bound to three digits, rounded into the range so that what is told is allowed. */
    private static String inwards(double bound, RoundingMode rounding) {
        BigDecimal exact = new BigDecimal(bound).round(new MathContext(12));
        BigDecimal shown = exact.round(new MathContext(3, rounding));
        BigDecimal told = exact.scale() <= 0 || exact.stripTrailingZeros().precision() <= 5 ? exact : shown;
        return told.signum() == 0 ? "0" : told.stripTrailingZeros().toPlainString();
    }

    private static OptionalDouble inside(double value, String unit, Form.Amount form) {
        return inside(Quantity.of(value, unit.equals("1") ? "" : unit), form);
    }

    private static OptionalDouble inside(Quantity q, Form.Amount form) {
        OptionalDouble si = si(q, form.measure());
        return si.isPresent() && si.getAsDouble() >= form.lowest() && si.getAsDouble() <= form.highest()
                ? si
                : OptionalDouble.empty();
    }

    /** Value in SI; empty below absolute zero or below vacuum. */
    private static OptionalDouble si(Quantity q, Measure measure) {
        try {
            return OptionalDouble.of(q.si(measure));
        } catch (RangeFault impossible) {
            return OptionalDouble.empty();
        }
    }

    /** A slipped decimal, then the same number in another common unit, then a slip of two or three decimals. */
    private static String hint(Quantity q, Form.Amount form) {
        List<String> guesses = new ArrayList<>();
        slip(q, form, guesses, 10);
        for (String unit : common(form.measure())) {
            boolean other =
                    !unit.equals(q.unit()) && !(unit.equals("1") && q.unit().isEmpty());
            if (other && guesses.size() < 2 && inside(q.value(), unit, form).isPresent()) {
                guesses.add(Quantity.of(q.value(), unit.equals("1") ? "" : unit).text());
            }
        }
        if (guesses.isEmpty()) {
            slip(q, form, guesses, 100);
        }
        if (guesses.isEmpty()) {
            slip(q, form, guesses, 1000);
        }
        return guesses.isEmpty() ? "" : "did you mean " + String.join(" or ", guesses) + "?";
    }

    private static void slip(Quantity q, Form.Amount form, List<String> guesses, double factor) {
        String unit = q.unit().isEmpty() ? "1" : q.unit();
        for (double value : new double[] {q.value() / factor, q.value() * factor}) {
            if (value != 0
                    && Double.isFinite(value)
                    && inside(value, unit, form).isPresent()) {
                guesses.add(Quantity.of(rounded(value), q.unit()).text());
            }
        }
    }

    /** Without the last digits that a decimal shift leaves behind. */
    private static double rounded(double value) {
        return new BigDecimal(value).round(new MathContext(12)).doubleValue();
    }

    private static String example(Measure measure) {
        return switch (measure) {
            case DENSITY, EQUIVALENT_DENSITY -> "9.6 ppg";
            case DEPTH, LENGTH -> "3500 m";
            case DIAMETER -> "12.25 in";
            case PRESSURE_GAUGE, PRESSURE_DIFFERENCE, PRESSURE_ABSOLUTE -> "500 psi";
            case VOLUME -> "25 bbl";
            case NUMBER -> "0.65";
            case TEMPERATURE -> "15 degC";
            default -> "1 " + common(measure).get(0);
        };
    }

    static Reading<Rock> rock(String text) {
        Form.Amount equivalent = new Form.Amount(Measure.EQUIVALENT_DENSITY, LEAST_EQUIVALENT, GREATEST_EQUIVALENT);
        Reading<Quantity> parsed = quantity(text, Measure.EQUIVALENT_DENSITY);
        if (parsed instanceof Bad<Quantity> bad) {
            return bad.as();
        }
        Quantity q = ((Good<Quantity>) parsed).value();
        if (q.holds(Measure.PRESSURE_GAUGE) || q.holds(Measure.PRESSURE_ABSOLUTE)) {
            return pressure(q);
        }
        if (!q.holds(Measure.EQUIVALENT_DENSITY) && q.holds(Measure.PRESSURE_GRADIENT)) {
            double density = q.si(Measure.PRESSURE_GRADIENT) / Physics.GRAVITY;
            if (density >= LEAST_EQUIVALENT && density <= GREATEST_EQUIVALENT) {
                return new Good<>(new Equivalent(FixedDigits.round(density, LEAST_EQUIVALENT, GREATEST_EQUIVALENT)));
            }
            Form.Amount gradient = new Form.Amount(
                    Measure.PRESSURE_GRADIENT,
                    LEAST_EQUIVALENT * Physics.GRAVITY,
                    GREATEST_EQUIVALENT * Physics.GRAVITY);
            return new Bad<>(q.text() + " is outside " + range(q, gradient), hint(q, gradient));
        }
        if (!q.holds(Measure.EQUIVALENT_DENSITY)) {
            String problem = q.unit().isEmpty() ? "has no unit" : "is no equivalent mud weight, gradient or pressure";
            return new Bad<>("\"" + text + "\" " + problem, "write it as 14.8 ppg, 1.77 sg, 0.77 psi/ft or 5200 psi");
        }
        Reading<Double> density = amount(text, equivalent);
        return density instanceof Bad<Double> bad
                ? bad.as()
                : new Good<>(new Equivalent(((Good<Double>) density).value()));
    }

    private static Reading<Rock> pressure(Quantity q) {
        Form.Amount range = new Form.Amount(Measure.PRESSURE_ABSOLUTE, LEAST_PRESSURE, GREATEST_PRESSURE);
        OptionalDouble absolute = inside(q, range);
        if (absolute.isPresent()) {
            return new Good<>(
                    new Pressure(FixedDigits.round(absolute.getAsDouble(), LEAST_PRESSURE, GREATEST_PRESSURE)));
        }
        Form.Amount form = new Form.Amount(
                Measure.PRESSURE_GAUGE, LEAST_PRESSURE - Physics.ATMOSPHERE, GREATEST_PRESSURE - Physics.ATMOSPHERE);
        return new Bad<>(q.text() + " is outside " + range(q, form), hint(q, form));
    }

    /** Flow rate in m³/s, from strokes per minute where the output of the pump is known. */
    static Reading<Double> pumpRate(String text, OptionalDouble output) {
        Form.Amount form = new Form.Amount(Measure.FLOW_RATE, 1e-5, 0.2);
        Reading<Quantity> parsed = quantity(text, Measure.FLOW_RATE);
        if (parsed instanceof Good<Quantity> good && good.value().holds(Measure.FREQUENCY)) {
            if (output.isEmpty()) {
                return new Bad<>("\"" + text + "\" counts strokes, and the section has no pump_output", "give it");
            }
            double rate = FixedDigits.round(good.value().si(Measure.FREQUENCY)) * output.getAsDouble();
            if (rate >= form.lowest() && rate <= form.highest()) {
                return new Good<>(rate);
            }
            return new Bad<>(
                    good.value().text() + " gives " + UnitSystem.FIELD.precise(rate, Measure.FLOW_RATE)
                            + ", which is outside "
                            + UnitSystem.FIELD.precise(form.lowest(), Measure.FLOW_RATE) + " to "
                            + UnitSystem.FIELD.precise(form.highest(), Measure.FLOW_RATE),
                    "check pump_output and the strokes");
        }
        return amount(text, form);
    }

    /** A pump rate that was checked, in SI: strokes stay strokes, since the pump's output may be given elsewhere. */
    static String pumpRateText(String text) {
        Quantity quantity = Quantity.parse(text);
        Measure measure = quantity.holds(Measure.FREQUENCY) ? Measure.FREQUENCY : Measure.FLOW_RATE;
        return FixedDigits.text(quantity.si(measure)) + " " + measure.siUnit();
    }
}
