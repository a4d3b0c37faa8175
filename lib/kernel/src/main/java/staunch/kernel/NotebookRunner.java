package staunch.kernel;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Executes notebooks in this JVM, with the same session a Jupyter kernel serves, and writes each as an executed notebook
 * and as a page that stands by itself.
 */
public final class NotebookRunner {
    private static final String PARAMETERS = "parameters";
    private static final String EXTENSION = ".ipynb";

    private final SessionOptions options;
    private final ParameterWriter parameters;
    private final Consumer<String> log;

    /**
     * @param parameters how values given from outside become Java
     * @param log takes one line at a time about how the run goes
     */
    public NotebookRunner(SessionOptions options, ParameterWriter parameters, Consumer<String> log) {
        this.options = options;
        this.parameters = parameters;
        this.log = line -> CellContext.outside(() -> log.accept(line));
    }

    /**
     * Runs the code cells of {@code notebook} in turn, up to the first that fails.
     *
     * @param overrides from the name of a parameter to the value it shall have
     * @param outputFolder where {@code NAME.ipynb} and {@code NAME.html} are written
     * @throws IOException if a file cannot be read or written
     * @throws IllegalArgumentException if an override does not fit the notebook
     */
    public NotebookRun run(Path notebook, Map<String, String> overrides, Path outputFolder) throws IOException {
        NotebookFile file = NotebookFile.read(notebook);
        override(notebook, file.cells(), overrides);
        String name = notebook.getFileName().toString();
        String stem = name.endsWith(EXTENSION) ? name.substring(0, name.length() - EXTENSION.length()) : name;
        Path executed = outputFolder.resolve(stem + EXTENSION);
        Path page = outputFolder.resolve(stem + ".html");
        if (Files.exists(executed) && Files.isSameFile(executed, notebook)) {
            throw new IOException(executed + " would be written over itself: choose another output folder");
        }
        Path folder = Optional.ofNullable(notebook.toAbsolutePath().getParent()).orElseThrow();
        log.accept("running " + name);
        Optional<NotebookRun.Failure> failure = execute(file, options.withFolder(folder));
        file.languageInfo();
        Files.createDirectories(outputFolder);
        write(executed, file.json());
        write(page, new NotebookPage(stem, new Markdown(log)).render(file.cells(), overrides, failure));
        log.accept(failure.map(failed -> "stopped at cell " + failed.cell() + " of " + name)
                .orElse("finished " + name));
        return new NotebookRun(executed, page, failure);
    }

    /** A cell may print half of a surrogate pair; that is no reason to lose the whole run. */
    private static void write(Path file, String text) throws IOException {
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private void override(Path notebook, List<NotebookFile.Cell> cells, Map<String, String> overrides) {
        if (overrides.isEmpty()) {
            return;
        }
        List<NotebookFile.Cell> tagged = cells.stream()
                .filter(cell -> cell.isCode() && cell.isTagged(PARAMETERS))
                .toList();
        if (tagged.size() != 1) {
            throw new IllegalArgumentException(notebook + " has " + tagged.size() + " cells tagged \"" + PARAMETERS
                    + "\"; exactly one is needed for values to be set from outside");
        }
        NotebookFile.Cell cell = tagged.get(0);
        cell.source(new ParameterCell(cell.source(), new Grammar()).with(overrides, parameters));
    }

    private Optional<NotebookRun.Failure> execute(NotebookFile file, SessionOptions sessionOptions) {
        List<NotebookFile.Cell> code =
                file.cells().stream().filter(NotebookFile.Cell::isCode).toList();
        code.forEach(NotebookFile.Cell::clear);
        CellRecorder recorder = new CellRecorder(log);
        try (NotebookSession session = new NotebookSession(sessionOptions)) {
            for (int i = 0; i < code.size(); i++) {
                Optional<NotebookRun.Failure> failure = execute(session, recorder, code.get(i), i + 1, code.size());
                if (failure.isPresent()) {
                    return failure;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<NotebookRun.Failure> execute(
            NotebookSession session, CellRecorder recorder, NotebookFile.Cell cell, int count, int of) {
        JsonObject json = cell.json();
        long start = System.nanoTime();
        CellRecorder.Sink sink = recorder.sink(json);
        CellOutcome outcome = session.run("cell [" + count + "]", cell.source(), sink);
        sink.finish();
        json.addProperty("execution_count", count);
        outcome.result().ifPresent(result -> {
            JsonObject output = Json.object("output_type", "execute_result", "execution_count", count);
            output.add("data", Json.data(result));
            output.add("metadata", Json.metadata(result));
            json.getAsJsonArray("outputs").add(output);
        });
        outcome.error().ifPresent(error -> {
            JsonObject output = Json.error(error);
            output.addProperty("output_type", "error");
            json.getAsJsonArray("outputs").add(output);
        });
        log.accept(String.format(
                Locale.ROOT,
                "  cell %d of %d: %s, %.2f s",
                count,
                of,
                outcome.succeeded() ? "done" : "failed",
                (System.nanoTime() - start) / 1e9));
        outcome.error().ifPresent(error -> error.traceback().forEach(line -> log.accept("    " + line)));
        return outcome.error().map(error -> new NotebookRun.Failure(cell.number(), error));
    }
}
