package staunch.kernel;

/** A display on the page that can be replaced. */
public final class DisplayHandle {
    private final CellContext cell;
    private final DisplayRegistry displays;
    private final String id;

    DisplayHandle(CellContext cell, DisplayRegistry displays, String id) {
        this.cell = cell;
        this.displays = displays;
        this.id = id;
    }

    public String id() {
        return id;
    }

    /** Shows {@code value} in place of what this display shows now. */
    public void update(Object value) {
        cell.updateDisplay(displays.render(value), id);
    }
}
