package staunch.design;

import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.FrictionCurve;
import staunch.design.CourseQuantity.Found;
import staunch.envelope.InfluxMargin;
import staunch.envelope.Kick;
import staunch.envelope.KickResult;
import staunch.envelope.Maasp;
import staunch.envelope.MudFlowOutcome;
import staunch.envelope.NotAssessed;
import staunch.envelope.RiserOutcome;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SectionOperations;
import staunch.envelope.SurfaceLimit;
import staunch.envelope.SurfaceTolerance;
import staunch.envelope.Tolerance;
import staunch.units.Measure;

/** What a run record keeps of a hole section, and two runs are compared by. */
public enum SectionQuantity {
    /** Tolerance of the formation, drilled kick. */
    DRILLED_TOLERANCE(Part.ENVELOPE, "drilled kick, formation", Measure.VOLUME, RoundingMode.FLOOR),
    /** What can be circulated to surface, drilled kick. */
    DRILLED_TO_SURFACE(Part.ENVELOPE, "drilled kick, to surface", Measure.VOLUME, RoundingMode.FLOOR),
    /** What the criteria ask for, drilled kick. */
    DRILLED_REQUIRED(Part.ENVELOPE, "drilled kick, required", Measure.VOLUME, RoundingMode.HALF_EVEN),
    /** Least margin while the required or detectable influx is circulated out, drilled kick. */
    DRILLED_MARGIN(Part.ENVELOPE, "drilled kick, least margin", Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR),
    /** Tolerance of the formation, swabbed kick. */
    SWABBED_TOLERANCE(Part.ENVELOPE, "swabbed kick, formation", Measure.VOLUME, RoundingMode.FLOOR),
    /** What can be circulated to surface, swabbed kick. */
    SWABBED_TO_SURFACE(Part.ENVELOPE, "swabbed kick, to surface", Measure.VOLUME, RoundingMode.FLOOR),
    /** What the criteria ask for, swabbed kick. */
    SWABBED_REQUIRED(Part.ENVELOPE, "swabbed kick, required", Measure.VOLUME, RoundingMode.HALF_EVEN),
    /** Least margin while the required or detectable influx is circulated out, swabbed kick. */
    SWABBED_MARGIN(Part.ENVELOPE, "swabbed kick, least margin", Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR),
    /** Least margin at the shoe, drilled or swabbed. */
    SHOE_MARGIN(Part.ENVELOPE, "least shoe margin", Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR),
    /** Formation MAASP at the section's mud density. */
    FORMATION_MAASP(Part.ENVELOPE, "formation MAASP", Measure.PRESSURE_GAUGE, RoundingMode.FLOOR),
    /** Lowest surface limit at the section's mud density. */
    LOWEST_SURFACE_LIMIT(Part.ENVELOPE, "lowest surface limit", Measure.PRESSURE_GAUGE, RoundingMode.FLOOR),
    /** Influx followed; drilled kick. */
    DRILLED_INFLUX(Part.DRILLED, CourseQuantity.INFLUX),
    /** Shut-in drill-pipe pressure; drilled kick. */
    DRILLED_SHUT_IN_DRILL_PIPE(Part.DRILLED, CourseQuantity.SHUT_IN_DRILL_PIPE),
    /** Shut-in casing pressure; drilled kick. */
    DRILLED_SHUT_IN_CASING(Part.DRILLED, CourseQuantity.SHUT_IN_CASING),
    /** Highest choke pressure, driller's method; drilled kick. */
    DRILLED_DRILLERS_CHOKE(Part.DRILLED, CourseQuantity.DRILLERS_CHOKE),
    /** Highest shoe pressure, driller's method; drilled kick. */
    DRILLED_DRILLERS_SHOE(Part.DRILLED, CourseQuantity.DRILLERS_SHOE),
    /** Least margin while circulating, driller's method; drilled kick. */
    DRILLED_DRILLERS_MARGIN(Part.DRILLED, CourseQuantity.DRILLERS_MARGIN),
    /** Highest choke pressure, wait and weight; drilled kick. */
    DRILLED_WAIT_AND_WEIGHT_CHOKE(Part.DRILLED, CourseQuantity.WAIT_AND_WEIGHT_CHOKE),
    /** Highest shoe pressure, wait and weight; drilled kick. */
    DRILLED_WAIT_AND_WEIGHT_SHOE(Part.DRILLED, CourseQuantity.WAIT_AND_WEIGHT_SHOE),
    /** Least margin while circulating, wait and weight; drilled kick. */
    DRILLED_WAIT_AND_WEIGHT_MARGIN(Part.DRILLED, CourseQuantity.WAIT_AND_WEIGHT_MARGIN),
    /** Largest pit gain, driller's method; drilled kick. */
    DRILLED_PIT_GAIN(Part.DRILLED, CourseQuantity.PIT_GAIN),
    /** Largest gas rate at the choke; drilled kick. */
    DRILLED_GAS_RATE(Part.DRILLED, CourseQuantity.GAS_RATE),
    /** Mud leg of the separator over its pressure; drilled kick. */
    DRILLED_SEPARATOR_MARGIN(Part.DRILLED, CourseQuantity.SEPARATOR_MARGIN),
    /** Shortest time to a limit, shut in; drilled kick. */
    DRILLED_SHORTEST_WAIT(Part.DRILLED, CourseQuantity.SHORTEST_WAIT),
    /** Longest time to a limit, shut in; drilled kick. */
    DRILLED_LONGEST_WAIT(Part.DRILLED, CourseQuantity.LONGEST_WAIT),
    /** Least margin, volumetric method; drilled kick. */
    DRILLED_VOLUMETRIC_MARGIN(Part.DRILLED, CourseQuantity.VOLUMETRIC_MARGIN),
    /** Mud bled, volumetric method; drilled kick. */
    DRILLED_VOLUMETRIC_BLED(Part.DRILLED, CourseQuantity.VOLUMETRIC_BLED),
    /** Mud pumped, lubricate and bleed; drilled kick. */
    DRILLED_LUBRICATED(Part.DRILLED, CourseQuantity.LUBRICATED),
    /** Least margin, bullheading; drilled kick. */
    DRILLED_BULLHEADING_MARGIN(Part.DRILLED, CourseQuantity.BULLHEADING_MARGIN),
    /** Kill mud density; drilled kick. */
    DRILLED_KILL_MUD(Part.DRILLED, CourseQuantity.KILL_MUD),
    /** Margin of the weak point with kill mud at rest; drilled kick. */
    DRILLED_KILL_MUD_MARGIN(Part.DRILLED, CourseQuantity.KILL_MUD_MARGIN),
    /** Initial circulating pressure; drilled kick. */
    DRILLED_INITIAL_CIRCULATING(Part.DRILLED, CourseQuantity.INITIAL_CIRCULATING),
    /** Final circulating pressure; drilled kick. */
    DRILLED_FINAL_CIRCULATING(Part.DRILLED, CourseQuantity.FINAL_CIRCULATING),
    /** Volume, surface to bit; drilled kick. */
    DRILLED_VOLUME_TO_BIT(Part.DRILLED, CourseQuantity.VOLUME_TO_BIT),
    /** Strokes, surface to bit; drilled kick. */
    DRILLED_STROKES_TO_BIT(Part.DRILLED, CourseQuantity.STROKES_TO_BIT),
    /** Volume, bit to surface; drilled kick. */
    DRILLED_VOLUME_BOTTOMS_UP(Part.DRILLED, CourseQuantity.VOLUME_BOTTOMS_UP),
    /** Strokes, bit to surface; drilled kick. */
    DRILLED_STROKES_BOTTOMS_UP(Part.DRILLED, CourseQuantity.STROKES_BOTTOMS_UP),
    /** Influx followed; swabbed kick. */
    SWABBED_INFLUX(Part.SWABBED, CourseQuantity.INFLUX),
    /** Shut-in drill-pipe pressure; swabbed kick. */
    SWABBED_SHUT_IN_DRILL_PIPE(Part.SWABBED, CourseQuantity.SHUT_IN_DRILL_PIPE),
    /** Shut-in casing pressure; swabbed kick. */
    SWABBED_SHUT_IN_CASING(Part.SWABBED, CourseQuantity.SHUT_IN_CASING),
    /** Highest choke pressure, driller's method; swabbed kick. */
    SWABBED_DRILLERS_CHOKE(Part.SWABBED, CourseQuantity.DRILLERS_CHOKE),
    /** Highest shoe pressure, driller's method; swabbed kick. */
    SWABBED_DRILLERS_SHOE(Part.SWABBED, CourseQuantity.DRILLERS_SHOE),
    /** Least margin while circulating, driller's method; swabbed kick. */
    SWABBED_DRILLERS_MARGIN(Part.SWABBED, CourseQuantity.DRILLERS_MARGIN),
    /** Highest choke pressure, wait and weight; swabbed kick. */
    SWABBED_WAIT_AND_WEIGHT_CHOKE(Part.SWABBED, CourseQuantity.WAIT_AND_WEIGHT_CHOKE),
    /** Highest shoe pressure, wait and weight; swabbed kick. */
    SWABBED_WAIT_AND_WEIGHT_SHOE(Part.SWABBED, CourseQuantity.WAIT_AND_WEIGHT_SHOE),
    /** Least margin while circulating, wait and weight; swabbed kick. */
    SWABBED_WAIT_AND_WEIGHT_MARGIN(Part.SWABBED, CourseQuantity.WAIT_AND_WEIGHT_MARGIN),
    /** Largest pit gain, driller's method; swabbed kick. */
    SWABBED_PIT_GAIN(Part.SWABBED, CourseQuantity.PIT_GAIN),
    /** Largest gas rate at the choke; swabbed kick. */
    SWABBED_GAS_RATE(Part.SWABBED, CourseQuantity.GAS_RATE),
    /** Mud leg of the separator over its pressure; swabbed kick. */
    SWABBED_SEPARATOR_MARGIN(Part.SWABBED, CourseQuantity.SEPARATOR_MARGIN),
    /** Shortest time to a limit, shut in; swabbed kick. */
    SWABBED_SHORTEST_WAIT(Part.SWABBED, CourseQuantity.SHORTEST_WAIT),
    /** Longest time to a limit, shut in; swabbed kick. */
    SWABBED_LONGEST_WAIT(Part.SWABBED, CourseQuantity.LONGEST_WAIT),
    /** Least margin, volumetric method; swabbed kick. */
    SWABBED_VOLUMETRIC_MARGIN(Part.SWABBED, CourseQuantity.VOLUMETRIC_MARGIN),
    /** Mud bled, volumetric method; swabbed kick. */
    SWABBED_VOLUMETRIC_BLED(Part.SWABBED, CourseQuantity.VOLUMETRIC_BLED),
    /** Mud pumped, lubricate and bleed; swabbed kick. */
    SWABBED_LUBRICATED(Part.SWABBED, CourseQuantity.LUBRICATED),
    /** Least margin, bullheading; swabbed kick. */
    SWABBED_BULLHEADING_MARGIN(Part.SWABBED, CourseQuantity.BULLHEADING_MARGIN),
    /** Kill mud density; swabbed kick. */
    SWABBED_KILL_MUD(Part.SWABBED, CourseQuantity.KILL_MUD),
    /** Margin of the weak point with kill mud at rest; swabbed kick. */
    SWABBED_KILL_MUD_MARGIN(Part.SWABBED, CourseQuantity.KILL_MUD_MARGIN),
    /** Initial circulating pressure; swabbed kick. */
    SWABBED_INITIAL_CIRCULATING(Part.SWABBED, CourseQuantity.INITIAL_CIRCULATING),
    /** Final circulating pressure; swabbed kick. */
    SWABBED_FINAL_CIRCULATING(Part.SWABBED, CourseQuantity.FINAL_CIRCULATING),
    /** Volume, surface to bit; swabbed kick. */
    SWABBED_VOLUME_TO_BIT(Part.SWABBED, CourseQuantity.VOLUME_TO_BIT),
    /** Strokes, surface to bit; swabbed kick. */
    SWABBED_STROKES_TO_BIT(Part.SWABBED, CourseQuantity.STROKES_TO_BIT),
    /** Volume, bit to surface; swabbed kick. */
    SWABBED_VOLUME_BOTTOMS_UP(Part.SWABBED, CourseQuantity.VOLUME_BOTTOMS_UP),
    /** Strokes, bit to surface; swabbed kick. */
    SWABBED_STROKES_BOTTOMS_UP(Part.SWABBED, CourseQuantity.STROKES_BOTTOMS_UP),
    /** Equivalent circulating density at the fastest of the slow circulating rates and the kill rate. */
    CIRCULATING_DENSITY(
            Part.MUD_FLOW, "highest equivalent circulating density", Measure.EQUIVALENT_DENSITY, RoundingMode.CEILING),
    /** Fall of pressure while the string is pulled. */
    SWAB_PRESSURE(Part.MUD_FLOW, "swab pressure", Measure.PRESSURE_DIFFERENCE, RoundingMode.CEILING),
    /** Rise of pressure while the string is run. */
    SURGE_PRESSURE(Part.MUD_FLOW, "surge pressure", Measure.PRESSURE_DIFFERENCE, RoundingMode.CEILING),
    /** Least mud pressure over pore pressure while the string is pulled. */
    PULLING_MARGIN(
            Part.MUD_FLOW,
            "least margin over pore pressure, pulling out",
            Measure.PRESSURE_DIFFERENCE,
            RoundingMode.FLOOR),
    /** Least strength over mud pressure while the string is run. */
    RUNNING_MARGIN(
            Part.MUD_FLOW, "least margin to strength, running in", Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR),
    /** Least overbalance without the riser. */
    RISER_MARGIN(Part.RISER, "least overbalance without the riser", Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR),
    /** Mud density that keeps the well overbalanced without the riser. */
    RISER_MUD(Part.RISER, "mud density to stay overbalanced without the riser", Measure.DENSITY, RoundingMode.CEILING);

