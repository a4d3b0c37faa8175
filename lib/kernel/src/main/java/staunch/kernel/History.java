package staunch.kernel;

import com.google.gson.JsonArray;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What was run in this session. Earlier sessions are not kept. */
final class History {
    private static final int SESSION = 1;

    private record Entry(int line, String code, Optional<String> result) {}

    private final List<Entry> entries = new ArrayList<>();

    void add(int line, String code, Optional<String> result) {
        entries.add(new Entry(line, code, result));
    }

    /** The answer to a history request, as tuples of session, line and text. */
    JsonArray answer(JsonObject request) {
        List<Entry> found =
                switch (Json.string(request, "hist_access_type", "")) {
                    case "tail" -> last(entries, Json.number(request, "n", 0));
                    case "range" -> range(request);
                    case "search" -> search(request);
                    default -> List.of();
                };
        boolean output = Json.flag(request, "output", false);
        JsonArray tuples = new JsonArray();
        for (Entry entry : found) {
            JsonArray tuple = new JsonArray();
            tuple.add(SESSION);
            tuple.add(entry.line());
            if (output) {
                JsonArray both = new JsonArray();
                both.add(entry.code());
                entry.result().ifPresentOrElse(both::add, () -> both.add(JsonNull.INSTANCE));
                tuple.add(both);
            } else {
                tuple.add(entry.code());
            }
            tuples.add(tuple);
        }
        return tuples;
    }

    private static List<Entry> last(List<Entry> of, int count) {
        return of.subList(Math.max(0, of.size() - Math.max(0, count)), of.size());
    }

    /** Session 0 is this one, negative numbers count back from it. */
    private List<Entry> range(JsonObject request) {
        int session = Json.number(request, "session", 0);
        int start = Json.number(request, "start", 0);
        int stop = Json.number(request, "stop", Integer.MAX_VALUE);
        if (session != 0 && session != SESSION) {
            return List.of();
        }
        return entries.stream()
                .filter(entry -> entry.line() >= start && entry.line() < stop)
                .toList();
    }

    private List<Entry> search(JsonObject request) {
        Pattern pattern = glob(Json.string(request, "pattern", "*"));
        List<Entry> found = entries.stream()
                .filter(entry -> pattern.matcher(entry.code()).matches())
                .toList();
        if (Json.flag(request, "unique", false)) {
            Map<String, Entry> latest = new LinkedHashMap<>();
            for (Entry entry : found) {
                latest.remove(entry.code());
                latest.put(entry.code(), entry);
            }
            found = List.copyOf(latest.values());
        }
        return Json.present(request, "n") ? last(found, Json.number(request, "n", 0)) : found;
    }

    /** A glob over the whole text, where {@code *} and {@code ?} also stand for line ends. */
    private static Pattern glob(String pattern) {
        String expression = pattern.codePoints()
                .mapToObj(c -> switch (c) {
                    case '*' -> ".*";
                    case '?' -> ".";
                    default -> Pattern.quote(Character.toString(c));
                })
                .collect(Collectors.joining());
        return Pattern.compile(expression, Pattern.DOTALL);
    }
}
