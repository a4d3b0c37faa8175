package staunch.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import staunch.design.CasingDesign;
import staunch.design.MudRule;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.WellEnvelope;
import staunch.report.WholeFile;
import staunch.table.CaseTables;
import staunch.table.ResultTable;
import staunch.table.TableExport;
import staunch.units.UnitSystem;

/** {@code staunch export}: every table as a workbook or as CSV. */
@Command(
        name = "export",
        description = {
            "Compute every section, the designs side by side, the shoe depths and the sensitivities, and write every table"
                    + " as a workbook (.xlsx), as CSV files, or as both."
        },
        mixinStandardHelpOptions = true)
final class ExportCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Mixin
    private VerdictOption verdict;

    @Mixin
    private UnitsOption units;

    @Option(
            names = "--design",
            paramLabel = "NAME",
            description = "Casing design to export; may be repeated. Default: all of the case.")
    private List<String> designs = List.of();

    @Option(names = "--xlsx", paramLabel = "FILE", description = "Workbook to write, replaced as a whole.")
    private Path workbook;

    @Option(names = "--csv", paramLabel = "FOLDER", description = "Folder to write one CSV file for each table into.")
    private Path folder;

    @Override
    public Integer call() throws IOException {
        if (workbook == null && folder == null) {
            throw new CommandFailure(ExitCode.USAGE, "staunch: export needs --xlsx, --csv, or both");
        }
        WellCase wellCase = argument.read();
        UnitSystem shown = units.or(wellCase.units());
        List<String> names = designs.isEmpty()
                ? wellCase.designs().stream().map(CasingDesign::name).toList()
                : designs;
        List<Study> studies =
                names.stream().map(name -> argument.study(wellCase, name)).toList();
        List<WellEnvelope> envelopes = new ArrayList<>();
        for (Study study : studies) {
            envelopes.add(argument.evaluate(study, shown, main.terminal()));
        }
        List<CaseTables.Evaluated> evaluated = new ArrayList<>();
        for (int i = 0; i < studies.size(); i++) {
            Study study = studies.get(i);
            evaluated.add(new CaseTables.Evaluated(
                    envelopes.get(i),
                    argument.operations(study, shown),
                    Optional.of(argument.shoes(study, MudRule.AS_PLANNED, shown, main.terminal())),
                    argument.sensitivities(study, argument.shutIn(study), shown, main.terminal())));
        }
        List<CaseTables.Entry> tables = CaseTables.of(wellCase, evaluated, shown);
        if (workbook != null) {
            WholeFile.write(workbook, out -> TableExport.workbook(wellCase.header(), shown.name(), tables, out));
            main.terminal().out().println("Workbook: " + workbook + ", " + tables.size() + " tables");
        }
        if (folder != null) {
            List<String> files = TableExport.fileNames(tables);
            for (int i = 0; i < files.size(); i++) {
                ResultTable table = tables.get(i).table();
                WholeFile.write(folder.resolve(files.get(i)), out -> TableExport.csv(table, out));
            }
            main.terminal().out().println("CSV: " + folder + ", " + tables.size() + " tables");
        }
        return verdict.exitCode(envelopes);
    }
}
