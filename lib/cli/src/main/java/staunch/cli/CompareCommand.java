package staunch.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import staunch.design.CasingDesign;
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
            split = ",",
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
        List<String> names = designs.isEmpty()
                ? wellCase.designs().stream().map(CasingDesign::name).toList()
                : designs.stream().map(String::strip).toList();
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
    private static void check(WellCase wellCase, List<String> names) {
        try {
            Study.of(wellCase).each(names);
        } catch (Fault fault) {
            throw new CommandFailure(ExitCode.USAGE, "staunch: --designs: " + fault.getMessage());
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
        for (SectionComparison section : comparison.sections()) {
            for (DesignPair pair : section.pairs()) {
                listing.line(section.section() + ": " + pair.statement());
            }
        }
        comparison.totals().forEach(pair -> listing.line("whole well: " + pair.statement()));
        listing.line(Tables.dominance(comparison, shown).caption());
        listing.line("");
        listing.table(Tables.comparedMaasp(comparison, shown));
        listing.table(Tables.steel(comparison, shown));
    }
}
