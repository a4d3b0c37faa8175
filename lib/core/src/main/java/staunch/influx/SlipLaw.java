package staunch.influx;

import java.util.List;
import staunch.units.Si;
import staunch.units.Source;
import staunch.units.Wording;

/**
 * How fast gas moves in mud: v_g = C₀ v_m + v_d (Zuber and Findlay 1965), v_m the mixture velocity, C₀ the distribution
 * parameter, v_d the drift velocity. In a closed well v_m = 0 and the gas rises with v_d. Each law states its own range and
 * faults outside it.
 */
public sealed interface SlipLaw
        permits TaylorBubble,
                HarmathyBubble,
                HasanKabirAnnulus,
                DriftFlux,
                MudWeightRule,
                FixedRiseRate,
                YieldStressSuspension {
    /** Distribution parameter C₀: how much faster than the mean the fluid flows where the gas is. */
    @Si("1")
    double distributionParameter(SlipConditions conditions);

    /**
     * Drift velocity v_d: rise of the gas in mud at rest, along hole.
     *
     * @throws staunch.units.Fault outside the range of the law
     */
    @Si("m/s")
    double driftVelocity(SlipConditions conditions);

    /**
     * Velocity of the gas along hole: v_g = C₀ v_m + v_d.
     *
     * @throws staunch.units.Fault outside the range of the law
     */
    @Si("m/s")
    default double gasVelocity(SlipConditions conditions) {
        return distributionParameter(conditions) * conditions.mixtureVelocity() + driftVelocity(conditions);
    }

    /** One line for the list of options. */
    String description();

    /** The same with the quantities it names, to be read in any units. */
    default Wording wording() {
        return new Wording(description(), List.of());
    }

    /** Where the law comes from. */
    Source source();
}
