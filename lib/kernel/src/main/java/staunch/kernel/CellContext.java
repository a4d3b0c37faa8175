package staunch.kernel;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinWorkerThread;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * One run of one cell: its buffered output and whether it has been interrupted. Threads a cell starts inherit it, so
 * what they print belongs to that cell even after it has ended.
 *
 * <p>Only monitors guard its state: a cell's thread may be stopped at any point, and a monitor is released then.
 */
final class CellContext {
    private static final int FLUSH_LENGTH = 1 << 16;
    private static final long FLUSH_PAUSE_NANOS = TimeUnit.MILLISECONDS.toNanos(10);

    // System.out is one per process, so which cell a thread prints for can only be kept per process too.
    private static final InheritableThreadLocal<CellContext> OF_THREAD = new InheritableThreadLocal<>();
    private static final ThreadLocal<Boolean> OUTSIDE = ThreadLocal.withInitial(() -> false);
    private static volatile CellContext latest;
    private static volatile boolean anyInterrupted;
    private static volatile boolean anyLeftBehind;

    private final OutputSink sink;
    private final OutputPump pump;
    private final SessionOptions options;
    private final Map<StreamName, Bytes> bytes = new EnumMap<>(StreamName.class);
    private final StringBuilder pending = new StringBuilder();
    private StreamName pendingName = StreamName.STDOUT;
    private long lastFlush = System.nanoTime();
    private volatile boolean interrupted;
    private volatile boolean starved;
    private volatile boolean leftBehind;

    CellContext(OutputSink sink, OutputPump pump, SessionOptions options) {
        this.sink = sink;
        this.pump = pump;
        this.options = options;
        for (StreamName name : StreamName.values()) {
            bytes.put(name, new Bytes());
        }
    }

    /** The cell the calling thread works for, if any. */
    static Optional<CellContext> current() {
        if (OUTSIDE.get()) {
            return Optional.empty();
        }
        CellContext inherited = OF_THREAD.get();
        // The common pool's workers live on from cell to cell; they work for whichever runs now.
        if (Thread.currentThread() instanceof ForkJoinWorkerThread worker
                && worker.getPool() == ForkJoinPool.commonPool()) {
            return Optional.ofNullable(latest);
        }
        return Optional.ofNullable(inherited);
    }

    /** The cell that runs now or, between cells, ran last. */
    static Optional<CellContext> latest() {
        return Optional.ofNullable(latest);
    }

    /** Runs {@code action} as if it were no cell's: what it prints goes to the process's own streams. */
    static void outside(Runnable action) {
        OUTSIDE.set(true);
        try {
            action.run();
        } finally {
            OUTSIDE.remove();
        }
    }

    /** Makes the calling thread, and those it starts, work for this cell. */
    void enter() {
        OF_THREAD.set(this);
    }

    void begin() {
        latest = this;
        // Code that was left behind may still come to a checkpoint, and shall end there.
        if (!anyLeftBehind) {
            anyInterrupted = false;
        }
    }

    /** The threads of a pool that this cell has started may work for later cells, which are not interrupted. */
    void end() {
        flush();
        interrupted = leftBehind;
    }

    static void checkpoint() {
        if (anyInterrupted) {
            current().ifPresent(CellContext::throwIfInterrupted);
        }
    }

    void interrupt() {
        interrupted = true;
        anyInterrupted = true;
    }

    /** Interrupts code nobody waits for any more. */
    void leaveBehind() {
        leftBehind = true;
        anyLeftBehind = true;
        interrupt();
    }

    /** Interrupts for want of memory. */
    void starve() {
        starved = true;
        interrupt();
    }

    boolean isInterrupted() {
        return interrupted;
    }

    boolean isStarved() {
        return starved;
    }

    void throwIfInterrupted() {
        if (interrupted) {
            throw new CellInterrupted();
        }
    }

    void write(StreamName name, String text) {
        throwIfInterrupted();
        synchronized (this) {
            append(name, text);
        }
    }

    void write(StreamName name, byte[] chunk, int offset, int length) {
        throwIfInterrupted();
        synchronized (this) {
            append(name, bytes.get(name).decode(chunk, offset, length));
        }
    }

    private void append(StreamName name, String text) {
        if (text.isEmpty()) {
            return;
        }
        if (name != pendingName) {
            flush();
            pendingName = name;
        }
        boolean first = pending.isEmpty();
        pending.append(text);
        if (pending.length() >= FLUSH_LENGTH) {
            // An endless print loop must not outrun whoever reads it.
            LockSupport.parkNanos(this, FLUSH_PAUSE_NANOS - (System.nanoTime() - lastFlush));
            flush();
        } else if (first) {
            pump.schedule(this);
        }
    }

    synchronized void flush() {
        if (pending.isEmpty()) {
            return;
        }
        String text = pending.toString();
        pending.setLength(0);
        lastFlush = System.nanoTime();
        sink.stream(pendingName, text);
    }

    DisplayRegistry displays() {
        return options.displays();
    }

    Path folder() {
        return options.folder();
    }

    synchronized void display(MimeBundle bundle, Optional<String> displayId) {
        flush();
        sink.display(bundle, displayId);
    }

    synchronized void updateDisplay(MimeBundle bundle, String displayId) {
        flush();
        sink.updateDisplay(bundle, displayId);
    }

    synchronized void clearOutput(boolean wait) {
        flush();
        sink.clearOutput(wait);
    }

    String readLine(String prompt, boolean password) {
        throwIfInterrupted();
        flush();
        try {
            return sink.readLine(prompt, password)
                    .orElseThrow(() -> new NotebookFault(
                            "the cell asks for input, but nobody can be asked here: give the value in the cell"));
        } catch (InterruptedException e) {
            interrupt();
            throw new CellInterrupted();
        }
    }

    /** Bytes written to a stream, decoded as they come; a character may arrive in several writes. */
    private static final class Bytes {
        private final CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE);
        private byte[] rest = {};

        String decode(byte[] chunk, int offset, int length) {
            byte[] joined = Arrays.copyOf(rest, rest.length + length);
            System.arraycopy(chunk, offset, joined, rest.length, length);
            ByteBuffer in = ByteBuffer.wrap(joined);
            CharBuffer out = CharBuffer.allocate(joined.length + 1);
            decoder.decode(in, out, false);
            rest = Arrays.copyOfRange(joined, in.position(), joined.length);
            return out.flip().toString();
        }
    }
}
