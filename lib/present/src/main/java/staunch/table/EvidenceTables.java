package staunch.table;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_EVEN;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import staunch.design.InputValue;
import staunch.earth.EquivalentZero;
import staunch.earth.EvidenceConflict;
import staunch.earth.LeakOffMethod;
import staunch.earth.LeakOffPick;
import staunch.earth.LogFracture;
import staunch.earth.LogPressure;
import staunch.earth.OffsetEvidence;
import staunch.earth.PressureEstimate;
import staunch.earth.PumpingTest;
import staunch.earth.WellLog;
import staunch.units.EquivalentDensity;
import staunch.units.Measure;
import staunch.units.Source;
import staunch.units.UnitSystem;

/** What offset wells say of a planned well, and where the numbers of a case come from. */
public final class EvidenceTables {
    /** Pressures that differ by less are the same, Pa. */
    private static final double SAME = 1;

    private EvidenceTables() {}

    /** Strength tests of offset wells with their matched depths. */
    public static ResultTable tests(OffsetEvidence evidence, EquivalentZero zero, UnitSystem units) {
        Rows<OffsetEvidence.Test> rows = new Rows<>(evidence.tests(), units)
                .text("Offset well", OffsetEvidence.Test::well)
                .text("Test", t -> t.test().name())
                .text("Standing", t -> t.test().standing().title())
                .number("TVD there", Measure.DEPTH, HALF_EVEN, t -> t.test().verticalDepth())
                .optional(
                        "EMW there",
                        Measure.EQUIVALENT_DENSITY,
                        FLOOR,
                        t -> equivalent(t.test().pressure(), t.test().verticalDepth()))
                .number("Stress ratio", Measure.NUMBER, HALF_EVEN, OffsetEvidence.Test::stressRatio)
                .number("TVD here", Measure.DEPTH, HALF_EVEN, OffsetEvidence.Test::verticalDepth)
                .number("Strength here", Measure.PRESSURE_ABSOLUTE, FLOOR, OffsetEvidence.Test::strength);
        if (evidence.tests().stream().anyMatch(t -> t.high() - t.low() > SAME)) {
            rows.number("Low", Measure.PRESSURE_ABSOLUTE, FLOOR, OffsetEvidence.Test::low)
                    .number("High", Measure.PRESSURE_ABSOLUTE, FLOOR, OffsetEvidence.Test::high);
        }
        return rows.optional(
                        "EMW here",
                        Measure.EQUIVALENT_DENSITY,
                        FLOOR,
                        t -> zero.density(t.strength(), t.verticalDepth()))
                .text("Source", t -> t.test().source().text())
                .table(
                        "Strength tests of offset wells",
                        "Carried over by effective-stress ratio on this well's own overburden and pore pressure. EMW there"
                                + " counts from the datum of the offset well, EMW here from "
                                + zero.name() + ". Rounded down.");
    }

    /** Logs of offset wells, and how pore pressure is read from them. */
    public static ResultTable logs(OffsetEvidence evidence, UnitSystem units) {
        return new Rows<>(evidence.logs(), units)
                .text("Offset well", OffsetEvidence.Log::well)
                .text("File", l -> l.log().source().text())
                .text("Blocks", l -> Integer.toString(l.log().blocks().size()))
                .number(
                        "Top TVD there",
                        Measure.DEPTH,
                        HALF_EVEN,
                        l -> l.log().blocks().get(0).verticalDepth())
                .number(
                        "Bottom TVD there",
                        Measure.DEPTH,
                        HALF_EVEN,
                        l -> l.log().blocks().get(l.log().blocks().size() - 1).verticalDepth())
                .text("Overburden", l -> l.overburden().isEmpty() ? "sediment" : "density log")
                .text("Method", l -> l.pressure().map(p -> p.method().title()).orElse("no pore pressure is read"))
                .text(
                        "Exponent",
                        l -> l.pressure()
                                .flatMap(LogPressure::exponent)
                                .map(EvidenceTables::exponent)
                                .orElse("–"))
                .optional(
                        "A reading may be off by",
                        Measure.NUMBER,
                        CEILING,
                        l -> l.pressure()
                                .map(p -> OptionalDouble.of(p.uncertainty()))
                                .orElse(OptionalDouble.empty()))
                .text(
                        "Stress ratio of its leak-offs",
                        l -> l.fracture()
                                .map(f -> UnitSystem.SI.number(f.mean(), Measure.NUMBER) + " ("
                                        + UnitSystem.SI.number(f.least(), Measure.NUMBER) + " to "
                                        + UnitSystem.SI.number(f.greatest(), Measure.NUMBER) + ", " + f.tests()
                                        + (f.tests() == 1 ? " test)" : " tests)"))
                                .orElse("–"))
                .optional(
                        "Poisson's ratio",
                        Measure.NUMBER,
                        HALF_EVEN,
                        l -> l.fracture().map(LogFracture::poissonRatio).orElse(OptionalDouble.empty()))
                .text("Pore pressure of the well", l -> l.counts() ? "from the log" : "profile of the case")
                .table(
                        "Logs of offset wells",
                        "Pore pressure by undercompaction of shale. Here logs are "
                                + evidence.logUse().title() + ".");
    }

