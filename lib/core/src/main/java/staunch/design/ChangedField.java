package staunch.design;

import java.util.Objects;
import java.util.Optional;
import staunch.units.Check;
import staunch.units.Measure;

/**
 * A value that differs between two runs.
 *
 * @param name in plain words
 * @param place depth or name of the row it stands in, as the record has it; empty where it stands in none
 * @param before as the first record has it; empty where it was not given
 * @param after as the second has it; empty where it is not given
 * @param measure of before and after where they are quantities
 */
public record ChangedField(String name, String place, String before, String after, Optional<Measure> measure) {
    public ChangedField {
        Check.text("name of a changed value", name);
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        Objects.requireNonNull(measure, "measure");
    }
}
