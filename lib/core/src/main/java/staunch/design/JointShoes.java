package staunch.design;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Shoe depths of all strings together, with the fewest strings that work.
 *
 * @param direction in which they were searched
 * @param statement what was found, in words
 * @param shoes that were searched and are set, downwards; empty where nothing works
 * @param leftOut names of strings that are not needed
 * @param design the casing design with these shoes; empty where nothing works
 */
public record JointShoes(
        Direction direction, String statement, List<Shoe> shoes, List<String> leftOut, Optional<CasingDesign> design) {
    public JointShoes {
        Objects.requireNonNull(direction, "direction");
        Objects.requireNonNull(statement, "statement");
        shoes = List.copyOf(shoes);
        leftOut = List.copyOf(leftOut);
        Objects.requireNonNull(design, "design");
    }

    /** From which end the shoes are set. */
    public enum Direction {
        BOTTOM_UP("bottom-up: each shoe as shallow as the hole below it allows"),
        TOP_DOWN("top-down: each shoe as deep as the hole above it allows");

        private final String title;

        Direction(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /**
     * One shoe.
     *
     * @param string name of the string
     * @param measuredDepth of its shoe, m
     * @param verticalDepth of its shoe, m
     * @param boundBy what is not met just beyond it, in the direction of the search
     */
    public record Shoe(
            String string,
            @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            List<ShoeObstacle> boundBy) {
        public Shoe {
            Objects.requireNonNull(string, "string");
            boundBy = List.copyOf(boundBy);
        }
    }
}
