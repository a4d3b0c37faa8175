package staunch.envelope;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import staunch.earth.EquivalentZero;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Pore pressure, mud and strength over the exposed depths of a section.
 *
 * @param points downwards
 * @param verdict whether pore pressure plus trip margin ≤ mud ≤ strength less margin and surge margin at every exposed depth
 * @param equivalentDensityFrom where equivalent mud weights of these pressures count from, by choice of method
 */
public record PressureWindow(List<Point> points, Verdict verdict, EquivalentZero equivalentDensityFrom) {
    public PressureWindow {
        points = List.copyOf(points);
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(equivalentDensityFrom, "equivalentDensityFrom");
    }

    /**
     * One depth. Pressures are absolute, Pa; empty where the case does not know.
     *
     * @param measuredDepth m
     * @param verticalDepth m
     * @param porePressureLikely best estimate
     * @param porePressureHigh that decides
     * @param mudPressure static
     * @param strengthLikely best estimate
     * @param strengthLow that decides
     * @param limit strength that decides less the margin
     */
    public record Point(
            @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) OptionalDouble porePressureLikely,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) OptionalDouble porePressureHigh,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) OptionalDouble mudPressure,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) OptionalDouble strengthLikely,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) OptionalDouble strengthLow,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) OptionalDouble limit) {}
}
