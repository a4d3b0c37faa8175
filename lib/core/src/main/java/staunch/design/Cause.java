package staunch.design;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import staunch.units.Check;
import staunch.units.InputFault;

/**
 * What results may have changed by: one change of the input, or several that give no legal case without each other.
 *
 * @param name in plain words
 * @param kind that of its first change
 * @param changes made together
 * @param together why they are not made one by one; empty for a single change
 */
public record Cause(String name, InputChange.Kind kind, List<InputChange> changes, String together) {
    public Cause {
        Check.text("name of a cause", name);
        Objects.requireNonNull(kind, "kind");
        changes = List.copyOf(changes);
        Objects.requireNonNull(together, "together");
        if (changes.isEmpty()) {
            throw new InputFault("cause \"" + name + "\"", "has no change", "name what changed");
        }
    }

    static Cause of(List<InputChange> changes, String together) {
        String name = changes.stream().map(InputChange::name).collect(Collectors.joining(" and "));
        return new Cause(name, changes.get(0).kind(), changes, together);
    }
}
