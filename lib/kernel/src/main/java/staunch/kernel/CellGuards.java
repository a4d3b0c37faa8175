package staunch.kernel;

/** What the bytecode of cells calls in place of, or in addition to, what its author wrote. Not for direct use. */
public final class CellGuards {
    private CellGuards() {}

    /** Called on every backward jump: ends the loop if the cell was interrupted. */
    public static void checkpoint() {
        CellContext.checkpoint();
    }

    /** Stands in for {@code System.exit}. */
    public static void exit(int status) {
        throw refusal(status);
    }

    /** Stands in for {@code Runtime.exit} and {@code Runtime.halt}. */
    public static void exit(Runtime runtime, int status) {
        throw refusal(status);
    }

    private static NotebookFault refusal(int status) {
        return new NotebookFault("exit(" + status
                + ") would end the kernel and lose every variable, so it is not carried out in a cell;"
                + " to stop here use return or throw, to end the kernel shut it down from the notebook");
    }
}
