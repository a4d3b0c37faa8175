package staunch.kernel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.Diag;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.UnresolvedReferenceException;

/** Words what went wrong in a cell: the sentence first, then the place in the cell, and nothing of JShell's own. */
final class ErrorReports {
    private static final int MOST_FRAMES = 12;
    private static final String INTERRUPTED = "Interrupted";
    private static final String STOPPED = "the cell was stopped; variables keep their values";

    private final ErrorDescriber describer;
    private final Map<String, Place> places = new HashMap<>();

    ErrorReports(ErrorDescriber describer) {
        this.describer = describer;
    }

    /** Where a snippet's text stands: in which cell, and how many lines of the cell come before it. */
    private record Place(String cell, int linesBefore, String source) {
        String line(int number) {
            return source.lines().skip(number - 1L).findFirst().orElse("");
        }
    }

    void remember(Snippet snippet, String cell, String code, CellPiece piece) {
        int start = piece.offset() + Math.max(0, piece.source().indexOf(snippet.source()));
        int linesBefore =
                (int) code.substring(0, start).chars().filter(c -> c == '\n').count();
        places.put(snippet.id(), new Place(cell, linesBefore, snippet.source()));
    }

    void forget(Snippet snippet) {
        places.remove(snippet.id());
    }

    CellError interrupted(JShellException translated) {
        List<String> lines = new ArrayList<>(interruptedBeforeStart().traceback());
        if (translated != null) {
            place(translated).ifPresent(lines::add);
        }
        return new CellError(INTERRUPTED, STOPPED, lines);
    }

    static CellError interruptedBeforeStart() {
        return new CellError(INTERRUPTED, STOPPED, List.of(INTERRUPTED + ": " + STOPPED));
    }

    /**
     * @param fault what was thrown
     * @param translated the same as JShell reports it, with the lines of snippets; null if it never got that far
     */
    CellError runtime(Throwable fault, JShellException translated) {
        Optional<String> sentence = describer.describe(fault);
        String name = fault.getClass().getSimpleName();
        String message = sentence.orElseGet(() -> own(fault));
        List<String> lines = new ArrayList<>();
        lines.add(sentence.orElseGet(() -> headline(fault)));
        Optional<String> place = translated == null ? Optional.empty() : place(translated);
        place.ifPresent(lines::add);
        if (sentence.isEmpty() && !(fault instanceof NotebookFault)) {
            if (!(fault instanceof VirtualMachineError)) {
                frames(translated == null ? fault : translated, lines);
            }
            causes(fault, lines);
        }
        return new CellError(name, message, lines);
    }

    CellError unresolved(UnresolvedReferenceException fault, List<String> missing) {
        String message =
                fault.getSnippet().source().lines().findFirst().orElse("").strip()
                        + " … cannot be called until "
                        + (missing.isEmpty() ? "its errors are mended" : String.join(", ", missing) + " is declared");
        List<String> lines = new ArrayList<>(List.of(message));
        place(fault).ifPresent(lines::add);
        return new CellError("UnresolvedReference", message, lines);
    }

    /** A compile error, with its line and a caret below where it is. */
    CellError compilation(String cell, String code, CellPiece piece, String snippetSource, List<Diag> diagnostics) {
        int shift = piece.offset() + Math.max(0, piece.source().indexOf(snippetSource));
        List<String> lines = new ArrayList<>();
        diagnostics.stream()
                .filter(Diag::isError)
                .sorted(Comparator.comparingLong(Diag::getPosition))
                .forEach(diagnostic -> {
                    lines.add(sentence(diagnostic));
                    lines.addAll(caret(cell, code, shift, diagnostic));
                });
        if (lines.isEmpty()) {
            lines.add("the cell ends before its last statement does: a bracket, brace, quote or operand is missing");
            String last = code.stripTrailing();
            int line = 1 + (int) last.chars().filter(c -> c == '\n').count();
            String text = last.substring(last.lastIndexOf('\n') + 1);
            lines.add("  " + cell + ", line " + line + ":");
            lines.add("    " + text);
            lines.add("    " + blank(text) + "^");
        }
        return new CellError("CompilationError", lines.get(0), lines);
    }

