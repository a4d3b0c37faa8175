package staunch.design;

import java.util.Objects;
import java.util.Optional;
import staunch.units.Check;
import staunch.units.Source;

/**
 * A number that a case uses, as it was written, with where it stands and where its author found it.
 *
 * @param key of the case file that it belongs to; columns of a table stand behind the key that names the table
 * @param value as written, with its unit
 * @param file it stands in, relative to the case directory or under the name of the folder of offset data
 * @param line counted from 1
 * @param source document that the case names for it; empty where it names none
 */
public record InputValue(String key, String value, String file, int line, Optional<Source> source) {
    public InputValue {
        Check.text("key of an input value", key);
        Objects.requireNonNull(value, "value");
        Check.text("file of an input value", file);
        Objects.requireNonNull(source, "source");
    }
}
