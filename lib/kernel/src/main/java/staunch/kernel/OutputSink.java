package staunch.kernel;

import java.util.Optional;

/**
 * Where the output of one cell goes: a Jupyter front end, or the file an embedded run writes. Calls may come from any
 * thread and, for work a cell left running in the background, also after the cell has ended.
 */
public interface OutputSink {
    void stream(StreamName name, String text);

    /** Shows a value; {@code displayId}, if present, lets {@link #updateDisplay} replace it later. */
    void display(MimeBundle bundle, Optional<String> displayId);

    void updateDisplay(MimeBundle bundle, String displayId);

    /** Removes the cell's output so far; with {@code wait}, only when the next output arrives. */
    void clearOutput(boolean wait);

    /**
     * Asks the user for a line of text.
     *
     * @return the line without its end, or empty where nobody can be asked
     * @throws InterruptedException if the wait was interrupted
     */
    Optional<String> readLine(String prompt, boolean password) throws InterruptedException;
}
