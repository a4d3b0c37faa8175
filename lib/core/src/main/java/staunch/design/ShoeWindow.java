package staunch.design;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Where the shoe of one string may stand while the others stay where they are planned.
 *
 * @param string name of the string
 * @param planned measured depth of its shoe in the design, m
 * @param plannedVertical vertical depth of the same, m
 * @param stretches of the search, downwards, allowed and not in turn; empty where the string is not searched
 * @param notSearched why it is not; empty where it is
 */
public record ShoeWindow(
        String string,
        @Si(value = "m", kind = Kind.DEPTH) double planned,
        @Si(value = "m", kind = Kind.DEPTH) double plannedVertical,
        List<ShoeStretch> stretches,
        Optional<String> notSearched) {
    public ShoeWindow {
        Objects.requireNonNull(string, "string");
        stretches = List.copyOf(stretches);
        Objects.requireNonNull(notSearched, "notSearched");
    }

    /** Stretches in which the shoe may stand, downwards. */
    public List<ShoeStretch> allowed() {
        return stretches.stream().filter(ShoeStretch::allowed).toList();
    }

    /** The uppermost stretch in which the shoe may stand; its upper end is the shallowest depth. */
    public Optional<ShoeStretch> shallowest() {
        return stretches.stream().filter(ShoeStretch::allowed).findFirst();
    }

    /** Whether the planned depth is allowed; false where the string is not searched. */
    public boolean plannedAllowed() {
        return allowed().stream().anyMatch(s -> planned >= s.from() - 1e-6 && planned <= s.to() + 1e-6);
    }
}
