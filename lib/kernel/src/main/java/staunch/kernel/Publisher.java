package staunch.kernel;

import com.google.gson.JsonObject;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.UUID;
import org.dflib.jjava.jupyter.messages.Header;
import org.dflib.jjava.jupyter.messages.KernelTimestamp;
import org.dflib.jjava.jupyter.messages.Message;
import org.dflib.jjava.jupyter.messages.MessageContext;
import org.dflib.jjava.jupyter.messages.MessageType;

/**
 * Sends what the kernel publishes, in the order it was handed over. Its own thread alone touches the socket: the threads
 * of cells may be stopped in the middle of anything.
 */
final class Publisher {
    private final WireSocket socket;
    private final String session;
    private final Deque<Message<?>> queue = new ArrayDeque<>();
    private final Thread thread;
    private boolean closed;

    Publisher(WireSocket socket, String session) {
        this.socket = socket;
        this.session = session;
        thread = new Thread(null, this::run, "kernel-iopub");
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    void publish(MessageContext parent, MessageType<?> type, JsonObject content) {
        Message<?> message = message(session, List.of(), parent, type, content);
        synchronized (queue) {
            queue.add(message);
            queue.notifyAll();
        }
    }

    void status(MessageContext parent, String state) {
        publish(parent, MessageType.PUBLISH_STATUS, Json.object("execution_state", state));
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    static Message<?> message(
            String session, List<byte[]> identities, MessageContext parent, MessageType<?> type, JsonObject content) {
        Header header = new Header(
                UUID.randomUUID().toString(),
                Header.KERNEL_USERNAME,
                session,
                KernelTimestamp.now(),
                type,
                Header.PROTOCOL_VERISON);
        return new Message(identities, header, parent == null ? null : parent.getHeader(), null, content, null);
    }

    private void run() {
        while (true) {
            Message<?> next;
            synchronized (queue) {
                while (queue.isEmpty() && !closed) {
                    try {
                        queue.wait();
                    } catch (InterruptedException e) {
                        closed = true;
                    }
                }
                if (queue.isEmpty()) {
                    socket.close();
                    return;
                }
                next = queue.peek();
            }
            try {
                socket.sendMessage(next);
            } catch (OutOfMemoryError e) {
                // A cell has filled the heap and is about to fail; this message is tried again then.
                Thread.yield();
                continue;
            }
            synchronized (queue) {
                queue.remove();
            }
        }
    }

    /** Sends what is left and closes the socket. */
    void close(long millis) throws InterruptedException {
        synchronized (queue) {
            closed = true;
            queue.notifyAll();
        }
        thread.join(millis);
    }
}
