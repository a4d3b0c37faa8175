package staunch.kernel;

import java.util.concurrent.Callable;

/**
 * The thread that runs the code of cells. It stays the same from cell to cell, until one cannot be ended in any other
 * way than by stopping it or leaving it behind.
 */
final class CellThread {
    private static final long PATIENCE_MILLIS = 1_000;
    private static final long LIVENESS_CHECK_MILLIS = 200;

    private final ClassLoader classLoader;
    private final Object lock = new Object();
    private Worker worker;
    private Task running;

    CellThread(ClassLoader classLoader) {
        this.classLoader = classLoader;
    }

    /**
     * Runs {@code body} for {@code cell} and waits for its end.
     *
     * @throws Throwable what {@code body} threw, or {@link CellInterrupted} if it was left behind
     */
    Object call(CellContext cell, Callable<Object> body) throws Throwable {
        Task task = new Task(cell, body);
        synchronized (lock) {
            cell.throwIfInterrupted();
            if (worker == null || worker.retired || !worker.isAlive()) {
                worker = new Worker();
                worker.start();
            }
            worker.task = task;
            running = task;
            lock.notifyAll();
            while (!task.done) {
                try {
                    lock.wait(LIVENESS_CHECK_MILLIS);
                } catch (InterruptedException e) {
                    interrupt(cell);
                }
                if (!task.done && !worker.isAlive()) {
                    task.end(null, new CellInterrupted());
                }
            }
            running = null;
        }
        if (task.failure != null) {
            throw task.failure;
        }
        return task.value;
    }

    /** Asks the code of {@code cell} to end; insists after a while. Returns at once. */
    void interrupt(CellContext cell) {
        synchronized (lock) {
            cell.interrupt();
            if (running == null || running.cell != cell) {
                return;
            }
            worker.interrupt();
            if (!running.pressed) {
                running.pressed = true;
                Task task = running;
                Thread insist = new Thread(null, () -> insist(task), "cell-interrupt");
                insist.setDaemon(true);
                insist.start();
            }
        }
    }

    /** Ends the running code's cell with {@code reason}, whatever the code itself does. */
    void leaveBehind(Throwable reason) {
        synchronized (lock) {
            if (running != null && !running.done) {
                worker.retired = true;
                running.cell.leaveBehind();
                running.end(null, reason);
                lock.notifyAll();
            }
        }
    }

    private void insist(Task task) {
        try {
            Thread.sleep(PATIENCE_MILLIS);
            synchronized (lock) {
                if (task.done) {
                    return;
                }
                worker.retired = true;
                stop(worker);
            }
            Thread.sleep(PATIENCE_MILLIS);
            synchronized (lock) {
                if (!task.done) {
                    leaveBehind(new CellInterrupted());
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Nothing else ends a loop inside compiled library code that never looks at its interrupt flag. */
    @SuppressWarnings({"deprecation", "removal"})
    private static void stop(Thread thread) {
        try {
            thread.stop();
        } catch (UnsupportedOperationException e) {
            // From JDK 20 on a thread can only be left behind.
            thread.interrupt();
        }
    }

    void close() {
        synchronized (lock) {
            if (worker != null) {
                worker.retired = true;
            }
            lock.notifyAll();
        }
    }

    private static final class Task {
        private final CellContext cell;
        private final Callable<Object> body;
        private Object value;
        private Throwable failure;
        private boolean done;
        private boolean pressed;

        Task(CellContext cell, Callable<Object> body) {
            this.cell = cell;
            this.body = body;
        }

        void end(Object value, Throwable failure) {
            if (!done) {
                this.value = value;
                this.failure = failure;
                done = true;
            }
        }
    }

    private final class Worker extends Thread {
        private Task task;
        private boolean retired;

        Worker() {
            super("cell");
            setDaemon(true);
            setContextClassLoader(classLoader);
        }

        @Override
        public void run() {
            while (true) {
                Task mine;
                synchronized (lock) {
                    while (task == null && !retired) {
                        try {
                            lock.wait();
                        } catch (InterruptedException e) {
                            // An interrupt that came just after its cell had ended.
                            Thread.interrupted();
                        }
                    }
                    if (task == null) {
                        return;
                    }
                    mine = task;
                    Thread.interrupted();
                }
                Object value = null;
                Throwable failure = null;
                try {
                    mine.cell.enter();
                    value = mine.body.call();
                } catch (Throwable e) {
                    failure = e;
                }
                synchronized (lock) {
                    mine.end(value, failure);
                    task = null;
                    lock.notifyAll();
                    if (retired) {
                        return;
                    }
                }
            }
        }
    }
}
