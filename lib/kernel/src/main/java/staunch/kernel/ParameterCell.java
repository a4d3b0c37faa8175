package staunch.kernel;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.StatementTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.Trees;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The declarations of the cell tagged {@code parameters}, and where their values stand in its text. */
final class ParameterCell {
    private static final String BEFORE = "class $ { void $() throws Throwable {\n";
    private static final String AFTER = "\n} }";

    private record Slot(NotebookParameter parameter, int start, int end) {}

    private final String source;
    private final List<Slot> slots;

    ParameterCell(String source, Grammar grammar) {
        this.source = source;
        Grammar.Parsed parsed = grammar.parse(BEFORE + source + AFTER);
        if (!parsed.wellFormed()) {
            throw new IllegalArgumentException("the cell tagged \"parameters\" must hold declarations such as"
                    + " double depth = 3000; and nothing that cannot stand beside them");
        }
        SourcePositions positions = Trees.instance(parsed.task()).getSourcePositions();
        ClassTree type = (ClassTree) parsed.unit().getTypeDecls().get(0);
        MethodTree method = type.getMembers().stream()
                .filter(MethodTree.class::isInstance)
                .map(MethodTree.class::cast)
                .findFirst()
                .orElseThrow();
        slots = new ArrayList<>();
        for (StatementTree statement : method.getBody().getStatements()) {
            if (statement instanceof VariableTree variable && variable.getInitializer() != null) {
                int start =
                        (int) positions.getStartPosition(parsed.unit(), variable.getInitializer()) - BEFORE.length();
                int end = (int) positions.getEndPosition(parsed.unit(), variable.getInitializer()) - BEFORE.length();
                long typeStart = positions.getStartPosition(parsed.unit(), variable.getType());
                String declared = typeStart < 0 ? "var" : variable.getType().toString();
                slots.add(new Slot(
                        new NotebookParameter(variable.getName().toString(), declared, source.substring(start, end)),
                        start,
                        end));
            }
        }
    }

    /** The text of the cell with the values of {@code overrides} in place of its own. */
    String with(Map<String, String> overrides, ParameterWriter writer) {
        Set<String> unknown = new HashSet<>(overrides.keySet());
        StringBuilder text = new StringBuilder(source);
        for (int i = slots.size() - 1; i >= 0; i--) {
            Slot slot = slots.get(i);
            NotebookParameter parameter = slot.parameter();
            if (unknown.remove(parameter.name())) {
                text.replace(slot.start(), slot.end(), writer.expression(parameter, overrides.get(parameter.name())));
            }
        }
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException("the notebook has no parameter "
                    + unknown.stream().sorted().collect(Collectors.joining(", ")) + "; it has "
                    + slots.stream().map(slot -> slot.parameter().name()).collect(Collectors.joining(", ")));
        }
        return text.toString();
    }
}
