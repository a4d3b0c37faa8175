package staunch.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import staunch.design.Attribution;
import staunch.design.Cause;
import staunch.design.ChangedField;
import staunch.design.InputChange;
import staunch.design.Rerun;
import staunch.design.ResultValue;
import staunch.design.SectionChange;
import staunch.design.SectionQuantity;
import staunch.design.WellCase;
import staunch.envelope.Verdict;
import staunch.units.EquivalentDensity;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.UnitFault;
import staunch.units.UnitSystem;

/** What changed between two runs in words, with numbers in chosen units. */
public final class RerunWords {
    private static final String ARROW = " → ";
    private static final int MOST_FIELDS = 4;
    private static final String AT_MOST = "at most, ";
    private static final int MOST_TOLD = 2;
    /** Seconds from which a time is told in hours. */
    private static final double LONG = 7200;

    private static final List<SectionQuantity> TELLING = List.of(
            SectionQuantity.DRILLED_TOLERANCE,
            SectionQuantity.DRILLED_MARGIN,
            SectionQuantity.SWABBED_TOLERANCE,
            SectionQuantity.SWABBED_MARGIN,
            SectionQuantity.FORMATION_MAASP,
            SectionQuantity.DRILLED_DRILLERS_MARGIN,
            SectionQuantity.DRILLED_DRILLERS_CHOKE,
            SectionQuantity.DRILLED_SHORTEST_WAIT,
            SectionQuantity.DRILLED_KILL_MUD);

    private RerunWords() {}

    /** The answer in a sentence or two: which verdicts flip, or that none does, or that nothing changed. */
    public static String answer(Rerun rerun) {
        if (rerun.nothingChanged()) {
            return rerun.notCompared().isEmpty()
                    ? "Nothing changed: the same input, methods and library, and the same results."
                    : "Nothing changed in what both runs have: the same input, methods and library, and the same results.";
        }
        List<SectionChange> flips = rerun.flips();
        if (!flips.isEmpty()) {
            return (flips.size() == 1 ? "One verdict flips: " : flips.size() + " verdicts flip: ")
                    + flips.stream().map(RerunWords::flip).collect(Collectors.joining("; "))
                    + "."
                    + ofOneRun(rerun);
        }
        long changed = rerun.sections().stream()
                .filter(s -> s.before().isPresent() && s.after().isPresent() && s.changed())
                .count();
        if (changed == 0) {
            return "No result changed, although there are changes of the input: " + names(rerun.causes()) + "."
                    + ofOneRun(rerun);
        }
        return "No verdict flips; results of " + sections(changed) + " changed." + ofOneRun(rerun);
    }

    /** Sections that are gone or new, by name: one that is renamed is both. */
    private static String ofOneRun(Rerun rerun) {
        return ofOneRun(rerun, "earlier", s -> s.after().isEmpty())
                + ofOneRun(rerun, "later", s -> s.before().isEmpty());
    }

    private static String ofOneRun(Rerun rerun, String run, Predicate<SectionChange> which) {
        String names =
                rerun.sections().stream().filter(which).map(RerunWords::name).collect(Collectors.joining(", "));
        return names.isEmpty() ? "" : " Only the " + run + " run has " + names + ".";
    }

    private static String sections(long count) {
        return count == 1 ? "one section" : count + " sections";
    }

    /** Which verdict becomes which. */
    public static String flip(SectionChange section) {
        return name(section) + ", " + outcome(section.before().map(r -> r.verdict())) + ARROW
                + outcome(section.after().map(r -> r.verdict()));
    }

    /** Section and design. */
    public static String name(SectionChange section) {
        return section.section() + " (" + section.design() + ")";
    }

    /** Which causes turn the verdict by themselves, or that only several do together; empty where it does not flip. */
    public static String turnedBy(SectionChange section) {
        if (!section.flips() || section.effects().isEmpty()) {
            return "";
        }
        Verdict.Outcome now = section.after().orElseThrow().verdict().outcome();
        List<String> alone = section.effects().stream()
                .filter(e -> e.alone() == now)
                .map(SectionChange.Effect::cause)
                .toList();
        if (alone.size() == 1) {
            return "Turned by " + alone.get(0) + " alone.";
        }
        if (alone.size() > 1) {
            return "Turned by each of these alone: " + String.join("; ", alone) + ".";
        }
        return "Turned by no cause alone; made one after the other, by " + lastTurn(section, now) + ".";
    }

    /** The verdict of the later run in its own words with the limit that governs; empty where there is none. */
    public static String verdictNow(SectionChange section) {
        return section.after()
                .map(r -> r.verdict())
                .map(v -> {
                    String governing = v.governing().isEmpty() ? "" : "; governed by " + v.governing();
                    return "Now " + v.statement() + governing + ".";
                })
                .orElse("");
    }

