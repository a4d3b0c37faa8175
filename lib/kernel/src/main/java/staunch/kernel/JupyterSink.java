package staunch.kernel;

import com.google.gson.JsonObject;
import java.util.Optional;
import org.dflib.jjava.jupyter.messages.Message;
import org.dflib.jjava.jupyter.messages.MessageType;

/** Publishes the output of the cell that a request has sent. */
final class JupyterSink implements OutputSink {
    private final Publisher publisher;
    private final InputDesk desk;
    private final Message<JsonObject> request;

    JupyterSink(Publisher publisher, InputDesk desk, Message<JsonObject> request) {
        this.publisher = publisher;
        this.desk = desk;
        this.request = request;
    }

    @Override
    public void stream(StreamName name, String text) {
        publisher.publish(request, MessageType.PUBLISH_STREAM, Json.object("name", name.wireName(), "text", text));
    }

    @Override
    public void display(MimeBundle bundle, Optional<String> displayId) {
        publisher.publish(request, MessageType.PUBLISH_DISPLAY_DATA, content(bundle, displayId));
    }

    @Override
    public void updateDisplay(MimeBundle bundle, String displayId) {
        publisher.publish(request, MessageType.PUBLISH_UPDATE_DISPLAY_DATA, content(bundle, Optional.of(displayId)));
    }

    private static JsonObject content(MimeBundle bundle, Optional<String> displayId) {
        JsonObject content = Json.object();
        content.add("data", Json.data(bundle));
        content.add("metadata", Json.metadata(bundle));
        JsonObject handle = new JsonObject();
        displayId.ifPresent(id -> handle.addProperty("display_id", id));
        content.add("transient", handle);
        return content;
    }

    @Override
    public void clearOutput(boolean wait) {
        publisher.publish(request, MessageType.PUBLISH_CLEAR_OUTPUT, Json.object("wait", wait));
    }

    @Override
    public Optional<String> readLine(String prompt, boolean password) throws InterruptedException {
        if (!Json.flag(request.getContent(), "allow_stdin", false)) {
            return Optional.empty();
        }
        return Optional.of(desk.ask(request, prompt, password));
    }
}
