package staunch.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import staunch.design.CasingDesign;
import staunch.design.ComparedValue;
import staunch.design.Comparison;
import staunch.design.DesignPair;
import staunch.design.SectionComparison;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.SectionOperations;
import staunch.envelope.WellEnvelope;
import staunch.ingest.CaseInput;
import staunch.table.CaseTables;
import staunch.table.TableBook;
import staunch.table.Tables;
import staunch.units.Fault;
import staunch.units.UnitSystem;

/** {@code staunch compare}: casing designs of a case side by side. */
@Command(
        name = "compare",
        description = "Compute casing designs of a case and show them side by side, section by section.",
        mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Mixin
    private VerdictOption verdict;

    @Mixin
    private UnitsOption units;

    @Option(
            names = "--designs",
            paramLabel = "NAME",
            description =
                    "Casing designs to compare, two or more, with commas between them; the option may be repeated."
                            + " Default: all of the case.")
    private List<String> designs = List.of();

    @Mixin
    private JsonOption json;

    @Mixin
    private TablesOption tables;

    @Mixin
    private RecordOption recordOption;

    @Override
    public Integer call() throws IOException {
        CaseInput input = argument.input();
        WellCase wellCase = input.wellCase();
        UnitSystem shown = units.or(wellCase.units());
        List<String> known = wellCase.designs().stream().map(CasingDesign::name).toList();
        List<String> names = designs.isEmpty() ? known : DesignNames.of(designs, known);
        check(wellCase, names);
        List<WellEnvelope> envelopes = evaluate(wellCase, names, shown);
        Comparison comparison = Comparison.of(wellCase, envelopes);
        if (recordOption.isGiven()) {
            recordOption.write(input.record(Version.LIBRARY, envelopes, operations(wellCase, names, shown)));
        }
        json.write(MachineComparison.of(wellCase, comparison)::write, main.terminal());
        Listing listing = new Listing(main.terminal(), json.text(main.terminal()));
        print(wellCase, comparison, shown, listing);
        tables.write(
                () -> TableBook.of(wellCase, shown, Optional.empty(), CaseTables.comparison(comparison, shown)),
                listing.out());
        return verdict.exitCode(envelopes);
    }

    /** What is asked for is checked before the long work begins. */
    private void check(WellCase wellCase, List<String> names) {
        try {
            names.forEach(wellCase::design);
        } catch (Fault fault) {
            throw new CommandFailure(ExitCode.USAGE, "staunch: --designs: " + fault.getMessage());
        }
        try {
            Study.of(wellCase).each(names);
        } catch (Fault fault) {
            String all = String.join(
                    ", ",
                    wellCase.designs().stream().map(d -> "\"" + d.name() + "\"").toList());
            throw new CommandFailure(
                    ExitCode.USAGE,
                    designs.isEmpty()
                            ? "staunch: " + argument.path() + " has one casing design, " + all
                                    + ": there is nothing to compare; add a design to the case, or review this one"
                            : "staunch: --designs: " + fault.getMessage() + "; the case has " + all);
        }
    }

    private List<WellEnvelope> evaluate(WellCase wellCase, List<String> names, UnitSystem shown) {
        try (ProgressLine progress = new ProgressLine("designs", main.terminal())) {
            return Study.of(wellCase).evaluate(names, progress);
        } catch (Fault fault) {
            throw new CommandFailure(ExitCode.CASE_FAULTS, argument.path() + ": " + fault.text(shown));
        }
    }

    private List<List<SectionOperations>> operations(WellCase wellCase, List<String> names, UnitSystem shown) {
        return names.stream()
                .map(name -> argument.operations(Study.of(wellCase).withDesign(name), shown))
                .toList();
    }

    private static void print(WellCase wellCase, Comparison comparison, UnitSystem shown, Listing listing) {
        listing.title(wellCase, wellCase.header().title());
        listing.table(Tables.comparisonSideBySide(comparison, shown));
        listing.line(
                "Which design dominates. " + Tables.dominance(comparison, shown).caption());
        for (SectionComparison section : comparison.sections()) {
            section.pairs().forEach(pair -> listing.point(section.section() + ": " + told(pair)));
        }
        comparison.totals().forEach(pair -> listing.point("whole well: " + told(pair)));
        listing.line("");
        listing.table(Tables.comparedMaasp(comparison, shown));
        listing.table(Tables.steel(comparison, shown));
        listing.line("A planning aid: to be verified by a competent person.");
    }

    /** The relation, and in what one alone is better where neither dominates. */
    private static String told(DesignPair pair) {
        return pair.statement()
                + (pair.relation() == DesignPair.Relation.EACH_BETTER_IN_SOMETHING
                        ? better(pair.first(), pair.firstBetter(), pair.secondBetter())
                                + better(pair.second(), pair.secondBetter(), pair.firstBetter())
                        : "");
    }

    private static String better(String design, List<ComparedValue> own, List<ComparedValue> other) {
        String alone = own.stream()
                .filter(v -> !other.contains(v))
                .map(ComparedValue::title)
                .collect(Collectors.joining(", "));
        return alone.isEmpty() ? "" : "; " + design + " alone in " + alone;
    }
}
