package staunch.influx;

import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;
import staunch.units.Source;

/**
 * Gas in an annulus by flow pattern. Bubbles after {@link HarmathyBubble} below a gas fraction of 0.25, where bubbles begin
 * to join (Y. Taitel, D. Bornea and A.E. Dukler, AIChE Journal 26, 1980), slugs after
 * {@link TaylorBubble#ANNULUS_HASAN_KABIR} from there up to 0.85; beyond, the mud is a film and no drift law holds
 * (limits and constants from memory). Distribution parameter 1.2 in both. The drift velocity jumps where the pattern
 * changes, as it does in the source.
 *
 * @param bubbles law of the bubbly part
 */
public record HasanKabirAnnulus(HarmathyBubble bubbles) implements SlipLaw {
    private static final double BUBBLES_JOIN = 0.25;
    private static final double FILM = 0.85;

    /** Pattern for a surface tension, N/m, 0.005 to 0.1. */
    public static HasanKabirAnnulus of(@Si("N/m") double surfaceTension) {
        return new HasanKabirAnnulus(new HarmathyBubble(surfaceTension));
    }

    private SlipLaw pattern(SlipConditions conditions) {
        if (conditions.gasFraction() > FILM) {
            throw new RangeFault(
                    "gas fraction",
                    conditions.gasFraction(),
                    0,
                    FILM,
                    Measure.NUMBER,
                    "beyond it the mud is a film on the wall and no drift law holds");
        }
        return conditions.gasFraction() < BUBBLES_JOIN ? bubbles : TaylorBubble.ANNULUS_HASAN_KABIR;
    }

    @Override
    @Si("1")
    public double distributionParameter(SlipConditions conditions) {
        return pattern(conditions).distributionParameter(conditions);
    }

    @Override
    @Si("m/s")
    public double driftVelocity(SlipConditions conditions) {
        return pattern(conditions).driftVelocity(conditions);
    }

    @Override
    public String description() {
        return "bubbles or slugs in an annulus, Hasan and Kabir";
    }

    @Override
    public Source source() {
        return TaylorBubble.ANNULUS_HASAN_KABIR.source();
    }
}
