package staunch.kernel;

import java.util.List;

/**
 * Why a cell failed, ready to show.
 *
 * @param name what kind of error, for example the exception's simple class name
 * @param message its one-sentence text
 * @param traceback the lines to show, the sentence first
 */
public record CellError(String name, String message, List<String> traceback) {
    public CellError {
        traceback = List.copyOf(traceback);
    }
}
