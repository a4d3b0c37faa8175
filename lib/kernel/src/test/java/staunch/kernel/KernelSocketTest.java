package staunch.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.dflib.jjava.jupyter.kernel.KernelConnectionProperties;
import org.dflib.jjava.jupyter.messages.Message;
import org.dflib.jjava.jupyter.messages.MessageType;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;

/** A kernel in a process of its own, over its real sockets, with nothing but a JDK. */
class KernelSocketTest {
    private static final long PATIENCE_MILLIS = 30_000;

    @TempDir
    private static Path folder;

    private static Process process;
    private static ZMQ.Context context;
    private static WireSocket shell;
    private static WireSocket control;
    private static WireSocket iopub;
    private static WireSocket stdin;
    private static ZMQ.Socket heartbeat;

    @BeforeAll
    @Timeout(value = PATIENCE_MILLIS, unit = TimeUnit.MILLISECONDS)
    static void start() throws IOException, GeneralSecurityException {
        KernelConnectionProperties connection = KernelWarmUp.freePorts();
        Path file = Files.writeString(folder.resolve("connection.json"), connection.toJsonString());
        // Another program holds a port for a moment: the kernel waits for it.
        try (ServerSocket held = new ServerSocket()) {
            held.bind(new InetSocketAddress(connection.getIp(), connection.getHbPort()));
            process = new ProcessBuilder(KernelProcesses.command(file.toString()))
                    .inheritIO()
                    .start();
            awaitListener(connection.getIp(), connection.getControlPort());
        }
        context = ZMQ.context(1);
        shell = connect(connection, SocketType.DEALER, connection.getShellPort());
        control = connect(connection, SocketType.DEALER, connection.getControlPort());
        stdin = connect(connection, SocketType.DEALER, connection.getStdinPort());
        iopub = connect(connection, SocketType.SUB, connection.getIopubPort());
        iopub.subscribe("".getBytes(StandardCharsets.US_ASCII));
        heartbeat = context.socket(SocketType.REQ);
        heartbeat.connect("tcp://127.0.0.1:" + connection.getHbPort());
        // The subscription has arrived once a status is seen.
        do {
            send(shell, MessageType.KERNEL_INFO_REQUEST, new JsonObject());
            read(shell);
        } while (!iopub.awaitInput(200));
        while (iopub.awaitInput(200)) {
            iopub.readRequest();
        }
    }

    /** Returns once the kernel listens at a port; the caller's timeout ends a wait in vain. */
    private static void awaitListener(String host, int port) {
        while (true) {
            try (Socket probe = new Socket(host, port)) {
                assertTrue(probe.isConnected());
                return;
            } catch (IOException e) {
                assertTrue(process.isAlive(), "the kernel has ended");
            }
        }
    }

    private static WireSocket connect(KernelConnectionProperties connection, SocketType type, int port)
            throws GeneralSecurityException {
        WireSocket socket = new WireSocket(context, type, connection.createHMACGenerator());
        // The stdin socket is addressed by the identity of the shell socket.
        if (type == SocketType.DEALER) {
            socket.setIdentity("java-client".getBytes(StandardCharsets.US_ASCII));
        }
        socket.connect("tcp://127.0.0.1:" + port);
        return socket;
    }

    @AfterAll
    static void end() throws InterruptedException {
        send(control, MessageType.SHUTDOWN_REQUEST, Json.object("restart", false));
        assertEquals("ok", Json.string(read(control).getContent(), "status", ""));
        boolean ended = process.waitFor(10, TimeUnit.SECONDS);
        process.destroyForcibly();
        for (ZMQ.Socket socket : List.of(shell, control, iopub, stdin, heartbeat)) {
            socket.setLinger(0);
            socket.close();
        }
        context.close();
        assertTrue(ended, "the kernel did not end when it was told to");
        assertEquals(0, process.exitValue());
    }

