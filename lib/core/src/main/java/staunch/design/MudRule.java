package staunch.design;

/** Which mud a section is drilled with when its shoes move. */
public enum MudRule {
    AS_PLANNED("planned mud of each section"),
    LIGHTEST("lightest mud of each section that holds pore pressure plus trip margin");

    private final String title;

    MudRule(String title) {
        this.title = title;
    }

    /** In plain words. */
    public String title() {
        return title;
    }
}
