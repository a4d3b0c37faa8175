package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Margin at the shoe and at the weakest exposed depth while a given influx is circulated past them.
 *
 * @param scenario drilled or swabbed
 * @param volume of the influx at bottom-hole conditions at shut-in, m³
 * @param volumeBasis where the volume comes from: "required tolerance", "detectable gain", or the caller
 * @param least smallest margin of all exposed depths over the displacement, Pa; negative where it breaks
 * @param leastAtShoe smallest margin at the shoe, Pa
 * @param weakPoint where the smallest margin is
 * @param stage when
 * @param path margins along the displacement, from on bottom upwards
 */
public record InfluxMargin(
        Kick.Scenario scenario,
        @Si("m3") double volume,
        String volumeBasis,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) double least,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) double leastAtShoe,
        WeakPoint weakPoint,
        Stage stage,
        List<Point> path) {
    public InfluxMargin {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(weakPoint, "weakPoint");
        Objects.requireNonNull(stage, "stage");
        path = List.copyOf(path);
    }

    /**
     * One position of the influx.
     *
     * @param gasTop measured depth, m
     * @param gasBottom measured depth, m
     * @param shoePressure Pa absolute
     * @param shoeMargin limit less pressure at the shoe, Pa
     * @param leastMargin smallest limit less pressure of all exposed depths, Pa
     */
    public record Point(
            @Si(value = "m", kind = Kind.DEPTH) double gasTop,
            @Si(value = "m", kind = Kind.DEPTH) double gasBottom,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double shoePressure,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double shoeMargin,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double leastMargin) {}
}
