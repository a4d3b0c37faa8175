package staunch.table;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_EVEN;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import staunch.design.CasingDesign;
import staunch.design.ComparedValue;
import staunch.design.Comparison;
import staunch.design.DesignPair;
import staunch.design.SectionComparison;
import staunch.design.SectionOutcome;
import staunch.design.SteelCost;
import staunch.design.SteelUse;
import staunch.design.StringSteel;
import staunch.design.StudyTable;
import staunch.earth.EarthModel;
import staunch.earth.EquivalentZero;
import staunch.earth.StrengthTest;
import staunch.envelope.Assumption;
import staunch.envelope.CirculationPeaks;
import staunch.envelope.Criteria;
import staunch.envelope.DepthPoint;
import staunch.envelope.HandCalculation;
import staunch.envelope.InfluxMargin;
import staunch.envelope.IntensityPoint;
import staunch.envelope.Kick;
import staunch.envelope.KickResult;
import staunch.envelope.Maasp;
import staunch.envelope.Masp;
import staunch.envelope.MaspCheck;
import staunch.envelope.MethodOptions;
import staunch.envelope.PressureWindow;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SectionPlan;
import staunch.envelope.SurfaceLimit;
import staunch.envelope.Tolerance;
import staunch.envelope.WellEnvelope;
import staunch.fluid.Mud;
import staunch.limit.CasingBurst;
import staunch.units.Fault;
import staunch.units.Measure;
import staunch.units.UnitSystem;
import staunch.units.Warning;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;

/**
 * Every result as a table in chosen units. A tolerance that is not a finite volume, and any other value that is missing,
 * leaves its number empty; the text column after it says why.
 */
public final class Tables {
    private static final Pattern SYMBOL = Pattern.compile("[\\p{L}][\\p{L}\\p{N}_]*");

    private Tables() {}

    /** One row per hole section: tolerances against criteria, margins, MAASP and verdict. */
    public static ResultTable sectionSummary(WellEnvelope envelope, UnitSystem units) {
        return new Rows<>(envelope.sections(), units)
                .text("Section", s -> s.plan().name())
                .number("Hole size", Measure.DIAMETER, HALF_EVEN, s -> s.plan().bitDiameter())
                .number("From MD", Measure.DEPTH, HALF_EVEN, s -> s.plan().topDepth())
                .number("To MD", Measure.DEPTH, HALF_EVEN, s -> s.plan().bottomDepth())
                .optional("Shoe TVD", Measure.DEPTH, HALF_EVEN, SectionEnvelope::shoeVerticalDepth)
                .optional("To TVD", Measure.DEPTH, HALF_EVEN, SectionEnvelope::bottomVerticalDepth)
                .optional(
                        "Mud",
                        Measure.DENSITY,
                        HALF_EVEN,
                        s -> toDouble(s.plan().mud(), Mud::density))
                .optional(
                        "Drilled tolerance",
                        Measure.VOLUME,
                        FLOOR,
                        s -> volume(s.drilled().tolerance()))
                .text("Drilled outcome", s -> ResultWords.outcome(s.drilled().tolerance(), units))
                .optional("Drilled to surface", Measure.VOLUME, FLOOR, s -> toSurface(s.drilled()))
                .text(
                        "Drilled to surface outcome",
                        s -> ResultWords.outcome(s.drilled().circulatedToSurface(), units))
                .optional(
                        "Drilled required",
                        Measure.VOLUME,
                        CEILING,
                        s -> s.drilled().required())
                .optional("Drilled margin", Measure.PRESSURE_DIFFERENCE, FLOOR, s -> margin(s, Kick.Scenario.DRILLED))
                .optional(
                        "Swabbed tolerance",
                        Measure.VOLUME,
                        FLOOR,
                        s -> volume(s.swabbed().tolerance()))
                .text("Swabbed outcome", s -> ResultWords.outcome(s.swabbed().tolerance(), units))
                .optional("Swabbed to surface", Measure.VOLUME, FLOOR, s -> toSurface(s.swabbed()))
                .text(
                        "Swabbed to surface outcome",
                        s -> ResultWords.outcome(s.swabbed().circulatedToSurface(), units))
                .optional(
                        "Swabbed required",
                        Measure.VOLUME,
                        CEILING,
                        s -> s.swabbed().required())
                .optional("Swabbed margin", Measure.PRESSURE_DIFFERENCE, FLOOR, s -> margin(s, Kick.Scenario.SWABBED))
                .optional("Formation MAASP", Measure.PRESSURE_GAUGE, FLOOR, s -> pressure(s.maasp(), Maasp::formation))
                .text("Formation MAASP at", s -> formationName(s.maasp()))
                .optional(
                        "Lowest surface limit", Measure.PRESSURE_GAUGE, FLOOR, s -> pressure(s.maasp(), Maasp::lowest))
                .text("Lowest surface limit at", s -> lowestName(s.maasp()))
                .optional("MASP", Measure.PRESSURE_GAUGE, CEILING, s -> toPressure(s.masp()))
                .optionalText("MASP at", s -> s.masp().map(Masp::at))
                .optionalText(
                        "MASP verdict",
                        s -> s.masp().map(m -> m.verdict().outcome().title()))
                .text("Verdict", s -> s.verdict().outcome().title())
                .text("Governing limit", s -> s.verdict().governing())
                .text("Statement", s -> s.verdict().statement(units))
                .table(
                        "Section summary",
                        "Tolerances are volumes at bottom-hole conditions at shut-in, rounded down; margins are the"
                                + " least pressure margin while the required (or detectable) influx is circulated out."
                                + " MASP is a design load of the equipment, rounded up, with a verdict of its own.");
    }

