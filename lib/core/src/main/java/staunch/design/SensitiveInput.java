package staunch.design;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import staunch.control.SlowCirculation;
import staunch.earth.EarthModel;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.StrengthTest;
import staunch.earth.TemperatureProfile;
import staunch.earth.WeakZone;
import staunch.envelope.Criteria;
import staunch.envelope.MethodOptions.Estimates;
import staunch.envelope.SectionInput;
import staunch.envelope.SectionPlan;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.units.EquivalentDensity;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Quantity;
import staunch.well.HoleInterval;

/**
 * An input of a section that a sensitivity varies, all others staying as they are. The swing is the spread that the case
 * gives; an input without one has no swing, and only the value at which it flips the verdict.
 */
public enum SensitiveInput {
    /** Equivalent density at section TD; all estimates shift by one equivalent density at every depth. */
    PORE_PRESSURE("pore pressure at section TD", Measure.EQUIVALENT_DENSITY, 300) {
        @Override
        OptionalDouble base(SectionInput input) {
            return at(deciding(input.earth().porePressure(), input, true), bottom(input));
        }

        @Override
        Swing swing(SectionInput input) {
            return spread(input.earth().porePressure(), bottom(input));
        }

        @Override
        SectionInput with(SectionInput input, double value) {
            double shift = value - base(input).orElseThrow();
            EarthModel e = input.earth();
            return withEarth(
                    input,
                    new EarthModel(
                            e.porePressure().map(r -> shifted(r, shift)),
                            e.strength(),
                            e.tests(),
                            e.weakZones(),
                            e.temperature(),
                            e.tops(),
                            e.stayOuts()));
        }
    },
    /** Equivalent density at the shoe; prediction, tests and weak zones shift by one equivalent density at every depth. */
    STRENGTH("predicted strength at the shoe", Measure.EQUIVALENT_DENSITY, 300) {
        @Override
        OptionalDouble base(SectionInput input) {
            return at(deciding(input.earth().strength(), input, false), shoe(input));
        }

        @Override
        Swing swing(SectionInput input) {
            return spread(input.earth().strength(), shoe(input));
        }

        @Override
        SectionInput with(SectionInput input, double value) {
            double shift = value - base(input).orElseThrow();
            EarthModel e = input.earth();
            List<StrengthTest> tests = e.tests().stream()
                    .map(t -> new StrengthTest(
                            t.name(),
                            t.verticalDepth(),
                            shifted(t.pressure(), t.verticalDepth(), shift),
                            t.standing(),
                            t.testMudDensity(),
                            t.source()))
                    .toList();
            List<WeakZone> zones = e.weakZones().stream()
                    .map(z -> new WeakZone(
                            z.name(), z.topVerticalDepth(), z.bottomVerticalDepth(), z.strength() + shift, z.source()))
                    .toList();
            return withEarth(
                    input,
                    new EarthModel(
                            e.porePressure(),
                            e.strength().map(r -> shifted(r, shift)),
                            tests,
                            zones,
                            e.temperature(),
                            e.tops(),
                            e.stayOuts()));
        }
    },
    MUD_DENSITY("mud density", Measure.DENSITY, 400) {
        @Override
        OptionalDouble base(SectionInput input) {
            return optional(input.plan().mud().map(Mud::density));
        }

        @Override
        SectionInput with(SectionInput input, double value) {
            return withPlan(
                    input, input.plan().withMud(input.plan().mud().orElseThrow().withDensity(value)));
        }
    },
    KICK_INTENSITY("kick intensity", Measure.DENSITY_DIFFERENCE, 300) {
        @Override
        OptionalDouble base(SectionInput input) {
            return criteria(input, Criteria::kickIntensity);
        }

        @Override
        SectionInput with(SectionInput input, double value) {
            Criteria c = input.plan().criteria().orElseThrow();
            return withCriteria(input, c, c.drilledTolerance(), c.swabbedTolerance(), OptionalDouble.of(value));
        }

        @Override
        double least() {
            return 0;
        }
    },
    /** Volume that the criteria require when drilled; that when swabbed changes in proportion. */
    REQUIRED_VOLUME("required influx volume", Measure.VOLUME, 20) {
        @Override
        OptionalDouble base(SectionInput input) {
            OptionalDouble drilled = criteria(input, Criteria::drilledTolerance);
            OptionalDouble base = drilled.isPresent() ? drilled : criteria(input, Criteria::swabbedTolerance);
            return base.isPresent() && base.getAsDouble() > 0 ? base : OptionalDouble.empty();
        }

        @Override
        SectionInput with(SectionInput input, double value) {
            Criteria c = input.plan().criteria().orElseThrow();
            double factor = value / base(input).orElseThrow();
            return withCriteria(
                    input,
                    c,
                    scaled(c.drilledTolerance(), factor),
                    scaled(c.swabbedTolerance(), factor),
                    c.kickIntensity());
        }

        @Override
        double least() {
            return 0;
        }
    },
    GAS_GRAVITY("gas gravity", Measure.NUMBER, 0.4) {
        @Override
        OptionalDouble base(SectionInput input) {
            return optional(input.plan().gas().map(GasComposition::gravity));
        }

        @Override
        SectionInput with(SectionInput input, double value) {
            GasComposition g = input.plan().gas().orElseThrow();
            return withPlan(
                    input,
                    input.plan()
                            .withGas(new GasComposition(value, g.hydrogenSulphide(), g.carbonDioxide(), g.nitrogen())));
        }

        @Override
        double least() {
            return 0.55;
        }
    },
    /** Shift of the whole temperature profile. */
    TEMPERATURE("temperature, shifted everywhere", Measure.TEMPERATURE_DIFFERENCE, 40) {
        @Override
        OptionalDouble base(SectionInput input) {
            return input.earth().temperature().isPresent() ? OptionalDouble.of(0) : OptionalDouble.empty();
        }

        @Override
        SectionInput with(SectionInput input, double value) {
            EarthModel e = input.earth();
            TemperatureProfile t = e.temperature().orElseThrow();
            double[] shifted =
                    Arrays.stream(t.temperatures()).map(k -> k + value).toArray();
            return withEarth(
                    input,
                    new EarthModel(
                            e.porePressure(),
                            e.strength(),
                            e.tests(),
                            e.weakZones(),
                            Optional.of(TemperatureProfile.of(t.depths(), shifted)),
                            e.tops(),
                            e.stayOuts()));
        }
    },
    /** Smallest diameter of the open hole; wider stretches widen by as much. */
    HOLE_DIAMETER("hole diameter", Measure.DIAMETER, 0.15) {
        @Override
        OptionalDouble base(SectionInput input) {
            return input.plan().hole().stream()
                    .mapToDouble(HoleInterval::diameter)
                    .min();
        }

        @Override
        Swing swing(SectionInput input) {
            double base = base(input).orElseThrow();
            double bit = input.plan().bitDiameter();
            return bit < base
                    ? new Swing(OptionalDouble.of(bit), OptionalDouble.of(base), "bit and planned hole of the case")
                    : NO_RANGE;
        }

        @Override
        SectionInput with(SectionInput input, double value) {
            double wider = value - base(input).orElseThrow();
            return withPlan(
                    input,
                    input.plan()
                            .withHole(input.plan().hole().stream()
                                    .map(h -> new HoleInterval(h.topDepth(), h.bottomDepth(), h.diameter() + wider))
                                    .toList()));
        }

        @Override
        double least(SectionInput input) {
            return Math.min(input.plan().bitDiameter(), base(input).orElseThrow());
        }
    },
    CIRCULATING_OVERBALANCE("circulating overbalance", Measure.PRESSURE_DIFFERENCE, 3e6) {
        @Override
        OptionalDouble base(SectionInput input) {
            return input.plan().circulatingOverbalance();
        }

        @Override
        SectionInput with(SectionInput input, double value) {
            return withPlan(input, input.plan().withCirculatingOverbalance(new Quantity(value, "Pa")));
        }

        @Override
        double least() {
            return 0;
        }
    },
    /** Greatest of the measured losses; the others change in proportion. */
    CHOKE_LINE_FRICTION("choke-line friction", Measure.PRESSURE_DIFFERENCE, 3e6) {
        @Override
        OptionalDouble base(SectionInput input) {
            OptionalDouble base = input.plan().slowCirculations().stream()
                    .map(SlowCirculation::chokeLineFriction)
                    .flatMapToDouble(OptionalDouble::stream)
                    .max();
            return base.isPresent() && base.getAsDouble() > 0 ? base : OptionalDouble.empty();
        }

        @Override
        SectionInput with(SectionInput input, double value) {
            double factor = value / base(input).orElseThrow();
            return withPlan(
                    input,
                    input.plan()
                            .withSlowCirculations(input.plan().slowCirculations().stream()
                                    .map(s -> new SlowCirculation(
                                            s.rate(), s.pumpPressure(), scaled(s.chokeLineFriction(), factor)))
                                    .toList()));
        }

        @Override
        double least() {
            return 0;
        }
    };

