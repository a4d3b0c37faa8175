package staunch.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import staunch.kernel.KernelLaunch;
import staunch.kernel.KernelProcess;
import staunch.kernel.KernelSpecDirectory;
import staunch.kernel.KernelSpecInstaller;

/** {@code staunch kernel}: the Jupyter kernel. */
@Command(
        name = "kernel",
        description = "The kernel for Jupyter notebooks.",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            KernelCommand.Install.class,
            KernelCommand.Uninstall.class,
            KernelCommand.Run.class,
            KernelCommand.WarmUp.class
        })
final class KernelCommand implements Runnable {
    private static final KernelSpecInstaller INSTALLER = new KernelSpecInstaller("staunch", "Staunch (Java)");

    @ParentCommand
    private Main main;

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "No command was given");
    }

    /** Where the kernel is made known. */
    static final class Where {
        @Option(names = "--user", description = "For the current user; the default.")
        private boolean user;

        @Option(
                names = "--prefix",
                paramLabel = "DIR",
                description = "Below DIR/share/jupyter/kernels, for an installation or environment.")
        private Path prefix;

        @Option(names = "--dir", paramLabel = "DIR", description = "In a folder of kernels of your own.")
        private Path directory;

        static KernelSpecDirectory chosen(Where where) {
            if (where == null || where.user) {
                return KernelSpecDirectory.user();
            }
            return where.prefix != null
                    ? KernelSpecDirectory.prefix(where.prefix)
                    : new KernelSpecDirectory(where.directory);
        }
    }

    /** {@code staunch kernel install}. */
    @Command(
            name = "install",
            description = "Make the kernel known to Jupyter, under the name staunch. Install again after a rebuild.",
            mixinStandardHelpOptions = true)
    static final class Install implements Runnable {
        @ParentCommand
        private KernelCommand kernel;

        @ArgGroup
        private Where where;

        @Mixin
        private UnitsOption units;

        @Option(
                names = "--full-speed",
                description = "Start a little later and compute faster: for notebooks that compute for long.")
        private boolean fullSpeed;

        @Override
        public void run() {
            String unitsName = units.orField().name();
            KernelLaunch launch = new KernelLaunch(
                    RunningJar.path(),
                    fullSpeed ? KernelLaunch.fullSpeed() : KernelLaunch.fastStart(),
                    List.of("kernel", "run", "--units", unitsName, KernelLaunch.CONNECTION_FILE),
                    List.of("kernel", "warm-up"));
            try {
                KernelSpecInstaller.Installed installed = INSTALLER.install(Where.chosen(where), launch);
                kernel.main.terminal().out().println("Installed: " + installed.directory());
            } catch (IOException e) {
                throw new CommandFailure(ExitCode.FAILED, "staunch: the kernel was not installed: " + IoText.of(e));
            }
        }
    }

    /** {@code staunch kernel uninstall}. */
    @Command(name = "uninstall", description = "Remove the kernel from Jupyter.", mixinStandardHelpOptions = true)
    static final class Uninstall implements Runnable {
        @ParentCommand
        private KernelCommand kernel;

        @ArgGroup
        private Where where;

        @Override
        public void run() {
            KernelSpecDirectory directory = Where.chosen(where);
            try {
                boolean found = INSTALLER.uninstall(directory);
                kernel.main
                        .terminal()
                        .out()
                        .println(found ? "Removed from " + directory.path() : "Not found in " + directory.path());
            } catch (IOException e) {
                throw new CommandFailure(ExitCode.FAILED, "staunch: the kernel was not removed: " + IoText.of(e));
            }
        }
    }

    /** {@code staunch kernel run}, which front ends call. */
    @Command(
            name = "run",
            description = "Serve a Jupyter front end, which starts this command itself.",
            mixinStandardHelpOptions = true)
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

    /** Starts a kernel, uses it once and ends, so that the classes it loads can be kept for a faster start. */
    @Command(name = "warm-up", hidden = true)
    static final class WarmUp implements Runnable {
        @Override
        public void run() {
            try {
                KernelProcess.warmUp(Notebooks.options(staunch.units.UnitSystem.FIELD), Notebooks.identity());
            } catch (IOException e) {
                throw new CommandFailure(ExitCode.FAILED, "staunch: the warm-up failed: " + IoText.of(e));
            }
        }
    }
}