    /** Casing designs compared, one row per hole section and design, in numbers. */
    public static ResultTable comparison(Comparison comparison, UnitSystem units) {
        record Row(String section, SectionOutcome outcome) {}
        List<Row> all = comparison.sections().stream()
                .flatMap(s -> s.outcomes().stream().map(o -> new Row(s.section(), o)))
                .toList();
        return new Rows<>(all, units)
                .text("Section", r -> r.section())
                .text("Design", r -> r.outcome().design())
                .number("From MD", Measure.DEPTH, HALF_EVEN, r -> r.outcome().topDepth())
                .number("To MD", Measure.DEPTH, HALF_EVEN, r -> r.outcome().bottomDepth())
                .optional(
                        "Drilled tolerance",
                        Measure.VOLUME,
                        FLOOR,
                        r -> volume(r.outcome().drilled().tolerance()))
                .text(
                        "Drilled outcome",
                        r -> ResultWords.outcome(r.outcome().drilled().tolerance(), units))
                .optional(
                        "Drilled to surface",
                        Measure.VOLUME,
                        FLOOR,
                        r -> toSurface(r.outcome().drilled()))
                .text(
                        "Drilled to surface outcome",
                        r -> ResultWords.outcome(r.outcome().drilled().circulatedToSurface(), units))
                .optional(
                        "Drilled required",
                        Measure.VOLUME,
                        CEILING,
                        r -> r.outcome().drilled().required())
                .optional(
                        "Swabbed tolerance",
                        Measure.VOLUME,
                        FLOOR,
                        r -> volume(r.outcome().swabbed().tolerance()))
                .text(
                        "Swabbed outcome",
                        r -> ResultWords.outcome(r.outcome().swabbed().tolerance(), units))
                .optional(
                        "Swabbed to surface",
                        Measure.VOLUME,
                        FLOOR,
                        r -> toSurface(r.outcome().swabbed()))
                .text(
                        "Swabbed to surface outcome",
                        r -> ResultWords.outcome(r.outcome().swabbed().circulatedToSurface(), units))
                .optional(
                        "Swabbed required",
                        Measure.VOLUME,
                        CEILING,
                        r -> r.outcome().swabbed().required())
                .optional(
                        "Formation MAASP",
                        Measure.PRESSURE_GAUGE,
                        FLOOR,
                        r -> pressure(r.outcome().maasp(), Maasp::formation))
                .text("Formation MAASP at", r -> formationName(r.outcome().maasp()))
                .optional(
                        "Lowest surface limit",
                        Measure.PRESSURE_GAUGE,
                        FLOOR,
                        r -> pressure(r.outcome().maasp(), Maasp::lowest))
                .text("Lowest surface limit at", r -> lowestName(r.outcome().maasp()))
                .optional(
                        "Least shoe margin",
                        Measure.PRESSURE_DIFFERENCE,
                        FLOOR,
                        r -> r.outcome().leastShoeMargin())
                .optional("Peak choke pressure", Measure.PRESSURE_GAUGE, CEILING, r -> peakChoke(r.outcome()))
                .optional("Peak shoe pressure", Measure.PRESSURE_ABSOLUTE, CEILING, r -> peakShoe(r.outcome()))
                .text("Verdict", r -> r.outcome().verdict().outcome().title())
                .text("Governing limit", r -> r.outcome().verdict().governing())
                .table(
                        "Casing designs compared",
                        "Tolerances, limits and margins rounded down, peak pressures up. Peaks are those of the drilled"
                                + " kick circulated out.");
    }

    static OptionalDouble peakChoke(SectionOutcome outcome) {
        return outcome.peaks() instanceof CirculationPeaks.Computed peaks
                ? OptionalDouble.of(peaks.chokePressure())
                : OptionalDouble.empty();
    }

    static OptionalDouble peakShoe(SectionOutcome outcome) {
        return outcome.peaks() instanceof CirculationPeaks.Computed peaks
                ? peaks.shoePressure()
                : OptionalDouble.empty();
    }

    /** Components of MAASP of each section, a column for each design. */
    public static ResultTable comparedMaasp(Comparison comparison, UnitSystem units) {
        record Row(SectionComparison section, String component) {}
        List<Row> all = comparison.sections().stream()
                .flatMap(s -> s.outcomes().stream()
                        .flatMap(o -> o.maasp().stream())
                        .flatMap(m -> m.components().stream())
                        .map(SurfaceLimit::name)
                        .distinct()
                        .map(c -> new Row(s, c)))
                .toList();
        Rows<Row> rows = new Rows<>(all, units)
                .text("Section", r -> r.section().section())
                .text("Component", Row::component);
        designColumns(comparison, Set.of("section", "component"))
                .forEach((design, title) ->
                        rows.text(title, r -> component(r.section().outcome(design), r.component(), units)));
        return rows.table(
                "MAASP components side by side",
                "Greatest static surface pressure by what may break, rounded down; the least of them is the lowest surface"
                        + " limit.");
    }

    /** What a part of the open hole lacks makes the figure of the rest of it an upper bound. */
    private static String component(Optional<SectionOutcome> outcome, String name, UnitSystem units) {
        List<SurfaceLimit> named = outcome.flatMap(SectionOutcome::maasp).stream()
                .flatMap(m -> m.components().stream())
                .filter(c -> c.name().equals(name))
                .toList();
        if (named.isEmpty()) {
            return Rows.NONE;
        }
        OptionalDouble least = named.stream()
                .map(SurfaceLimit::pressure)
                .flatMapToDouble(OptionalDouble::stream)
                .min();
        if (least.isEmpty()) {
            return "not assessed";
        }
        String text = units.text(least.getAsDouble(), Measure.PRESSURE_GAUGE, FLOOR);
        return named.stream().allMatch(c -> c.pressure().isPresent()) ? text : "at most " + text;
    }

