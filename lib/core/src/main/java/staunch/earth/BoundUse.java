package staunch.earth;

/** What losses and kicks of offset wells do to the planned well. */
public enum BoundUse {
    /** They are held against profiles and other evidence and listed, and change nothing. */
    LISTED("listed, changing nothing"),
    /** They move the profiles to the unfavourable side, see {@link EvidenceTransfer}. */
    COUNTED("counted: losses lower the strength, kicks raise the pore pressure");

    private final String title;

    BoundUse(String title) {
        this.title = title;
    }

    /** In plain words. */
    public String title() {
        return title;
    }
}
