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
import staunch.design.Rerun;
import staunch.design.RunRecord;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.SectionOperations;
import staunch.envelope.WellEnvelope;
import staunch.ingest.CaseInput;
import staunch.ingest.DataFileFault;
import staunch.ingest.RecordFile;
import staunch.ingest.RecordedCase;
import staunch.report.RerunPage;
import staunch.table.RerunBook;
import staunch.table.RerunWords;
import staunch.table.TableBook;
import staunch.units.Fault;
import staunch.units.UnitSystem;

/** {@code staunch rerun}: what changed since an earlier run, and because of what. */
@Command(
        name = "rerun",
        description = "Compute a case anew and hold it against the record of an earlier run: which verdicts flip, what"
                + " changed by how much, and because of which input, method or version.",
        mixinStandardHelpOptions = true)
final class RerunCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Mixin
    private VerdictOption verdict;

    @Mixin
    private UnitsOption units;

    @Mixin
    private RecordOption recordOption;

    @Option(
            names = "--against",
            paramLabel = "RECORD",
            required = true,
            description = "Record that an earlier run left.")
    private Path against;

    @Mixin
    private JsonOption json;

    @Option(
            names = "--quick",
            description = "Share out changes of tolerances, margins and surface limits alone: what follows an influx is"
                    + " shown before and after, without its causes. Those take most of the time.")
    private boolean quick;

    @Mixin
    private TablesOption tables;

    @Option(names = "--out", paramLabel = "DIR", description = "Write what changed as a page into this folder, too.")
    private Path out;

    @Override
    public Integer call() throws IOException {
        RunRecord before = before();
        CaseInput input = argument.input();
        WellCase wellCase = input.wellCase();
        UnitSystem shown = units.or(wellCase.units());
        List<WellEnvelope> envelopes = new ArrayList<>();
        List<List<SectionOperations>> operations = new ArrayList<>();
        for (CasingDesign design : wellCase.designs()) {
            if (before.designs().contains(design.name())) {
                Study study = argument.study(wellCase, design.name());
                envelopes.add(argument.evaluate(study, shown, main.terminal()));
                operations.add(argument.operations(study, shown));
            }
        }
        RunRecord after = input.record(Version.LIBRARY, envelopes, operations);
        Rerun rerun = rerun(before, after, shown);
        recordOption.write(after);
        json.write(MachineRerun.of(wellCase, before, rerun)::write, main.terminal());
        Listing listing = new Listing(main.terminal(), json.text(main.terminal()));
        listing.title(wellCase, wellCase.header().title());
        listing.out().print(RerunSummary.text(rerun, shown, main.terminal()));
        List<String> toJudge = RerunWords.toJudge(wellCase, shown);
        if (!toJudge.isEmpty()) {
            listing.out().println();
            listing.line("To be judged in the later case:");
            toJudge.forEach(listing::point);
        }
        if (out != null) {
            listing.line("Page: " + RerunPage.write(wellCase, before, rerun, shown, out));
        }
        tables.write(
                () -> TableBook.of(wellCase, shown, Optional.empty(), RerunBook.of(wellCase, before, rerun, shown)),
                listing.out());
        return verdict.exitCode(envelopes);
    }

    /** Read before the long work begins. */
    private RunRecord before() {
        try {
            return RecordFile.read(against);
        } catch (DataFileFault e) {
            throw new CommandFailure(ExitCode.CASE_FAULTS, "staunch: --against: " + e.getMessage());
        }
    }

    private Rerun rerun(RunRecord before, RunRecord after, UnitSystem shown) {
        try (ProgressLine progress = new ProgressLine("what changed", main.terminal())) {
            return RecordedCase.compare(before, after, quick ? Rerun.Scope.ENVELOPE : Rerun.Scope.ALL, progress);
        } catch (Fault fault) {
            throw new CommandFailure(ExitCode.CASE_FAULTS, "staunch: --against: " + against + ": " + fault.text(shown));
        }
    }
}
