package staunch.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Names a part of a case as a well programme would. A path is the keys that lead to it, a row as its name in brackets. */
final class ChangeWords {
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("survey", "survey"),
            Map.entry("pore_pressure", "pore pressure profile"),
            Map.entry("strength", "formation strength profile"),
            Map.entry("tops", "formation tops"),
            Map.entry("string", "drill string"),
            Map.entry("from", "top"),
            Map.entry("to", "bottom"),
            Map.entry("stack", "BOP stack"),
            Map.entry("section_defaults", "every section"),
            Map.entry("co2", "CO2"),
            Map.entry("definition", "definition of kick tolerance"),
            Map.entry("estimates", "estimates that decide"),
            Map.entry("pumped", "readings while pumping"),
            Map.entry("shut_in", "readings with the pump stopped"),
            Map.entry("leak_off", "reading of leak-off"));

    private ChangeWords() {}

    static List<String> under(List<String> path, String key) {
        List<String> longer = new ArrayList<>(path);
        longer.add(key);
        return longer;
    }

    static List<String> row(List<String> path, String name) {
        return under(path, "[" + name + "]");
    }

    /** A key in plain words. */
    static String words(String key) {
        return WORDS.getOrDefault(key, key.replace('_', ' '));
    }

    /** What the last key or row of a path is called. */
    static String last(List<String> path) {
        String last = path.get(path.size() - 1);
        if (last.equals("to") && path.contains("sections")) {
            return "TD";
        }
        return last.startsWith("[") ? thing(path.get(path.size() - 2)) : words(last);
    }

    /** The whole name: {@code strength test "LOT 9 5/8 in"}, {@code mud of section "8 1/2 in", design "Base"}. */
    static String name(List<String> path) {
        List<String> around = new ArrayList<>();
        String inner = "";
        for (int i = 0; i < path.size(); i++) {
            String step = path.get(i);
            boolean rowFollows = i + 1 < path.size() && path.get(i + 1).startsWith("[");
            if (step.startsWith("[")) {
                String name = thing(path.get(i - 1)) + " \"" + step.substring(1, step.length() - 1) + "\"";
                if (i == path.size() - 1) {
                    inner = name;
                } else {
                    around.add(0, name);
                }
            } else if (!rowFollows && i == path.size() - 1) {
                inner = last(path);
            } else if (step.equals("section_defaults")) {
                around.add(0, words(step));
            }
        }
        if (path.get(0).equals("offset_evidence") && path.size() == 2) {
            return "offset evidence: " + path.get(1).replace('_', ' ');
        }
        if (path.get(0).equals("options")) {
            return "method: " + inner;
        }
        return around.isEmpty() ? inner : inner + " of " + String.join(", ", around);
    }

    /** What a row of a list is. */
    private static String thing(String list) {
        return switch (list) {
            case "strength_tests" -> "strength test";
            case "pumping_tests" -> "pumping test";
            case "weak_zones" -> "weak zone";
            case "formation_pressures" -> "formation pressure";
            case "events" -> "drilling event";
            case "wells" -> "offset well";
            case "casing_strings", "strings" -> "string";
            case "sections" -> "section";
            case "designs" -> "design";
            default -> words(list);
        };
    }
}