    /** Titles of the columns of designs: Tablesaw tells column names apart without regard to case. */
    private static Map<String, String> designColumns(Comparison comparison, Set<String> others) {
        Set<String> taken = new HashSet<>(others);
        Map<String, String> titles = new LinkedHashMap<>();
        for (String design : comparison.designs()) {
            String title = design;
            while (!taken.add(title.toLowerCase(Locale.ROOT))) {
                title += "'";
            }
            titles.put(design, title);
        }
        return titles;
    }

    /** Casing designs side by side: a row for each quantity of each hole section, a column for each design. */
    public static ResultTable comparisonSideBySide(Comparison comparison, UnitSystem units) {
        record Row(SectionComparison section, ComparedQuantity quantity) {}
        List<Row> all = comparison.sections().stream()
                .flatMap(s -> ComparedQuantity.of(s).stream().map(q -> new Row(s, q)))
                .toList();
        Rows<Row> rows = new Rows<>(all, units)
                .text("Section", r -> r.section().section())
                .text("Quantity", r -> r.quantity().title);
        designColumns(comparison, Set.of("section", "quantity"))
                .forEach((design, title) -> rows.text(
                        title,
                        r -> r.section()
                                .outcome(design)
                                .map(o -> r.quantity().words.apply(o, units))
                                .orElse("no such section")));
        return rows.table(
                "Casing designs side by side",
                "Tolerances, limits and margins rounded down, required volumes and peak pressures up.");
    }

    /** Which of every two designs dominates in each hole section and as a whole, and in what each is better. */
    public static ResultTable dominance(Comparison comparison, UnitSystem units) {
        record Row(String section, DesignPair pair) {}
        List<Row> all = new ArrayList<>(comparison.sections().stream()
                .flatMap(s -> s.pairs().stream().map(p -> new Row(s.section(), p)))
                .toList());
        comparison.totals().forEach(p -> all.add(new Row("whole well", p)));
        return new Rows<>(all, units)
                .text("Section", Row::section)
                .text("Design", r -> r.pair().first())
                .text("Other design", r -> r.pair().second())
                .text("Dominates", r -> r.pair().dominant().orElse("neither"))
                .text("Statement", r -> r.pair().statement())
                .text("Design is better in", r -> better(r.pair().firstBetter()))
                .text("Other is better in", r -> better(r.pair().secondBetter()))
                .table("Which design dominates", ResultWords.dominance());
    }

    private static String better(List<ComparedValue> values) {
        return values.isEmpty()
                ? Rows.NONE
                : values.stream().map(ComparedValue::title).collect(Collectors.joining(", "));
    }

    /** Steel of each design, string by string and in all, with its cost where the case gives prices. */
    public static ResultTable steel(Comparison comparison, UnitSystem units) {
        record Row(String design, String string, double length, double mass, Optional<SteelCost> cost) {}
        List<Row> all = new ArrayList<>();
        for (SteelUse use : comparison.steel()) {
            for (StringSteel string : use.strings()) {
                all.add(new Row(use.design(), string.string(), string.length(), string.mass(), string.cost()));
            }
            all.add(new Row(use.design(), "all strings", use.length(), use.mass(), use.cost()));
        }
        Rows<Row> rows = new Rows<>(all, units.with(Measure.NUMBER, "1", 0))
                .text("Design", Row::design)
                .text("String", Row::string)
                .number("Length", Measure.LENGTH, HALF_EVEN, Row::length)
                .number("Weight", Measure.MASS, HALF_EVEN, Row::mass);
        if (all.stream().anyMatch(r -> r.cost().isPresent())) {
            rows.optional("Cost", Measure.NUMBER, CEILING, r -> toDouble(r.cost(), SteelCost::amount))
                    .text("Currency", r -> r.cost().map(SteelCost::currency).orElse("no price"));
        }
        return rows.table("Steel", ResultWords.steel());
    }

    /** Designs, sections and scenarios under several variants of evidence and method. */
    public static ResultTable study(StudyTable study, UnitSystem units) {
        return new Rows<>(study.rows(), units)
                .text("Variant", StudyTable.Row::variant)
                .text("Design", StudyTable.Row::design)
                .text("Section", StudyTable.Row::section)
                .number("From MD", Measure.DEPTH, HALF_EVEN, StudyTable.Row::topDepth)
                .number("To MD", Measure.DEPTH, HALF_EVEN, StudyTable.Row::bottomDepth)
                .text("Scenario", r -> r.kick().scenario().title())
                .optional(
                        "Tolerance", Measure.VOLUME, FLOOR, r -> volume(r.kick().tolerance()))
                .text("Outcome", r -> ResultWords.outcome(r.kick().tolerance(), units))
                .optional(
                        "To surface",
                        Measure.VOLUME,
                        FLOOR,
                        r -> volume(r.kick().circulatedToSurface().tolerance()))
                .text("To surface outcome", r -> ResultWords.outcome(r.kick().circulatedToSurface(), units))
                .optional("Required", Measure.VOLUME, CEILING, r -> r.kick().required())
                .optional("Formation MAASP", Measure.PRESSURE_GAUGE, FLOOR, r -> pressure(r.maasp(), Maasp::formation))
                .text("Formation MAASP at", r -> formationName(r.maasp()))
                .optional(
                        "Lowest surface limit", Measure.PRESSURE_GAUGE, FLOOR, r -> pressure(r.maasp(), Maasp::lowest))
                .text("Lowest surface limit at", r -> lowestName(r.maasp()))
                .text("Kick", r -> r.kick().verdict().outcome().title())
                .text("Section verdict", r -> r.verdict().outcome().title())
                .text("Governing limit", r -> r.kick().verdict().governing())
                .table("Study", "At section TD; tolerances and limits rounded down.");
    }

