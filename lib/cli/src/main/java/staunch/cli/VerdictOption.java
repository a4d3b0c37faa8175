package staunch.cli;

import java.util.Collection;
import picocli.CommandLine.Option;
import staunch.envelope.Verdict;
import staunch.envelope.WellEnvelope;

/** Lets a script stop on a verdict. */
final class VerdictOption {
    @Option(
            names = "--fail-on-verdict",
            description = "End with exit code 4 where a section fails, or could not be assessed.")
    private boolean failOnVerdict;

    int exitCode(Collection<WellEnvelope> envelopes) {
        boolean open = envelopes.stream()
                .flatMap(e -> e.sections().stream())
                .map(s -> s.verdict().outcome())
                .anyMatch(o -> o == Verdict.Outcome.FAILS || o == Verdict.Outcome.NOT_ASSESSED);
        return failOnVerdict && open ? ExitCode.VERDICT : ExitCode.OK;
    }
}
