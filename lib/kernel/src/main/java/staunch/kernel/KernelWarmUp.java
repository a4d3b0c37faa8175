package staunch.kernel;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.security.GeneralSecurityException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.dflib.jjava.jupyter.kernel.KernelConnectionProperties;
import org.dflib.jjava.jupyter.messages.MessageType;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;

/** One short conversation with a kernel in this JVM. */
final class KernelWarmUp {
    private static final String HOST = "127.0.0.1";
    private static final long PATIENCE_MILLIS = 60_000;
    private static final String CELL = "record Pair(int a, double b) {}\n"
            + "var pairs = IntStream.range(0, 3).mapToObj(i -> new Pair(i, i / 2.0)).toList();\n"
            + "for (var pair : pairs) { System.out.printf(\"%s%n\", pair); }\n"
            + "display(pairs);\n"
            + "pairs.size()";

    private KernelWarmUp() {}

    static KernelConnectionProperties freePorts() throws IOException {
        List<ServerSocket> held = new ArrayList<>();
        try {
            for (int i = 0; i < 5; i++) {
                held.add(new ServerSocket(0, 1, InetAddress.getByName(HOST)));
            }
            List<Integer> ports = held.stream().map(ServerSocket::getLocalPort).toList();
            return new KernelConnectionProperties(
                    HOST,
                    ports.get(0),
                    ports.get(1),
                    ports.get(2),
                    ports.get(3),
                    ports.get(4),
                    "tcp",
                    "hmac-sha256",
                    UUID.randomUUID().toString());
        } finally {
            for (ServerSocket socket : held) {
                socket.close();
            }
        }
    }

    static void run(SessionOptions options, KernelIdentity identity) throws IOException {
        KernelConnectionProperties connection = freePorts();
        KernelServer server = new KernelServer(connection, options, identity);
        server.start();
        ZMQ.Context context = ZMQ.context(1);
        try {
            WireSocket shell = new WireSocket(context, SocketType.DEALER, connection.createHMACGenerator());
            shell.connect("tcp://" + HOST + ":" + connection.getShellPort());
            ask(shell, MessageType.KERNEL_INFO_REQUEST, "");
            ask(shell, MessageType.EXECUTE_REQUEST, CELL);
            ask(shell, MessageType.EXECUTE_REQUEST, "int x = y;");
            ask(shell, MessageType.COMPLETE_REQUEST, "pairs.si");
            shell.close();
            server.close();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("HMAC-SHA256 is part of every Java", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            context.close();
        }
    }

    private static void ask(WireSocket shell, MessageType<?> type, String code) {
        shell.sendMessage(Publisher.message("warm-up", List.of(), null, type, Json.object("code", code)));
        if (shell.awaitInput(PATIENCE_MILLIS)) {
            shell.readRequest();
        }
    }
}
