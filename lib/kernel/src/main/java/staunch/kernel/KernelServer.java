package staunch.kernel;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.security.GeneralSecurityException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.dflib.jjava.jupyter.kernel.KernelConnectionProperties;
import org.dflib.jjava.jupyter.messages.HMACGenerator;
import org.dflib.jjava.jupyter.messages.Header;
import org.dflib.jjava.jupyter.messages.Message;
import org.dflib.jjava.jupyter.messages.MessageType;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;

/**
 * Serves one {@link NotebookSession} over the five sockets of the Jupyter protocol. Each socket belongs to one thread.
 * The session starts in the background, so that a front end gets its first answers at once.
 */
final class KernelServer {
    private static final long POLL_MILLIS = 200;
    private static final long ABORT_WINDOW_MILLIS = 40;
    private static final long CLOSE_MILLIS = 1_000;

    private final KernelIdentity identity;
    private final ZMQ.Context context = ZMQ.context(1);
    private final String sessionId = UUID.randomUUID().toString();
    private final WireSocket shell;
    private final WireSocket control;
    private final WireSocket heartbeat;
    private final Publisher publisher;
    private final InputDesk desk;
    private final CompletableFuture<NotebookSession> session = new CompletableFuture<>();
    private final SessionOptions options;
    private final History history = new History();
    private final List<Thread> threads;
    private final CountDownLatch shutdown = new CountDownLatch(1);
    private volatile boolean closing;
    private volatile Message<JsonObject> executing;
    private volatile boolean interruptedEarly;
    // Used by the shell's thread alone, like the count.
    private final Deque<Message<JsonObject>> queued = new ArrayDeque<>();
    private int executionCount;

    KernelServer(KernelConnectionProperties connection, SessionOptions options, KernelIdentity identity)
            throws IOException {
        this.identity = identity;
        this.options = options;
        HMACGenerator signatures;
        try {
            signatures = connection.createHMACGenerator();
        } catch (GeneralSecurityException e) {
            throw new IllegalArgumentException(
                    "the connection file asks for signature scheme " + connection.getSignatureScheme()
                            + ", which this Java does not offer",
                    e);
        }
        shell = new WireSocket(context, SocketType.ROUTER, signatures);
        control = new WireSocket(context, SocketType.ROUTER, signatures);
        heartbeat = new WireSocket(context, SocketType.REP, signatures);
        WireSocket iopub = new WireSocket(context, SocketType.PUB, signatures);
        WireSocket stdin = new WireSocket(context, SocketType.ROUTER, signatures);
        shell.bind(connection, connection.getShellPort());
        control.bind(connection, connection.getControlPort());
        heartbeat.bind(connection, connection.getHbPort());
        iopub.bind(connection, connection.getIopubPort());
        stdin.bind(connection, connection.getStdinPort());
        publisher = new Publisher(iopub, sessionId);
        desk = new InputDesk(stdin, sessionId);
        threads = List.of(
                new Thread(null, this::serveShell, "kernel-shell"),
                new Thread(null, this::serveControl, "kernel-control"),
                new Thread(null, this::serveHeartbeat, "kernel-heartbeat"));
    }

    void start() {
        publisher.start();
        publisher.status(null, "starting");
        desk.start();
        threads.forEach(thread -> {
            thread.setDaemon(true);
            thread.start();
        });
        Thread warm = new Thread(null, this::startSession, "kernel-session");
        warm.setDaemon(true);
        warm.start();
    }

    private void startSession() {
        try {
            session.complete(new NotebookSession(options));
        } catch (RuntimeException | Error e) {
            session.completeExceptionally(e);
        }
    }

    /** Waits until a front end has asked for the end. */
    void awaitShutdown() throws InterruptedException {
        shutdown.await();
    }

    /** Ends the running cell with {@code reason} and lets the front end know; for when the JVM is ending anyway. */
    void abandon(String reason) throws InterruptedException {
        closing = true;
        if (session.isDone() && !session.isCompletedExceptionally()) {
            session.join().abandon(reason);
        }
        close();
    }

