package staunch.well;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * A stretch of a string with one weight and grade.
 *
 * @param topDepth measured depth of its top, m
 * @param bottomDepth measured depth of its bottom, m
 * @param outsideDiameter m
 * @param insideDiameter m, of the nominal body
 * @param grade name of the grade; empty where unknown
 * @param yieldStrength minimum yield of the grade, Pa, where known
 * @param burstRating internal yield pressure given by the case, Pa difference across the wall, where given
 * @param connectionRating internal pressure rating of the connection, Pa difference, where it is below the body's
 * @param wear lost part of the wall thickness, 0 to 0.95
 * @param nominalWeight threaded and coupled, kg/m, where given
 */
public record CasingInterval(
        @Si(value = "m", kind = Kind.DEPTH) double topDepth,
        @Si(value = "m", kind = Kind.DEPTH) double bottomDepth,
        @Si(value = "m", kind = Kind.DIAMETER) double outsideDiameter,
        @Si(value = "m", kind = Kind.DIAMETER) double insideDiameter,
        Optional<String> grade,
        @Si(value = "Pa", kind = Kind.STRESS) OptionalDouble yieldStrength,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble burstRating,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble connectionRating,
        @Si("1") double wear,
        @Si("kg/m") OptionalDouble nominalWeight) {
    public CasingInterval {
        Check.within("top of the casing interval", topDepth, 0, 20_000, Measure.DEPTH);
        Check.within("bottom of the casing interval", bottomDepth, 0, 20_000, Measure.DEPTH);
        if (bottomDepth <= topDepth) {
            throw new InputFault("casing interval", "has its bottom at or above its top", "check its depths");
        }
        Check.within("outside diameter of the casing", outsideDiameter, 0.05, 1.5, Measure.DIAMETER);
        Check.within("inside diameter of the casing", insideDiameter, 0.03, 1.5, Measure.DIAMETER);
        if (insideDiameter >= outsideDiameter) {
            throw new InputFault(
                    "casing interval", "has an inside diameter not below its outside diameter", "check them");
        }
        Check.within("wear of the casing", wear, 0, 0.95, Measure.NUMBER);
        Objects.requireNonNull(grade, "grade");
        yieldStrength.ifPresent(v -> Check.within("yield strength of the casing", v, 1e8, 2e9, Measure.STRESS));
        burstRating.ifPresent(
                v -> Check.within("burst rating of the casing", v, 1e5, 4e8, Measure.PRESSURE_DIFFERENCE));
        connectionRating.ifPresent(
                v -> Check.within("rating of the casing connection", v, 1e5, 4e8, Measure.PRESSURE_DIFFERENCE));
        nominalWeight.ifPresent(v -> Check.within("nominal weight of the casing", v, 5, 1500, Measure.LINEAR_MASS));
    }

    /** A stretch whose nominal weight is not given. */
    public CasingInterval(
            @Si(value = "m", kind = Kind.DEPTH) double topDepth,
            @Si(value = "m", kind = Kind.DEPTH) double bottomDepth,
            @Si(value = "m", kind = Kind.DIAMETER) double outsideDiameter,
            @Si(value = "m", kind = Kind.DIAMETER) double insideDiameter,
            Optional<String> grade,
            @Si(value = "Pa", kind = Kind.STRESS) OptionalDouble yieldStrength,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble burstRating,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble connectionRating,
            @Si("1") double wear) {
        this(
                topDepth,
                bottomDepth,
                outsideDiameter,
                insideDiameter,
                grade,
                yieldStrength,
                burstRating,
                connectionRating,
                wear,
                OptionalDouble.empty());
    }
}
