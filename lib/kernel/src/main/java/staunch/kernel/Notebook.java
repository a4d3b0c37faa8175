package staunch.kernel;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;

/** What cells call to show values, to report progress and to ask for input. Imported into every cell. */
public final class Notebook {
    private Notebook() {}

    /** Shows {@code value} now, in the output of the cell that calls this. */
    public static DisplayHandle display(Object value) {
        CellContext cell = cell();
        String id = UUID.randomUUID().toString();
        cell.display(cell.displays().render(value), Optional.of(id));
        return new DisplayHandle(cell, cell.displays(), id);
    }

    /** Shows the HTML fragment {@code html}, and {@code plain} where HTML cannot be shown. */
    public static DisplayHandle displayHtml(String html, String plain) {
        return display(MimeBundle.html(html, plain));
    }

    /** Shows {@code value} in place of what the display of this id shows now. */
    public static void updateDisplay(String id, Object value) {
        CellContext cell = cell();
        cell.updateDisplay(cell.displays().render(value), id);
    }

    /** Removes what the calling cell has put out so far. */
    public static void clearOutput() {
        clearOutput(false);
    }

    /** Removes what the calling cell has put out so far; with {@code wait}, when its next output arrives. */
    public static void clearOutput(boolean wait) {
        cell().clearOutput(wait);
    }

    /**
     * Shows how far a long computation has come, in one display that is updated in place.
     *
     * @param title what is computed
     * @param steps how many steps it takes in all, at least 1
     */
    public static Progress progress(String title, long steps) {
        return new Progress(cell(), title, steps);
    }

    /** The folder the notebook lies in, for files that belong to it. */
    public static Path notebookFolder() {
        return cell().folder();
    }

    /** Asks the user for a line of text. */
    public static String input(String prompt) {
        return cell().readLine(prompt, false);
    }

    /** Asks the user for a line of text that is not shown while typed. */
    public static String password(String prompt) {
        return cell().readLine(prompt, true);
    }

    private static CellContext cell() {
        return CellContext.current()
                .or(CellContext::latest)
                .orElseThrow(() -> new IllegalStateException("displays can be used in the cells of a notebook only"));
    }
}
