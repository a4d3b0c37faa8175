package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.units.Amount;
import staunch.units.UnitSystem;
import staunch.units.Wording;

/**
 * Outcome of a check against a criterion.
 *
 * @param outcome one of four
 * @param statement the outcome in words and SI units, with its scope: "holds (formation only)", "not assessed: no strength basis"
 * @param governing the limit that decides; empty where none does
 * @param amounts quantities the statement names, in their order
 */
public record Verdict(Outcome outcome, String statement, String governing, List<Amount> amounts) {
    public Verdict {
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(statement, "statement");
        Objects.requireNonNull(governing, "governing");
        amounts = List.copyOf(amounts);
    }

    /** A verdict whose statement names no quantity. */
    public Verdict(Outcome outcome, String statement, String governing) {
        this(outcome, statement, governing, List.of());
    }

    /** The statement in the given units. */
    public String statement(UnitSystem units) {
        return new Wording(statement, amounts).in(units);
    }

    /** The four outcomes, worst first where they are combined: fails, not assessed, holds; not shut in stands alone. */
    public enum Outcome {
        FAILS("fails"),
        NOT_ASSESSED("not assessed"),
        HOLDS("holds"),
        NOT_SHUT_IN("not shut in");

        private final String title;

        Outcome(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }
}
