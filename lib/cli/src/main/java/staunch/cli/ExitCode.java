package staunch.cli;

/** What the program tells the shell that started it. */
final class ExitCode {
    static final int OK = 0;
    static final int FAILED = 1;
    static final int USAGE = 2;
    static final int CASE_FAULTS = 3;
    static final int VERDICT = 4;
    static final int CELL = 5;
    static final int INCOMPLETE = 6;

    private ExitCode() {}
}
