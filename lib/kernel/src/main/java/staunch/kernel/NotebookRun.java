package staunch.kernel;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What a run of a notebook has left.
 *
 * @param notebook the executed notebook
 * @param page the same as a page to read
 * @param failure the first cell that failed, if one did; those after it were not run
 */
public record NotebookRun(Path notebook, Path page, Optional<Failure> failure) {
    /**
     * A cell that failed.
     *
     * @param cell its place in the notebook, counted from 1 over cells of all kinds
     */
    public record Failure(int cell, CellError error) {}

    public boolean succeeded() {
        return failure.isEmpty();
    }
}