    private static List<String> caret(String cell, String code, int shift, Diag diagnostic) {
        int at = (int) Math.min(code.length(), Math.max(0, shift + diagnostic.getPosition()));
        int end = (int) Math.min(code.length(), Math.max(at, shift + diagnostic.getEndPosition()));
        int from = code.lastIndexOf('\n', at - 1) + 1;
        int to = code.indexOf('\n', at);
        String text = code.substring(from, to < 0 ? code.length() : to);
        int column = Math.min(at - from, text.length());
        int width = Math.max(1, Math.min(end, from + text.length()) - at);
        long line = 1 + code.substring(0, from).chars().filter(c -> c == '\n').count();
        return List.of(
                "  " + cell + ", line " + line + ":",
                "    " + text,
                "    " + blank(text.substring(0, column)) + "^" + "~".repeat(Math.max(0, width - 1)));
    }

    /** As wide as {@code text}, whatever its tabs. */
    private static String blank(String text) {
        return text.replaceAll("[^\t]", " ");
    }

    /** The compiler's text on one line, without its remark on where it looked, which names a JShell class. */
    private static String sentence(Diag diagnostic) {
        List<String> parts = diagnostic
                .getMessage(Locale.ENGLISH)
                .lines()
                .map(String::strip)
                .filter(line -> !line.startsWith("location:"))
                .map(line -> line.replaceFirst("^symbol: *", ""))
                .toList();
        return String.join(": ", parts);
    }

    private static String headline(Throwable fault) {
        String own = own(fault);
        String name = fault.getClass().getSimpleName();
        if (fault instanceof NotebookFault) {
            return own;
        }
        return own.isEmpty() ? name : name + ": " + own;
    }

    private static String own(Throwable fault) {
        if (fault instanceof OutOfMemoryError) {
            return "the heap of " + (Runtime.getRuntime().maxMemory() >> 20)
                    + " MB is full; set variables that hold much to null, or start the kernel with a larger -Xmx";
        }
        if (fault instanceof StackOverflowError) {
            return "the calls are nested too deeply, most likely a method that calls itself without end";
        }
        return Optional.ofNullable(fault.getMessage()).orElse("");
    }

    private Optional<String> place(JShellException translated) {
        for (StackTraceElement frame : translated.getStackTrace()) {
            Optional<Place> place = placeOf(frame);
            if (place.isPresent()) {
                return place.map(found -> "  at " + label(found, frame) + ":  "
                        + found.line(frame.getLineNumber()).strip());
            }
        }
        return Optional.empty();
    }

    private Optional<Place> placeOf(StackTraceElement frame) {
        String file = frame.getFileName();
        return file != null && file.startsWith("#")
                ? Optional.ofNullable(places.get(file.substring(1)))
                : Optional.empty();
    }

    private static String label(Place place, StackTraceElement frame) {
        return place.cell() + ", line " + (place.linesBefore() + frame.getLineNumber());
    }

    private void frames(Throwable translated, List<String> lines) {
        int shown = 0;
        List<String> path = new ArrayList<>();
        for (StackTraceElement frame : translated.getStackTrace()) {
            Optional<Place> place = placeOf(frame);
            String method = frame.getMethodName();
            if (place.isPresent()) {
                path.add("      " + (method.isEmpty() ? "" : method + " in ") + label(place.get(), frame));
            } else if (!internal(frame)) {
                path.add("      " + frame);
            } else {
                continue;
            }
            if (++shown == MOST_FRAMES) {
                path.add("      …");
                break;
            }
        }
        // A single frame only repeats the place already named.
        if (path.size() > 1) {
            lines.addAll(path);
        }
    }

    private static boolean internal(StackTraceElement frame) {
        String type = frame.getClassName();
        return type.isEmpty()
                || type.startsWith("REPL.")
                || type.startsWith("jdk.internal.reflect.")
                || type.startsWith(CellGuards.class.getPackageName() + ".Cell");
    }

    private void causes(Throwable fault, List<String> lines) {
        Throwable cause = fault.getCause();
        for (int depth = 0; cause != null && depth < MOST_FRAMES; depth++) {
            Throwable link = cause;
            lines.add("  because of " + describer.describe(link).orElseGet(() -> headline(link)));
            cause = cause.getCause();
        }
    }
}
