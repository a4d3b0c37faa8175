package staunch.design;

import java.util.List;
import java.util.Objects;
import staunch.units.Check;

/**
 * A part of the input that differs between two runs and can be changed by itself: a strength test, a pressure profile,
 * the mud of a section, a choice of method.
 *
 * @param name in the words of the well programme
 * @param kind what sort of change it is
 * @param fields the values that differ
 */
public record InputChange(String name, Kind kind, List<ChangedField> fields) {
    public InputChange {
        Check.text("name of a change", name);
        Objects.requireNonNull(kind, "kind");
        fields = List.copyOf(fields);
    }

    /** Sort of change. */
    public enum Kind {
        /** Something the case says about well, rock, equipment or criteria. */
        INPUT("input"),
        /** A choice of method. */
        METHOD("method"),
        /** Another version of the library. */
        LIBRARY("library");

        private final String title;

        Kind(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }
}
