package staunch.cli;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;
import staunch.kernel.NotebookRun;
import staunch.kernel.NotebookRunner;
import staunch.units.UnitSystem;

/** Runs notebooks in this program and tells of failing cells. */
final class NotebookPages {
    private final NotebookRunner runner;
    private final Terminal terminal;

    NotebookPages(UnitSystem units, boolean quiet, Terminal terminal) {
        this.terminal = terminal;
        this.runner = new NotebookRunner(
                Notebooks.options(units),
                new UnitParameters(),
                quiet ? line -> {} : line -> terminal.err().println(line));
    }

    NotebookRun run(Path file, Map<String, String> values, Path directory) throws IOException {
        NotebookRun run;
        try {
            run = runner.run(file, values, directory);
        } catch (NoSuchFileException e) {
            throw new CommandFailure(ExitCode.USAGE, "staunch: notebook " + IoText.of(e));
        } catch (IllegalArgumentException e) {
            throw new CommandFailure(ExitCode.USAGE, "staunch: " + file + ": " + e.getMessage());
        }
        run.failure()
                .ifPresent(f -> terminal.err()
                        .println(file + ", cell " + f.cell() + ": "
                                + String.join("\n", f.error().traceback())));
        return run;
    }
}
