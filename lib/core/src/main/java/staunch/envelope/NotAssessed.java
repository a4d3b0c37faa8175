package staunch.envelope;

import java.util.Objects;

/**
 * A result of the operations that could not be worked out.
 *
 * @param reason one sentence
 * @param missing field of the case that would mend it; empty where none would
 */
public record NotAssessed(String reason, String missing)
        implements KickOperations,
                CirculationOutcome,
                MigrationOutcome,
                VolumetricOutcome,
                LubricationOutcome,
                BullheadingOutcome,
                KillSheetOutcome,
                SurfaceGasOutcome,
                SurfaceGasOutcome.SeparatorOutcome,
                RiserOutcome {
    public NotAssessed {
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(missing, "missing");
    }

    static NotAssessed of(Missing missing) {
        return new NotAssessed(missing.getMessage(), missing.asTolerance().missing());
    }

    /** In plain words. */
    public String summary() {
        return "not assessed: " + reason + (missing.isEmpty() ? "" : " (missing: " + missing + ")");
    }
}
