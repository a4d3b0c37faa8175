package staunch.kernel;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.util.List;

/**
 * Ends a cell that is about to fill the heap while there is still room for the kernel's own threads. When the heap is
 * quite full, an allocation can fail in any thread, also in those that hold the connection to the front end.
 */
final class MemoryWatch implements AutoCloseable {
    private static final long PERIOD_MILLIS = 50;
    private static final double FULL = 0.92;

    private final List<MemoryPoolMXBean> pools = ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .filter(MemoryPoolMXBean::isCollectionUsageThresholdSupported)
            .filter(pool -> pool.getUsage().getMax() > 0)
            // Young generations run full all the time.
            .filter(MemoryPoolMXBean::isUsageThresholdSupported)
            .toList();
    private final Runnable onFull;
    private final Thread thread;

    MemoryWatch(Runnable onFull) {
        this.onFull = onFull;
        thread = new Thread(null, this::run, "cell-memory");
        thread.setDaemon(true);
        thread.start();
    }

    private void run() {
        while (true) {
            try {
                Thread.sleep(PERIOD_MILLIS);
                if (isFull()) {
                    onFull.run();
                }
            } catch (InterruptedException e) {
                return;
            } catch (OutOfMemoryError e) {
                onFull.run();
            }
        }
    }

    /** As of the last collection and still so: what has been freed since does not count as full. */
    boolean isFull() {
        for (MemoryPoolMXBean pool : pools) {
            MemoryUsage collected = pool.getCollectionUsage();
            MemoryUsage now = pool.getUsage();
            if (collected != null
                    && collected.getUsed() > FULL * collected.getMax()
                    && now.getUsed() > FULL * now.getMax()) {
                return true;
            }
        }
        return false;
    }

    @Override
    public void close() {
        thread.interrupt();
    }
}
