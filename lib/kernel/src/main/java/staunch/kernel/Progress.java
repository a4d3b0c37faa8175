package staunch.kernel;

import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.TimeUnit;

/** One line on the page that says how far a long computation has come. May be stepped from several threads. */
public final class Progress implements AutoCloseable {
    private static final long SHORTEST_PAUSE_NANOS = TimeUnit.MILLISECONDS.toNanos(150);

    private final CellContext cell;
    private final String title;
    private final long steps;
    private final String id = UUID.randomUUID().toString();
    private final long start = System.nanoTime();
    private long done;
    private long lastShown = start;
    private long shown;

    Progress(CellContext cell, String title, long steps) {
        if (steps < 1) {
            throw new IllegalArgumentException(
                    "progress of \"" + title + "\": steps is " + steps + ", it must be at least 1");
        }
        this.cell = cell;
        this.title = title;
        this.steps = steps;
        cell.display(bundle(), Optional.of(id));
    }

    public void step() {
        step(1);
    }

    public synchronized void step(long more) {
        done = Math.min(steps, done + more);
        long now = System.nanoTime();
        if (done == steps || now - lastShown >= SHORTEST_PAUSE_NANOS) {
            lastShown = now;
            shown = done;
            cell.updateDisplay(bundle(), id);
        } else {
            cell.throwIfInterrupted();
        }
    }

    /** Shows the state reached, in case the last steps were too quick to be shown. */
    @Override
    public synchronized void close() {
        if (shown < done) {
            cell.updateDisplay(bundle(), id);
        }
    }

    private MimeBundle bundle() {
        String state = String.format(
                Locale.ROOT,
                "%d of %d, %d %%, %.1f s",
                done,
                steps,
                100 * done / steps,
                (System.nanoTime() - start) / 1e9);
        String label = Html.escape(title);
        return MimeBundle.html(
                "<label>" + label + " <progress max=\"" + steps + "\" value=\"" + done + "\">" + state
                        + "</progress> <span>" + state + "</span></label>",
                title + ": " + state);
    }
}
