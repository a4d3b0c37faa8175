package staunch.kernel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.SourceCodeAnalysis.Documentation;
import jdk.jshell.SourceCodeAnalysis.Suggestion;

/** Completion and documentation at a place in a cell. */
final class CodeAssistant {
    private static final int MOST_OVERLOADS = 8;

    private final SourceCodeAnalysis analysis;
    private final JavadocIndex javadoc;
    private final Grammar grammar;

    CodeAssistant(SourceCodeAnalysis analysis, JavadocIndex javadoc, Grammar grammar) {
        this.analysis = analysis;
        this.grammar = grammar;
        this.javadoc = javadoc;
    }

    Completion complete(String code, int cursor) {
        String before = code.substring(0, cursor);
        // Seen as a whole, a cell's own earlier variables are known; seen from its last statement on, a broken
        // earlier one does no harm.
        Completion whole = complete(before, 0, cursor);
        return whole.matches().isEmpty() ? complete(before, lastStatement(before), cursor) : whole;
    }

    private Completion complete(String before, int from, int cursor) {
        int[] anchor = {cursor - from};
        String part = before.substring(from);
        int word = startOfWord(before);
        boolean qualified = before.substring(0, word).stripTrailing().endsWith(".");
        Stream<String> known = analysis.completionSuggestions(part, part.length(), anchor).stream()
                // Before anything is typed, every class of the JDK would be a suggestion.
                .filter(suggestion -> qualified || word < cursor || suggestion.matchesType())
                .sorted(Comparator.comparing(suggestion -> !suggestion.matchesType()))
                .map(Suggestion::continuation);
        // JShell knows only what has been run, not what the same cell declares further up.
        Stream<String> above = qualified || word == cursor
                ? Stream.empty()
                : grammar.declaredNames(before.substring(0, lastStatement(before))).stream()
                        .filter(name -> name.startsWith(before.substring(word)));
        List<String> matches = Stream.concat(above, known).distinct().toList();
        int start = matches.isEmpty() ? cursor : known(anchor[0], part) ? from + anchor[0] : word;
        return new Completion(matches, start, cursor);
    }

    /** Without a suggestion JShell leaves the anchor where it was. */
    private static boolean known(int anchor, String part) {
        return anchor < part.length();
    }

    private static int startOfWord(String text) {
        int start = text.length();
        while (start > 0 && Character.isJavaIdentifierPart(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    Optional<MimeBundle> inspect(String code, int cursor) {
        int end = cursor;
        while (end < code.length() && Character.isJavaIdentifierPart(code.charAt(end))) {
            end++;
        }
        String before = code.substring(0, end);
        boolean onName = end > 0 && Character.isJavaIdentifierPart(before.charAt(end - 1));
        for (int from : new int[] {0, lastStatement(before)}) {
            String part = before.substring(from);
            // The name itself, then the method of that name, then the call whose arguments it stands among.
            List<String> attempts =
                    onName ? List.of(part, part + "(", enclosingCall(part)) : List.of(enclosingCall(part));
            for (String attempt : attempts) {
                List<Documentation> found = analysis.documentation(attempt, attempt.length(), true);
                if (!found.isEmpty()) {
                    return Optional.of(describe(found));
                }
            }
        }
        return onName ? inspectUnimported(before.substring(startOfWord(before))) : Optional.empty();
    }

    private Optional<MimeBundle> inspectUnimported(String name) {
        List<Documentation> found = analysis.listQualifiedNames(name, name.length()).getNames().stream()
                .flatMap(qualified -> analysis.documentation(qualified, qualified.length(), true).stream())
                .toList();
        return found.isEmpty() ? Optional.empty() : Optional.of(describe(found));
    }

    /** Up to and including the last bracket that is still open. */
    private static String enclosingCall(String part) {
        int depth = 0;
        for (int i = part.length() - 1; i >= 0; i--) {
            char c = part.charAt(i);
            if (c == ')') {
                depth++;
            } else if (c == '(' && depth-- == 0) {
                return part.substring(0, i + 1);
            }
        }
        return part;
    }

    private int lastStatement(String before) {
        String rest = before;
        while (true) {
            CompletionInfo info = analysis.analyzeCompletion(rest);
            if (!info.completeness().isComplete()
                    || info.remaining() == null
                    || info.remaining().isBlank()) {
                return before.length() - rest.length();
            }
            rest = info.remaining();
        }
    }

    private MimeBundle describe(List<Documentation> found) {
        List<String> plain = new ArrayList<>();
        List<String> html = new ArrayList<>();
        for (Documentation one : found.subList(0, Math.min(found.size(), MOST_OVERLOADS))) {
            Optional<JavadocText> text =
                    Optional.ofNullable(one.javadoc()).map(javadoc::read).or(() -> javadoc.find(one.signature()));
            plain.add(one.signature() + text.map(doc -> "\n\n" + doc.plain()).orElse(""));
            html.add("<p><code>" + Html.escape(one.signature()) + "</code></p>"
                    + text.map(JavadocText::html).orElse(""));
        }
        if (found.size() > MOST_OVERLOADS) {
            String more = "and " + (found.size() - MOST_OVERLOADS) + " more";
            plain.add(more);
            html.add("<p>" + more + "</p>");
        }
        return MimeBundle.html(
                HtmlFragment.clean(String.join("<hr>", html)), plain.stream().collect(Collectors.joining("\n\n")));
    }
}
