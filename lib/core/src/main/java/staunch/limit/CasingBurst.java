package staunch.limit;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;
import staunch.well.CasingInterval;

/**
 * What a stretch of casing of one weight and grade holds from inside, before the share of it that the case allows.
 *
 * <p>The body holds the rating of the case, or else its internal yield pressure; wear takes its part of the wall from
 * both, since internal yield pressure is proportional to the wall. Where the connection holds less, it counts.
 */
public sealed interface CasingBurst {
    /** Part of the nominal wall that the mill guarantees: API Spec 5CT allows 12.5 % less (from memory). */
    @Si("1")
    double WALL_TOLERANCE = 0.875;

    /**
     * The rating is known.
     *
     * @param pressure inside less outside, Pa
     * @param basis what it rests on
     */
    record Rated(@Si(value = "Pa", kind = Kind.DIFFERENCE) double pressure, String basis) implements CasingBurst {
        public Rated {
            Objects.requireNonNull(basis, "basis");
        }
    }

    /**
     * Something is missing.
     *
     * @param missing what, in the words of the case
     */
    record NotAssessed(String missing) implements CasingBurst {
        public NotAssessed {
            Objects.requireNonNull(missing, "missing");
        }
    }

    /** Rating of a stretch. */
    static CasingBurst of(CasingInterval interval) {
        Optional<Rated> body = body(interval);
        if (body.isEmpty()) {
            String missing = interval.grade()
                    .map(g -> "burst rating, or yield strength of grade \"" + g + "\"")
                    .orElse("burst rating, or grade, of the casing");
            return new NotAssessed(missing);
        }
        OptionalDouble connection = interval.connectionRating();
        if (connection.isPresent() && connection.getAsDouble() < body.get().pressure()) {
            return new Rated(connection.getAsDouble(), "rating of the connection");
        }
        return body.get();
    }

    private static Optional<Rated> body(CasingInterval interval) {
        String worn = interval.wear() > 0 ? ", less wear" : "";
        if (interval.burstRating().isPresent()) {
            return Optional.of(new Rated(
                    interval.burstRating().getAsDouble() * (1 - interval.wear()), "burst rating of the case" + worn));
        }
        double wall = 0.5 * (interval.outsideDiameter() - interval.insideDiameter()) * (1 - interval.wear());
        if (interval.yieldStrength().isPresent()) {
            double yield = interval.yieldStrength().getAsDouble();
            return Optional.of(new Rated(
                    internalYieldPressure(yield, wall, interval.outsideDiameter()),
                    "internal yield pressure by API formula from the yield strength of the case" + worn));
        }
        return interval.grade()
                .flatMap(SteelGrade::named)
                .map(grade -> new Rated(
                        internalYieldPressure(grade.yieldStrength(), wall, interval.outsideDiameter()),
                        "internal yield pressure by API formula for grade " + grade.title() + worn));
    }

    /**
     * Minimum internal yield pressure of the pipe body: p = 0.875 · 2 Y t / D (API Bull 5C3, API TR 5C3: Barlow's formula
     * with the wall at its lower tolerance). Not rounded to tens of psi as tables print it.
     *
     * @param yieldStrength minimum yield Y, Pa, 100 to 2000 MPa
     * @param wall thickness t left, m, above zero to a quarter of the outside diameter (beyond, it is no thin wall)
     * @param outsideDiameter D, m, 0.05 to 1.5
     * @throws RangeFault outside these ranges
     */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    static double internalYieldPressure(
            @Si(value = "Pa", kind = Kind.STRESS) double yieldStrength,
            @Si(value = "m", kind = Kind.DIAMETER) double wall,
            @Si(value = "m", kind = Kind.DIAMETER) double outsideDiameter) {
        Check.within("yield strength of the casing", yieldStrength, 1e8, 2e9, Measure.STRESS);
        Check.within("outside diameter of the casing", outsideDiameter, 0.05, 1.5, Measure.DIAMETER);
        Check.within("wall of the casing", wall, 1e-6, 0.25 * outsideDiameter, Measure.DIAMETER);
        return WALL_TOLERANCE * 2 * yieldStrength * wall / outsideDiameter;
    }
}
