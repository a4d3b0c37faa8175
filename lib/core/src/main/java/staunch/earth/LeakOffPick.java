package staunch.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Physics;
import staunch.units.Si;
import staunch.units.Source;

/** What the curve of a pumping test says. */
public sealed interface LeakOffPick permits LeakOffPick.Picked, LeakOffPick.NoLeakOff {
    /** The test. */
    PumpingTest test();

    /** How it was read. */
    LeakOffMethod method();

    /** Straight build-up. */
    StraightLine buildUp();

    /** What speaks against the reading. */
    List<Flag> flags();

    /** Pressure at the gauge that the test is worth: leak-off, or what was held without it. */
    @Si(value = "Pa", kind = Kind.GAUGE)
    double pressure();

    /** Whether the formation leaked off, or held. */
    Standing standing();

    /** What speaks against the reading of a curve. */
    enum Flag {
        FEW_READINGS("fewer than five readings on the straight build-up"),
        NOT_STRAIGHT("the build-up scatters about its line by more than half the tolerance, or by 2 % of its rise"),
        ONE_READING_AFTER("a single reading lies after the leak-off"),
        WIDE_STEP("the next reading is more than 10 % of the pressure away: leak-off may lie anywhere between"),
        FELL_WITHOUT_LEAK_OFF("the pressure fell by more than 10 % with the pump stopped, though no leak-off is seen"),
        SHUT_IN_ABOVE_LEAK_OFF("the pressure with the pump stopped lies above the leak-off");

        private final String title;

        Flag(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /**
     * Straight line through readings, told by its two ends.
     *
     * @param fromVolume first volume it was fitted to, m³
     * @param fromPressure on the line there, Pa gauge
     * @param toVolume last volume it was fitted to, m³
     * @param toPressure on the line there, Pa gauge
     * @param readings that it was fitted to
     */
    record StraightLine(
            @Si("m3") double fromVolume,
            @Si(value = "Pa", kind = Kind.GAUGE) double fromPressure,
            @Si("m3") double toVolume,
            @Si(value = "Pa", kind = Kind.GAUGE) double toPressure,
            int readings) {
        /** Pressure on the line. */
        @Si(value = "Pa", kind = Kind.GAUGE)
        public double at(@Si("m3") double volume) {
            return fromPressure + slope() * (volume - fromVolume);
        }

        /** Rise of pressure with volume, Pa/m³. */
        double slope() {
            return (toPressure - fromPressure) / (toVolume - fromVolume);
        }
    }

    /**
     * The formation leaked off.
     *
     * @param test as it was pumped
     * @param method by which it was read
     * @param buildUp straight line of the build-up
     * @param after line through the readings after leak-off; empty where the method fits none
     * @param volume pumped at leak-off, m³
     * @param pressure at the gauge there, Pa
     * @param flags what speaks against the reading
     */
    record Picked(
            PumpingTest test,
            LeakOffMethod method,
            StraightLine buildUp,
            Optional<StraightLine> after,
            @Si("m3") double volume,
            @Si(value = "Pa", kind = Kind.GAUGE) double pressure,
            List<Flag> flags)
            implements LeakOffPick {
        public Picked {
            Objects.requireNonNull(test, "test");
            Objects.requireNonNull(method, "method");
            Objects.requireNonNull(buildUp, "buildUp");
            Objects.requireNonNull(after, "after");
            flags = List.copyOf(flags);
        }

        @Override
        public Standing standing() {
            return Standing.LEAK_OFF;
        }
    }

    /**
     * No leak-off is seen up to the greatest pressure: the test is a lower bound.
     *
     * @param test as it was pumped
     * @param method by which it was read
     * @param buildUp straight line of the build-up
     * @param pressure greatest at the gauge, Pa
     * @param flags what speaks against the reading
     */
    record NoLeakOff(
            PumpingTest test,
            LeakOffMethod method,
            StraightLine buildUp,
            @Si(value = "Pa", kind = Kind.GAUGE) double pressure,
            List<Flag> flags)
            implements LeakOffPick {
        public NoLeakOff {
            Objects.requireNonNull(test, "test");
            Objects.requireNonNull(method, "method");
            Objects.requireNonNull(buildUp, "buildUp");
            flags = List.copyOf(flags);
        }

        @Override
        public Standing standing() {
            return Standing.INTEGRITY_TEST;
        }
    }

    /**
     * Reads a curve.
     *
     * @throws InputFault where fewer than three readings lie on the straight build-up, or it does not rise
     */
    static LeakOffPick of(PumpingTest test, LeakOffMethod method) {
        return new LeakOffReading(test, method).read();
    }

    /**
     * Pressure on the formation: p = pₐ + p_s + ρ g (z − z_gauge). Friction in the string and the gel of the mud are not
     * taken off: at the usual quarter to half barrel a minute they are small, and taking them off is a choice of whoever
     * reads the gauge.
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    default double atFormation(PumpingTest.Column column) {
        return Physics.ATMOSPHERE
                + pressure()
                + column.mudDensity() * Physics.GRAVITY * (column.verticalDepth() - column.gaugeDepth());
    }

    /** The test as evidence: a leak-off, or an integrity test where none is seen. */
    default StrengthTest strengthTest(PumpingTest.Column column) {
        List<String> words = new ArrayList<>(flags().stream().map(Flag::title).toList());
        String how = method() instanceof LeakOffMethod.Departure ? "departure from build-up" : "two lines";
        String place = test().source().place();
        String picked = (place.isEmpty() ? "" : place + ", ") + "picked by " + how
                + (words.isEmpty() ? "" : "; " + String.join("; ", words));
        return new StrengthTest(
                test().name(),
                column.verticalDepth(),
                atFormation(column),
                standing(),
                OptionalDouble.of(column.mudDensity()),
                new Source(test().source().document(), picked));
    }

    /** Least squares by the library, in the project's words. */
    static StraightLine line(List<PumpingTest.Pumped> readings) {
        SimpleRegression fit = new SimpleRegression();
        readings.forEach(r -> fit.addData(r.volume(), r.pressure()));
        double from = readings.get(0).volume();
        double to = readings.get(readings.size() - 1).volume();
        return new StraightLine(from, fit.predict(from), to, fit.predict(to), readings.size());
    }
}
