package staunch.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A table that someone adds is exported, or is named here with the reason why it is not. */
class EveryTableIsExportedTest {
    private static final List<Class<?>> MAKERS = List.of(
            Tables.class, OperationTables.class, EvidenceTables.class, ShoeTables.class, SensitivityTables.class);

    private static final Map<String, String> LEFT_OUT = Map.of(
            "EvidenceTables.registerInBrief", "the whole register is exported",
            "SensitivityTables.brief", "the whole sensitivity is exported");

    private static final JavaClasses CLASSES = new ClassFileImporter().importPackages("staunch.table");

    @Test
    void everyTableOfACaseIsExported() {
        Set<String> missing = new TreeSet<>();
        Set<String> reached = reached();
        int tables = 0;
        for (Class<?> maker : MAKERS) {
            for (JavaCodeUnit method : CLASSES.get(maker).getMethods()) {
                boolean table = method.getModifiers().contains(JavaModifier.PUBLIC)
                        && method.reflect().toString().contains("ResultTable ");
                if (table) {
                    tables++;
                    missing.add(name(method));
                }
            }
        }
        assertTrue(tables > 50, "tables are found");
        missing.removeAll(reached);
        assertEquals(new TreeSet<>(LEFT_OUT.keySet()), missing);
    }

    /** Names of the methods that the export calls, itself or by way of others. */
    private static Set<String> reached() {
        Set<String> reached = new HashSet<>();
        Deque<JavaCodeUnit> open =
                new ArrayDeque<>(CLASSES.get(CaseTables.class).getCodeUnits());
        while (!open.isEmpty()) {
            JavaCodeUnit unit = open.remove();
            Stream.concat(
                            unit.getMethodCallsFromSelf().stream().map(c -> c.getTarget()),
                            unit.getMethodReferencesFromSelf().stream().map(r -> r.getTarget()))
                    .map(AccessTarget.CodeUnitAccessTarget::resolveMember)
                    .flatMap(Optional::stream)
                    .filter(m -> m.getOwner().getPackageName().equals("staunch.table"))
                    .filter(m -> reached.add(name(m)))
                    .forEach(open::add);
        }
        return reached;
    }

    private static String name(JavaCodeUnit unit) {
        return unit.getOwner().getSimpleName() + "." + unit.getName();
    }
}
