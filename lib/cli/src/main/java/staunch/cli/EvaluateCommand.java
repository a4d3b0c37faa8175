package staunch.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import staunch.design.CasingDesign;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.WellEnvelope;
import staunch.ingest.CaseInput;
import staunch.report.WholeFile;

/** {@code staunch evaluate}: every result as JSON. */
@Command(
        name = "evaluate",
        description = "Compute every section of every casing design and write all results as JSON, in SI.",
        mixinStandardHelpOptions = true)
final class EvaluateCommand implements Callable<Integer> {
    private static final String STANDARD_OUTPUT = "-";

    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Mixin
    private VerdictOption verdict;

    @Option(
            names = "--design",
            paramLabel = "NAME",
            description = "Casing design to evaluate; may be repeated. Default: all of the case.")
    private List<String> designs = List.of();

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "File to write, replaced as a whole; - writes to standard output.")
    private String file;

    @Mixin
    private RecordOption recordOption;

    @Override
    public Integer call() throws IOException {
        if (file == null && !recordOption.isGiven()) {
            throw new CommandFailure(ExitCode.USAGE, "staunch: evaluate: name a file to write with --json or --record");
        }
        CaseInput input = argument.input();
        WellCase wellCase = input.wellCase();
        List<String> names = designs.isEmpty()
                ? wellCase.designs().stream().map(CasingDesign::name).toList()
                : designs;
        List<Study> studies =
                names.stream().map(name -> argument.study(wellCase, name)).toList();
        List<WellEnvelope> envelopes = new ArrayList<>();
        for (Study study : studies) {
            envelopes.add(argument.evaluate(study, wellCase.units(), main.terminal()));
        }
        recordOption.write(input.record(Version.LIBRARY, envelopes));
        if (file != null) {
            write(wellCase, studies, envelopes);
        }
        return verdict.exitCode(envelopes);
    }

    private void write(WellCase wellCase, List<Study> studies, List<WellEnvelope> envelopes) throws IOException {
        List<MachineResults.DesignOperations> operations = new ArrayList<>();
        for (Study study : studies) {
            operations.add(
                    new MachineResults.DesignOperations(study.design(), argument.operations(study, wellCase.units())));
        }
        ByteArrayOutputStream json = new ByteArrayOutputStream();
        MachineResults.of(wellCase, envelopes, operations).write(json);
        if (file.equals(STANDARD_OUTPUT)) {
            json.writeTo(main.terminal().bytes());
            main.terminal().bytes().flush();
        } else {
            WholeFile.write(Path.of(file), json::writeTo);
        }
    }
}
