package staunch.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
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
import staunch.envelope.WellEnvelope;
import staunch.ingest.CaseInput;
import staunch.report.WholeFile;
import staunch.table.ResultTable;
import staunch.table.Tables;
import staunch.units.Fault;
import staunch.units.UnitSystem;

/** {@code staunch compare}: casing designs of a case side by side. */
@Command(
        name = "compare",
        description = "Compute casing designs of a case and show them side by side, section by section.",
        mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
    private static final String STANDARD_OUTPUT = "-";

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

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Write the comparison as JSON, in SI, too; - writes it to standard output in place of the"
                    + " tables.")
    private String file;

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
        recordOption.write(input.record(Version.LIBRARY, envelopes));
        write(wellCase, comparison);
        if (!STANDARD_OUTPUT.equals(file)) {
            print(wellCase, comparison, shown);
        }
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

    private void write(WellCase wellCase, Comparison comparison) throws IOException {
        if (file == null) {
            return;
        }
        ByteArrayOutputStream json = new ByteArrayOutputStream();
        MachineComparison.of(wellCase, comparison).write(json);
        if (file.equals(STANDARD_OUTPUT)) {
            json.writeTo(main.terminal().bytes());
            main.terminal().bytes().flush();
        } else {
            WholeFile.write(Path.of(file), json::writeTo);
        }
    }

    private void print(WellCase wellCase, Comparison comparison, UnitSystem shown) {
        PrintWriter out = main.terminal().out();
        out.println(main.terminal().styled("bold", wellCase.header().well()) + ": "
                + wellCase.header().title());
        wellCase.header().notice().ifPresent(out::println);
        out.println();
        print(Tables.comparisonSideBySide(comparison, shown));
        for (SectionComparison section : comparison.sections()) {
            for (DesignPair pair : section.pairs()) {
                out.println(section.section() + ": " + pair.statement());
            }
        }
        comparison.totals().forEach(pair -> out.println("whole well: " + pair.statement()));
        out.println(Tables.dominance(comparison, shown).caption());
        out.println();
        print(Tables.comparedMaasp(comparison, shown));
        print(Tables.steel(comparison, shown));
    }

    private void print(ResultTable table) {
        PrintWriter out = main.terminal().out();
        out.println(table.name() + ". " + table.caption());
        out.println(table.text());
    }
}
