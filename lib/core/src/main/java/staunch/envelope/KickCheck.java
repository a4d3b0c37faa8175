package staunch.envelope;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Si;

/**
 * Tolerance of one scenario at section TD against its criterion, without the working of a {@link KickResult}.
 *
 * @param scenario drilled or swabbed
 * @param kick the influx asked about; empty where the case lacks what defines it
 * @param tolerance what the formation holds, with the estimates that decide
 * @param circulatedToSurface what casing and equipment hold
 * @param required volume the criteria ask for, m³, where set
 * @param verdict against the criterion
 */
public record KickCheck(
        Kick.Scenario scenario,
        Optional<Kick> kick,
        Tolerance tolerance,
        SurfaceTolerance circulatedToSurface,
        @Si("m3") OptionalDouble required,
        Verdict verdict) {
    public KickCheck {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(kick, "kick");
        Objects.requireNonNull(tolerance, "tolerance");
        Objects.requireNonNull(circulatedToSurface, "circulatedToSurface");
        Objects.requireNonNull(required, "required");
        Objects.requireNonNull(verdict, "verdict");
    }

    KickResult with(Tolerance likely, Optional<HandCalculation> hand) {
        return new KickResult(scenario, kick, tolerance, circulatedToSurface, likely, required, verdict, hand);
    }
}