    /** The section summary in few and narrow columns, for a terminal. */
    public static ResultTable verdicts(WellEnvelope envelope, UnitSystem units) {
        return new Rows<>(envelope.sections(), units)
                .text("Section", s -> s.plan().name())
                .text("Drilled", s -> ResultWords.formation(s, s.drilled(), units))
                .text(
                        "Drilled, to surface",
                        s -> ResultWords.headline(s.drilled().circulatedToSurface(), units))
                .optional(
                        "Drilled required",
                        Measure.VOLUME,
                        CEILING,
                        s -> s.drilled().required())
                .text("Swabbed", s -> ResultWords.formation(s, s.swabbed(), units))
                .text(
                        "Swabbed, to surface",
                        s -> ResultWords.headline(s.swabbed().circulatedToSurface(), units))
                .optional(
                        "Swabbed required",
                        Measure.VOLUME,
                        CEILING,
                        s -> s.swabbed().required())
                .text("Formation MAASP", s -> ResultWords.formationMaasp(s.maasp(), units))
                .text("Lowest surface limit", s -> ResultWords.lowestSurfaceLimit(s.maasp(), units))
                .text("MASP", s -> ResultWords.masp(s.masp(), units))
                .text("Verdict", s -> s.verdict().outcome().title())
                .text("Governing limit", s -> s.verdict().governing())
                .table("Verdicts", "");
    }

    /** Drilled and swabbed kick of a section at its TD: the influx asked about, the answer, what governs. */
    public static ResultTable kicks(SectionEnvelope section, UnitSystem units) {
        return influxRows(section, units)
                .optional("Tolerance", Measure.VOLUME, FLOOR, k -> volume(k.tolerance()))
                .text("Outcome", k -> ResultWords.outcome(k.tolerance(), units))
                .optional("To surface", Measure.VOLUME, FLOOR, Tables::toSurface)
                .text("To surface outcome", k -> ResultWords.outcome(k.circulatedToSurface(), units))
                .optional("Likely tolerance", Measure.VOLUME, FLOOR, k -> volume(k.likelyTolerance()))
                .text("Likely outcome", k -> ResultWords.outcome(k.likelyTolerance(), units))
                .optional("Required", Measure.VOLUME, CEILING, KickResult::required)
                .text("Verdict", k -> k.verdict().statement(units))
                .text("Governing limit", k -> k.verdict().governing())
                .table("Kick tolerance at section TD", "Tolerances rounded down.");
    }

    /** The influxes that the tolerances of a section are asked for. */
    public static ResultTable influxes(SectionEnvelope section, UnitSystem units) {
        return influxRows(section, units).table("Influx at section TD", "Formation pressure rounded up.");
    }

    private static Rows<KickResult> influxRows(SectionEnvelope section, UnitSystem units) {
        return new Rows<>(List.of(section.drilled(), section.swabbed()), units)
                .text("Scenario", k -> k.scenario().title())
                .optional("Influx TVD", Measure.DEPTH, HALF_EVEN, k -> toDouble(k.kick(), Kick::verticalDepth))
                .optional(
                        "Formation pressure",
                        Measure.PRESSURE_ABSOLUTE,
                        CEILING,
                        k -> toDouble(k.kick(), Kick::formationPressure))
                .optionalText("set by", k -> k.kick().map(x -> x.governedBy().title()))
                .optional(
                        "Mud pressure",
                        Measure.PRESSURE_ABSOLUTE,
                        HALF_EVEN,
                        k -> toDouble(k.kick(), Kick::mudPressure));
    }

    /** Pressures over the exposed depths, absolute and as equivalent mud weight from the zero of the results. */
    public static ResultTable pressureWindow(SectionEnvelope section, UnitSystem units) {
        Rows<PressureWindow.Point> rows = new Rows<>(section.window().points(), units)
                .number("Depth MD", Measure.DEPTH, HALF_EVEN, PressureWindow.Point::measuredDepth)
                .number("Depth TVD", Measure.DEPTH, HALF_EVEN, PressureWindow.Point::verticalDepth);
        for (WindowColumn column : WindowColumn.values()) {
            rows.optional(column.title, Measure.PRESSURE_ABSOLUTE, column.rounding, column.pressure);
        }
        for (WindowColumn column : WindowColumn.values()) {
            rows.optional(
                    column.title + " EMW",
                    Measure.EQUIVALENT_DENSITY,
                    column.rounding,
                    p -> equivalent(
                            section.window().equivalentDensityFrom(), column.pressure.apply(p), p.verticalDepth()));
        }
        return rows.table(
                "Pressure window",
                "Pore pressure rounded up, strength and limit down. "
                        + ResultWords.equivalentFrom(section.window().equivalentDensityFrom()));
    }

    /** Whether pore pressure plus trip margin ≤ mud ≤ strength less margin, one row per section. */
    public static ResultTable windowVerdicts(WellEnvelope envelope, UnitSystem units) {
        return new Rows<>(envelope.sections(), units)
                .text("Section", s -> s.plan().name())
                .text("Window", s -> s.window().verdict().outcome().title())
                .text("Statement", s -> s.window().verdict().statement(units))
                .text("Governing limit", s -> s.window().verdict().governing())
                .table("Pressure window verdicts", "");
    }

