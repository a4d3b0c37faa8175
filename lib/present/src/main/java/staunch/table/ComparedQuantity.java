package staunch.table;

import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import staunch.design.SectionComparison;
import staunch.design.SectionOutcome;
import staunch.envelope.KickResult;
import staunch.envelope.Verdict;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** What is shown of a hole section where designs stand side by side. */
enum ComparedQuantity {
    DEPTHS(
            "from – to MD",
            (o, u) -> u.text(o.topDepth(), Measure.DEPTH) + " – " + u.text(o.bottomDepth(), Measure.DEPTH)),
    DRILLED("drilled kick", (o, u) -> tolerance(o, o.drilled(), u)),
    DRILLED_TO_SURFACE(
            "drilled, to surface", (o, u) -> ResultWords.headline(o.drilled().circulatedToSurface(), u)),
    DRILLED_REQUIRED("drilled, required", (o, u) -> required(o.drilled(), u)),
    SWABBED("swabbed kick", (o, u) -> tolerance(o, o.swabbed(), u)),
    SWABBED_TO_SURFACE(
            "swabbed, to surface", (o, u) -> ResultWords.headline(o.swabbed().circulatedToSurface(), u)),
    SWABBED_REQUIRED("swabbed, required", (o, u) -> required(o.swabbed(), u)),
    FORMATION_MAASP(
            "formation MAASP", (o, u) -> o.maasp().isEmpty() ? Rows.NONE : ResultWords.formationMaasp(o.maasp(), u)),
    LOWEST_SURFACE_LIMIT(
            "lowest surface limit",
            (o, u) -> o.maasp().isEmpty() ? Rows.NONE : ResultWords.lowestSurfaceLimit(o.maasp(), u)),
    SHOE_MARGIN(
            "least shoe margin",
            (o, u) -> shown(o.leastShoeMargin(), Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR, u)),
    PEAK_CHOKE_PRESSURE(
            "peak choke pressure",
            (o, u) -> shown(Tables.peakChoke(o), Measure.PRESSURE_GAUGE, RoundingMode.CEILING, u)),
    PEAK_SHOE_PRESSURE(
            "peak shoe pressure",
            (o, u) -> shown(Tables.peakShoe(o), Measure.PRESSURE_ABSOLUTE, RoundingMode.CEILING, u)),
    VERDICT("verdict", (o, u) -> o.verdict().outcome().title()),
    GOVERNING(
            "governing limit",
            (o, u) ->
                    o.verdict().governing().isEmpty() ? Rows.NONE : o.verdict().governing());

    final String title;
    final BiFunction<SectionOutcome, UnitSystem, String> words;

    ComparedQuantity(String title, BiFunction<SectionOutcome, UnitSystem, String> words) {
        this.title = title;
        this.words = words;
    }

    /** Quantities that a section has: where no design shuts it in, its depths and its verdict. */
    static List<ComparedQuantity> of(SectionComparison section) {
        boolean open = section.outcomes().stream().allMatch(o -> o.verdict().outcome() == Verdict.Outcome.NOT_SHUT_IN);
        return open ? List.of(DEPTHS, VERDICT) : List.of(values());
    }

    private static String tolerance(SectionOutcome outcome, KickResult kick, UnitSystem units) {
        String note = ResultWords.note(kick.tolerance(), units);
        return ResultWords.formation(outcome.maasp(), kick, units) + (note.isEmpty() ? "" : ", " + note);
    }

    private static String required(KickResult kick, UnitSystem units) {
        return shown(kick.required(), Measure.VOLUME, RoundingMode.CEILING, units);
    }

    private static String shown(OptionalDouble value, Measure measure, RoundingMode rounding, UnitSystem units) {
        return value.isPresent() ? units.text(value.getAsDouble(), measure, rounding) : Rows.NONE;
    }
}
