package staunch.envelope;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Si;

/**
 * Tolerance of one scenario at section TD against its criterion.
 *
 * @param scenario drilled or swabbed
 * @param kick the influx asked about; empty where the case lacks what defines it
 * @param tolerance what the formation holds, with the estimates that decide
 * @param circulatedToSurface what casing and equipment hold
 * @param likelyTolerance what the formation holds with likely pore pressure and likely strength
 * @param required volume the criteria ask for, m³, where set
 * @param verdict against the criterion
 * @param hand the hand calculation beside a finite answer
 */
public record KickResult(
        Kick.Scenario scenario,
        Optional<Kick> kick,
        Tolerance tolerance,
        SurfaceTolerance circulatedToSurface,
        Tolerance likelyTolerance,
        @Si("m3") OptionalDouble required,
        Verdict verdict,
        Optional<HandCalculation> hand) {
    public KickResult {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(kick, "kick");
        Objects.requireNonNull(tolerance, "tolerance");
        Objects.requireNonNull(circulatedToSurface, "circulatedToSurface");
        Objects.requireNonNull(likelyTolerance, "likelyTolerance");
        Objects.requireNonNull(required, "required");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(hand, "hand");
    }

    /** The check alone, without likely tolerance and hand calculation. */
    public KickCheck check() {
        return new KickCheck(scenario, kick, tolerance, circulatedToSurface, required, verdict);
    }
}
