package staunch.limit;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * One element of the BOP stack.
 *
 * @param name in the words of the case
 * @param type what it does
 * @param rating rated working pressure, Pa gauge, where given
 * @param bore through bore, m, where given
 * @param smallestPipe smallest pipe its rams close on, m, where given
 * @param largestPipe largest pipe its rams close on, m, where given
 */
public record StackElement(
        String name,
        Type type,
        Optional<PressureRating> rating,
        @Si(value = "m", kind = Kind.DIAMETER) OptionalDouble bore,
        @Si(value = "m", kind = Kind.DIAMETER) OptionalDouble smallestPipe,
        @Si(value = "m", kind = Kind.DIAMETER) OptionalDouble largestPipe) {
    public StackElement {
        Check.text("name of the stack element", name);
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(rating, "rating");
        bore.ifPresent(v -> Check.within("bore of " + name, v, 0.05, 1.0, Measure.DIAMETER));
    }

    /** What a stack element does. */
    public enum Type {
        ANNULAR,
        PIPE_RAM,
        VARIABLE_BORE_RAM,
        BLIND_RAM,
        BLIND_SHEAR_RAM,
        CASING_SHEAR_RAM,
        DRILLING_SPOOL,
        WELLHEAD_CONNECTOR,
        RISER_CONNECTOR,
        DIVERTER,
        CHOKE_OUTLET,
        KILL_OUTLET
    }
}
