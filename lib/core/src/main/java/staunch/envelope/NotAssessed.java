package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.units.Amount;
import staunch.units.Fault;
import staunch.units.UnitSystem;
import staunch.units.Wording;

/**
 * A result of the operations that could not be worked out.
 *
 * @param reason one sentence, in SI units
 * @param missing field of the case that would mend it; empty where none would
 * @param amounts quantities the reason names, in their order
 */
public record NotAssessed(String reason, String missing, List<Amount> amounts)
        implements KickOperations,
                CirculationOutcome,
                CirculationPeaks,
                MigrationOutcome,
                VolumetricOutcome,
                LubricationOutcome,
                BullheadingOutcome,
                KillSheetOutcome,
                SurfaceGasOutcome,
                SurfaceGasOutcome.SeparatorOutcome,
                RiserOutcome,
                MudFlowOutcome {
    public NotAssessed {
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(missing, "missing");
        amounts = List.copyOf(amounts);
    }

    /** A reason that names no quantity. */
    public NotAssessed(String reason, String missing) {
        this(reason, missing, List.of());
    }

    static NotAssessed of(Fault fault) {
        return new NotAssessed(fault.wording().text(), "", fault.wording().amounts());
    }

    static NotAssessed of(Missing missing) {
        return new NotAssessed(missing.getMessage(), missing.asTolerance().missing());
    }

    /** In plain words and the given units. */
    public String summary(UnitSystem units) {
        return new Wording(summary(), amounts).in(units);
    }

    /** In plain words. */
    public String summary() {
        return "not assessed: " + reason + (missing.isEmpty() ? "" : " (missing: " + missing + ")");
    }
}