    private static String lastTurn(SectionChange section, Verdict.Outcome now) {
        String turn = section.effects().get(0).cause();
        Verdict.Outcome reached = section.before().orElseThrow().verdict().outcome();
        for (SectionChange.Effect effect : section.effects()) {
            if (effect.inSequence() == now && reached != now) {
                turn = effect.cause();
            }
            reached = effect.inSequence();
        }
        return turn;
    }

    static String others(int count) {
        return count == 1 ? "1 other cause, no part" : count + " other causes, no part";
    }

    private static String names(List<Cause> causes) {
        return causes.stream().map(Cause::name).collect(Collectors.joining("; "));
    }

    static String outcome(Optional<Verdict> verdict) {
        return verdict.map(v -> v.outcome().title()).orElse("no such section");
    }

    /** A recorded value: its number, rounded to the safe side, or what there is in its place. */
    public static String value(ResultValue value, UnitSystem units) {
        if (value.value().isEmpty()) {
            int colon = value.outcome().indexOf(':');
            return colon < 0 ? value.outcome() : value.outcome().substring(0, colon);
        }
        double number = value.value().getAsDouble();
        String text = value.measure() == Measure.TIME
                ? units.duration(number)
                : whole(value.measure(), units)
                        .text(number, value.measure(), value.quantity().rounding());
        return (value.outcome().startsWith(AT_MOST) ? "at most " : "") + signed(text);
    }

    /** How much a result of a section changed, with its sign; empty where that is no number. */
    public static String change(SectionChange section, SectionQuantity quantity, UnitSystem units) {
        SectionChange.Difference difference = section.difference(quantity);
        boolean hours = difference.measure() == Measure.TIME
                && Stream.of(section.before(), section.after())
                        .flatMap(Optional::stream)
                        .mapToDouble(r -> r.value(quantity).value().orElse(0))
                        .anyMatch(t -> t >= LONG);
        return change(difference.value(), difference.measure(), hours ? units.inHours() : units);
    }

    /** A change with its sign; empty where it is no number. */
    public static String change(OptionalDouble change, Measure measure, UnitSystem units) {
        if (change.isEmpty()) {
            return "";
        }
        String text = whole(measure, units).text(change.getAsDouble(), measure);
        return change.getAsDouble() > 0 ? "+" + text : signed(text);
    }

    /** A number that measures nothing is a count of strokes. */
    private static UnitSystem whole(Measure measure, UnitSystem units) {
        return measure == Measure.NUMBER ? units.with(measure, "1", 0) : units;
    }

    /** Cause with the largest part in sequence; empty where it cannot be told. */
    static String mainCause(SectionChange section, SectionQuantity quantity) {
        List<Attribution.Share> shares =
                section.attribution(quantity).map(Attribution::shares).orElse(List.of());
        if (shares.stream().anyMatch(s -> s.inSequence().isEmpty())) {
            return "";
        }
        return shares.stream()
                .filter(s -> s.inSequence().getAsDouble() != 0)
                .max(Comparator.comparingDouble(s -> Math.abs(s.inSequence().getAsDouble())))
                .map(Attribution.Share::cause)
                .orElse("");
    }

    /** Results of a section that differ by as much as is shown, in their order. */
    public static List<SectionQuantity> visible(SectionChange section, UnitSystem units) {
        return section.differing().stream()
                .filter(q -> !shown(section.before().orElseThrow().value(q), units)
                        .equals(shown(section.after().orElseThrow().value(q), units)))
                .toList();
    }

    private static List<String> shown(ResultValue value, UnitSystem units) {
        return List.of(value(value, units), value.outcome());
    }

    /** Results whose change is worth to be shared out: at most two, those of the envelope before what follows an influx. */
    public static List<SectionQuantity> told(SectionChange section, UnitSystem units) {
        List<SectionQuantity> visible = visible(section, units);
        List<SectionQuantity> order = new ArrayList<>(TELLING);
        order.retainAll(visible);
        visible.stream().filter(q -> !order.contains(q)).forEach(order::add);
        return order.stream()
                .filter(q -> section.attribution(q)
                        .filter(a -> a.total().isPresent() && a.total().getAsDouble() != 0)
                        .isPresent())
                .limit(MOST_TOLD)
                .toList();
    }

    /** With the sign that tables print. */
    private static String signed(String number) {
        return number.startsWith("-") ? "−" + number.substring(1) : number;
    }

    /** What is different about a cause: its values before and after. */
    public static String details(Cause cause, UnitSystem units) {
        if (cause.changes().size() == 1) {
            return details(cause.changes().get(0), units);
        }
        return cause.changes().stream()
                .map(c -> c.name().split(" of ")[0] + ": " + details(c, units))
                .collect(Collectors.joining("; "));
    }

