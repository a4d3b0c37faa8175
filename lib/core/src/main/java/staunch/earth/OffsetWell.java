package staunch.earth;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * A neighbouring well with what was measured in it. All depths are below its own datum.
 *
 * @param name of the well
 * @param distance to the planned well at the depth of interest, m, 0 to 1000 km
 * @param normal its hydrostatic pressure and datum
 * @param overburden its overburden
 * @param porePressure its pore pressure, as judged after drilling; the ratio of each strength rests on it
 * @param tests leak-off and integrity tests done in it
 * @param points formation pressures measured in it
 * @param events losses, kicks and muds seen in it
 * @param logged what its logs and its casing programme say
 */
public record OffsetWell(
        String name,
        @Si(value = "m", kind = Kind.LENGTH) double distance,
        NormalPressure normal,
        Range overburden,
        Range porePressure,
        List<StrengthTest> tests,
        List<PressurePoint> points,
        List<DrillingEvent> events,
        Logged logged) {
    public OffsetWell {
        Check.text("name of the offset well", name);
        Check.within("distance of offset well " + name, distance, 0, 1e6, Measure.LENGTH);
        Objects.requireNonNull(normal, "normal");
        Objects.requireNonNull(overburden, "overburden");
        Objects.requireNonNull(porePressure, "porePressure");
        tests = List.copyOf(tests);
        points = List.copyOf(points);
        events = List.copyOf(events);
        Objects.requireNonNull(logged, "logged");
        for (StrengthTest test : tests) {
            if (test.standing() == Standing.PREDICTED) {
                throw new InputFault(
                        "strength test \"" + test.name() + "\" of offset well " + name,
                        "is a prediction",
                        "give tests that were pumped");
            }
        }
    }

    /**
     * What is known of a well besides its tests.
     *
     * @param commonSediment whether its overburden rests on the sediment of the planned well alone, so that an error of it is
     *     the same in both
     * @param log its pore pressure from a log
     * @param shoes of its casing programme
     */
    public record Logged(boolean commonSediment, Optional<LogPressure> log, List<CasingShoe> shoes) {
        /** No log and no casing programme. */
        public static final Logged NONE = new Logged(false, Optional.empty(), List.of());

        public Logged {
            Objects.requireNonNull(log, "log");
            shoes = List.copyOf(shoes);
        }
    }

    /** A well of which no log is known, without spread. */
    public OffsetWell(
            String name,
            @Si(value = "m", kind = Kind.LENGTH) double distance,
            NormalPressure normal,
            PressureProfile overburden,
            PressureProfile porePressure,
            List<StrengthTest> tests,
            List<PressurePoint> points,
            List<DrillingEvent> events) {
        this(name, distance, normal, Range.of(overburden), Range.of(porePressure), tests, points, events, Logged.NONE);
    }

    /** A well in which nothing else was seen. */
    public OffsetWell(
            String name,
            @Si(value = "m", kind = Kind.LENGTH) double distance,
            NormalPressure normal,
            PressureProfile overburden,
            PressureProfile porePressure,
            List<StrengthTest> tests,
            List<PressurePoint> points) {
        this(name, distance, normal, overburden, porePressure, tests, points, List.of());
    }

    /** The same well with some of its tests. */
    OffsetWell withTests(List<StrengthTest> kept) {
        return new OffsetWell(name, distance, normal, overburden, porePressure, kept, points, events, logged);
    }

    boolean knowsStressAt(double verticalDepth) {
        return overburden.likely().covers(verticalDepth)
                && porePressure.likely().covers(verticalDepth);
    }

    /** Overburden and pore pressure at a depth; at a step of the pore pressure the higher. */
    StressState stressAt(double verticalDepth) {
        return new StressState(
                overburden.likely().lowestAt(verticalDepth),
                porePressure.likely().highestAt(verticalDepth));
    }

    /**
     * Effective-stress ratio of a strength by the low or high estimates of overburden and pore pressure. No pore pressure
     * exceeds the strength of the rock that holds it: where its high estimate does, the ratio is 0.
     *
     * @return empty where the estimates leave no effective stress or a ratio beyond belief, see {@link StressState#ratioOf}
     */
    OptionalDouble ratioWithin(double verticalDepth, double strength, boolean heavy, boolean highPore) {
        double weight = (heavy ? overburden.highOrLikely() : overburden.lowOrLikely()).lowestAt(verticalDepth);
        double estimate =
                (highPore ? porePressure.highOrLikely() : porePressure.lowOrLikely()).highestAt(verticalDepth);
        double pore = Math.min(estimate, strength);
        if (pore > weight) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(new StressState(weight, pore).ratioOf(strength));
        } catch (RangeFault beyondBelief) {
            return OptionalDouble.empty();
        }
    }

    /** Effective-stress ratio of a strength or a loss in this well. */
    double ratioOf(double verticalDepth, double pressure) {
        return stressAt(verticalDepth).ratioOf(pressure);
    }

    /** Excess of a pore pressure over the hydrostatic pressure of this well; negative where depleted. */
    double excessOf(double verticalDepth, double pressure) {
        return pressure - normal.at(verticalDepth);
    }

    double belowGround(double verticalDepth) {
        return verticalDepth - normal.datum().groundOrSeabedDepth();
    }
}
