package staunch.control;

/** How a mud flows. */
public enum FlowRegime {
    LAMINAR("laminar"),
    TRANSITION("transition"),
    TURBULENT("turbulent");

    private final String title;

    FlowRegime(String title) {
        this.title = title;
    }

    /** In plain words. */
    public String title() {
        return title;
    }
}
