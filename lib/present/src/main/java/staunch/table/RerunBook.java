package staunch.table;

import static java.math.RoundingMode.HALF_EVEN;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import staunch.design.Attribution;
import staunch.design.Cause;
import staunch.design.ChangedField;
import staunch.design.InputChange;
import staunch.design.InputFile;
import staunch.design.Rerun;
import staunch.design.RunRecord;
import staunch.design.SectionChange;
import staunch.design.SectionQuantity;
import staunch.design.SectionResult;
import staunch.design.WellCase;
import staunch.earth.EquivalentZero;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** What changed between two runs as tables of numbers, for use outside the library. */
public final class RerunBook {
    private final Rerun rerun;
    private final UnitSystem units;

    private RerunBook(Rerun rerun, UnitSystem units) {
        this.rerun = rerun;
        this.units = units;
    }

    /**
     * Flipped verdicts first, then every changed value and its causes, then the changes of the input with where they come
     * from.
     *
     * @param wellCase the later case
     * @param before record of the earlier run
     * @param rerun what changed since
     * @param units to show
     */
    public static List<ResultTable> of(WellCase wellCase, RunRecord before, Rerun rerun, UnitSystem units) {
        RerunBook book = new RerunBook(rerun, units);
        List<ResultTable> tables = new ArrayList<>();
        tables.add(book.flips());
        tables.add(book.open());
        tables.add(RerunTables.sections(rerun, units));
        measures(SectionQuantity::measure).forEach(m -> tables.add(book.values(m)));
        measures(SectionQuantity::measureOfChange).forEach(m -> tables.add(book.attributions(m)));
        tables.add(book.inputs(sources(wellCase)));
        tables.add(files(before.files(), wellCase.files(), units));
        EquivalentZero zero = EquivalentZero.of(wellCase.options().equivalentDensityFrom(), wellCase.datum());
        wellCase.evidence().ifPresent(e -> tables.addAll(EvidenceTables.all(e, zero, units)));
        tables.add(EvidenceTables.register(wellCase.register(), units));
        return tables.stream().filter(t -> t.rowCount() > 0).toList();
    }

