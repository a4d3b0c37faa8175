package staunch.earth;

/** What a strength figure is worth. */
public enum Standing {
    /** Pumped until the formation took mud. */
    LEAK_OFF("leak-off test"),
    /** Pumped to a chosen pressure without leak-off: a lower bound of the strength. */
    INTEGRITY_TEST("formation integrity test"),
    /** Pumped past breakdown to closure. */
    EXTENDED_LEAK_OFF("extended leak-off test"),
    /** From a model or offset wells, not tested here. */
    PREDICTED("predicted");

    private final String title;

    Standing(String title) {
        this.title = title;
    }

    /** In plain words. */
    public String title() {
        return title;
    }
}
