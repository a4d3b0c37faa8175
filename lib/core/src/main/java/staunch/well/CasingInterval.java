package staunch.well;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;
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

    /** New pipe of which nothing but its size is known, in units as written. */
    public static CasingInterval of(
            Quantity topDepth, Quantity bottomDepth, Quantity outsideDiameter, Quantity insideDiameter) {
        return new CasingInterval(
                topDepth.si("top of the casing interval", Measure.DEPTH),
                bottomDepth.si("bottom of the casing interval", Measure.DEPTH),
                outsideDiameter.si("outside diameter of the casing", Measure.DIAMETER),
                insideDiameter.si("inside diameter of the casing", Measure.DIAMETER),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                OptionalDouble.empty());
    }

    /** The same stretch of that grade. */
    public CasingInterval withGrade(String newGrade) {
        return with(parts -> parts.grade = Optional.of(newGrade));
    }

    /** The same stretch with the minimum yield of its grade. */
    public CasingInterval withYieldStrength(Quantity strength) {
        return with(parts ->
                parts.yieldStrength = OptionalDouble.of(strength.si("yield strength of the casing", Measure.STRESS)));
    }

    /** The same stretch with a burst rating of its own. */
    public CasingInterval withBurstRating(Quantity rating) {
        return with(parts -> parts.burstRating =
                OptionalDouble.of(rating.si("burst rating of the casing", Measure.PRESSURE_DIFFERENCE)));
    }

    /** The same stretch with that part of its wall worn away. */
    public CasingInterval withWear(@Si("1") double share) {
        return with(parts -> parts.wear = share);
    }

    /** The same stretch with its nominal weight. */
    public CasingInterval withNominalWeight(Quantity weight) {
        return with(parts -> parts.nominalWeight =
                OptionalDouble.of(weight.si("nominal weight of the casing", Measure.LINEAR_MASS)));
    }

    private CasingInterval with(Consumer<Parts> change) {
        Parts parts = new Parts(this);
        change.accept(parts);
        return new CasingInterval(
                topDepth,
                bottomDepth,
                outsideDiameter,
                insideDiameter,
                parts.grade,
                parts.yieldStrength,
                parts.burstRating,
                connectionRating,
                parts.wear,
                parts.nominalWeight);
    }

    /** What may be changed, while one of it is. */
    private static final class Parts {
        private Optional<String> grade;
        private OptionalDouble yieldStrength;
        private OptionalDouble burstRating;
        private double wear;
        private OptionalDouble nominalWeight;

        Parts(CasingInterval from) {
            grade = from.grade;
            yieldStrength = from.yieldStrength;
            burstRating = from.burstRating;
            wear = from.wear;
            nominalWeight = from.nominalWeight;
        }
    }
}
