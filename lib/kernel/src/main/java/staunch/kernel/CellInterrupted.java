package staunch.kernel;

/** Thrown inside a cell's own code, at its next loop turn, print or read, after the user has interrupted it. */
final class CellInterrupted extends Error {
    private static final long serialVersionUID = 1;

    CellInterrupted() {
        super("the cell was interrupted");
    }
}
