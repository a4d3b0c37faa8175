package staunch.well;

import java.util.List;
import staunch.units.InputFault;

/**
 * The string in the hole, from the bit upwards. The last component (drill pipe) reaches to surface whatever its length.
 *
 * @param components from the bit up; empty where there is no pipe in the hole
 */
public record DrillString(List<StringComponent> components) {
    /** No pipe in the hole. */
    public static final DrillString NONE = new DrillString(List.of());

    public DrillString {
        if (components == null) {
            throw new InputFault("drill string", "is missing", "list its components from the bit up");
        }
        components = List.copyOf(components);
    }

    /** Whether the hole is empty of pipe. */
    public boolean isNone() {
        return components.isEmpty();
    }
}