    private static String details(InputChange change, UnitSystem units) {
        List<ChangedField> fields = change.fields();
        if (!fields.isEmpty() && fields.stream().allMatch(f -> f.before().isEmpty())) {
            return "new: " + values(fields, ChangedField::after, units);
        }
        if (!fields.isEmpty() && fields.stream().allMatch(f -> f.after().isEmpty())) {
            return "gone: " + values(fields, ChangedField::before, units);
        }
        if (fields.size() == 1
                && fields.get(0).place().isEmpty()
                && change.name().contains(fields.get(0).name())) {
            return values(fields.get(0), units);
        }
        String some =
                fields.stream().limit(MOST_FIELDS).map(f -> field(f, units)).collect(Collectors.joining("; "));
        return fields.size() > MOST_FIELDS ? some + "; and " + (fields.size() - MOST_FIELDS) + " more values" : some;
    }

    private static String values(List<ChangedField> fields, Function<ChangedField, String> which, UnitSystem units) {
        List<String> places =
                fields.stream().map(ChangedField::place).distinct().toList();
        if (places.size() > MOST_FIELDS && !places.contains("")) {
            return "readings at " + places.size() + " depths from " + depth(places.get(0), units) + " to "
                    + depth(places.get(places.size() - 1), units);
        }
        String some = fields.stream()
                .limit(MOST_FIELDS)
                .map(f -> place(f, units) + " " + text(which.apply(f), f.measure(), units))
                .collect(Collectors.joining(", "));
        String all =
                fields.size() > MOST_FIELDS ? some + " and " + (fields.size() - MOST_FIELDS) + " more values" : some;
        return all + equivalent(fields, which, units);
    }

    /** A pressure at a depth as the trade also writes it. */
    private static String equivalent(
            List<ChangedField> fields, Function<ChangedField, String> which, UnitSystem units) {
        OptionalDouble depth = si(fields, "tvd", Measure.DEPTH, which);
        OptionalDouble pressure = si(fields, "pressure", Measure.PRESSURE_ABSOLUTE, which);
        return depth.isPresent() && pressure.isPresent() && depth.getAsDouble() >= 1
                ? " ("
                        + units.text(
                                EquivalentDensity.of(pressure.getAsDouble(), depth.getAsDouble()),
                                Measure.EQUIVALENT_DENSITY)
                        + " EMW from the datum of its well)"
                : "";
    }

    private static OptionalDouble si(
            List<ChangedField> fields, String name, Measure measure, Function<ChangedField, String> which) {
        return fields.stream()
                .filter(f -> f.name().equals(name)
                        && f.measure().filter(measure::equals).isPresent())
                .mapToDouble(f -> Quantity.parse(which.apply(f)).si(measure))
                .findFirst();
    }

    /** One value before and after. */
    public static String field(ChangedField field, UnitSystem units) {
        return place(field, units) + " " + values(field, units);
    }

    private static String values(ChangedField field, UnitSystem units) {
        return text(field.before(), field.measure(), units) + ARROW + text(field.after(), field.measure(), units);
    }

    /** Depth or name of the row that a value stands in; empty where it stands in none. */
    static String where(ChangedField field, UnitSystem units) {
        return field.place().isEmpty() ? "" : depth(field.place(), units);
    }

    private static String place(ChangedField field, UnitSystem units) {
        return field.place().isEmpty() ? field.name() : field.name() + " at " + depth(field.place(), units);
    }

    /** Rows are known by a depth, by the volume pumped or by a time; other places are names. */
    private static String depth(String place, UnitSystem units) {
        for (Measure measure : List.of(Measure.DEPTH, Measure.VOLUME, Measure.TIME)) {
            if (place.matches("[-+.0-9eE]+ " + measure.siUnit())) {
                return text(place, Optional.of(measure), units);
            }
        }
        return place;
    }

    static String text(String recorded, Optional<Measure> measure, UnitSystem units) {
        if (recorded.isEmpty()) {
            return "not given";
        }
        if (measure.isEmpty()) {
            return recorded.replace('_', ' ');
        }
        try {
            return units.precise(Quantity.parse(recorded).si(measure.get()), measure.get());
        } catch (UnitFault noQuantity) {
            // The name of a row may end like a depth.
            return recorded;
        }
    }

    /** What a person has to judge in the later case: its warnings, and evidence that does not agree. */
    public static List<String> toJudge(WellCase later, UnitSystem units) {
        Stream<String> conflicts = later.evidence().stream()
                .flatMap(e -> e.conflicts().stream())
                .map(c -> c.first() + " against " + c.second() + ": " + c.text(units) + ".");
        return Stream.concat(later.warnings().stream().map(w -> w.subject() + ": " + w.text(units)), conflicts)
                .toList();
    }
}
