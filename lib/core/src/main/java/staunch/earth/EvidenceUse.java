package staunch.earth;

/** What a profile of the planned well is made of. */
public enum EvidenceUse {
    /** The prediction as given; offset evidence is compared with it and nothing more. */
    PREDICTED("prediction as given"),
    /**
     * The prediction, drawn towards the offset evidence within the window: fully at the matched depth of a piece of
     * evidence, in proportion to the distance from it up to the edge of the window.
     */
    ADJUSTED("prediction adjusted to offset evidence"),
    /** Offset evidence alone; where none lies within the window nothing is known. */
    TRANSFERRED("offset evidence alone");

    private final String title;

    EvidenceUse(String title) {
        this.title = title;
    }

    /** In plain words. */
    public String title() {
        return title;
    }
}
