package staunch.earth;

import staunch.units.Kind;
import staunch.units.Si;

/**
 * Stretch of hole of which the earth model says nothing.
 *
 * @param from measured depth of its upper end, m
 * @param to measured depth of its lower end, m
 * @param shallowest least vertical depth in it, m
 * @param deepest greatest vertical depth in it, m
 */
public record Gap(
        @Si(value = "m", kind = Kind.DEPTH) double from,
        @Si(value = "m", kind = Kind.DEPTH) double to,
        @Si(value = "m", kind = Kind.DEPTH) double shallowest,
        @Si(value = "m", kind = Kind.DEPTH) double deepest) {
    Gap and(Gap below) {
        return new Gap(from, below.to, Math.min(shallowest, below.shallowest), Math.max(deepest, below.deepest));
    }

    static Gap between(double from, double to, double fromVertical, double toVertical) {
        return new Gap(from, to, Math.min(fromVertical, toVertical), Math.max(fromVertical, toVertical));
    }
}
