package staunch.design;

import java.util.Optional;
import java.util.OptionalDouble;
import staunch.envelope.InfluxMargin;
import staunch.envelope.Kick;
import staunch.envelope.KickResult;
import staunch.envelope.Maasp;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SurfaceLimit;
import staunch.envelope.SurfaceTolerance;
import staunch.envelope.Tolerance;
import staunch.units.Measure;

/** What a run record keeps of a hole section, and two runs are compared by. */
public enum SectionQuantity {
    /** Tolerance of the formation, drilled kick. */
    DRILLED_TOLERANCE("drilled kick, formation", Measure.VOLUME),
    /** What can be circulated to surface, drilled kick. */
    DRILLED_TO_SURFACE("drilled kick, to surface", Measure.VOLUME),
    /** What the criteria ask for, drilled kick. */
    DRILLED_REQUIRED("drilled kick, required", Measure.VOLUME),
    /** Least margin while the required or detectable influx is circulated out, drilled kick. */
    DRILLED_MARGIN("drilled kick, least margin", Measure.PRESSURE_DIFFERENCE),
    /** Tolerance of the formation, swabbed kick. */
    SWABBED_TOLERANCE("swabbed kick, formation", Measure.VOLUME),
    /** What can be circulated to surface, swabbed kick. */
    SWABBED_TO_SURFACE("swabbed kick, to surface", Measure.VOLUME),
    /** What the criteria ask for, swabbed kick. */
    SWABBED_REQUIRED("swabbed kick, required", Measure.VOLUME),
    /** Least margin while the required or detectable influx is circulated out, swabbed kick. */
    SWABBED_MARGIN("swabbed kick, least margin", Measure.PRESSURE_DIFFERENCE),
    /** Least margin at the shoe, drilled or swabbed. */
    SHOE_MARGIN("least shoe margin", Measure.PRESSURE_DIFFERENCE),
    /** Formation MAASP at the section's mud density. */
    FORMATION_MAASP("formation MAASP", Measure.PRESSURE_GAUGE),
    /** Lowest surface limit at the section's mud density. */
    LOWEST_SURFACE_LIMIT("lowest surface limit", Measure.PRESSURE_GAUGE);

    private static final String NOT_ASSESSED = "not assessed";

    private final String title;
    private final Measure measure;

    SectionQuantity(String title, Measure measure) {
        this.title = title;
        this.measure = measure;
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
        return measure == Measure.PRESSURE_GAUGE ? Measure.PRESSURE_DIFFERENCE : measure;
    }

    /** Decimals in SI that a record keeps: 0.01 l and 1 Pa, finer than the searches for a tolerance or a margin end. */
    int decimals() {
        return measure == Measure.VOLUME ? 5 : 0;
    }

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
