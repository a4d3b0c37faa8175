package staunch.kernel;

import java.util.LinkedHashSet;
import java.util.Set;

/** Sends what cells have printed shortly after they printed it, in one piece instead of line by line. */
final class OutputPump implements AutoCloseable {
    private static final long DELAY_MILLIS = 25;

    private final Set<CellContext> waiting = new LinkedHashSet<>();
    private final Thread thread;
    private boolean closed;

    OutputPump() {
        thread = new Thread(null, this::run, "cell-output");
        thread.setDaemon(true);
        thread.start();
    }

    void schedule(CellContext cell) {
        synchronized (waiting) {
            waiting.add(cell);
            waiting.notifyAll();
        }
    }

    private void run() {
        while (true) {
            try {
                Set<CellContext> due;
                synchronized (waiting) {
                    while (waiting.isEmpty() && !closed) {
                        waiting.wait();
                    }
                    if (closed) {
                        return;
                    }
                }
                Thread.sleep(DELAY_MILLIS);
                synchronized (waiting) {
                    due = Set.copyOf(waiting);
                    waiting.clear();
                }
                due.forEach(CellContext::flush);
            } catch (InterruptedException e) {
                return;
            } catch (OutOfMemoryError e) {
                // A cell has filled the heap; it will fail itself, and the output is then flushed at its end.
                Thread.yield();
            }
        }
    }

    @Override
    public void close() {
        synchronized (waiting) {
            closed = true;
            waiting.notifyAll();
        }
    }
}
