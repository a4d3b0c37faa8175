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
        ANNULAR("annular preventer", true, false),
        PIPE_RAM("pipe ram", true, false),
        VARIABLE_BORE_RAM("variable-bore ram", true, false),
        BLIND_RAM("blind ram", true, false),
        BLIND_SHEAR_RAM("blind shear ram", true, false),
        /** Cuts, but need not seal. */
        CASING_SHEAR_RAM("casing shear ram", false, false),
        DRILLING_SPOOL("drilling spool", false, false),
        WELLHEAD_CONNECTOR("wellhead connector", false, true),
        RISER_CONNECTOR("riser connector", false, true),
        /** Sends flow overboard and holds no pressure worth the name. */
        DIVERTER("diverter", false, false),
        CHOKE_OUTLET("choke outlet", false, false),
        KILL_OUTLET("kill outlet", false, false);

        private final String title;
        private final boolean seals;
        private final boolean connects;

        Type(String title, boolean seals, boolean connects) {
            this.title = title;
            this.seals = seals;
            this.connects = connects;
        }

        /** In plain words. */
        public String title() {
            return title;
        }

        /** Whether it can close the well in. */
        public boolean seals() {
            return seals;
        }

        /** Whether it joins two parts of the pressure boundary. */
        public boolean connects() {
            return connects;
        }
    }
}
