package staunch.kernel;

import java.util.List;

/**
 * What could stand in place of the text from {@code start} to {@code end}.
 *
 * @param start UTF-16 index of the first character to replace
 * @param end UTF-16 index after the last character to replace
 */
public record Completion(List<String> matches, int start, int end) {
    public Completion {
        matches = List.copyOf(matches);
    }
}
