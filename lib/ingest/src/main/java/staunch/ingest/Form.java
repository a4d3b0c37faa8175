package staunch.ingest;

import java.util.List;
import java.util.Locale;
import staunch.units.Measure;

/** What the value of a key looks like. */
sealed interface Form {
    /** Free text. */
    record Text() implements Form {}

    /**
     * A quantity with its unit.
     *
     * @param measure what it measures
     * @param lowest allowed, SI
     * @param highest allowed, SI
     */
    record Amount(Measure measure, double lowest, double highest) implements Form {}

    /** A pressure in the rock: an equivalent mud weight, a gradient, or a pressure. */
    record RockPressure() implements Form {}

    /** A pump rate: a flow rate, or strokes per minute where the section gives the pump's output. */
    record PumpRate() implements Form {}

    /** A whole number. */
    record Count(int lowest, int highest) implements Form {}

    /** True or false. */
    record Flag() implements Form {}

    /** One of the constants of an enum, in small letters. */
    record Choice(Class<? extends Enum<?>> type) implements Form {
        List<String> names() {
            return List.of(type.getEnumConstants()).stream().map(Choice::name).toList();
        }

        static String name(Enum<?> constant) {
            return constant.name().toLowerCase(Locale.ROOT);
        }
    }

    /** One of some words. */
    record Word(List<String> words) implements Form {}

    /**
     * Keys below this key.
     *
     * @param block the keys
     * @param whole whether they must be complete
     */
    record Nested(Block block, boolean whole) implements Form {}

    /**
     * A list of things with the same keys.
     *
     * @param block keys of each
     * @param whole whether each must be complete; not so where keys may come from elsewhere
     * @param csv whether {@code {file: NAME.csv}} may stand for the list
     * @param word text that may stand for the list, such as "none"; empty where none
     */
    record Rows(Block block, boolean whole, boolean csv, String word) implements Form {}

    /** Name of a CSV file whose columns are the keys of a block. */
    record Csv(Block block) implements Form {}

    /** A name out of some, or keys below this key. */
    record NameOrNested(List<String> names, Block block) implements Form {}

    /** Symbol of a unit that can hold a measure. */
    record UnitOf(Measure measure) implements Form {}
}