    /** Tolerances, MAASP and shoe margin with the bit and the influx at each depth. */
    public static ResultTable toleranceAlongSection(SectionEnvelope section, UnitSystem units) {
        return new Rows<>(section.alongSection(), units)
                .number("Depth MD", Measure.DEPTH, HALF_EVEN, DepthPoint::measuredDepth)
                .number("Depth TVD", Measure.DEPTH, HALF_EVEN, DepthPoint::verticalDepth)
                .optional("Drilled tolerance", Measure.VOLUME, FLOOR, d -> volume(d.drilled()))
                .text("Drilled outcome", d -> ResultWords.outcome(d.drilled(), units))
                .optional("Swabbed tolerance", Measure.VOLUME, FLOOR, d -> volume(d.swabbed()))
                .text("Swabbed outcome", d -> ResultWords.outcome(d.swabbed(), units))
                .optional("Formation MAASP", Measure.PRESSURE_GAUGE, FLOOR, DepthPoint::formationMaasp)
                .optional("Shoe margin", Measure.PRESSURE_DIFFERENCE, FLOOR, DepthPoint::shoeMargin)
                .table("Tolerance along the section", "Tolerances, MAASP and margins rounded down.");
    }

    /** Tolerance of a drilled kick at section TD for each intensity. */
    public static ResultTable volumeAgainstIntensity(SectionEnvelope section, UnitSystem units) {
        return new Rows<>(section.volumeAgainstIntensity(), units)
                .number("Kick intensity", Measure.DENSITY_DIFFERENCE, HALF_EVEN, IntensityPoint::intensity)
                .optional("Tolerance", Measure.VOLUME, FLOOR, i -> volume(i.tolerance()))
                .optional("Weak point TVD", Measure.DEPTH, HALF_EVEN, i -> weakPoint(i.tolerance()))
                .text("Outcome", i -> ResultWords.outcome(i.tolerance(), units))
                .table("Volume against intensity", "Tolerances rounded down.");
    }

    /** Every component of MAASP at one mud density, with its value or the reason why there is none. */
    public static ResultTable maasp(Maasp maasp, UnitSystem units) {
        return new Rows<>(maasp.components(), units)
                .text("Component", SurfaceLimit::name)
                .text("Kind", c -> c.type().title())
                .optional("Surface pressure", Measure.PRESSURE_GAUGE, FLOOR, SurfaceLimit::pressure)
                .number("Depth MD", Measure.DEPTH, HALF_EVEN, SurfaceLimit::measuredDepth)
                .number("Depth TVD", Measure.DEPTH, HALF_EVEN, SurfaceLimit::verticalDepth)
                .text("Remark", c -> remark(maasp, c))
                .table(
                        "MAASP components",
                        "Greatest static surface pressure with mud of "
                                + units.text(maasp.mudDensity(), Measure.DENSITY)
                                + " from choke to the component, rounded down.");
    }

    /** Formation MAASP and lowest surface limit for each mud density. */
    public static ResultTable maaspAgainstMud(SectionEnvelope section, UnitSystem units) {
        return new Rows<>(section.maaspAgainstMud(), units)
                .number("Mud", Measure.DENSITY, HALF_EVEN, Maasp::mudDensity)
                .optional(
                        "Formation MAASP",
                        Measure.PRESSURE_GAUGE,
                        FLOOR,
                        m -> pressure(Optional.of(m), Maasp::formation))
                .optionalText("Formation MAASP at", m -> m.formation().map(SurfaceLimit::name))
                .optional(
                        "Lowest surface limit",
                        Measure.PRESSURE_GAUGE,
                        FLOOR,
                        m -> pressure(Optional.of(m), Maasp::lowest))
                .text("Lowest surface limit at", m -> lowestName(Optional.of(m)))
                .table("MAASP against mud weight", "Pressures rounded down.");
    }

    /** Every component of MAASP for each mud density, one row per pair. */
    public static ResultTable maaspComponentsAgainstMud(SectionEnvelope section, UnitSystem units) {
        record Pair(Maasp maasp, SurfaceLimit limit) {}
        List<Pair> pairs = section.maaspAgainstMud().stream()
                .flatMap(m -> m.components().stream().map(c -> new Pair(m, c)))
                .toList();
        return new Rows<>(pairs, units)
                .number("Mud", Measure.DENSITY, HALF_EVEN, p -> p.maasp().mudDensity())
                .text("Component", p -> p.limit().name())
                .text("Kind", p -> p.limit().type().title())
                .optional(
                        "Surface pressure",
                        Measure.PRESSURE_GAUGE,
                        FLOOR,
                        p -> p.limit().pressure())
                .text("Remark", p -> remark(p.maasp(), p.limit()))
                .table("MAASP components against mud weight", "Pressures rounded down.");
    }

    /** Maximum anticipated surface pressure of a section, one row per basis. */
    public static ResultTable masp(SectionEnvelope section, UnitSystem units) {
        return new Rows<>(section.masps(), units)
                .text("Basis", m -> ResultWords.basis(m.basis(), units))
                .optional("MASP", Measure.PRESSURE_GAUGE, CEILING, Masp::pressure)
                .text("At", Masp::at)
                .text("Set by", m -> m.notAssessed().isPresent() ? m.verdict().statement(units) : m.from())
                .optional("Formation TVD", Measure.DEPTH, HALF_EVEN, Masp::fromVerticalDepth)
                .optional("Formation pressure", Measure.PRESSURE_ABSOLUTE, CEILING, Masp::formationPressure)
                .text("Ratings", m -> m.verdict().outcome().title())
                .text("Statement", m -> ResultWords.detail(m.verdict(), units))
                .table(
                        "MASP",
                        "Maximum anticipated surface pressure, a design load: rounded up, above the atmosphere. A load equal"
                                + " to its rating fails.");
    }

