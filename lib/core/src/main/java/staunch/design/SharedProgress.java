package staunch.design;

import java.util.function.LongConsumer;

/** Progress of work that runs on several threads: told in one order, never backwards. */
final class SharedProgress {
    private final Progress progress;
    private final long total;
    private long done;

    SharedProgress(Progress progress, long total) {
        this.progress = progress;
        this.total = total;
    }

    /** For one part of the work, which tells how much of itself is finished. */
    LongConsumer of(String what) {
        long[] before = {0};
        return finished -> {
            synchronized (this) {
                done += finished - before[0];
                before[0] = finished;
                progress.step(done, total, what);
            }
        };
    }

    void done() {
        progress.step(total, total, "done");
    }
}
