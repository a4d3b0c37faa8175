package staunch.envelope;

import java.util.Objects;

/**
 * Outcome of a check against a criterion.
 *
 * @param outcome one of four
 * @param statement the outcome in words, with its scope: "holds (formation only)", "not assessed: no strength basis"
 * @param governing the limit that decides; empty where none does
 */
public record Verdict(Outcome outcome, String statement, String governing) {
    public Verdict {
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(statement, "statement");
        Objects.requireNonNull(governing, "governing");
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
