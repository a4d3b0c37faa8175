package staunch.design;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Measure;

/**
 * One result of a hole section as a run record keeps it, rounded to a fixed number of decimals so that equal runs leave
 * equal records.
 *
 * @param quantity what it is
 * @param measure what its number measures
 * @param value in SI, rounded to nearest: volumes to 1e-5 m³, pressures to 1 Pa; empty where there is no number
 * @param outcome where the number holds, or what there is in place of one: "no limit: …", "not assessed"
 */
public record ResultValue(SectionQuantity quantity, Measure measure, OptionalDouble value, String outcome) {
    public ResultValue {
        Objects.requireNonNull(quantity, "quantity");
        if (measure != quantity.measure()) {
            throw new InputFault(
                    quantity.title(),
                    "is no " + measure.title(),
                    "give a " + quantity.measure().title());
        }
        Check.text("outcome of " + quantity.title(), outcome);
        value = value.isPresent() ? rounded(quantity, value.getAsDouble()) : value;
    }

    static OptionalDouble rounded(SectionQuantity quantity, double value) {
        if (!Double.isFinite(value)) {
            throw new InputFault(quantity.title(), "is no finite number", "leave the number out and say why");
        }
        double nearest = BigDecimal.valueOf(value)
                .setScale(quantity.decimals(), RoundingMode.HALF_EVEN)
                .doubleValue();
        // A negative zero would print otherwise than a positive one.
        return OptionalDouble.of(nearest + 0.0);
    }

    /** That value less this one, rounded as both are: binary fractions are not. Empty where one is no number. */
    OptionalDouble changeTo(ResultValue later) {
        return value.isPresent() && later.value.isPresent()
                ? rounded(quantity, later.value.getAsDouble() - value.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Decimals in SI of its number. */
    public int decimals() {
        return quantity.decimals();
    }
}
