package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * A tolerance worked by hand: constant gas gradient and Boyle's law with absolute end-point pressures, beside the full
 * answer. Values are SI; whoever prints it chooses the units.
 *
 * @param steps in order
 * @param volume the hand answer, m³
 * @param fullVolume the full answer, m³
 * @param difference in words: what the hand formula leaves out and which way that moves the answer
 */
public record HandCalculation(
        List<Step> steps, @Si("m3") double volume, @Si("m3") double fullVolume, String difference) {
    public HandCalculation {
        steps = List.copyOf(steps);
        Objects.requireNonNull(difference, "difference");
    }

    /**
     * One line of the hand calculation.
     *
     * @param name what is computed
     * @param formula with symbols
     * @param terms symbols of the formula with their values
     * @param result value
     * @param measure what the result measures
     */
    public record Step(String name, String formula, List<Term> terms, double result, Measure measure) {
        public Step {
            terms = List.copyOf(terms);
        }
    }

    /**
     * A symbol with its value.
     *
     * @param symbol as in the formula
     * @param value in the SI unit of the measure
     * @param measure what it measures
     */
    public record Term(String symbol, double value, Measure measure) {}
}