    private static final String EVIDENCE = "low and high estimate of the case";
    private static final Swing NO_RANGE =
            new Swing(OptionalDouble.empty(), OptionalDouble.empty(), "no range is stated in the case");

    private final String title;
    private final Measure measure;
    private final double reach;

    SensitiveInput(String title, Measure measure, double reach) {
        this.title = title;
        this.measure = measure;
        this.reach = reach;
    }

    /** In plain words. */
    public String title() {
        return title;
    }

    /** What its value measures. */
    public Measure measure() {
        return measure;
    }

    /** Distance to either side of the base over which a flip is searched. */
    double reach() {
        return reach;
    }

    /** Value in the section; empty where it has none and nothing can be varied. */
    abstract OptionalDouble base(SectionInput input);

    /** Range that the case states; where it states none, none is made up. */
    Swing swing(SectionInput input) {
        return NO_RANGE;
    }

    /** The section with another value. */
    abstract SectionInput with(SectionInput input, double value);

    /** Least value that makes sense. */
    double least() {
        return Double.NEGATIVE_INFINITY;
    }

    double least(SectionInput input) {
        return least();
    }

    /**
     * Ends of a swing.
     *
     * @param low lower end, where there is one
     * @param high upper end, where there is one
     * @param basis what the ends rest on, or why there are none
     */
    record Swing(OptionalDouble low, OptionalDouble high, String basis) {}

