package staunch.envelope;

import java.util.Objects;
import staunch.control.KillSheet;

/** The kill sheet of the influx, for planning. */
public sealed interface KillSheetOutcome permits KillSheetOutcome.Computed, NotAssessed {
    /**
     * The sheet.
     *
     * @param sheet marked as not for live use
     */
    record Computed(KillSheet sheet) implements KillSheetOutcome {
        public Computed {
            Objects.requireNonNull(sheet, "sheet");
        }
    }
}
