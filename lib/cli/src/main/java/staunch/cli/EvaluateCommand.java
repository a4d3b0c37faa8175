package staunch.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.WellEnvelope;
import staunch.ingest.CaseInput;

/** {@code staunch evaluate}: every result as JSON. */
@Command(
        name = "evaluate",
        description = "Compute every section of every casing design and write all results as JSON, in SI.",
        mixinStandardHelpOptions = true)
final class EvaluateCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Mixin
    private VerdictOption verdict;

    @Mixin
    private DesignsOption designs;

    @Mixin
    private JsonOption json;

    @Mixin
    private RecordOption recordOption;

    @Override
    public Integer call() throws IOException {
        if (!json.isGiven() && !recordOption.isGiven()) {
            throw new CommandFailure(ExitCode.USAGE, "staunch: evaluate: name a file to write with --json or --record");
        }
        CaseInput input = argument.input();
        WellCase wellCase = input.wellCase();
        List<Study> studies = designs.of(argument, wellCase);
        List<WellEnvelope> envelopes = new ArrayList<>();
        for (Study study : studies) {
            envelopes.add(argument.evaluate(study, wellCase.units(), main.terminal()));
        }
        recordOption.write(input.record(Version.LIBRARY, envelopes));
        if (json.isGiven()) {
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
        json.write(MachineResults.of(wellCase, envelopes, operations)::write, main.terminal());
    }
}
