package staunch.cli;

import java.io.IOException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import staunch.units.Fault;

/** The program {@code staunch}. */
@Command(
        name = "staunch",
        description = "Kick tolerance, MAASP and the well-control envelope of each hole section of a planned well.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:The work is done. A section that fails its criterion is a result, not an error.",
            "1:The work could not be finished: a file could not be written, or the program has an error.",
            "2:The command line was not understood.",
            "3:The case has faults, all of them are listed; or a run record cannot be used.",
            "4:With --fail-on-verdict: a section fails, or could not be assessed.",
            "5:A cell of a notebook failed; its page shows where.",
            "6:The tables are written, but a part of them could not be computed: they say which and why."
        },
        subcommands = {
            ValidateCommand.class,
            EvaluateCommand.class,
            ReviewCommand.class,
            CompareCommand.class,
            RerunCommand.class,
            KillSheetCommand.class,
            ShoesCommand.class,
            SensitivityCommand.class,
            ExportCommand.class,
            KernelCommand.class,
            NotebookCommand.class,
            CommandLine.HelpCommand.class
        })
public final class Main implements Runnable {
    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--trace",
            scope = CommandLine.ScopeType.INHERIT,
            description = "After an error of the program, print where in the code it came up.")
    private boolean trace;

    private Main(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Runs a command and ends the JVM with its exit code. */
    public static void main(String[] arguments) {
        System.setProperty("java.awt.headless", "true");
        System.exit(run(Terminal.ofSystem(), arguments));
    }

    /** Runs a command. */
    static int run(Terminal terminal, String... arguments) {
        Main main = new Main(terminal);
        CommandLine line = new CommandLine(main)
                .setOut(terminal.out())
                .setErr(terminal.err())
                .setUsageHelpAutoWidth(terminal.interactive())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((e, command, parsed) -> main.fail(e))
                .setParameterExceptionHandler((e, words) -> misread(e, terminal));
        if (!terminal.interactive()) {
            line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        }
        int exitCode = line.execute(arguments);
        terminal.out().flush();
        terminal.err().flush();
        return exitCode;
    }

    Terminal terminal() {
        return terminal;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "No command was given");
    }

    private static int misread(ParameterException e, Terminal terminal) {
        String name = e.getCommandLine().getCommandSpec().qualifiedName();
        terminal.err().println("staunch: " + e.getMessage());
        terminal.err().println("See \"" + name + " --help\".");
        return ExitCode.USAGE;
    }

    private int fail(Exception e) {
        if (e instanceof CommandFailure failure) {
            terminal.err().println(failure.getMessage());
            return failure.exitCode();
        }
        if (e instanceof IOException) {
            terminal.err().println("staunch: writing failed: " + IoText.of((IOException) e));
        } else if (e instanceof Fault) {
            terminal.err().println("staunch: " + e.getMessage());
            return ExitCode.CASE_FAULTS;
        } else {
            terminal.err().println("staunch: error in the program: " + e);
        }
        if (trace) {
            e.printStackTrace(terminal.err());
        }
        return ExitCode.FAILED;
    }
}
