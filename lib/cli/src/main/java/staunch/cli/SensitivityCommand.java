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
import staunch.design.Sensitivity;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.report.WholeFile;
import staunch.table.ResultTable;
import staunch.table.SensitivityTables;
import staunch.units.Fault;
import staunch.units.UnitSystem;

/** {@code staunch sensitivity}: what the verdict of each section hangs on. */
@Command(
        name = "sensitivity",
        description =
                "Vary each input of a hole section by itself: what its range changes, and at which value the verdict"
                        + " flips.",
        mixinStandardHelpOptions = true)
final class SensitivityCommand implements Callable<Integer> {
    private static final String STANDARD_OUTPUT = "-";
    private static final String CAUTION =
            "A planning aid: one input varied at a time, to be verified by a competent person.";

    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Mixin
    private UnitsOption units;

    @Option(names = "--design", paramLabel = "NAME", description = "Casing design. Default: the base design.")
    private String design;

    @Option(
            names = "--section",
            paramLabel = "NAME",
            description = "Hole section; may be repeated. Default: every section that is shut in.")
    private List<String> sections = List.of();

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description =
                    "Write the sensitivities as JSON, in SI, too; - writes it to standard output in place of the tables.")
    private String file;

    @Override
    public Integer call() throws IOException {
        WellCase wellCase = argument.read();
        UnitSystem shown = units.or(wellCase.units());
        Study study = argument.study(
                wellCase, design == null ? wellCase.designs().get(0).name() : design);
        List<Sensitivity> found = varied(study, shown);
        if (file != null) {
            write(wellCase, found);
        }
        if (!STANDARD_OUTPUT.equals(file)) {
            print(wellCase, found, shown);
        }
        return ExitCode.OK;
    }

    private List<Sensitivity> varied(Study study, UnitSystem shown) {
        CasingDesign chosen = study.wellCase().design(study.design());
        List<String> names = sections.isEmpty() ? argument.shutIn(study) : sections;
        try {
            names.forEach(chosen::section);
        } catch (Fault fault) {
            throw new CommandFailure(ExitCode.USAGE, "staunch: --section: " + fault.getMessage());
        }
        return argument.sensitivities(study, names, shown, main.terminal());
    }

    private void write(WellCase wellCase, List<Sensitivity> found) throws IOException {
        ByteArrayOutputStream json = new ByteArrayOutputStream();
        MachineSensitivity.of(wellCase, found).write(json);
        if (file.equals(STANDARD_OUTPUT)) {
            json.writeTo(main.terminal().bytes());
            main.terminal().bytes().flush();
        } else {
            WholeFile.write(Path.of(file), json::writeTo);
        }
    }

    private void print(WellCase wellCase, List<Sensitivity> found, UnitSystem shown) {
        PrintWriter out = main.terminal().out();
        out.println(main.terminal().styled("bold", wellCase.header().well()) + ": sensitivity");
        wellCase.header().notice().ifPresent(out::println);
        out.println();
        found.forEach(s -> print(SensitivityTables.swings(s, shown)));
        out.println(CAUTION);
    }

    private void print(ResultTable table) {
        PrintWriter out = main.terminal().out();
        out.println(table.name() + ". " + table.caption());
        out.println(table.text());
    }
}