    private static String exponent(LogPressure.Exponent n) {
        String likely = UnitSystem.SI.number(n.likely(), Measure.NUMBER);
        return n.points() == 0
                ? likely + ", as chosen"
                : likely + " (" + UnitSystem.SI.number(n.low(), Measure.NUMBER) + " to "
                        + UnitSystem.SI.number(n.high(), Measure.NUMBER) + "), calibrated to " + n.points()
                        + (n.points() == 1 ? " point" : " points");
    }

    /** Every block of a log, and what was read from it. */
    public static ResultTable log(OffsetEvidence.Log log, UnitSystem units) {
        Map<Double, LogPressure.Row> pore = log.pressure().stream()
                .flatMap(p -> p.rows().stream())
                .collect(Collectors.toMap(LogPressure.Row::verticalDepth, r -> r));
        Map<Double, PressureEstimate> overburden = log.overburden().stream()
                .collect(Collectors.toMap(OffsetEvidence.Weight::verticalDepth, OffsetEvidence.Weight::overburden));
        Map<Double, PressureEstimate> fracture = log.fracture().stream()
                .flatMap(f -> f.rows().stream())
                .collect(Collectors.toMap(LogFracture.Row::verticalDepth, LogFracture.Row::pressure));
        Rows<WellLog.Block> rows = new Rows<>(log.log().blocks(), units)
                .number("TVD", Measure.DEPTH, HALF_EVEN, WellLog.Block::verticalDepth)
                .optional("Bulk density", Measure.DENSITY, HALF_EVEN, WellLog.Block::density)
                .optional("Sonic", Measure.SLOWNESS, HALF_EVEN, WellLog.Block::slowness)
                .optional("Resistivity", Measure.RESISTIVITY, HALF_EVEN, WellLog.Block::resistivity)
                .optional("Overburden", Measure.PRESSURE_ABSOLUTE, HALF_EVEN, b -> likely(overburden, b))
                .optional(
                        "Ratio to the normal trend",
                        Measure.NUMBER,
                        HALF_EVEN,
                        b -> Optional.ofNullable(pore.get(b.verticalDepth()))
                                .map(r -> OptionalDouble.of(r.ratio()))
                                .orElse(OptionalDouble.empty()));
        Map<Double, PressureEstimate> pressures = new HashMap<>();
        pore.forEach((z, row) -> pressures.put(z, row.pressure()));
        return rows.optional(
                        "Pore pressure low",
                        Measure.PRESSURE_ABSOLUTE,
                        HALF_EVEN,
                        b -> Optional.ofNullable(pressures.get(b.verticalDepth()))
                                .map(p -> OptionalDouble.of(p.low()))
                                .orElse(OptionalDouble.empty()))
                .optional("likely", Measure.PRESSURE_ABSOLUTE, HALF_EVEN, b -> likely(pressures, b))
                .optional(
                        "high",
                        Measure.PRESSURE_ABSOLUTE,
                        HALF_EVEN,
                        b -> Optional.ofNullable(pressures.get(b.verticalDepth()))
                                .map(p -> OptionalDouble.of(p.high()))
                                .orElse(OptionalDouble.empty()))
                .optional("Fracture pressure", Measure.PRESSURE_ABSOLUTE, HALF_EVEN, b -> likely(fracture, b))
                .table(
                        "Log of " + log.well(),
                        "Depths below the datum of that well. "
                                + log.pressure()
                                        .map(p -> p.method().title() + ". ")
                                        .orElse("")
                                + log.log().source().text() + ".");
    }

