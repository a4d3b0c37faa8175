package staunch.kernel;

import java.util.ArrayList;
import java.util.List;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/** Cuts a cell into what JShell takes one at a time. */
final class CellSplitter {
    /** Whether more has to be typed before a cell can run. */
    enum Standing {
        COMPLETE,
        INCOMPLETE,
        INVALID
    }

    private final SourceCodeAnalysis analysis;
    private final Grammar grammar;

    CellSplitter(SourceCodeAnalysis analysis, Grammar grammar) {
        this.analysis = analysis;
        this.grammar = grammar;
    }

    /** The pieces of {@code code}, up to and including the first that is not well-formed. */
    List<CellPiece> split(String code) {
        List<CellPiece> pieces = new ArrayList<>();
        String rest = code;
        while (!rest.isBlank()) {
            CompletionInfo info = analysis.analyzeCompletion(rest);
            Completeness standing = info.completeness();
            if (standing == Completeness.EMPTY) {
                break;
            }
            // JShell counts the lines of a snippet from its first that is not blank.
            int offset = code.length() - rest.stripLeading().length();
            if (!standing.isComplete() || !grammar.accepts(info.source())) {
                pieces.add(new CellPiece(rest.stripLeading(), offset, false, false));
                break;
            }
            boolean shows = standing == Completeness.COMPLETE
                    && !info.source().stripTrailing().endsWith(";");
            pieces.add(new CellPiece(info.source().stripLeading(), offset, shows, true));
            rest = info.remaining();
        }
        return pieces;
    }

    Standing standing(String code) {
        String rest = code;
        while (!rest.isBlank()) {
            CompletionInfo info = analysis.analyzeCompletion(rest);
            Completeness standing = info.completeness();
            if (standing == Completeness.EMPTY) {
                break;
            }
            if (standing == Completeness.DEFINITELY_INCOMPLETE) {
                return Standing.INCOMPLETE;
            }
            if (!standing.isComplete() || !grammar.accepts(info.source())) {
                return standing == Completeness.CONSIDERED_INCOMPLETE ? Standing.INCOMPLETE : Standing.INVALID;
            }
            rest = info.remaining();
        }
        return Standing.COMPLETE;
    }
}
