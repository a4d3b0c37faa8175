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
import staunch.envelope.SectionOperations;
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
        List<List<SectionOperations>> operations = studies.stream()
                .map(study -> argument.operations(study, wellCase.units()))
                .toList();
        recordOption.write(input.record(Version.LIBRARY, envelopes, operations));
        if (json.isGiven()) {
            write(wellCase, envelopes, operations);
        }
        return verdict.exitCode(envelopes);
    }

    private void write(WellCase wellCase, List<WellEnvelope> envelopes, List<List<SectionOperations>> operations)
            throws IOException {
        List<MachineResults.DesignOperations> ofDesigns = new ArrayList<>();
        for (int i = 0; i < envelopes.size(); i++) {
            ofDesigns.add(new MachineResults.DesignOperations(envelopes.get(i).design(), operations.get(i)));
        }
        json.write(MachineResults.of(wellCase, envelopes, ofDesigns)::write, main.terminal());
    }
}
