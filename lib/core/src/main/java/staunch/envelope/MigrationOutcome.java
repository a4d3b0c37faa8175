package staunch.envelope;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import staunch.control.MigrationCurve;
import staunch.control.MigrationPoint;
import staunch.units.Amount;
import staunch.units.Kind;
import staunch.units.Si;
import staunch.units.UnitSystem;
import staunch.units.Wording;

/** The influx left to rise in the closed well. */
public sealed interface MigrationOutcome permits MigrationOutcome.Computed, NotAssessed {
    /**
     * Rise at slow, medium and fast rates.
     *
     * @param courses with what gives way in the well, slow first
     * @param rigid the same rates in a rigid well: the upper bound of the pressures, so that its times are the shortest
     * @param shareOfRigidRise rise of the surface pressure just after shut-in over mud gradient times vertical rise: the
     *     usual field estimate of the rise rate, observed rise over mud gradient, is this share of the true one; at or below
     *     zero the pressure does not rise at first, and tells no rate
     * @param formationMaasp static formation MAASP with the mud of shut-in, Pa gauge, where assessed
     */
    record Computed(
            List<Course> courses,
            List<Course> rigid,
            @Si("1") double shareOfRigidRise,
            @Si(value = "Pa", kind = Kind.GAUGE) OptionalDouble formationMaasp)
            implements MigrationOutcome {
        public Computed {
            courses = List.copyOf(courses);
            rigid = List.copyOf(rigid);
            Objects.requireNonNull(formationMaasp, "formationMaasp");
        }

        /** The limit reached first at any rate: the headline. Empty where none is. */
        public Optional<FirstReached> earliest() {
            return earliest(courses);
        }

        /** The same in the rigid well. */
        public Optional<FirstReached> earliestRigid() {
            return earliest(rigid);
        }

        private static Optional<FirstReached> earliest(List<Course> of) {
            return of.stream()
                    .flatMap(c -> c.earliest().stream())
                    .min(Comparator.comparingDouble(
                            f -> f.moment().orElseThrow().time()));
        }
    }

    /**
     * Rise at one rate.
     *
     * @param rate slip law in plain words
     * @param amounts quantities it names, in their order
     * @param ending why it ends
     * @param points in order of time
     * @param limits when each is first reached
     * @param maasp when the surface gauge first shows the formation MAASP, whether or not that is void by then
     */
    record Course(
            String rate,
            List<Amount> amounts,
            MigrationCurve.Ending ending,
            List<MigrationPoint> points,
            List<FirstReached> limits,
            Optional<MaaspShown> maasp) {
        public Course {
            Objects.requireNonNull(rate, "rate");
            amounts = List.copyOf(amounts);
            Objects.requireNonNull(ending, "ending");
            points = List.copyOf(points);
            limits = List.copyOf(limits);
            Objects.requireNonNull(maasp, "maasp");
        }

        /** The slip law in the given units. */
        public String rate(UnitSystem units) {
            return new Wording(rate, amounts).in(units);
        }

        /** The limit reached first; empty where none is before the end. */
        public Optional<FirstReached> earliest() {
            return reached()
                    .min(Comparator.comparingDouble(
                            f -> f.moment().orElseThrow().time()));
        }

        private Stream<FirstReached> reached() {
            return limits.stream().filter(f -> f.moment().isPresent());
        }
    }

    /**
     * A limit, and the first moment it is reached anywhere.
     *
     * @param name of the limit
     * @param measuredDepth where it is reached first, m; where it is not reached, its uppermost depth
     * @param moment when; empty where it is not reached before the end
     */
    record FirstReached(
            String name, @Si(value = "m", kind = Kind.DEPTH) double measuredDepth, Optional<MigrationPoint> moment) {
        public FirstReached {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(moment, "moment");
        }
    }

    /**
     * The surface gauge shows the formation MAASP.
     *
     * @param time since shut-in, s
     * @param isVoid whether gas is above the weak point by then, so that the reading says nothing about it
     */
    record MaaspShown(@Si("s") double time, boolean isVoid) {}
}