    private static String send(WireSocket socket, MessageType<?> type, JsonObject content) {
        Message<?> message = Publisher.message("client", List.of(), null, type, content);
        socket.sendMessage(message);
        return message.getHeader().getId();
    }

    private static Message<JsonObject> read(WireSocket socket) {
        assertTrue(socket.awaitInput(PATIENCE_MILLIS), "the kernel does not answer");
        return socket.readRequest().orElseThrow();
    }

    private static JsonObject cell(String code) {
        return Json.object("code", code, "allow_stdin", true);
    }

    /** What was published up to the next idle status, as type and content. */
    private static List<String> published() {
        List<String> seen = new ArrayList<>();
        while (true) {
            Message<JsonObject> message = read(iopub);
            String type = message.getHeader().getType().getName();
            String text = type + " " + message.getContent();
            if (type.equals("status")) {
                if (text.contains("idle")) {
                    return seen;
                }
            } else {
                seen.add(text);
            }
        }
    }

    private static JsonObject execute(String code) {
        send(shell, MessageType.EXECUTE_REQUEST, cell(code));
        return read(shell).getContent();
    }

    @Test
    void answersAndPublishes() {
        JsonObject reply = execute("System.out.println(\"hi\");\n6 * 7");
        assertEquals("ok", Json.string(reply, "status", ""));
        List<String> seen = published();
        assertEquals(3, seen.size(), seen.toString());
        assertTrue(seen.get(0).startsWith("execute_input"));
        assertEquals("stream {\"name\":\"stdout\",\"text\":\"hi\\n\"}", seen.get(1));
        assertTrue(seen.get(2).contains("{\"text/plain\":\"42\"}"));
    }

    @Test
    void reportsErrors() {
        JsonObject reply = execute("throw new Error(\"boo\");");
        assertEquals("error", Json.string(reply, "status", ""));
        assertEquals("boo", Json.string(reply, "evalue", ""));
        assertTrue(published().stream().anyMatch(text -> text.startsWith("error")));
    }

    @Test
    void interrupts() {
        execute("int kept = 41;");
        published();
        send(shell, MessageType.EXECUTE_REQUEST, cell("System.out.println(\"running\"); while (true) { }"));
        Message<JsonObject> message;
        do {
            message = read(iopub);
        } while (!message.getHeader().getType().getName().equals("stream"));
        send(control, MessageType.INTERRUPT_REQUEST, new JsonObject());
        assertEquals("ok", Json.string(read(control).getContent(), "status", ""));
        assertEquals("Interrupted", Json.string(read(shell).getContent(), "ename", ""));
        published();
        published();
        assertEquals("ok", Json.string(execute("kept + 1"), "status", ""));
        assertTrue(published().toString().contains("42"));
    }

    @Test
    void asksForInput() {
        send(shell, MessageType.EXECUTE_REQUEST, cell("input(\"name? \") + \"!\""));
        Message<JsonObject> question = read(stdin);
        assertEquals("name? ", Json.string(question.getContent(), "prompt", ""));
        send(stdin, MessageType.INPUT_REPLY, Json.object("value", "Ann"));
        assertEquals("ok", Json.string(read(shell).getContent(), "status", ""));
        assertTrue(published().toString().contains("Ann!"));
    }

    @Test
    void completesAndChecks() {
        send(shell, MessageType.COMPLETE_REQUEST, Json.object("code", "Math.sqr", "cursor_pos", 8));
        assertEquals("[\"sqrt(\"]", read(shell).getContent().get("matches").toString());
        published();
        send(shell, MessageType.IS_COMPLETE_REQUEST, Json.object("code", "for (;;) {"));
        assertEquals("incomplete", Json.string(read(shell).getContent(), "status", ""));
        published();
    }

    @Test
    void beats() {
        heartbeat.send("ping");
        assertEquals("ping", heartbeat.recvStr());
    }

    @Test
    void warmsUp() throws IOException {
        KernelProcess.warmUp(SessionOptions.standard(), new KernelIdentity("plain", "1", "", java.util.Map.of()));
    }
}
