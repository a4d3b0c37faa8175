package staunch.cli;

/** The end of a command that cannot do its work, with the sentence the user reads. */
final class CommandFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int exitCode;

    CommandFailure(int exitCode, String text) {
        super(text);
        this.exitCode = exitCode;
    }

    int exitCode() {
        return exitCode;
    }
}