    void close() throws InterruptedException {
        closing = true;
        if (session.isDone() && !session.isCompletedExceptionally()) {
            session.join().interrupt();
        }
        for (Thread thread : threads) {
            thread.join(CLOSE_MILLIS);
        }
        desk.close(CLOSE_MILLIS);
        publisher.close(CLOSE_MILLIS);
        if (session.isDone() && !session.isCompletedExceptionally()) {
            session.join().close();
        }
        context.close();
    }

    private void serveHeartbeat() {
        serve(heartbeat, () -> heartbeat.send(heartbeat.recv()));
    }

    private void serveControl() {
        serve(control, () -> control.readRequest().ifPresent(request -> answer(control, request)));
    }

    private void serveShell() {
        serve(shell, () -> shell.readRequest().ifPresent(request -> answer(shell, request)));
    }

    private void serve(WireSocket socket, Runnable next) {
        while (!closing) {
            try {
                if (socket.awaitInput(POLL_MILLIS)) {
                    next.run();
                }
            } catch (OutOfMemoryError e) {
                // A cell has filled the heap and is about to fail; a front end asks again.
                Thread.yield();
            } catch (RuntimeException | Error e) {
                // Whatever one message has led to, the next one must find this thread alive.
                System.err.println("kernel: a message was dropped: " + e);
            }
        }
        socket.close();
    }

    private void answer(WireSocket socket, Message<JsonObject> request) {
        publisher.status(request, "busy");
        try {
            dispatch(socket, request);
        } catch (RuntimeException | StackOverflowError e) {
            replyError(socket, request, e);
        } finally {
            publisher.status(request, "idle");
        }
        while (socket == shell && !queued.isEmpty()) {
            abort(queued.remove());
        }
    }

    private void dispatch(WireSocket socket, Message<JsonObject> request) {
        JsonObject content = request.getContent();
        switch (request.getHeader().getType().getName()) {
            case "kernel_info_request" -> reply(socket, request, MessageType.KERNEL_INFO_REPLY, kernelInfo());
            case "execute_request" -> {
                executing = request;
                execute(request);
                executing = null;
            }
            case "complete_request" -> reply(socket, request, MessageType.COMPLETE_REPLY, complete(content));
            case "inspect_request" -> reply(socket, request, MessageType.INSPECT_REPLY, inspect(content));
            case "is_complete_request" -> reply(socket, request, MessageType.IS_COMPLETE_REPLY, isComplete(content));
            case "history_request" -> {
                JsonObject answer = Json.object("status", "ok");
                answer.add("history", history.answer(content));
                reply(socket, request, MessageType.HISTORY_REPLY, answer);
            }
            case "comm_info_request" ->
                reply(socket, request, MessageType.COMM_INFO_REPLY, Json.object("status", "ok", "comms", Map.of()));
            case "comm_open" ->
                publisher.publish(
                        request,
                        MessageType.COMM_CLOSE_COMMAND,
                        Json.object("comm_id", Json.string(content, "comm_id", ""), "data", Map.of()));
            case "interrupt_request" -> {
                if (!isOlder(request, executing)) {
                    interrupt();
                }
                reply(socket, request, MessageType.INTERRUPT_REPLY, Json.object("status", "ok"));
            }
            case "shutdown_request" -> {
                boolean restart = Json.flag(content, "restart", false);
                JsonObject answer = Json.object("status", "ok", "restart", restart);
                reply(socket, request, MessageType.SHUTDOWN_REPLY, answer);
                publisher.publish(request, MessageType.SHUTDOWN_REPLY, answer);
                shutdown.countDown();
            }
            default -> {
                // The protocol asks kernels to ignore what they do not know.
            }
        }
    }

    private void interrupt() {
        if (session.isDone()) {
            session().interrupt();
        } else {
            // The first cell waits for the session to start, and shall not run then.
            interruptedEarly = executing != null;
        }
    }