    private static OptionalDouble likely(Map<Double, PressureEstimate> of, WellLog.Block block) {
        PressureEstimate here = of.get(block.verticalDepth());
        return here == null ? OptionalDouble.empty() : OptionalDouble.of(here.likely());
    }

    /** Casing shoes of offset wells with their matched depths. */
    public static ResultTable shoes(OffsetEvidence evidence, UnitSystem units) {
        return new Rows<>(evidence.shoes(), units)
                .text("Offset well", OffsetEvidence.Shoe::well)
                .text("Casing", s -> s.shoe().name())
                .optional(
                        "Outside diameter",
                        Measure.DIAMETER,
                        HALF_EVEN,
                        s -> s.shoe().outsideDiameter())
                .number(
                        "Shoe TVD there",
                        Measure.DEPTH,
                        HALF_EVEN,
                        s -> s.shoe().verticalDepth())
                .optional("TVD here", Measure.DEPTH, HALF_EVEN, OffsetEvidence.Shoe::verticalDepth)
                .text("Source", s -> s.shoe().source().text())
                .table("Casing shoes of offset wells", "At the depth of this well that corresponds to theirs.");
    }

    /** Formation pressures of offset wells with their matched depths. */
    public static ResultTable points(OffsetEvidence evidence, EquivalentZero zero, UnitSystem units) {
        return new Rows<>(evidence.points(), units)
                .text("Offset well", OffsetEvidence.Point::well)
                .text("Point", p -> p.point().name())
                .text("Quality", p -> p.point().quality().name().toLowerCase(Locale.ROOT))
                .number("TVD there", Measure.DEPTH, HALF_EVEN, p -> p.point().verticalDepth())
                .number(
                        "Pressure there",
                        Measure.PRESSURE_ABSOLUTE,
                        CEILING,
                        p -> p.point().pressure())
                .number("Excess over hydrostatic", Measure.PRESSURE_DIFFERENCE, HALF_EVEN, OffsetEvidence.Point::excess)
                .number("TVD here", Measure.DEPTH, HALF_EVEN, OffsetEvidence.Point::verticalDepth)
                .number("Pressure here", Measure.PRESSURE_ABSOLUTE, CEILING, OffsetEvidence.Point::pressure)
                .optional(
                        "EMW here",
                        Measure.EQUIVALENT_DENSITY,
                        CEILING,
                        p -> zero.density(p.pressure(), p.verticalDepth()))
                .text("Source", p -> p.point().source().text())
                .table(
                        "Formation pressures of offset wells",
                        "Carried over as excess over hydrostatic pressure. Rounded up.");
    }

    /** Losses, kicks and muds of offset wells with their matched depths. */
    public static ResultTable events(OffsetEvidence evidence, EquivalentZero zero, UnitSystem units) {
        return new Rows<>(evidence.events(), units)
                .text("Offset well", OffsetEvidence.Event::well)
                .text("Seen", e -> e.event().name())
                .text("What", e -> e.event().type().title())
                .number("TVD there", Measure.DEPTH, HALF_EVEN, e -> e.event().verticalDepth())
                .optional(
                        "EMW there",
                        Measure.EQUIVALENT_DENSITY,
                        HALF_EVEN,
                        e -> equivalent(e.event().pressure(), e.event().verticalDepth()))
                .number("TVD here", Measure.DEPTH, HALF_EVEN, OffsetEvidence.Event::verticalDepth)
                .text("Bound here", e -> e.event().type().bound())
                .number("Pressure here", Measure.PRESSURE_ABSOLUTE, HALF_EVEN, OffsetEvidence.Event::bound)
                .optional(
                        "EMW here",
                        Measure.EQUIVALENT_DENSITY,
                        HALF_EVEN,
                        e -> zero.density(e.bound(), e.verticalDepth()))
                .text("Source", e -> e.event().source().text())
                .table(
                        "Losses, kicks and muds of offset wells",
                        "Bounds, not measurements, " + evidence.boundUse().title()
                                + "; listed as conflicts where profile or evidence says otherwise.");
    }

