package staunch.envelope;

/** Whether a section can be shut in at all. */
public enum Drilling {
    /** A BOP stack can close the well on its casing. */
    SHUT_IN("shut-in capable"),
    /** On a diverter: a kick is led away, never shut in. */
    DIVERTER("drilled on a diverter"),
    /** Returns to the seabed. */
    RISERLESS("drilled riserless");

    private final String title;

    Drilling(String title) {
        this.title = title;
    }

    /** In plain words. */
    public String title() {
        return title;
    }
}