    /**
     * Whether an interrupt was sent before the cell that runs now, and so was meant for one that has ended meanwhile. Times
     * are compared only within one front end, whose clock gave both.
     */
    private static boolean isOlder(Message<JsonObject> interrupt, Message<JsonObject> cell) {
        if (cell == null
                || !Objects.equals(
                        interrupt.getHeader().getSessionId(), cell.getHeader().getSessionId())) {
            return false;
        }
        try {
            return sent(interrupt).isBefore(sent(cell));
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    private static OffsetDateTime sent(Message<JsonObject> message) {
        return OffsetDateTime.parse(message.getHeader().getTimestamp().getDateString());
    }

    private void reply(WireSocket socket, Message<JsonObject> request, MessageType<?> type, JsonObject content) {
        socket.sendMessage(Publisher.message(sessionId, request.getIdentities(), request, type, content));
    }

    /** A front end that waits for an answer gets one, also where the compiler's tools break on what it asks. */
    private void replyError(WireSocket socket, Message<JsonObject> request, Throwable fault) {
        String type = request.getHeader().getType().getName().replace("_request", "_reply");
        String message = Optional.ofNullable(fault.getMessage()).orElse("");
        String name = fault.getClass().getSimpleName();
        JsonObject answer = Json.error(new CellError(name, message, List.of(name + ": " + message)));
        answer.addProperty("status", "error");
        reply(socket, request, MessageType.getType(type), answer);
    }

    private NotebookSession session() {
        try {
            return session.join();
        } catch (CompletionException e) {
            throw new IllegalStateException(e.getCause().getMessage(), e.getCause());
        }
    }

    private JsonObject kernelInfo() {
        List<Map<String, String>> links = new ArrayList<>();
        identity.helpLinks().forEach((text, url) -> links.add(Map.of("text", text, "url", url)));
        JsonObject info = Json.object(
                "status",
                "ok",
                "protocol_version",
                Header.PROTOCOL_VERISON,
                "implementation",
                identity.implementation(),
                "implementation_version",
                identity.version(),
                "banner",
                identity.banner(),
                "debugger",
                false,
                "help_links",
                links);
        info.add(
                "language_info",
                Json.object(
                        "name",
                        "java",
                        "version",
                        Runtime.version().toString(),
                        "mimetype",
                        "text/x-java",
                        "file_extension",
                        ".java",
                        "pygments_lexer",
                        "java",
                        "codemirror_mode",
                        "text/x-java",
                        "nbconvert_exporter",
                        "script"));
        return info;
    }

    private void execute(Message<JsonObject> request) {
        JsonObject content = request.getContent();
        String code = Json.string(content, "code", "");
        boolean silent = Json.flag(content, "silent", false);
        boolean store = Json.flag(content, "store_history", true) && !silent;
        if (store) {
            executionCount++;
        }
        if (!silent) {
            publisher.publish(
                    request,
                    MessageType.PUBLISH_EXECUTE_INPUT,
                    Json.object("code", code, "execution_count", executionCount));
        }
        OutputSink sink = silent ? SilentSink.INSTANCE : new JupyterSink(publisher, desk, request);
        CellOutcome outcome = run("cell [" + executionCount + "]", code, sink);
        if (store) {
            history.add(executionCount, code, outcome.result().map(MimeBundle::plain));
        }
        JsonObject answer = Json.object("execution_count", executionCount);
        if (outcome.succeeded()) {
            if (!silent) {
                outcome.result().ifPresent(result -> publishResult(request, result));
            }
            answer.addProperty("status", "ok");
            answer.add("user_expressions", userExpressions(content));
            answer.add("payload", Json.array(List.of()));
            reply(shell, request, MessageType.EXECUTE_REPLY, answer);
            return;
        }
        JsonObject error = Json.error(outcome.error().orElseThrow());
        if (!silent) {
            publisher.publish(request, MessageType.PUBLISH_ERROR, error);
        }
        answer.addProperty("status", "error");
        error.entrySet().forEach(field -> answer.add(field.getKey(), field.getValue()));
        answer.add("user_expressions", new JsonObject());
        if (Json.flag(content, "stop_on_error", true)) {
            collectQueued();
        }
        reply(shell, request, MessageType.EXECUTE_REPLY, answer);
    }

    private CellOutcome run(String name, String code, OutputSink sink) {
        try {
            NotebookSession ready = session();
            if (interruptedEarly) {
                interruptedEarly = false;
                return CellOutcome.failed(ErrorReports.interruptedBeforeStart());
            }
            return ready.run(name, code, sink);
        } catch (IllegalStateException e) {
            return CellOutcome.failed(new CellError("KernelError", e.getMessage(), List.of(e.getMessage())));
        }
    }

    private void publishResult(Message<JsonObject> request, MimeBundle result) {
        JsonObject shown = Json.object("execution_count", executionCount);
        shown.add("data", Json.data(result));
        shown.add("metadata", Json.metadata(result));
        publisher.publish(request, MessageType.PUBLISH_EXECUTION_RESULT, shown);
    }

    /** What the front end has sent already, before it could know of the error. */
    private void collectQueued() {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(ABORT_WINDOW_MILLIS);
        long left = ABORT_WINDOW_MILLIS;
        while (left >= 0 && shell.awaitInput(left)) {
            shell.readRequest().ifPresent(queued::add);
            left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
        }
    }

    private void abort(Message<JsonObject> request) {
        if (!request.getHeader().getType().getName().equals("execute_request")) {
            answer(shell, request);
            return;
        }
        publisher.status(request, "busy");
        reply(
                shell,
                request,
                MessageType.EXECUTE_REPLY,
                Json.object("status", "aborted", "execution_count", executionCount));
        publisher.status(request, "idle");
    }

    private JsonObject userExpressions(JsonObject request) {
        JsonObject answers = new JsonObject();
        if (Json.present(request, "user_expressions")) {
            for (Map.Entry<String, JsonElement> one :
                    request.getAsJsonObject("user_expressions").entrySet()) {
                answers.add(one.getKey(), evaluate(one.getKey(), one.getValue().getAsString()));
            }
        }
        return answers;
    }

    private JsonObject evaluate(String name, String expression) {
        CellOutcome outcome = run("user expression " + name, expression, SilentSink.INSTANCE);
        if (outcome.error().isPresent()) {
            JsonObject error = Json.error(outcome.error().get());
            error.addProperty("status", "error");
            return error;
        }
        MimeBundle value = outcome.result().orElseGet(() -> MimeBundle.text("null"));
        JsonObject answer = Json.object("status", "ok");
        answer.add("data", Json.data(value));
        answer.add("metadata", Json.metadata(value));
        return answer;
    }

    /** The protocol counts cursor positions in code points, Java in UTF-16 units. */
    private static int utf16(String code, int codePoints) {
        int length = code.codePointCount(0, code.length());
        return code.offsetByCodePoints(0, Math.max(0, Math.min(length, codePoints)));
    }

    private JsonObject complete(JsonObject request) {
        String code = Json.string(request, "code", "");
        int cursor = utf16(code, Json.number(request, "cursor_pos", Integer.MAX_VALUE));
        Completion completion = session().complete(code, cursor);
        return Json.object(
                "status",
                "ok",
                "matches",
                completion.matches(),
                "cursor_start",
                code.codePointCount(0, completion.start()),
                "cursor_end",
                code.codePointCount(0, completion.end()),
                "metadata",
                Map.of());
    }

    private JsonObject inspect(JsonObject request) {
        String code = Json.string(request, "code", "");
        int cursor = utf16(code, Json.number(request, "cursor_pos", Integer.MAX_VALUE));
        Optional<MimeBundle> found = session().inspect(code, cursor);
        JsonObject answer = Json.object("status", "ok", "found", found.isPresent());
        answer.add("data", found.map(Json::data).orElseGet(JsonObject::new));
        answer.add("metadata", new JsonObject());
        return answer;
    }

    private JsonObject isComplete(JsonObject request) {
        return switch (session().standing(Json.string(request, "code", ""))) {
            case COMPLETE -> Json.object("status", "complete");
            case INVALID -> Json.object("status", "invalid");
            case INCOMPLETE -> Json.object("status", "incomplete", "indent", "    ");
        };
    }
}