    private static final String NOT_ASSESSED = "not assessed";

    private final Part part;
    private final String title;
    private final Measure measure;
    private final RoundingMode rounding;
    private final Optional<CourseQuantity> course;

    SectionQuantity(Part part, String title, Measure measure, RoundingMode rounding) {
        this.part = part;
        this.title = title;
        this.measure = measure;
        this.rounding = rounding;
        this.course = Optional.empty();
    }

    SectionQuantity(Part part, CourseQuantity course) {
        this.part = part;
        this.title = part.kick + ", " + course.title();
        this.measure = course.measure();
        this.rounding = course.rounding();
        this.course = Optional.of(course);
    }

    /** What a quantity tells of a section. */
    public enum Part {
        /** What the section holds: tolerances, margins and surface limits. */
        ENVELOPE("tolerance, margins and surface limits", ""),
        /** What follows a drilled kick in time. */
        DRILLED("what follows a drilled kick", "drilled kick"),
        /** What follows a swabbed kick in time. */
        SWABBED("what follows a swabbed kick", "swabbed kick"),
        /** Mud pumped slowly, string tripped. */
        MUD_FLOW("circulating and tripping", ""),
        /** What is lost with the riser. */
        RISER("riser", "");

        private final String title;
        private final String kick;

        Part(String title, String kick) {
            this.title = title;
            this.kick = kick;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /** In plain words under a heading that names its part. */
    public String titleInPart() {
        return part.kick.isEmpty() ? title : title.substring(part.kick.length() + 2);
    }

    /** What it tells. */
    public Part part() {
        return part;
    }

    /** How its number is rounded where it is shown: limits and margins down, loads up. */
    public RoundingMode rounding() {
        return rounding;
    }

    /** Whether it is part of the envelope, and not of what follows an influx in time. */
    boolean ofEnvelope() {
        return part == Part.ENVELOPE;
    }

    /** In plain words. */
    public String title() {
        return title;
    }

    /** What its numbers measure. */
    public Measure measure() {
        return measure;
    }

    /** What a change of it measures: a change of a gauge pressure is a difference. */
    public Measure measureOfChange() {
        return switch (measure) {
            case PRESSURE_GAUGE, PRESSURE_ABSOLUTE -> Measure.PRESSURE_DIFFERENCE;
            case DENSITY, EQUIVALENT_DENSITY -> Measure.DENSITY_DIFFERENCE;
            default -> measure;
        };
    }

    /** Decimals in SI that a record keeps: 0.01 l and 1 Pa, finer than the searches for a tolerance or a margin end. */
    int decimals() {
        return switch (measure) {
            case VOLUME, GAS_RATE -> 5;
            case DENSITY, EQUIVALENT_DENSITY -> 2;
            case NUMBER -> 1;
            default -> 0;
        };
    }

    /** What a section has of it. */
    ResultValue of(SectionEnvelope section, SectionOperations operations) {
        return switch (part) {
            case ENVELOPE -> of(section);
            case DRILLED -> value(course.orElseThrow().of(operations.drilled()));
            case SWABBED -> value(course.orElseThrow().of(operations.swabbed()));
            case MUD_FLOW ->
                value(
                        operations.mudFlow() instanceof MudFlowOutcome.Computed computed
                                ? of(computed)
                                : Found.none((NotAssessed) operations.mudFlow()));
            case RISER ->
                value(
                        operations.riser() instanceof RiserOutcome.Computed computed
                                ? of(computed)
                                : Found.none((NotAssessed) operations.riser()));
        };
    }

    private ResultValue value(Found found) {
        return new ResultValue(this, measure, found.value(), found.outcome());
    }

    private Found of(MudFlowOutcome.Computed flow) {
        if (this == CIRCULATING_DENSITY) {
            FrictionCurve.Point fastest = flow.rates().get(flow.rates().size() - 1);
            return Found.of(fastest.equivalentDensity(), "at the fastest of the slow rates");
        }
        if (flow.trip().isEmpty()) {
            return Found.none(NOT_ASSESSED + ": no tripping speed is given");
        }
        MudFlowOutcome.Trip trip = flow.trip().get();
        return switch (this) {
            case SWAB_PRESSURE -> Found.of(trip.swab(), "while pulling out");
            case SURGE_PRESSURE -> Found.of(trip.surge(), "while running in");
            case PULLING_MARGIN -> margin(trip.pulling(), "stays overbalanced", "lets the well flow");
            default -> margin(trip.running(), "formation holds", "breaks the formation");
        };
    }

    private static Found margin(Optional<MudFlowOutcome.LeastMargin> least, String holds, String fails) {
        return least.map(l -> Found.of(l.margin(), l.margin() < 0 ? fails : holds))
                .orElse(Found.none(NOT_ASSESSED));
    }

    private Found of(RiserOutcome.Computed riser) {
        return this == RISER_MARGIN
                ? Found.of(riser.worst().margin(), riser.staysBalanced() ? "stays overbalanced" : "the well flows")
                : Found.of(riser.needed(), "riser margin counted");
    }

    /** What the envelope of a section has of it. */
    ResultValue of(SectionEnvelope section) {
        return switch (this) {
            case DRILLED_TOLERANCE -> value(section.drilled().tolerance());
            case DRILLED_TO_SURFACE -> value(section.drilled().circulatedToSurface());
            case DRILLED_REQUIRED -> required(section.drilled());
            case DRILLED_MARGIN -> margin(section, Kick.Scenario.DRILLED);
            case SWABBED_TOLERANCE -> value(section.swabbed().tolerance());
            case SWABBED_TO_SURFACE -> value(section.swabbed().circulatedToSurface());
            case SWABBED_REQUIRED -> required(section.swabbed());
            case SWABBED_MARGIN -> margin(section, Kick.Scenario.SWABBED);
            case SHOE_MARGIN ->
                value(section.margins().stream()
                        .mapToDouble(InfluxMargin::leastAtShoe)
                        .min());
            case FORMATION_MAASP -> value(section.maasp().flatMap(Maasp::formation), false);
            case LOWEST_SURFACE_LIMIT ->
                value(
                        section.maasp().flatMap(Maasp::lowest),
                        section.maasp().filter(Maasp::atMost).isPresent());
            default -> throw new IllegalStateException(name() + " is no part of the envelope");
        };
    }

    private ResultValue value(Tolerance tolerance) {
        OptionalDouble volume = tolerance instanceof Tolerance.Finite finite
                ? OptionalDouble.of(finite.volume())
                : OptionalDouble.empty();
        return new ResultValue(this, measure, volume, tolerance.summary());
    }

    private ResultValue value(SurfaceTolerance surface) {
        ResultValue known = value(surface.tolerance());
        return surface.complete() || known.value().isEmpty()
                ? known
                : new ResultValue(this, measure, known.value(), "at most, " + known.outcome());
    }

    private ResultValue required(KickResult kick) {
        return new ResultValue(
                this, measure, kick.required(), kick.required().isPresent() ? "of the criteria" : "none asked for");
    }

    private ResultValue margin(SectionEnvelope section, Kick.Scenario scenario) {
        Optional<InfluxMargin> found =
                section.margins().stream().filter(m -> m.scenario() == scenario).findFirst();
        return new ResultValue(
                this,
                measure,
                found.map(m -> OptionalDouble.of(m.least())).orElse(OptionalDouble.empty()),
                found.map(m -> m.weakPoint().name() + ", " + m.stage().moment().title())
                        .orElse(NOT_ASSESSED));
    }

    private ResultValue value(OptionalDouble pressure) {
        return new ResultValue(this, measure, pressure, pressure.isPresent() ? "at the shoe" : NOT_ASSESSED);
    }

    private ResultValue value(Optional<SurfaceLimit> limit, boolean atMost) {
        Optional<SurfaceLimit> known = limit.filter(l -> l.pressure().isPresent());
        return new ResultValue(
                this,
                measure,
                known.map(SurfaceLimit::pressure).orElse(OptionalDouble.empty()),
                known.map(l -> (atMost ? "at most, " : "") + l.name()).orElse(NOT_ASSESSED));
    }
}