    /** The load of a maximum anticipated surface pressure on every component, with its rating and margin. */
    public static ResultTable maspChecks(Masp masp, UnitSystem units) {
        return new Rows<>(masp.checks(), units)
                .text("Component", MaspCheck::name)
                .text("Kind", c -> c.type().title())
                .number("Depth TVD", Measure.DEPTH, HALF_EVEN, MaspCheck::verticalDepth)
                .optional("Load inside", Measure.PRESSURE_GAUGE, CEILING, MaspCheck::load)
                .optional("Holds inside", Measure.PRESSURE_GAUGE, FLOOR, MaspCheck::holds)
                .optional("Margin", Measure.PRESSURE_DIFFERENCE, FLOOR, MaspCheck::margin)
                .text(
                        "Verdict",
                        c -> c.outcome().title()
                                + c.notAssessed().map(r -> ": " + r).orElse(""))
                .table(
                        "MASP against ratings, " + ResultWords.basis(masp.basis(), units),
                        "At the depth of least margin; pressures above the atmosphere at that depth. Casing holds back-up"
                                + " plus the allowed share of its burst rating; equipment its rating. Loads rounded up, what"
                                + " holds and margins down.");
    }

    /** Least margins while an influx is circulated out, one row per scenario. */
    public static ResultTable influxMargins(SectionEnvelope section, UnitSystem units) {
        return new Rows<>(section.margins(), units)
                .text("Scenario", m -> m.scenario().title())
                .number("Influx", Measure.VOLUME, CEILING, InfluxMargin::volume)
                .text("Influx from", InfluxMargin::volumeBasis)
                .number("Least margin", Measure.PRESSURE_DIFFERENCE, FLOOR, InfluxMargin::least)
                .text("at", m -> ResultWords.text(m.weakPoint(), units))
                .text("when", m -> m.stage().moment().title())
                .number("Least margin at shoe", Measure.PRESSURE_DIFFERENCE, FLOOR, InfluxMargin::leastAtShoe)
                .table("Margins while circulating out", "Margins rounded down; negative where the formation breaks.");
    }

    /** Margins along the displacement of one influx, from on bottom upwards. */
    public static ResultTable displacement(InfluxMargin margin, UnitSystem units) {
        return new Rows<>(margin.path(), units)
                .number("Gas top MD", Measure.DEPTH, HALF_EVEN, InfluxMargin.Point::gasTop)
                .number("Gas lower end MD", Measure.DEPTH, HALF_EVEN, InfluxMargin.Point::gasBottom)
                .number("Shoe pressure", Measure.PRESSURE_ABSOLUTE, CEILING, InfluxMargin.Point::shoePressure)
                .number("Shoe margin", Measure.PRESSURE_DIFFERENCE, FLOOR, InfluxMargin.Point::shoeMargin)
                .number("Least margin", Measure.PRESSURE_DIFFERENCE, FLOOR, InfluxMargin.Point::leastMargin)
                .table("Displacement of the " + margin.scenario().title(), "Pressures rounded up, margins down.");
    }

    /** Steps of a hand calculation with its numbers put in. */
    public static ResultTable handCalculation(HandCalculation hand, UnitSystem units) {
        return new Rows<>(hand.steps(), units)
                .text("Step", HandCalculation.Step::name)
                .text("Formula", HandCalculation.Step::formula)
                .text("With numbers", s -> substituted(s, units))
                .text("Result", s -> shown(s.result(), s.measure(), units))
                .table(
                        "Hand calculation",
                        "By hand " + units.text(hand.volume(), Measure.VOLUME, FLOOR) + ", full answer "
                                + units.text(hand.fullVolume(), Measure.VOLUME, FLOOR) + ". " + hand.difference());
    }

    /** Choices and defaults behind the results of a section. */
    public static ResultTable assumptions(SectionEnvelope section, UnitSystem units) {
        return assumptions("Assumptions", section.assumptions(), units);
    }

    /**
     * Choices and defaults.
     *
     * @param name of the table
     * @param assumptions in their order
     * @param units to show
     */
    public static ResultTable assumptions(String name, List<Assumption> assumptions, UnitSystem units) {
        return new Rows<>(assumptions, units)
                .text("Subject", Assumption::subject)
                .text("Assumed", a -> a.text(units))
                .text("Origin", Assumption::origin)
                .table(name, "");
    }

    /** Warnings, of a section, an envelope or a case. */
    public static ResultTable warnings(List<Warning> warnings, UnitSystem units) {
        return new Rows<>(warnings, units)
                .text("Subject", Warning::subject)
                .text("Warning", w -> w.text(units))
                .table("Warnings", "");
    }

    /** Strings of a casing design, one row per stretch of one weight and grade. */
    public static ResultTable casingProgramme(CasingDesign design, UnitSystem units) {
        record Stretch(CasingString string, CasingInterval interval) {}
        List<Stretch> stretches = design.strings().stream()
                .flatMap(s -> s.intervals().stream().map(i -> new Stretch(s, i)))
                .toList();
        return new Rows<>(stretches, units)
                .text("String", s -> s.string().name())
                .number("Top MD", Measure.DEPTH, HALF_EVEN, s -> s.interval().topDepth())
                .number("Bottom MD", Measure.DEPTH, HALF_EVEN, s -> s.interval().bottomDepth())
                .number("OD", Measure.DIAMETER, HALF_EVEN, s -> s.interval().outsideDiameter())
                .number("ID", Measure.DIAMETER, HALF_EVEN, s -> s.interval().insideDiameter())
                .optional(
                        "Weight",
                        Measure.LINEAR_MASS,
                        HALF_EVEN,
                        s -> s.interval().nominalWeight())
                .text("Grade", s -> s.interval().grade().orElse("not given"))
                .optional(
                        "Burst rating",
                        Measure.PRESSURE_DIFFERENCE,
                        FLOOR,
                        s -> Burst.of(s.interval(), units).rating())
                .text("Rating from", s -> Burst.of(s.interval(), units).basis())
                .text("Share allowed", s -> ResultWords.share(s.string().allowedBurstShare()))
                .optional(
                        "Top of cement MD",
                        Measure.DEPTH,
                        HALF_EVEN,
                        s -> s.string().topOfCement())
                .text("Back-up", s -> ResultWords.backUp(s.string(), units))
                .optional(
                        "Test pressure",
                        Measure.PRESSURE_GAUGE,
                        HALF_EVEN,
                        s -> s.string().testPressure())
                .table("Casing programme", "Burst rating before the allowed share, rounded down.");
    }

