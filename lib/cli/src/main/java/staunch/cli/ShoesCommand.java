package staunch.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import staunch.design.MudRule;
import staunch.design.ShoeSearch;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.report.WholeFile;
import staunch.table.ResultTable;
import staunch.table.ShoeTables;
import staunch.units.UnitSystem;

/** {@code staunch shoes}: where the casing shoes of a design may stand. */
@Command(
        name = "shoes",
        description =
                "Find the depths at which each casing shoe may stand, what binds at each end, and shoe depths for all"
                        + " strings together with the fewest strings.",
        mixinStandardHelpOptions = true)
final class ShoesCommand implements Callable<Integer> {
    private static final String STANDARD_OUTPUT = "-";
    private static final String CAUTION =
            "A planning aid: every depth is to be verified by a competent person, with what the search does not know.";

    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Mixin
    private UnitsOption units;

    @Option(
            names = "--design",
            paramLabel = "NAME",
            description = "Casing design whose shoes are searched. Default: the base design.")
    private String design;

    @Option(
            names = "--mud",
            paramLabel = "RULE",
            description =
                    "Mud of each section: as_planned, or lightest for the lightest one that holds pore pressure plus"
                            + " trip margin. Default: as_planned.")
    private MudRule mud = MudRule.AS_PLANNED;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description =
                    "Write the search as JSON, in SI, too; - writes it to standard output in place of the tables.")
    private String file;

    @Override
    public Integer call() throws IOException {
        WellCase wellCase = argument.read();
        UnitSystem shown = units.or(wellCase.units());
        Study study = argument.study(
                wellCase, design == null ? wellCase.designs().get(0).name() : design);
        ShoeSearch search = argument.shoes(study, mud, shown, main.terminal());
        if (file != null) {
            write(wellCase, search);
        }
        if (!STANDARD_OUTPUT.equals(file)) {
            print(wellCase, search, shown);
        }
        return ExitCode.OK;
    }

    private void write(WellCase wellCase, ShoeSearch search) throws IOException {
        ByteArrayOutputStream json = new ByteArrayOutputStream();
        MachineShoes.of(wellCase, search).write(json);
        if (file.equals(STANDARD_OUTPUT)) {
            json.writeTo(main.terminal().bytes());
            main.terminal().bytes().flush();
        } else {
            WholeFile.write(Path.of(file), json::writeTo);
        }
    }

    private void print(WellCase wellCase, ShoeSearch search, UnitSystem shown) {
        PrintWriter out = main.terminal().out();
        out.println(main.terminal().styled("bold", wellCase.header().well()) + ": casing design " + search.design());
        wellCase.header().notice().ifPresent(out::println);
        out.println();
        print(ShoeTables.shallowest(search, shown));
        print(ShoeTables.stretches(search, shown));
        print(ShoeTables.joint(search, shown));
        search.joint().forEach(j -> out.println(j.direction().title() + ": " + j.statement() + "."));
        out.println(CAUTION);
    }

    private void print(ResultTable table) {
        PrintWriter out = main.terminal().out();
        out.println(table.name() + ". " + table.caption());
        out.println(table.text());
    }
}
