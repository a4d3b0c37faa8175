package staunch.kernel;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import org.dflib.jjava.jupyter.channels.JupyterSocket;
import org.dflib.jjava.jupyter.kernel.KernelConnectionProperties;
import org.dflib.jjava.jupyter.messages.HMACGenerator;
import org.dflib.jjava.jupyter.messages.Header;
import org.dflib.jjava.jupyter.messages.KernelTimestamp;
import org.dflib.jjava.jupyter.messages.Message;
import org.dflib.jjava.jupyter.messages.MessageType;
import org.dflib.jjava.jupyter.messages.adapters.HeaderAdapter;
import org.dflib.jjava.jupyter.messages.adapters.KernelTimestampAdapter;
import org.dflib.jjava.jupyter.messages.adapters.MessageTypeAdapter;
import org.slf4j.LoggerFactory;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/**
 * A socket of the kernel, used by one thread alone. Contents stay JSON objects: the library's request classes do not know
 * the protocol's defaults, and its reply classes leave fields out.
 */
final class WireSocket extends JupyterSocket {
    private static final byte[] DELIMITER = "<IDS|MSG>".getBytes(StandardCharsets.US_ASCII);
    private static final int LINGER_MILLIS = 1_000;
    private static final Duration PORT_PATIENCE = Duration.ofSeconds(20);
    private static final Duration PORT_PAUSE = Duration.ofMillis(50);
    private static final Gson HEADERS = new GsonBuilder()
            .registerTypeAdapter(KernelTimestamp.class, KernelTimestampAdapter.INSTANCE)
            .registerTypeAdapter(Header.class, HeaderAdapter.INSTANCE)
            .registerTypeAdapter(MessageType.class, MessageTypeAdapter.INSTANCE)
            .create();

    private final ZMQ.Poller poller;

    WireSocket(ZMQ.Context context, SocketType type, HMACGenerator signatures) {
        super(context, type, signatures, LoggerFactory.getLogger(WireSocket.class));
        setLinger(LINGER_MILLIS);
        // Nothing a cell prints may be dropped because the front end reads slowly.
        setSndHWM(0);
        setRcvHWM(0);
        poller = context.poller(1);
        poller.register(this, ZMQ.Poller.POLLIN);
    }

    @Override
    public void bind(KernelConnectionProperties properties) {
        throw new UnsupportedOperationException("bind to a port instead");
    }

    /**
     * Binds to a port that the front end chose. The front end let go of it some time ago, and another program may hold it
     * for a moment, so a taken port is tried again for a while.
     */
    void bind(KernelConnectionProperties properties, int port) throws IOException {
        boolean tcp = properties.getTransport().equals("tcp");
        String address = properties.getTransport() + "://" + properties.getIp() + (tcp ? ":" : "-") + port;
        long deadline = System.nanoTime() + PORT_PATIENCE.toNanos();
        while (true) {
            try {
                bind(address);
                return;
            } catch (ZMQException e) {
                if (e.getErrorCode() != ZMQ.Error.EADDRINUSE.getCode() || System.nanoTime() > deadline) {
                    throw new IOException(
                            "the kernel cannot listen at " + address
                                    + ", which the front end chose for it; is another program using it? Start the kernel again.",
                            e);
                }
                LockSupport.parkNanos(PORT_PAUSE.toNanos());
            }
        }
    }

    boolean awaitInput(long millis) {
        return poller.poll(millis) > 0;
    }

    /** The next request; empty if it is not signed with the connection's key or not one of this protocol. */
    Optional<Message<JsonObject>> readRequest() {
        List<byte[]> frames = new ArrayList<>(List.of(recv()));
        while (hasReceiveMore()) {
            frames.add(recv());
        }
        int delimiter = 0;
        while (delimiter < frames.size() && !Arrays.equals(frames.get(delimiter), DELIMITER)) {
            delimiter++;
        }
        if (frames.size() < delimiter + 6) {
            return Optional.empty();
        }
        byte[] header = frames.get(delimiter + 2);
        byte[] parent = frames.get(delimiter + 3);
        byte[] metadata = frames.get(delimiter + 4);
        byte[] content = frames.get(delimiter + 5);
        byte[] signature = hmacGenerator
                .calculateSignature(header, parent, metadata, content)
                .getBytes(StandardCharsets.US_ASCII);
        if (signature.length > 0 && !MessageDigest.isEqual(signature, frames.get(delimiter + 1))) {
            return Optional.empty();
        }
        return Optional.of(message(
                frames.subList(0, delimiter),
                HEADERS.fromJson(text(header), Header.class),
                HEADERS.fromJson(text(content), JsonObject.class),
                frames.subList(delimiter + 6, frames.size())));
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Message<JsonObject> message(
            List<byte[]> identities, Header header, JsonObject content, List<byte[]> buffers) {
        return new Message<JsonObject>(List.copyOf(identities), header, null, null, content, List.copyOf(buffers));
    }

    private static String text(byte[] frame) {
        return new String(frame, StandardCharsets.UTF_8);
    }
}