    /** Rating that counts and what it rests on, or why there is none. */
    private record Burst(OptionalDouble rating, String basis) {
        static Burst of(CasingInterval interval, UnitSystem units) {
            try {
                CasingBurst burst = CasingBurst.of(interval);
                return burst instanceof CasingBurst.Rated rated
                        ? new Burst(OptionalDouble.of(rated.pressure()), rated.basis())
                        : none("missing " + ((CasingBurst.NotAssessed) burst).missing());
            } catch (Fault outsideRange) {
                return none(outsideRange.text(units));
            }
        }

        private static Burst none(String reason) {
            return new Burst(OptionalDouble.empty(), "not assessed: " + reason);
        }
    }

    /** Hole sections of a casing design. */
    public static ResultTable holeProgramme(CasingDesign design, UnitSystem units) {
        return new Rows<>(design.sections(), units)
                .text("Section", s -> s.name())
                .text("Drilled", s -> s.drilling().title())
                .number("Hole size", Measure.DIAMETER, HALF_EVEN, s -> s.bitDiameter())
                .number("From MD", Measure.DEPTH, HALF_EVEN, s -> s.topDepth())
                .number("To MD", Measure.DEPTH, HALF_EVEN, s -> s.bottomDepth())
                .optionalText("Mud", s -> s.mud().map(Mud::name))
                .optional("Mud density", Measure.DENSITY, HALF_EVEN, s -> toDouble(s.mud(), Mud::density))
                .table("Hole programme", "");
    }

    /** What each section must meet, with owner and source. */
    public static ResultTable criteria(CasingDesign design, UnitSystem units) {
        record Asked(String section, Criteria criteria) {}
        List<Asked> asked = new ArrayList<>();
        design.sections().forEach(s -> s.criteria().ifPresent(c -> asked.add(new Asked(s.name(), c))));
        return new Rows<>(asked, units)
                .text("Section", Asked::section)
                .optional("Drilled", Measure.VOLUME, CEILING, a -> a.criteria().drilledTolerance())
                .optional("Swabbed", Measure.VOLUME, CEILING, a -> a.criteria().swabbedTolerance())
                .optional(
                        "Kick intensity",
                        Measure.DENSITY_DIFFERENCE,
                        HALF_EVEN,
                        a -> a.criteria().kickIntensity())
                .optional(
                        "Strength margin",
                        Measure.PRESSURE_DIFFERENCE,
                        CEILING,
                        a -> a.criteria().strengthMargin())
                .optional(
                        "Trip margin",
                        Measure.DENSITY_DIFFERENCE,
                        HALF_EVEN,
                        a -> a.criteria().tripMargin())
                .optional(
                        "Surge margin",
                        Measure.DENSITY_DIFFERENCE,
                        HALF_EVEN,
                        a -> a.criteria().surgeMargin())
                .text("Criteria", a -> a.criteria().name())
                .text("Owner", a -> a.criteria().owner())
                .text("Source", a -> a.criteria().source().text())
                .table("Criteria", "The user's own, from the case.");
    }

    /** Open hole of a section as it is, washout included. */
    public static ResultTable openHole(SectionPlan plan, UnitSystem units) {
        return new Rows<>(plan.hole(), units)
                .number("From MD", Measure.DEPTH, HALF_EVEN, HoleInterval::topDepth)
                .number("To MD", Measure.DEPTH, HALF_EVEN, HoleInterval::bottomDepth)
                .number("Diameter", Measure.DIAMETER, HALF_EVEN, HoleInterval::diameter)
                .table("Open hole", "Washout included.");
    }

    /** String in the hole, from the bit up; without rows where none is given. */
    public static ResultTable drillString(SectionPlan plan, UnitSystem units) {
        return new Rows<>(plan.string().map(DrillString::components).orElse(List.of()), units)
                .text("Component", StringComponent::name)
                .number("Length", Measure.LENGTH, HALF_EVEN, StringComponent::length)
                .number("OD", Measure.DIAMETER, HALF_EVEN, StringComponent::outsideDiameter)
                .number("ID", Measure.DIAMETER, HALF_EVEN, StringComponent::insideDiameter)
                .table("String in the hole", "From the bit up; the last component reaches to surface.");
    }

    /** Mud, gas, volumes and circulation of a section, with "not given" where the case is silent. */
    public static ResultTable sectionInputs(SectionPlan plan, UnitSystem units) {
        return new Rows<>(SectionInputs.of(plan, units), units)
                .text("Input", SectionInputs.Item::name)
                .text("Value", SectionInputs.Item::value)
                .table("Inputs", "As the case gives them.");
    }

