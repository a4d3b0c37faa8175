package staunch.control;

/** How the influx is circulated out; decides which mud stands below the gas. */
public enum CirculationMethod {
    /** Original mud pumped until the influx is out. */
    DRILLERS("driller's method, first circulation"),
    /** Kill mud pumped at once; it counts only where it turns the bit before the gas has passed the weak point. */
    WAIT_AND_WEIGHT("wait-and-weight method");

    private final String title;

    CirculationMethod(String title) {
        this.title = title;
    }

    /** In plain words. */
    public String title() {
        return title;
    }
}
