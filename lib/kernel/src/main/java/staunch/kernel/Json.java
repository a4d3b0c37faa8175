package staunch.kernel;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Map;

/** The JSON shapes the protocol and the notebook format share. */
final class Json {
    private static final Gson VALUES = new GsonBuilder().serializeNulls().create();

    private Json() {}

    static JsonObject object(Object... namesAndValues) {
        JsonObject object = new JsonObject();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            object.add((String) namesAndValues[i], VALUES.toJsonTree(namesAndValues[i + 1]));
        }
        return object;
    }

    static JsonArray array(List<String> texts) {
        JsonArray array = new JsonArray();
        texts.forEach(array::add);
        return array;
    }

    static JsonObject data(MimeBundle bundle) {
        JsonObject data = new JsonObject();
        for (Map.Entry<String, String> format : bundle.data().entrySet()) {
            boolean json = format.getKey().equals("application/json")
                    || format.getKey().endsWith("+json");
            JsonElement value = json ? JsonParser.parseString(format.getValue()) : VALUES.toJsonTree(format.getValue());
            data.add(format.getKey(), value);
        }
        return data;
    }

    static JsonElement metadata(MimeBundle bundle) {
        return VALUES.toJsonTree(bundle.metadata());
    }

    static JsonObject error(CellError error) {
        return object("ename", error.name(), "evalue", error.message(), "traceback", error.traceback());
    }

    static String string(JsonObject object, String name, String otherwise) {
        return present(object, name) ? object.get(name).getAsString() : otherwise;
    }

    static boolean flag(JsonObject object, String name, boolean otherwise) {
        return present(object, name) ? object.get(name).getAsBoolean() : otherwise;
    }

    static int number(JsonObject object, String name, int otherwise) {
        return present(object, name) ? object.get(name).getAsInt() : otherwise;
    }

    static boolean present(JsonObject object, String name) {
        return object.has(name) && !object.get(name).isJsonNull();
    }
}
