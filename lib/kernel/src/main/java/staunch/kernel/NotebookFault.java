package staunch.kernel;

/** A request the kernel cannot carry out for a cell; its message says why and what to do. */
final class NotebookFault extends RuntimeException {
    private static final long serialVersionUID = 1;

    NotebookFault(String sentence) {
        super(sentence);
    }
}
