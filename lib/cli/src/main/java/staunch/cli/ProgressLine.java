package staunch.cli;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import staunch.design.Progress;

/** A progress bar on standard error, for work that lasts longer than a second and where a person watches. */
final class ProgressLine implements Progress, AutoCloseable {
    private static final long PATIENCE = TimeUnit.SECONDS.toNanos(1);
    private static final int WIDTH = 80;

    private final String task;
    private final boolean shown;
    private final long start = System.nanoTime();
    private ProgressBar bar;

    ProgressLine(String task, Terminal terminal) {
        this.task = task;
        this.shown = terminal.interactive();
    }

    @Override
    public void step(long done, long total, String what) {
        if (!shown || (bar == null && System.nanoTime() - start < PATIENCE)) {
            return;
        }
        if (bar == null) {
            bar = new ProgressBarBuilder()
                    .setTaskName(task)
                    .setInitialMax(total)
                    .setStyle(ProgressBarStyle.ASCII)
                    .setConsumer(new ConsoleProgressBarConsumer(System.err, WIDTH))
                    .startsFrom(0, Duration.ofNanos(System.nanoTime() - start))
                    .clearDisplayOnFinish()
                    .build();
        }
        bar.stepTo(done);
        bar.setExtraMessage(what);
    }

    @Override
    public void close() {
        if (bar != null) {
            bar.close();
        }
    }
}
