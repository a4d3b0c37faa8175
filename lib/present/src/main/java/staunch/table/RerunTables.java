package staunch.table;

import static java.math.RoundingMode.HALF_EVEN;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import staunch.design.Attribution;
import staunch.design.Cause;
import staunch.design.Rerun;
import staunch.design.SectionChange;
import staunch.design.SectionQuantity;
import staunch.design.SectionResult;
import staunch.units.InputFault;
import staunch.units.UnitSystem;

/** What changed between two runs as tables in chosen units. */
public final class RerunTables {
    private static final String ARROW = " → ";

    private RerunTables() {}

    /** One row per hole section: verdicts, and the results that decide them, before and after; flips first. */
    public static ResultTable sections(Rerun rerun, UnitSystem units) {
        return new Rows<>(rerun.sections(), units)
                .text("Section", SectionChange::section)
                .text("Design", SectionChange::design)
                .text("Verdict", RerunTables::verdict)
                .text("Drilled kick", s -> pair(s, SectionQuantity.DRILLED_TOLERANCE, units))
                .text("Swabbed kick", s -> pair(s, SectionQuantity.SWABBED_TOLERANCE, units))
                .text("Least margin, drilled", s -> pair(s, SectionQuantity.DRILLED_MARGIN, units))
                .text("Least margin, swabbed", s -> pair(s, SectionQuantity.SWABBED_MARGIN, units))
                .text("Formation MAASP", s -> pair(s, SectionQuantity.FORMATION_MAASP, units))
                .text("Governing limit", RerunTables::governing)
                .table(
                        "What changed",
                        "Before → after; a single value stands where both runs found the same. Tolerances are those of"
                                + " the formation. Tolerances, margins and MAASP rounded down.");
    }

    /** Every result of the envelope of a section before and after, with the change. */
    public static ResultTable values(SectionChange section, UnitSystem units) {
        return values(
                section,
                Stream.of(SectionQuantity.values())
                        .filter(q -> q.part() == SectionQuantity.Part.ENVELOPE)
                        .toList(),
                units,
                RerunWords.name(section),
                "Results rounded down, changes to nearest.");
    }

    /** What follows an influx into a section in time, before and after, where it changed by as much as is shown; no row
     * where nothing did. */
    public static ResultTable operations(SectionChange section, UnitSystem units) {
        return values(
                section,
                RerunWords.visible(section, units).stream()
                        .filter(q -> q.part() != SectionQuantity.Part.ENVELOPE)
                        .toList(),
                units,
                "What follows an influx, " + RerunWords.name(section),
                "What changed alone. Limits, margins and times rounded down, loads rounded up, changes to nearest.");
    }

    private static ResultTable values(
            SectionChange section, List<SectionQuantity> quantities, UnitSystem units, String name, String caption) {
        return new Rows<>(quantities, units)
                .text("Result", SectionQuantity::title)
                .text("Before", q -> cell(section.before().map(r -> RerunWords.value(r.value(q), units))))
                .text("After", q -> cell(section.after().map(r -> RerunWords.value(r.value(q), units))))
                .text("Change", q -> section.differing().contains(q) ? RerunWords.change(section, q, units) : "")
                .text("Largest part", q -> RerunWords.mainCause(section, q))
                .text(
                        "Where, before",
                        q -> cell(section.before().map(r -> r.value(q).outcome())))
                .text(
                        "Where, after",
                        q -> cell(section.after().map(r -> r.value(q).outcome())))
                .table(name, caption + " Largest part: the cause that moved it most, made in sequence.");
    }

    /** What changed in input, methods and library, in the order in which the changes are made. */
    public static ResultTable causes(Rerun rerun, UnitSystem units) {
        return new Rows<>(rerun.causes(), units)
                .text("Cause", Cause::name)
                .text("Kind", c -> c.kind().title())
                .text("Before → after", c -> RerunWords.details(c, units))
                .text("Made together because", Cause::together)
                .table(
                        "Changes of input, methods and library",
                        "In the order in which they are made. Changes without which another gives no legal case are made"
                                + " together.");
    }

    /** One line of an attribution. */
    private record Line(
            String name,
            OptionalDouble alone,
            OptionalDouble inSequence,
            String verdictAlone,
            String verdictInSequence) {}

    /**
     * Shares of each cause in the change of one result, the remainder, and the total.
     *
     * @throws InputFault where the result did not change, or nothing is attributed
     */
    public static ResultTable attribution(SectionChange section, SectionQuantity quantity, UnitSystem units) {
        Attribution a = section.attribution(quantity)
                .orElseThrow(() -> new InputFault(
                        quantity.title() + " of " + RerunWords.name(section),
                        "has no attributed change",
                        "choose one of "
                                + section.attributions().stream()
                                        .map(x -> x.quantity().name())
                                        .toList()));
        List<Line> lines = new ArrayList<>();
        List<Integer> parts = section.causesWithPart(quantity);
        for (int i : parts) {
            Attribution.Share share = a.shares().get(i);
            SectionChange.Effect effect = section.effects().get(i);
            lines.add(new Line(
                    share.cause(),
                    share.alone(),
                    share.inSequence(),
                    effect.alone().title(),
                    effect.inSequence().title()));
        }
        int others = a.shares().size() - parts.size();
        if (others > 0) {
            OptionalDouble none = OptionalDouble.of(0);
            lines.add(new Line(RerunWords.others(others), none, none, "", ""));
        }
        lines.add(new Line("remainder", a.remainderAlone(), a.remainderInSequence(), "", ""));
        lines.add(new Line(
                "total",
                a.total(),
                a.total(),
                "",
                section.after().map(r -> r.verdict().outcome().title()).orElse("")));
        return new Rows<>(lines, units)
                .text("Cause", Line::name)
                .optional("Alone", a.measure(), HALF_EVEN, Line::alone)
                .text("Verdict alone", Line::verdictAlone)
                .optional("In sequence", a.measure(), HALF_EVEN, Line::inSequence)
                .text("Verdict in sequence", Line::verdictInSequence)
                .table(
                        "Change of " + quantity.title() + ", " + RerunWords.name(section),
                        "Alone: the cause made on the earlier case by itself. In sequence: made after those above it."
                                + " Remainder: what the causes do only together. A missing number: the cause leads to an"
                                + " outcome that is none, such as no limit.");
    }

    private static String verdict(SectionChange section) {
        return changed(
                section, r -> r.verdict().outcome().title(), section.before().isPresent());
    }

    private static String governing(SectionChange section) {
        return changed(section, r -> r.verdict().governing(), true);
    }

    private static String pair(SectionChange section, SectionQuantity quantity, UnitSystem units) {
        return changed(section, r -> RerunWords.value(r.value(quantity), units), true);
    }

    /** Both words where they differ, else the one; what only one run has says so in the column of the verdict. */
    private static String changed(SectionChange section, Function<SectionResult, String> words, boolean known) {
        String before = section.before().map(words).orElse(known ? "" : "no such section");
        String after = section.after().map(words).orElse("no such section");
        return before.equals(after) ? after : before.isEmpty() ? after : before + ARROW + after;
    }

    private static String cell(java.util.Optional<String> text) {
        return text.orElse(Rows.NONE);
    }
}
