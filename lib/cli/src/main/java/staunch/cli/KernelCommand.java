package staunch.cli;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import staunch.kernel.KernelProcess;

/** {@code staunch kernel}: the Jupyter kernel. */
@Command(
        name = "kernel",
        description = "The kernel for Jupyter notebooks.",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {KernelCommand.Run.class})
final class KernelCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "No command was given");
    }

    @Command(name = "run", description = "Serve a Jupyter front end; it starts this command itself.")
    static final class Run implements Runnable {
        @Parameters(paramLabel = "CONNECTION_FILE", description = "File that the front end wrote.")
        private Path connectionFile;

        @Mixin
        private UnitsOption units;

        @Override
        public void run() {
            try {
                KernelProcess.run(connectionFile, Notebooks.options(units.orField()), Notebooks.identity());
            } catch (IOException e) {
                throw new CommandFailure(
                        ExitCode.FAILED, "staunch: the connection file cannot be read: " + IoText.of(e));
            }
        }
    }
}
