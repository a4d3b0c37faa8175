package staunch.influx;

import java.util.Objects;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;
import staunch.units.Source;

/**
 * Static suspension, an option to be chosen by name: bubbles that the yield stress of the resting mud holds do not rise,
 * larger ones follow another law. A single bubble of radius R is held where τ_y ≥ 0.143 Δρ g R (J. Tsamopoulos, Y.
 * Dimakopoulos, N. Chatzidai, G. Karapetsas and M. Pavlidis, Journal of Fluid Mechanics 601, 2008; constant from memory,
 * for bubbles that surface tension keeps round). The mixture at rest only: while the mud flows, nothing is held.
 *
 * @param moving law of what is not held; not itself a suspension
 * @param yieldStress of the mud at rest, Pa, 0 to 200
 * @param bubbleDiameter of the bubbles, m, 1e-4 to 0.05
 */
public record YieldStressSuspension(
        SlipLaw moving,
        @Si(value = "Pa", kind = Kind.STRESS) double yieldStress,
        @Si(value = "m", kind = Kind.DIAMETER) double bubbleDiameter)
        implements SlipLaw {
    private static final double CRITICAL_YIELD_NUMBER = 0.143;

    public YieldStressSuspension {
        Objects.requireNonNull(moving, "moving");
        Check.within("yield stress of the mud at rest", yieldStress, 0, 200, Measure.STRESS);
        Check.within("diameter of the bubbles", bubbleDiameter, 1e-4, 0.05, Measure.DIAMETER);
    }

    /** Largest bubble that is held: d = 2 τ_y / (0.143 Δρ g). */
    @Si(value = "m", kind = Kind.DIAMETER)
    public double largestHeld(SlipConditions conditions) {
        return 2 * yieldStress / (CRITICAL_YIELD_NUMBER * conditions.lift() * Physics.GRAVITY);
    }

    /** Whether the bubbles stay where they are. */
    public boolean holds(SlipConditions conditions) {
        return conditions.mixtureVelocity() == 0 && bubbleDiameter <= largestHeld(conditions);
    }

    @Override
    @Si("1")
    public double distributionParameter(SlipConditions conditions) {
        return moving.distributionParameter(conditions);
    }

    @Override
    @Si("m/s")
    public double driftVelocity(SlipConditions conditions) {
        return holds(conditions) ? 0 : moving.driftVelocity(conditions);
    }

    @Override
    public String description() {
        return "held by the yield stress of the mud at rest, else " + moving.description();
    }

    @Override
    public Source source() {
        return new Source("J. Tsamopoulos et al., Journal of Fluid Mechanics 601 (2008) 123", "constant from memory");
    }
}
