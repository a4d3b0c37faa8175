package staunch.kernel;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.dflib.jjava.jupyter.kernel.KernelConnectionProperties;

/** A JVM that is a kernel and nothing else. */
public final class KernelProcess {
    private static final String PARENT_VARIABLE = "JPY_PARENT_PID";
    private static final long PARENT_CHECK_MILLIS = 1_000;
    private static final long WATCHDOG_MILLIS = 4_000;

    private KernelProcess() {}

    /**
     * Serves the front end that wrote {@code connectionFile} until it asks for the end or is gone, then ends the JVM.
     *
     * @throws IOException if the connection file cannot be read, or another program holds one of its ports
     */
    public static void run(Path connectionFile, SessionOptions options, KernelIdentity identity) throws IOException {
        KernelConnectionProperties connection = KernelConnectionProperties.parse(Files.readString(connectionFile));
        KernelServer server = new KernelServer(connection, options, identity);
        AtomicBoolean expected = new AtomicBoolean();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            if (!expected.get()) {
                sayGoodbye(server);
            }
        }));
        server.start();
        watchParent();
        try {
            server.awaitShutdown();
            expected.set(true);
            watchdog();
            server.close();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        System.exit(0);
    }

    /**
     * Starts a kernel, has it run one cell over its sockets, and ends it: what a JVM has to do once for the archive of its
     * loaded classes to be complete.
     *
     * @throws IOException if no free ports are found
     */
    public static void warmUp(SessionOptions options, KernelIdentity identity) throws IOException {
        KernelWarmUp.run(options, identity);
    }

    private static void sayGoodbye(KernelServer server) {
        try {
            server.abandon("the code of this cell ended the JVM: the kernel stops, and its variables are lost");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** A cell that cannot be ended, or a shutdown hook that never returns, must not keep the process. */
    private static void watchdog() {
        daemon("kernel-watchdog", () -> {
            Thread.sleep(WATCHDOG_MILLIS);
            Runtime.getRuntime().halt(0);
        });
    }

    /** Nobody tells a kernel that the front end which started it has been killed. */
    private static void watchParent() {
        // On Windows the variable holds a handle, which is no process id.
        boolean windows = System.getProperty("os.name").startsWith("Windows");
        Optional.ofNullable(windows ? null : System.getenv(PARENT_VARIABLE))
                .filter(pid -> pid.matches("[1-9][0-9]{0,17}"))
                .map(Long::valueOf)
                .flatMap(ProcessHandle::of)
                .ifPresent(parent -> daemon("kernel-parent", () -> {
                    while (parent.isAlive()) {
                        Thread.sleep(PARENT_CHECK_MILLIS);
                    }
                    Runtime.getRuntime().halt(0);
                }));
    }

    private interface Wait {
        void run() throws InterruptedException;
    }

    private static void daemon(String name, Wait body) {
        Thread thread = new Thread(
                null,
                () -> {
                    try {
                        body.run();
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    }
                },
                name);
        thread.setDaemon(true);
        thread.start();
    }
}
