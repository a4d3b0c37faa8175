package staunch.design;

import java.util.List;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Depths between which a shoe may stand throughout, or may not at any.
 *
 * @param from measured depth of the upper end, m
 * @param to measured depth of the lower end, m
 * @param fromVertical vertical depth of the upper end, m
 * @param toVertical vertical depth of the lower end, m
 * @param allowed whether a shoe may stand there
 * @param boundAbove where allowed: what is not met just above; else: what is not met at the upper end
 * @param boundBelow where allowed: what is not met just below; else: what is not met at the lower end
 */
public record ShoeStretch(
        @Si(value = "m", kind = Kind.DEPTH) double from,
        @Si(value = "m", kind = Kind.DEPTH) double to,
        @Si(value = "m", kind = Kind.DEPTH) double fromVertical,
        @Si(value = "m", kind = Kind.DEPTH) double toVertical,
        boolean allowed,
        List<ShoeObstacle> boundAbove,
        List<ShoeObstacle> boundBelow) {
    public ShoeStretch {
        boundAbove = List.copyOf(boundAbove);
        boundBelow = List.copyOf(boundBelow);
    }
}
