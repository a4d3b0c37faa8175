package staunch.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
import staunch.envelope.WellEnvelope;
import staunch.ingest.CaseInput;
import staunch.ingest.DataFileFault;
import staunch.ingest.RecordFile;
import staunch.ingest.RecordedCase;
import staunch.report.RerunPage;
import staunch.report.WholeFile;
import staunch.units.Fault;
import staunch.units.UnitSystem;

/** {@code staunch rerun}: what changed since an earlier run, and because of what. */
@Command(
        name = "rerun",
        description = "Compute a case anew and hold it against the record of an earlier run: which verdicts flip, what"
                + " changed by how much, and because of which input, method or version.",
        mixinStandardHelpOptions = true)
final class RerunCommand implements Callable<Integer> {
    private static final String STANDARD_OUTPUT = "-";

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

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description =
                    "Write what changed as JSON, in SI, too; - writes it to standard output in place of the text.")
    private String file;

    @Option(names = "--out", paramLabel = "DIR", description = "Write what changed as a page into this folder, too.")
    private Path out;

    @Override
    public Integer call() throws IOException {
        RunRecord before = before();
        CaseInput input = argument.input();
        WellCase wellCase = input.wellCase();
        UnitSystem shown = units.or(wellCase.units());
        List<WellEnvelope> envelopes = new ArrayList<>();
        for (CasingDesign design : wellCase.designs()) {
            if (before.designs().contains(design.name())) {
                Study study = argument.study(wellCase, design.name());
                envelopes.add(argument.evaluate(study, shown, main.terminal()));
            }
        }
        RunRecord after = input.record(Version.LIBRARY, envelopes);
        Rerun rerun = rerun(before, after, shown);
        recordOption.write(after);
        write(MachineRerun.of(wellCase, before, rerun));
        if (!STANDARD_OUTPUT.equals(file)) {
            print(wellCase, rerun, shown);
        }
        if (out != null) {
            Path page = RerunPage.write(wellCase, before, rerun, shown, out);
            if (!STANDARD_OUTPUT.equals(file)) {
                main.terminal().out().println("Page: " + page);
            }
        }
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
            return Rerun.of(before, after, RecordedCase.between(before, after), progress);
        } catch (Fault fault) {
            throw new CommandFailure(ExitCode.CASE_FAULTS, "staunch: --against: " + against + ": " + fault.text(shown));
        }
    }

    private void write(MachineRerun rerun) throws IOException {
        if (file == null) {
            return;
        }
        ByteArrayOutputStream json = new ByteArrayOutputStream();
        rerun.write(json);
        if (file.equals(STANDARD_OUTPUT)) {
            json.writeTo(main.terminal().bytes());
            main.terminal().bytes().flush();
        } else {
            WholeFile.write(Path.of(file), json::writeTo);
        }
    }

    private void print(WellCase wellCase, Rerun rerun, UnitSystem shown) {
        PrintWriter lines = main.terminal().out();
        lines.println(main.terminal().styled("bold", wellCase.header().well()) + ": "
                + wellCase.header().title());
        wellCase.header().notice().ifPresent(lines::println);
        lines.println();
        lines.print(RerunSummary.text(rerun, shown, main.terminal()));
    }
}
