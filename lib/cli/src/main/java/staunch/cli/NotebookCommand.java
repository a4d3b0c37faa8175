package staunch.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import staunch.kernel.NotebookRun;

/** {@code staunch notebook}: notebooks without Jupyter. */
@Command(
        name = "notebook",
        description = "Notebooks without Jupyter.",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {NotebookCommand.Run.class})
final class NotebookCommand implements Runnable {
    @ParentCommand
    private Main main;

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "No command was given");
    }

    /** {@code staunch notebook run}. */
    @Command(
            name = "run",
            description = {
                "Run notebooks in this program, without Python, and write each as an executed notebook and as a page that"
                        + " stands alone. A notebook stops at its first failing cell."
            },
            mixinStandardHelpOptions = true)
    static final class Run implements Callable<Integer> {
        @ParentCommand
        private NotebookCommand notebook;

        @Parameters(paramLabel = "FILE", arity = "1..*", description = "Notebooks to run.")
        private List<Path> files;

        @Option(
                names = "--set",
                paramLabel = "NAME=VALUE",
                description = "Value of a parameter, in place of the one in the cell tagged \"parameters\":"
                        + " --set 'mudWeight=13.4 ppg'. May be repeated.")
        private Map<String, String> values = Map.of();

        @Option(
                names = "--out",
                paramLabel = "DIR",
                description = "Folder to write into. Default: target/notebooks.",
                defaultValue = "target/notebooks")
        private Path out;

        @Option(names = "--quiet", description = "Tell only where the pages are, and what failed.")
        private boolean quiet;

        @Mixin
        private UnitsOption units;

        @Override
        public Integer call() throws IOException {
            Terminal terminal = notebook.main.terminal();
            NotebookPages pages = new NotebookPages(units.orField(), quiet, terminal);
            boolean failed = false;
            for (Path file : files) {
                NotebookRun run = pages.run(file, values, out);
                terminal.out().println("Notebook: " + run.page());
                failed |= !run.succeeded();
            }
            return failed ? ExitCode.CELL : ExitCode.OK;
        }
    }
}
