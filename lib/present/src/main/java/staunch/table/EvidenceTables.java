package staunch.table;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_EVEN;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import staunch.design.InputValue;
import staunch.earth.EquivalentZero;
import staunch.earth.EvidenceConflict;
import staunch.earth.LeakOffMethod;
import staunch.earth.LeakOffPick;
import staunch.earth.OffsetEvidence;
import staunch.earth.PumpingTest;
import staunch.units.EquivalentDensity;
import staunch.units.Measure;
import staunch.units.Source;
import staunch.units.UnitSystem;

/** What offset wells say of a planned well, and where the numbers of a case come from. */
public final class EvidenceTables {
    private EvidenceTables() {}

    /** Strength tests of offset wells with their matched depths. */
    public static ResultTable tests(OffsetEvidence evidence, EquivalentZero zero, UnitSystem units) {
        return new Rows<>(evidence.tests(), units)
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
                .number("Strength here", Measure.PRESSURE_ABSOLUTE, FLOOR, OffsetEvidence.Test::strength)
                .optional(
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
                        "Bounds, not measurements: they change nothing and are listed as conflicts where profile or evidence"
                                + " says otherwise.");
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
                                + (evidence.weakZones() ? "as tested." : "as given."));
    }

    /** Pieces of evidence that do not agree, with each other or with the prediction. */
    public static ResultTable conflicts(OffsetEvidence evidence, UnitSystem units) {
        return new Rows<>(evidence.conflicts(), units)
                .text("One", EvidenceConflict::first)
                .text("Other", EvidenceConflict::second)
                .text("Conflict", EvidenceConflict::text)
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