    private static Set<Measure> measures(Function<SectionQuantity, Measure> of) {
        return Arrays.stream(SectionQuantity.values()).map(of).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** What the whole comes to, where no verdict flips that too. */
    private ResultTable flips() {
        record Row(String section, String design, String before, String after, String because, String now) {}
        List<Row> rows = new ArrayList<>();
        for (SectionChange s : rerun.flips()) {
            rows.add(new Row(
                    s.section(),
                    s.design(),
                    verdict(s.before()),
                    verdict(s.after()),
                    RerunWords.turnedBy(s),
                    RerunWords.verdictNow(s)));
        }
        if (rows.isEmpty()) {
            rows.add(new Row("none", "", "", "", rerun.notAttributed(), RerunWords.answer(rerun)));
        }
        return new Rows<>(rows, units)
                .text("Section", Row::section)
                .text("Design", Row::design)
                .text("Verdict before", Row::before)
                .text("Verdict after", Row::after)
                .text("Because", Row::because)
                .text("Now", Row::now)
                .table("Flipped verdicts", RerunWords.answer(rerun));
    }

    /** What the two runs leave open; no row where that is nothing. */
    private ResultTable open() {
        record Row(String question, String why) {}
        List<Row> rows = Stream.of(
                        new Row("causes of the changes", rerun.notAttributed()),
                        new Row("not compared", rerun.notCompared()))
                .filter(r -> !r.why().isEmpty())
                .toList();
        return new Rows<>(rows, units)
                .text("Open", Row::question)
                .text("Because", Row::why)
                .table("Left open", "What could not be told, or what one of the runs does not have.");
    }

    private record Changed(SectionChange section, SectionQuantity quantity) {
        OptionalDouble number(Optional<SectionResult> result) {
            return result.isPresent() ? result.get().value(quantity).value() : OptionalDouble.empty();
        }

        String outcome(Optional<SectionResult> result) {
            return result.map(r -> r.value(quantity).outcome()).orElse("no such section");
        }

        boolean differs() {
            return section.before().isPresent() == section.after().isPresent()
                    ? section.differing().contains(quantity)
                    : Stream.of(section.before(), section.after())
                            .flatMap(Optional::stream)
                            .anyMatch(r -> r.has(quantity));
        }
    }

    /** Changed results of one measure: numbers before and after, and the verdicts of their sections. */
    private ResultTable values(Measure measure) {
        List<Changed> rows =
                changed(q -> q.measure() == measure).filter(Changed::differs).toList();
        Measure change = rows.isEmpty() ? measure : rows.get(0).quantity().measureOfChange();
        return new Rows<>(rows, units)
                .text("Section", c -> c.section().section())
                .text("Design", c -> c.section().design())
                .text("Result", c -> c.quantity().title())
                .optional(
                        "Before", measure, HALF_EVEN, c -> c.number(c.section().before()))
                .optional("After", measure, HALF_EVEN, c -> c.number(c.section().after()))
                .optional(
                        "Change",
                        change,
                        HALF_EVEN,
                        c -> c.section().difference(c.quantity()).value())
                .text("Where, before", c -> c.outcome(c.section().before()))
                .text("Where, after", c -> c.outcome(c.section().after()))
                .text("Verdict before", c -> verdict(c.section().before()))
                .text("Verdict after", c -> verdict(c.section().after()))
                .table(
                        "Changed values, " + measure.title(),
                        "Every result that is different, to nearest. A number that is missing is none: the text beside it"
                                + " says what there is in its place.");
    }

    private Stream<Changed> changed(Predicate<SectionQuantity> which) {
        return rerun.sections().stream()
                .flatMap(s ->
                        Arrays.stream(SectionQuantity.values()).filter(which).map(q -> new Changed(s, q)));
    }

    private record Part(
            SectionChange section, SectionQuantity quantity, String cause, Amounts amounts, Words alone, Words last) {}

    private record Amounts(OptionalDouble alone, OptionalDouble inSequence) {}

    private record Words(String outcome, String verdict) {
        static final Words NONE = new Words("", "");
    }

    /** Changes of one measure shared out among their causes, with what remains. */
    private ResultTable attributions(Measure measure) {
        List<Part> parts = new ArrayList<>();
        changed(q -> q.measureOfChange() == measure)
                .forEach(c -> c.section().attribution(c.quantity()).ifPresent(a -> parts(parts, c, a)));
        return new Rows<>(parts, units)
                .text("Section", p -> p.section().section())
                .text("Design", p -> p.section().design())
                .text("Result", p -> p.quantity().title())
                .text("Cause", Part::cause)
                .optional("Alone", measure, HALF_EVEN, p -> p.amounts().alone())
                .optional("In sequence", measure, HALF_EVEN, p -> p.amounts().inSequence())
                .text("Result alone", p -> p.alone().outcome())
                .text("Result in sequence", p -> p.last().outcome())
                .text("Verdict alone", p -> p.alone().verdict())
                .text("Verdict in sequence", p -> p.last().verdict())
                .table(
                        "Causes of changes, " + measure.title(),
                        "Alone: the cause made on the earlier case by itself. In sequence: made after those above it."
                                + " Remainder: what the causes do only together. A missing number: the cause leads to an"
                                + " outcome that is none, such as no limit.");
    }

    private static void parts(List<Part> parts, Changed changed, Attribution attribution) {
        SectionChange section = changed.section();
        SectionQuantity quantity = changed.quantity();
        for (int i = 0; i < attribution.shares().size(); i++) {
            Attribution.Share share = attribution.shares().get(i);
            SectionChange.Effect effect = section.effects().get(i);
            parts.add(new Part(
                    section,
                    quantity,
                    share.cause(),
                    new Amounts(share.alone(), share.inSequence()),
                    new Words(share.outcomeAlone(), effect.alone().title()),
                    new Words(share.outcomeInSequence(), effect.inSequence().title())));
        }
        parts.add(new Part(
                section,
                quantity,
                "remainder",
                new Amounts(attribution.remainderAlone(), attribution.remainderInSequence()),
                Words.NONE,
                Words.NONE));
        parts.add(new Part(
                section,
                quantity,
                "total",
                new Amounts(attribution.total(), attribution.total()),
                Words.NONE,
                new Words(changed.outcome(section.after()), verdict(section.after()))));
    }

    /** Every value of the input that is different, with the document it comes from where the case names one. */
    private ResultTable inputs(Map<String, String> sources) {
        record Row(Cause cause, InputChange change, Optional<ChangedField> field) {}
        List<Row> rows = rerun.causes().stream()
                .flatMap(c -> c.changes().stream()
                        .flatMap(i -> i.fields().isEmpty()
                                ? Stream.of(new Row(c, i, Optional.empty()))
                                : i.fields().stream().map(f -> new Row(c, i, Optional.of(f)))))
                .toList();
        return new Rows<>(rows, units)
                .text("Cause", r -> r.cause().name())
                .text("Kind", r -> r.change().kind().title())
                .text("Changed", r -> r.change().name())
                .optionalText("Value", r -> r.field().map(ChangedField::name))
                .optionalText("At", r -> r.field().map(f -> RerunWords.where(f, units)))
                .optionalText("Before", r -> r.field().map(f -> RerunWords.text(f.before(), f.measure(), units)))
                .optionalText("After", r -> r.field().map(f -> RerunWords.text(f.after(), f.measure(), units)))
                .text(
                        "Source",
                        r -> sources.entrySet().stream()
                                .filter(s -> r.change().name().contains("\"" + s.getKey() + "\""))
                                .map(Map.Entry::getValue)
                                .findFirst()
                                .orElse(""))
                .text("Made together because", r -> r.cause().together())
                .table(
                        "Changed inputs",
                        "In the order in which they are made. Source: the document that the later case names for it."
                                + " Where every number of the later case stands is listed in the last table.");
    }

    /** Sources of what the later case has, by its name. */
    private static Map<String, String> sources(WellCase wellCase) {
        Map<String, String> sources = new LinkedHashMap<>();
        wellCase.earth().tests().forEach(t -> sources.put(t.name(), t.source().text()));
        wellCase.evidence().ifPresent(e -> {
            e.tests()
                    .forEach(t -> sources.put(
                            t.well() + ": " + t.test().name(), t.test().source().text()));
            e.points()
                    .forEach(p -> sources.put(
                            p.well() + ": " + p.point().name(),
                            p.point().source().text()));
            e.events()
                    .forEach(v -> sources.put(
                            v.well() + ": " + v.event().name(),
                            v.event().source().text()));
        });
        return sources;
    }

    private static ResultTable files(List<InputFile> before, List<InputFile> after, UnitSystem units) {
        record Row(String path, String before, String after) {
            String what() {
                return before.isEmpty() ? "new" : after.isEmpty() ? "gone" : before.equals(after) ? "same" : "changed";
            }
        }
        Map<String, String> then = hashes(before);
        Map<String, String> now = hashes(after);
        Set<String> paths = new LinkedHashSet<>(now.keySet());
        paths.addAll(then.keySet());
        List<Row> rows = paths.stream()
                .map(p -> new Row(p, then.getOrDefault(p, ""), now.getOrDefault(p, "")))
                .toList();
        return new Rows<>(rows, units)
                .text("File", Row::path)
                .text("What", Row::what)
                .text("SHA-256 before", Row::before)
                .text("SHA-256 after", Row::after)
                .table("Files of both runs", "A file that is the same has the same hash.");
    }

    private static Map<String, String> hashes(List<InputFile> files) {
        Map<String, String> hashes = new LinkedHashMap<>();
        files.forEach(f -> hashes.put(f.path(), f.sha256()));
        return hashes;
    }

    private static String verdict(Optional<SectionResult> result) {
        return RerunWords.outcome(result.map(SectionResult::verdict));
    }
}
