package staunch.kernel;

import com.google.gson.JsonObject;
import java.util.Optional;
import org.dflib.jjava.jupyter.messages.Message;
import org.dflib.jjava.jupyter.messages.MessageType;

/** Asks the front end for input on behalf of a cell's thread. Its own thread alone touches the socket. */
final class InputDesk {
    private static final long POLL_MILLIS = 25;

    private final WireSocket socket;
    private final String session;
    private final Object lock = new Object();
    private final Thread thread;
    private Question open;
    private boolean closed;

    InputDesk(WireSocket socket, String session) {
        this.socket = socket;
        this.session = session;
        thread = new Thread(null, this::run, "kernel-stdin");
        thread.setDaemon(true);
    }

    private static final class Question {
        private final Message<JsonObject> request;
        private final JsonObject content;
        private String answer;

        Question(Message<JsonObject> request, JsonObject content) {
            this.request = request;
            this.content = content;
        }
    }

    void start() {
        thread.start();
    }

    String ask(Message<JsonObject> request, String prompt, boolean password) throws InterruptedException {
        Question question = new Question(request, Json.object("prompt", prompt, "password", password));
        synchronized (lock) {
            open = question;
            lock.notifyAll();
            try {
                while (question.answer == null) {
                    lock.wait();
                }
            } finally {
                if (open == question) {
                    open = null;
                }
            }
            return question.answer;
        }
    }

    private void run() {
        while (true) {
            Question question;
            synchronized (lock) {
                while (open == null && !closed) {
                    try {
                        lock.wait();
                    } catch (InterruptedException e) {
                        closed = true;
                    }
                }
                if (closed) {
                    socket.close();
                    return;
                }
                question = open;
            }
            serve(question);
        }
    }

    private void serve(Question question) {
        // An answer to a question whose cell was interrupted is nobody's answer.
        while (socket.awaitInput(0)) {
            socket.readRequest();
        }
        socket.sendMessage(Publisher.message(
                session,
                question.request.getIdentities(),
                question.request,
                MessageType.INPUT_REQUEST,
                question.content));
        while (isOpen(question)) {
            if (socket.awaitInput(POLL_MILLIS)) {
                Optional<String> answer = socket.readRequest()
                        .filter(reply -> reply.getHeader().getType().getName().equals("input_reply"))
                        .map(reply -> Json.string(reply.getContent(), "value", ""));
                synchronized (lock) {
                    if (answer.isPresent() && open == question) {
                        question.answer = answer.get();
                        open = null;
                        lock.notifyAll();
                    }
                }
            }
        }
    }

    private boolean isOpen(Question question) {
        synchronized (lock) {
            return open == question && !closed;
        }
    }

    void close(long millis) throws InterruptedException {
        synchronized (lock) {
            closed = true;
            lock.notifyAll();
        }
        thread.join(millis);
    }
}