    /** What was picked from the curves of pumping tests. */
    public static ResultTable picks(OffsetEvidence evidence, UnitSystem units) {
        return new Rows<>(evidence.pumped(), withSmallVolumes(units))
                .text("Offset well", OffsetEvidence.Pumped::well)
                .text("Test", p -> p.pick().test().name())
                .text("Reading", p -> p.pick().standing().title())
                .text("Method", p -> method(p.pick().method(), units))
                .number(
                        "At the gauge",
                        Measure.PRESSURE_GAUGE,
                        FLOOR,
                        p -> p.pick().pressure())
                .optional("Volume pumped", Measure.VOLUME, HALF_EVEN, p -> volume(p.pick()))
                .optional(
                        "Pump stopped",
                        Measure.PRESSURE_GAUGE,
                        HALF_EVEN,
                        p -> p.pick().test().shutInPressure())
                .number("TVD there", Measure.DEPTH, HALF_EVEN, p -> p.column().verticalDepth())
                .number("Mud", Measure.DENSITY, HALF_EVEN, p -> p.column().mudDensity())
                .number(
                        "On the formation",
                        Measure.PRESSURE_ABSOLUTE,
                        FLOOR,
                        p -> p.pick().atFormation(p.column()))
                .text(
                        "What speaks against it",
                        p -> String.join(
                                "; ",
                                p.pick().flags().stream()
                                        .map(LeakOffPick.Flag::title)
                                        .toList()))
                .table("Pumping tests of offset wells", "Pressures rounded down.");
    }

    /** Every reading while pumping, with the line of the build-up. */
    public static ResultTable pumpingTest(LeakOffPick pick, UnitSystem units) {
        return new Rows<>(pick.test().pumped(), withSmallVolumes(units))
                .number("Volume pumped", Measure.VOLUME, HALF_EVEN, PumpingTest.Pumped::volume)
                .number("At the gauge", Measure.PRESSURE_GAUGE, HALF_EVEN, PumpingTest.Pumped::pressure)
                .number(
                        "Line of the build-up",
                        Measure.PRESSURE_GAUGE,
                        HALF_EVEN,
                        r -> pick.buildUp().at(r.volume()))
                .number(
                        "Below the line",
                        Measure.PRESSURE_DIFFERENCE,
                        HALF_EVEN,
                        r -> pick.buildUp().at(r.volume()) - r.pressure())
                .table(
                        "Pumping test " + pick.test().name(),
                        "The line is fitted to " + pick.buildUp().readings() + " readings.");
    }

    /** A test pumps a few barrels. */
    private static UnitSystem withSmallVolumes(UnitSystem units) {
        return units.with(Measure.VOLUME, units.symbol(Measure.VOLUME), units.decimals(Measure.VOLUME) + 1);
    }

    private static OptionalDouble volume(LeakOffPick pick) {
        return pick instanceof LeakOffPick.Picked picked ? OptionalDouble.of(picked.volume()) : OptionalDouble.empty();
    }

    private static String method(LeakOffMethod method, UnitSystem units) {
        return method instanceof LeakOffMethod.Departure departure
                ? "departure from the build-up by " + units.text(departure.tolerance(), Measure.PRESSURE_DIFFERENCE)
                : "two straight lines";
    }

