package staunch.kernel;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Collects the outputs of the cells of one run, as the notebook format keeps them. */
final class CellRecorder {
    private static final long LOG_PAUSE_NANOS = TimeUnit.SECONDS.toNanos(1);

    private final Consumer<String> log;
    // A later cell may update the display of an earlier one.
    private final Map<String, List<JsonObject>> displays = new HashMap<>();
    private long lastLogged = System.nanoTime() - LOG_PAUSE_NANOS;

    CellRecorder(Consumer<String> log) {
        this.log = log;
    }

    /** Takes the output of the cell {@code json} from now on. */
    Sink sink(JsonObject json) {
        return new Sink(json.getAsJsonArray("outputs"));
    }

    final class Sink implements OutputSink {
        private final JsonArray outputs;
        private boolean clearNext;
        private String lastUpdate = "";

        Sink(JsonArray outputs) {
            this.outputs = outputs;
        }

        private void add(JsonObject output) {
            if (clearNext) {
                clear();
            }
            outputs.add(output);
        }

        private void clear() {
            clearNext = false;
            while (!outputs.isEmpty()) {
                outputs.remove(outputs.size() - 1);
            }
        }

        @Override
        public void stream(StreamName name, String text) {
            synchronized (CellRecorder.this) {
                JsonObject last = clearNext || outputs.isEmpty()
                        ? new JsonObject()
                        : outputs.get(outputs.size() - 1).getAsJsonObject();
                if (Json.string(last, "name", "").equals(name.wireName())) {
                    last.addProperty("text", Json.string(last, "text", "") + text);
                } else {
                    add(Json.object("output_type", "stream", "name", name.wireName(), "text", text));
                }
            }
        }

        @Override
        public void display(MimeBundle bundle, Optional<String> displayId) {
            synchronized (CellRecorder.this) {
                JsonObject output = Json.object("output_type", "display_data");
                output.add("data", Json.data(bundle));
                output.add("metadata", Json.metadata(bundle));
                add(output);
                displayId.ifPresent(id -> displays.computeIfAbsent(id, unused -> new ArrayList<>())
                        .add(output));
            }
        }

        @Override
        public void updateDisplay(MimeBundle bundle, String displayId) {
            synchronized (CellRecorder.this) {
                JsonElement data = Json.data(bundle);
                JsonElement metadata = Json.metadata(bundle);
                displays.getOrDefault(displayId, List.of()).forEach(output -> {
                    output.add("data", data);
                    output.add("metadata", metadata);
                });
                lastUpdate = bundle.plain();
                if (System.nanoTime() - lastLogged >= LOG_PAUSE_NANOS) {
                    logUpdate();
                }
            }
        }

        /** Logs the last state of a display that was updated too quickly for every state to be logged. */
        void finish() {
            synchronized (CellRecorder.this) {
                if (!lastUpdate.isEmpty()) {
                    logUpdate();
                }
            }
        }

        private void logUpdate() {
            lastLogged = System.nanoTime();
            lastUpdate.lines().findFirst().ifPresent(line -> log.accept("    " + line));
            lastUpdate = "";
        }

        @Override
        public void clearOutput(boolean wait) {
            synchronized (CellRecorder.this) {
                if (wait) {
                    clearNext = true;
                } else {
                    clear();
                }
            }
        }

        @Override
        public Optional<String> readLine(String prompt, boolean password) {
            return Optional.empty();
        }
    }
}
