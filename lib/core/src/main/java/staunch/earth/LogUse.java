package staunch.earth;

/** What pore pressures read from logs of offset wells do to the planned well. */
public enum LogUse {
    /** They are held against measured pressures and shown, and change nothing. */
    COMPARED("compared with measured pressures"),
    /** They are carried over as estimates; near a measured pressure that one counts. */
    ESTIMATE("carried over as estimates");

    private final String title;

    LogUse(String title) {
        this.title = title;
    }

    /** In plain words. */
    public String title() {
        return title;
    }
}
