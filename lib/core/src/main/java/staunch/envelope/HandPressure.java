package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Pressure at the top of the gas as worked by hand, beside that of the schedule at the same moment.
 *
 * @param where the top of the gas is, in plain words
 * @param steps in order
 * @param pressure by hand, Pa absolute
 * @param schedulePressure by the schedule, Pa absolute
 * @param difference in words: what the hand formula leaves out
 */
public record HandPressure(
        String where,
        List<HandCalculation.Step> steps,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double schedulePressure,
        String difference) {
    public HandPressure {
        Objects.requireNonNull(where, "where");
        steps = List.copyOf(steps);
        Objects.requireNonNull(difference, "difference");
    }
}