    /** The same of several sections side by side; a dash where a section has no such line. */
    public static ResultTable sectionInputs(List<SectionPlan> plans, UnitSystem units) {
        List<Map<String, String>> values = plans.stream()
                .map(p -> SectionInputs.of(p, units).stream()
                        .collect(Collectors.toMap(
                                SectionInputs.Item::name,
                                SectionInputs.Item::value,
                                (first, second) -> first,
                                LinkedHashMap::new)))
                .<Map<String, String>>map(m -> m)
                .toList();
        List<String> names =
                values.stream().flatMap(v -> v.keySet().stream()).distinct().toList();
        Rows<String> rows = new Rows<>(names, units).text("Input", n -> n);
        for (int i = 0; i < plans.size(); i++) {
            Map<String, String> section = values.get(i);
            String name = plans.get(i).name();
            boolean again = plans.subList(0, i).stream().anyMatch(p -> p.name().equals(name));
            rows.text(again ? name + ", section " + (i + 1) : name, n -> section.getOrDefault(n, Rows.NONE));
        }
        return rows.table("Inputs of the sections", "As the case gives them.");
    }

    /**
     * Leak-off and integrity tests.
     *
     * @param zero where their equivalent mud weights count from
     */
    public static ResultTable strengthTests(EarthModel earth, EquivalentZero zero, UnitSystem units) {
        return new Rows<>(earth.tests(), units)
                .text("Test", StrengthTest::name)
                .text("Standing", t -> t.standing().title())
                .number("Depth TVD", Measure.DEPTH, HALF_EVEN, StrengthTest::verticalDepth)
                .number("Pressure", Measure.PRESSURE_ABSOLUTE, FLOOR, StrengthTest::pressure)
                .optional(
                        "Pressure EMW",
                        Measure.EQUIVALENT_DENSITY,
                        FLOOR,
                        t -> zero.density(t.pressure(), t.verticalDepth()))
                .optional("Test mud", Measure.DENSITY, HALF_EVEN, StrengthTest::testMudDensity)
                .text("Source", t -> t.source().text())
                .table("Strength tests", "Pressures rounded down. " + ResultWords.equivalentFrom(zero));
    }

    /** Choices of method. */
    public static ResultTable methods(MethodOptions options, UnitSystem units) {
        return new Rows<>(ResultWords.options(options, units), units)
                .text("Question", o -> o.get(0))
                .text("Choice", o -> o.get(1))
                .table("Methods", "");
    }

    private static OptionalDouble volume(Tolerance tolerance) {
        return tolerance instanceof Tolerance.Finite finite
                ? OptionalDouble.of(finite.volume())
                : OptionalDouble.empty();
    }

    private static OptionalDouble toSurface(KickResult kick) {
        return volume(kick.circulatedToSurface().tolerance());
    }

    private static OptionalDouble weakPoint(Tolerance tolerance) {
        return tolerance instanceof Tolerance.Finite finite
                ? OptionalDouble.of(finite.weakPoint().verticalDepth())
                : OptionalDouble.empty();
    }

    private static OptionalDouble margin(SectionEnvelope section, Kick.Scenario scenario) {
        return toDouble(ResultWords.margin(section, scenario), InfluxMargin::least);
    }

    private static OptionalDouble pressure(Optional<Maasp> maasp, Function<Maasp, Optional<SurfaceLimit>> which) {
        return maasp.flatMap(which).map(SurfaceLimit::pressure).orElse(OptionalDouble.empty());
    }

    private static String formationName(Optional<Maasp> maasp) {
        return maasp.flatMap(Maasp::formation)
                .map(l -> l.name() + (ResultWords.strengthPartlyUnknown(maasp) ? " (at most)" : ""))
                .orElse("");
    }

    private static String lowestName(Optional<Maasp> maasp) {
        return maasp.flatMap(Maasp::lowest)
                .map(l -> l.name() + (maasp.get().atMost() ? " (at most)" : ""))
                .orElse("");
    }

    private static String remark(Maasp maasp, SurfaceLimit limit) {
        if (limit.notAssessed().isPresent()) {
            return "not assessed: " + limit.notAssessed().get();
        }
        List<String> roles = new ArrayList<>();
        if (maasp.formation().filter(limit::equals).isPresent()) {
            roles.add("formation MAASP");
        }
        if (maasp.lowest().filter(limit::equals).isPresent()) {
            roles.add(maasp.atMost() ? "lowest of those assessed" : "lowest surface limit");
        }
        return String.join("; ", roles);
    }

    /** Right side of a formula with the values in place of the symbols. */
    static String substituted(HandCalculation.Step step, UnitSystem units) {
        String right = step.formula().substring(step.formula().indexOf('=') + 1).trim();
        Map<String, String> values = new HashMap<>();
        step.terms().forEach(t -> values.put(t.symbol(), shown(t.value(), t.measure(), units)));
        return SYMBOL.matcher(right)
                .replaceAll(m -> Matcher.quoteReplacement(values.getOrDefault(m.group(), m.group())));
    }

    static String shown(double value, Measure measure, UnitSystem units) {
        return units.text(value, measure, measure == Measure.VOLUME ? FLOOR : HALF_EVEN);
    }

    private static OptionalDouble equivalent(EquivalentZero zero, OptionalDouble pressure, double verticalDepth) {
        return pressure.isPresent() ? zero.density(pressure.getAsDouble(), verticalDepth) : OptionalDouble.empty();
    }

    private static OptionalDouble toPressure(Optional<Masp> masp) {
        return masp.map(Masp::pressure).orElse(OptionalDouble.empty());
    }

    private static <T> OptionalDouble toDouble(Optional<T> value, ToDoubleFunction<T> of) {
        return value.isPresent() ? OptionalDouble.of(of.applyAsDouble(value.get())) : OptionalDouble.empty();
    }
}
