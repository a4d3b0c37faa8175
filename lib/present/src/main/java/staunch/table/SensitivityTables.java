package staunch.table;

import static java.math.RoundingMode.FLOOR;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import staunch.design.Sensitivity;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** Tables of a sensitivity. */
public final class SensitivityTables {
    private static final int SIGNIFICANT = 4;

    private SensitivityTables() {}

    /** Each input with its swing, the margin at either end, and the value at which the verdict flips. */
    public static ResultTable swings(Sensitivity sensitivity, UnitSystem units) {
        return new Rows<>(sensitivity.inputs(), units)
                .text("Input", i -> i.input().title())
                .text("Base", i -> value(i.base(), i.measure(), units))
                .text("Low", i -> value(i.low(), i.measure(), units))
                .text("High", i -> value(i.high(), i.measure(), units))
                .optional("Margin at low", Measure.VOLUME, FLOOR, i -> margin(i.atLow()))
                .optional("Margin at high", Measure.VOLUME, FLOOR, i -> margin(i.atHigh()))
                .text("Verdict at low", i -> verdict(i.low(), i.atLow()))
                .text("Verdict at high", i -> verdict(i.high(), i.atHigh()))
                .text("Verdict flips", i -> flip(i.flip(), units))
                .text("Range from", Sensitivity.Input::basis)
                .table(
                        "Sensitivity of " + sensitivity.section(),
                        "One input varied at a time, the greatest swing first. Margin: least of tolerance less required"
                                + " volume over both kicks, formation and way to surface, rounded down; at the base "
                                + base(sensitivity, units) + ", "
                                + sensitivity.base().verdict().outcome().title()
                                + ". A range is the case's own; where it states none, only the flip is shown.");
    }

    /** The same in fewer columns, without what the case does not give. */
    public static ResultTable brief(Sensitivity sensitivity, UnitSystem units) {
        List<Sensitivity.Input> varied = sensitivity.inputs().stream()
                .filter(i -> !(i.flip() instanceof Sensitivity.NotVaried))
                .toList();
        String others = sensitivity.inputs().stream()
                .filter(i -> i.flip() instanceof Sensitivity.NotVaried)
                .map(i -> i.input().title())
                .collect(Collectors.joining(", "));
        return new Rows<>(varied, units)
                .text("Input", i -> i.input().title())
                .text("In the case", i -> value(i.base(), i.measure(), units))
                .text("Verdict flips", i -> flip(i.flip(), units))
                .text("Range", i -> range(i, units))
                .text("Margin over the range", i -> margins(i, units))
                .text("Range from", Sensitivity.Input::basis)
                .table(
                        "What flips the verdict",
                        "One input varied at a time, all others as they are. Margin: least of tolerance less required"
                                + " volume over both kicks, formation and way to surface, rounded down; "
                                + base(sensitivity, units)
                                + " as the case stands. A flip is told only as far as it was looked for."
                                + (others.isEmpty() ? "" : " Not in the case, so not varied: " + others + "."));
    }

    private static String range(Sensitivity.Input input, UnitSystem units) {
        return input.low().isEmpty() && input.high().isEmpty()
                ? Rows.NONE
                : value(input.low(), input.measure(), units) + " – " + value(input.high(), input.measure(), units);
    }

    private static String margins(Sensitivity.Input input, UnitSystem units) {
        return input.low().isEmpty() && input.high().isEmpty()
                ? Rows.NONE
                : end(input.atLow(), units) + " – " + end(input.atHigh(), units);
    }

    private static String end(Optional<Sensitivity.Effect> effect, UnitSystem units) {
        OptionalDouble margin = margin(effect);
        return margin.isPresent()
                ? units.text(margin.getAsDouble(), Measure.VOLUME, FLOOR)
                : effect.map(e -> e.verdict().outcome().title()).orElse("outside the range of a model");
    }

    private static String base(Sensitivity sensitivity, UnitSystem units) {
        OptionalDouble margin = sensitivity.base().margin();
        return margin.isPresent() ? units.text(margin.getAsDouble(), Measure.VOLUME, FLOOR) : "no volume";
    }

    private static String value(OptionalDouble value, Measure measure, UnitSystem units) {
        return value.isPresent() ? shown(value.getAsDouble(), measure, units) : Rows.NONE;
    }

    /** The inputs of one table differ in size too much for fixed decimals. */
    private static String shown(double value, Measure measure, UnitSystem units) {
        return units.significant(value, SIGNIFICANT, measure);
    }

    private static OptionalDouble margin(Optional<Sensitivity.Effect> effect) {
        return effect.isPresent() ? effect.get().margin() : OptionalDouble.empty();
    }

    private static String verdict(OptionalDouble value, Optional<Sensitivity.Effect> effect) {
        return effect.map(e -> e.verdict().outcome().title())
                .orElse(value.isPresent() ? "outside the range of a model" : Rows.NONE);
    }

    /** Where the verdict flips, in words. */
    static String flip(Sensitivity.Flip flip, UnitSystem units) {
        if (flip instanceof Sensitivity.FlipsAt at) {
            return "to " + at.verdict().outcome().title() + " at " + shown(at.value(), at.measure(), units);
        }
        if (flip instanceof Sensitivity.DoesNotFlip never) {
            return "does not flip in " + shown(never.from(), never.measure(), units) + " – "
                    + shown(never.to(), never.measure(), units);
        }
        return "not varied: " + ((Sensitivity.NotVaried) flip).reason();
    }
}