    private static Swing spread(Optional<Range> range, double z) {
        if (range.isEmpty() || range.get().low().isEmpty() && range.get().high().isEmpty()) {
            return new Swing(OptionalDouble.empty(), OptionalDouble.empty(), "the case gives one estimate only");
        }
        String basis = EVIDENCE
                + range.get().source().map(source -> " (" + source.text() + ")").orElse("");
        return new Swing(at(range.map(Range::lowOrLikely), z), at(range.map(Range::highOrLikely), z), basis);
    }

    private static Optional<PressureProfile> deciding(Optional<Range> range, SectionInput input, boolean high) {
        boolean likely = input.options().estimates() == Estimates.LIKELY;
        return range.map(r -> likely ? r.likely() : high ? r.highOrLikely() : r.lowOrLikely());
    }

    private static OptionalDouble at(Optional<PressureProfile> profile, double z) {
        return profile.isPresent() && profile.get().covers(z) && z >= 1
                ? OptionalDouble.of(EquivalentDensity.of(profile.get().below(z), z))
                : OptionalDouble.empty();
    }

    private static double bottom(SectionInput input) {
        return input.path().verticalDepth(input.plan().bottomDepth());
    }

    private static double shoe(SectionInput input) {
        return input.path().verticalDepth(input.plan().topDepth());
    }

    private static Range shifted(Range range, double shift) {
        return new Range(
                shifted(range.likely(), shift),
                range.low().map(p -> shifted(p, shift)),
                range.high().map(p -> shifted(p, shift)),
                range.source());
    }

    private static PressureProfile shifted(PressureProfile profile, double shift) {
        double[] z = profile.depths();
        double[] p = profile.pressures();
        for (int i = 0; i < z.length; i++) {
            p[i] = shifted(p[i], z[i], shift);
        }
        return PressureProfile.of(z, p);
    }

    private static double shifted(double pressure, double z, double shift) {
        return pressure + shift * Physics.GRAVITY * z;
    }

    private static OptionalDouble criteria(SectionInput input, Function<Criteria, OptionalDouble> value) {
        return input.plan().criteria().map(value).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    private static OptionalDouble scaled(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }

    private static SectionInput withEarth(SectionInput input, EarthModel earth) {
        return new SectionInput(
                input.datum(), input.path(), earth, input.casing(), input.equipment(), input.plan(), input.options());
    }

    private static SectionInput withPlan(SectionInput input, SectionPlan plan) {
        return new SectionInput(
                input.datum(), input.path(), input.earth(), input.casing(), input.equipment(), plan, input.options());
    }

    private static SectionInput withCriteria(
            SectionInput input, Criteria c, OptionalDouble drilled, OptionalDouble swabbed, OptionalDouble intensity) {
        return withPlan(
                input,
                input.plan()
                        .withCriteria(new Criteria(
                                c.name(),
                                c.owner(),
                                c.source(),
                                drilled,
                                swabbed,
                                intensity,
                                c.strengthMargin(),
                                c.tripMargin(),
                                c.surgeMargin())));
    }
}
