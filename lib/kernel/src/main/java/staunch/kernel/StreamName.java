package staunch.kernel;

/** The two text streams of a cell. */
public enum StreamName {
    STDOUT("stdout"),
    STDERR("stderr");

    private final String wireName;

    StreamName(String wireName) {
        this.wireName = wireName;
    }

    /** The name both the protocol and the notebook format use. */
    public String wireName() {
        return wireName;
    }
}
