package staunch.design;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import staunch.units.Measure;

/**
 * How much of the change of one result each cause explains.
 *
 * @param quantity that changed
 * @param measure of every change below
 * @param total value after less value before, SI; empty where one of them is no number
 * @param shares of each cause, in the order in which the causes are made
 * @param remainderAlone total less the sum of the shares of each cause alone, SI: what the causes do only together; empty
 *     where one of the shares is no number
 * @param remainderInSequence total less the sum of the shares in sequence, SI; zero but where the library computes
 *     otherwise than the records say; empty where one of the shares is no number
 */
public record Attribution(
        SectionQuantity quantity,
        Measure measure,
        OptionalDouble total,
        List<Share> shares,
        OptionalDouble remainderAlone,
        OptionalDouble remainderInSequence) {
    public Attribution {
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(measure, "measure");
        Objects.requireNonNull(total, "total");
        shares = List.copyOf(shares);
        Objects.requireNonNull(remainderAlone, "remainderAlone");
        Objects.requireNonNull(remainderInSequence, "remainderInSequence");
    }

    /**
     * Share of one cause.
     *
     * @param cause name
     * @param measure of the changes
     * @param alone change by this cause alone, made on the earlier case, SI; empty where it leads to no number
     * @param inSequence change by this cause after those before it, SI; empty where it leads to or from no number
     * @param outcomeAlone what the result is with this cause alone, in words
     * @param outcomeInSequence what the result is with this cause and those before it, in words
     */
    public record Share(
            String cause,
            Measure measure,
            OptionalDouble alone,
            OptionalDouble inSequence,
            String outcomeAlone,
            String outcomeInSequence) {
        public Share {
            Objects.requireNonNull(cause, "cause");
            Objects.requireNonNull(measure, "measure");
            Objects.requireNonNull(alone, "alone");
            Objects.requireNonNull(inSequence, "inSequence");
            Objects.requireNonNull(outcomeAlone, "outcomeAlone");
            Objects.requireNonNull(outcomeInSequence, "outcomeInSequence");
        }
    }
}