    /** What the evidence changed in the rock of the case. */
    public static ResultTable changes(OffsetEvidence evidence, EquivalentZero zero, UnitSystem units) {
        return new Rows<>(evidence.changes(), units)
                .text("What", OffsetEvidence.Change::subject)
                .number("TVD", Measure.DEPTH, HALF_EVEN, OffsetEvidence.Change::verticalDepth)
                .number("Before", Measure.PRESSURE_ABSOLUTE, HALF_EVEN, OffsetEvidence.Change::before)
                .number("After", Measure.PRESSURE_ABSOLUTE, HALF_EVEN, OffsetEvidence.Change::after)
                .optional(
                        "EMW before",
                        Measure.EQUIVALENT_DENSITY,
                        HALF_EVEN,
                        c -> zero.density(c.before(), c.verticalDepth()))
                .optional(
                        "EMW after",
                        Measure.EQUIVALENT_DENSITY,
                        HALF_EVEN,
                        c -> zero.density(c.after(), c.verticalDepth()))
                .table(
                        "What the offset evidence changed",
                        "Pore pressure: " + evidence.porePressure().title() + ". Strength: "
                                + evidence.strength().title() + ". Weak zones: "
                                + (evidence.weakZones() ? "as tested" : "as given")
                                + ". Losses and kicks: " + evidence.boundUse().title() + ".");
    }

    /** Pieces of evidence that do not agree, with each other or with the prediction. */
    public static ResultTable conflicts(OffsetEvidence evidence, UnitSystem units) {
        return new Rows<>(evidence.conflicts(), units)
                .text("One", EvidenceConflict::first)
                .text("Other", EvidenceConflict::second)
                .text("Conflict", c -> c.text(units))
                .table("Conflicts of the evidence", "Both are kept; which is right is for a person to judge.");
    }

    /** Evidence that could not be carried over. */
    public static ResultTable leftOut(OffsetEvidence evidence, UnitSystem units) {
        return new Rows<>(evidence.leftOut(), units)
                .text("Left out", text -> text)
                .table("Offset evidence left out", "");
    }

    /** Every table of the evidence that has rows. */
    public static List<ResultTable> all(OffsetEvidence evidence, EquivalentZero zero, UnitSystem units) {
        List<ResultTable> tables = new ArrayList<>(List.of(
                changes(evidence, zero, units),
                conflicts(evidence, units),
                tests(evidence, zero, units),
                points(evidence, zero, units),
                picks(evidence, units),
                logs(evidence, units),
                shoes(evidence, units),
                events(evidence, zero, units),
                leftOut(evidence, units)));
        tables.removeIf(t -> t.rowCount() == 0);
        return tables;
    }

    /** Every number of a case with the place it was read from. */
    public static ResultTable register(List<InputValue> register, UnitSystem units) {
        return new Rows<>(register, units)
                .text("Number", InputValue::key)
                .text("As written", InputValue::value)
                .text("File", InputValue::file)
                .text("Line", v -> Integer.toString(v.line()))
                .text("Source", v -> v.source().map(Source::text).orElse("the case itself"))
                .table("Where the numbers come from", "As written in the files of the case.");
    }

    /** The same with one row for each column of a table of numbers. */
    public static ResultTable registerInBrief(List<InputValue> register, UnitSystem units) {
        record Group(String key, String file, List<InputValue> values) {}
        Map<List<String>, Group> groups = new LinkedHashMap<>();
        for (InputValue v : register) {
            groups.computeIfAbsent(List.of(v.key(), v.file()), k -> new Group(v.key(), v.file(), new ArrayList<>()))
                    .values()
                    .add(v);
        }
        return new Rows<>(List.copyOf(groups.values()), units)
                .text("Number", Group::key)
                .text(
                        "As written",
                        g -> g.values().size() == 1
                                ? g.values().get(0).value()
                                : g.values().size() + " numbers")
                .text("File", Group::file)
                .text("Line", g -> lines(g.values()))
                .text(
                        "Source",
                        g -> g.values().stream()
                                .map(v -> v.source().map(Source::document).orElse("the case itself"))
                                .distinct()
                                .reduce((a, b) -> a + "; " + b)
                                .orElse(""))
                .table("Where the numbers come from", "Columns of a table in one row each.");
    }

    private static String lines(List<InputValue> values) {
        int first = values.stream().mapToInt(InputValue::line).min().orElse(0);
        int last = values.stream().mapToInt(InputValue::line).max().orElse(0);
        return first == last ? Integer.toString(first) : first + " to " + last;
    }

    private static OptionalDouble equivalent(double pressure, double verticalDepth) {
        return verticalDepth < 0.1
                ? OptionalDouble.empty()
                : OptionalDouble.of(EquivalentDensity.of(pressure, verticalDepth));
    }
}
