package staunch.influx;

import staunch.units.Check;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;
import staunch.units.Source;

/**
 * Small distorted bubbles, whose terminal velocity does not depend on their size. v_d = 1.53 (g σ Δρ/ρ²)^¼ (T.Z. Harmathy,
 * AIChE Journal 6, 1960; constant from memory). Holds for bubbles of some millimetres that do not touch; small against
 * the channel, in mud without gel. Distribution parameter 1.2.
 *
 * @param surfaceTension between gas and mud, N/m, 0.005 to 0.1
 */
public record HarmathyBubble(@Si("N/m") double surfaceTension) implements SlipLaw {
    public HarmathyBubble {
        Check.within("surface tension", surfaceTension, 0.005, 0.1, Measure.SURFACE_TENSION);
    }

    @Override
    @Si("1")
    public double distributionParameter(SlipConditions conditions) {
        return 1.2;
    }

    @Override
    @Si("m/s")
    public double driftVelocity(SlipConditions conditions) {
        double density = conditions.mudDensity();
        return 1.53 * Math.pow(Physics.GRAVITY * surfaceTension * conditions.lift() / (density * density), 0.25);
    }

    @Override
    public String description() {
        return "small bubbles, Harmathy";
    }

    @Override
    public Source source() {
        return new Source("T.Z. Harmathy, AIChE Journal 6 (1960) 281", "constant from memory");
    }
}
