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
 * @param block how far the search came with every string set, and what stopped it; empty where something works, or no string
 *     can be moved
 */
public record JointShoes(
        Direction direction,
        String statement,
        List<Shoe> shoes,
        List<String> leftOut,
        Optional<CasingDesign> design,
        Optional<Block> block) {
    public JointShoes {
        Objects.requireNonNull(direction, "direction");
        Objects.requireNonNull(statement, "statement");
        shoes = List.copyOf(shoes);
        leftOut = List.copyOf(leftOut);
        Objects.requireNonNull(design, "design");
        Objects.requireNonNull(block, "block");
    }

    /** From which end the shoes are set. */
    public enum Direction {
        BOTTOM_UP("bottom-up: the last shoe as shallow as any solution has it, then the one above it"),
        TOP_DOWN("top-down: the first shoe as deep as any solution has it, then the one below it");

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

    /**
     * The pair of shoes between which no hole holds: the nearest miss of a search from one end. From the bottom, the lower
     * string stands as shallow as it can while everything below it holds, and even the shortest hole above it fails, or, where
     * no string is left, that from the top. From the top, the upper string stands as deep as it can while everything above it
     * holds.
     *
     * @param upper name of the string at the top of the hole; empty at the top of what is searched
     * @param from measured depth of the top of the hole, m
     * @param lower name of the string at the bottom of the hole; empty at the bottom of what is searched
     * @param to measured depth of the bottom of the hole, m
     * @param obstacles what is not met in it
     */
    public record Block(
            Optional<String> upper,
            @Si(value = "m", kind = Kind.DEPTH) double from,
            Optional<String> lower,
            @Si(value = "m", kind = Kind.DEPTH) double to,
            List<ShoeObstacle> obstacles) {
        public Block {
            Objects.requireNonNull(upper, "upper");
            Objects.requireNonNull(lower, "lower");
            obstacles = List.copyOf(obstacles);
        }
    }
}
