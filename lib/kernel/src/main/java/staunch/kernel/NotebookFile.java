package staunch.kernel;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;

/** A notebook in the Jupyter format, version 4. Fields it does not know are kept as they are. */
final class NotebookFile {
    private static final int MINOR = 5;

    private final JsonObject root;

    private NotebookFile(JsonObject root) {
        this.root = root;
    }

    /** One cell of the file. */
    record Cell(JsonObject json, int number) {
        boolean isCode() {
            return Json.string(json, "cell_type", "").equals("code");
        }

        boolean isMarkdown() {
            return Json.string(json, "cell_type", "").equals("markdown");
        }

        String source() {
            return text(json.get("source"));
        }

        void source(String text) {
            json.addProperty("source", text);
        }

        boolean isTagged(String tag) {
            JsonObject metadata = json.getAsJsonObject("metadata");
            return metadata.has("tags")
                    && StreamSupport.stream(metadata.getAsJsonArray("tags").spliterator(), false)
                            .anyMatch(given -> given.getAsString().equals(tag));
        }

        void clear() {
            json.add("outputs", new JsonArray());
            json.add("execution_count", JsonNull.INSTANCE);
        }
    }

    static NotebookFile read(Path file) throws IOException {
        try {
            JsonObject root = JsonParser.parseString(Files.readString(file)).getAsJsonObject();
            if (Json.number(root, "nbformat", 0) != 4 || !root.has("cells")) {
                throw new IOException(file + " is not a notebook of format 4: open and save it in a current Jupyter");
            }
            NotebookFile notebook = new NotebookFile(root);
            notebook.upgrade();
            return notebook;
        } catch (JsonParseException | IllegalStateException e) {
            throw new IOException(file + " is not a notebook: " + e.getMessage(), e);
        }
    }

    /** From minor version 5 on, every cell has an id. */
    private void upgrade() {
        if (Json.number(root, "nbformat_minor", 0) < MINOR) {
            root.addProperty("nbformat_minor", MINOR);
        }
        if (!root.has("metadata")) {
            root.add("metadata", new JsonObject());
        }
        Set<String> ids = new HashSet<>();
        for (Cell cell : cells()) {
            String id = Json.string(cell.json(), "id", "");
            if (id.isEmpty() || !ids.add(id)) {
                id = "cell-" + cell.number();
                cell.json().addProperty("id", id);
                ids.add(id);
            }
            if (!cell.json().has("metadata")) {
                cell.json().add("metadata", new JsonObject());
            }
        }
    }

    List<Cell> cells() {
        JsonArray cells = root.getAsJsonArray("cells");
        return IntStream.range(0, cells.size())
                .mapToObj(i -> new Cell(cells.get(i).getAsJsonObject(), i + 1))
                .toList();
    }

    static String text(JsonElement source) {
        if (source == null || source.isJsonNull()) {
            return "";
        }
        if (source.isJsonArray()) {
            StringBuilder joined = new StringBuilder();
            source.getAsJsonArray().forEach(line -> joined.append(line.getAsString()));
            return joined.toString();
        }
        return source.getAsString();
    }

    void languageInfo() {
        root.getAsJsonObject("metadata")
                .add(
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
                                "java"));
    }

    String json() {
        StringWriter text = new StringWriter();
        JsonWriter writer = new JsonWriter(text);
        writer.setIndent(" ");
        writer.setHtmlSafe(false);
        new GsonBuilder().serializeNulls().disableHtmlEscaping().create().toJson(root, writer);
        return text + "\n";
    }
}
