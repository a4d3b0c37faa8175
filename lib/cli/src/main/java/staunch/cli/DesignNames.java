package staunch.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Names of casing designs as they are given on a command line. */
final class DesignNames {
    private DesignNames() {}

    /**
     * Names with commas between them, one by one. A comma that belongs to the name of a known design does not part it.
     *
     * @param given each one name or several
     * @param known names of the case
     */
    static List<String> of(List<String> given, List<String> known) {
        List<String> names = new ArrayList<>();
        for (String each : given) {
            List<String> parts = Arrays.asList(each.split(",", -1));
            for (int from = 0; from < parts.size(); ) {
                int to = parts.size();
                while (to > from + 1 && !known.contains(joined(parts, from, to))) {
                    to--;
                }
                names.add(joined(parts, from, to));
                from = to;
            }
        }
        return names;
    }

    private static String joined(List<String> parts, int from, int to) {
        return String.join(",", parts.subList(from, to)).strip();
    }
}
