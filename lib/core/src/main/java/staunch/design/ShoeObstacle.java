package staunch.design;

import java.util.Objects;

/**
 * Why a shoe may not stand at a depth.
 *
 * @param criterion that is not met
 * @param section in which it is not; empty where no section is concerned
 * @param statement in words
 * @param governing what decides; empty where nothing more is to be said
 */
public record ShoeObstacle(Criterion criterion, String section, String statement, String governing) {
    public ShoeObstacle {
        Objects.requireNonNull(criterion, "criterion");
        Objects.requireNonNull(section, "section");
        Objects.requireNonNull(statement, "statement");
        Objects.requireNonNull(governing, "governing");
    }

    /** What a shoe must meet. */
    public enum Criterion {
        DRILLED_TOLERANCE("tolerance of the drilled kick"),
        SWABBED_TOLERANCE("tolerance of the swabbed kick"),
        CASING_OR_EQUIPMENT("casing burst or equipment on the way to surface"),
        PORE_PRESSURE("pore pressure plus trip margin"),
        STRENGTH("strength less its margin and surge margin"),
        STAY_OUT("shoe stay-out"),
        NOT_ASSESSED("not assessed"),
        /** A section without shut-in has no kick criterion that could say how deep it may go. */
        NOT_SHUT_IN_ABOVE("planned depth: the section above is not shut in"),
        END_OF_SEARCH("end of the search");

        private final String title;

        Criterion(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /** The obstacle in one line, with its section. */
    public String text() {
        String what = criterion == Criterion.STAY_OUT ? criterion.title() + " " + governing : criterion.title();
        return what + (section.isEmpty() ? "" : " in " + section);
    }
}
