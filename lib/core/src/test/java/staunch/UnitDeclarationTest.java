package staunch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import staunch.units.Measure;
import staunch.units.Si;

/** Every public number declares its unit, and every declaration is one that readers, tables and charts understand. */
class UnitDeclarationTest {
    /**
     * Numbers whose measure is carried beside them: the package of units itself, the parts of a hand calculation, and results
     * as a run record keeps them.
     */
    private static final Set<String> MEASURE_BESIDE = Set.of(
            "staunch.envelope.HandCalculation$Step",
            "staunch.envelope.HandCalculation$Term",
            "staunch.design.ResultValue",
            "staunch.design.Attribution",
            "staunch.design.Attribution$Share",
            "staunch.design.SectionChange$Difference",
            "staunch.design.Sensitivity$Input",
            "staunch.design.Sensitivity$FlipsAt",
            "staunch.design.Sensitivity$DoesNotFlip");

    private static List<Class<?>> publicTypes() {
        return new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("staunch").stream()
                        .map(JavaClass::reflect)
                        .filter(UnitDeclarationTest::isPublic)
                        .filter(c -> !c.getPackageName().equals("staunch.units"))
                        .filter(c -> !MEASURE_BESIDE.contains(c.getName()))
                        .sorted((a, b) -> a.getName().compareTo(b.getName()))
                        .collect(Collectors.toList());
    }

    private static boolean isPublic(Class<?> type) {
        return Modifier.isPublic(type.getModifiers())
                && (type.getEnclosingClass() == null || isPublic(type.getEnclosingClass()));
    }

    private static boolean isNumber(Class<?> type) {
        return type == double.class || type == double[].class || type == OptionalDouble.class;
    }

    private static List<Method> publicMethods(Class<?> type) {
        return Arrays.stream(type.getDeclaredMethods())
                .filter(m -> Modifier.isPublic(m.getModifiers()) && !m.isSynthetic() && !m.isBridge())
                .toList();
    }

    @Test
    void everyPublicNumberDeclaresItsUnit() {
        Set<String> bare = new TreeSet<>();
        for (Class<?> type : publicTypes()) {
            if (type.isRecord()) {
                for (RecordComponent c : type.getRecordComponents()) {
                    if (isNumber(c.getType()) && !c.isAnnotationPresent(Si.class)) {
                        bare.add(type.getName() + " component " + c.getName());
                    }
                }
            }
            for (Method m : publicMethods(type)) {
                if (isNumber(m.getReturnType()) && !m.isAnnotationPresent(Si.class)) {
                    bare.add(type.getName() + "." + m.getName() + " returns");
                }
                addBareParameters(type, m, bare);
            }
            for (Executable c : type.getConstructors()) {
                addBareParameters(type, c, bare);
            }
        }
        assertEquals(Set.of(), bare);
    }

    private static void addBareParameters(Class<?> type, Executable method, Set<String> bare) {
        for (Parameter p : method.getParameters()) {
            if (isNumber(p.getType()) && !p.isAnnotationPresent(Si.class)) {
                bare.add(type.getName() + "." + method.getName() + " takes " + p.getName());
            }
        }
    }

    @Test
    void everyDeclarationNamesAKnownMeasure() {
        List<AnnotatedElement> declared = new ArrayList<>();
        for (Class<?> type : publicTypes()) {
            if (type.isRecord()) {
                declared.addAll(Arrays.asList(type.getRecordComponents()));
            }
            for (Method m : publicMethods(type)) {
                declared.add(m);
                declared.addAll(Arrays.asList(m.getParameters()));
            }
        }
        declared.removeIf(e -> !e.isAnnotationPresent(Si.class));
        assertTrue(declared.size() > 50, "the types of core were found");
        for (AnnotatedElement e : declared) {
            Measure.of(e.getAnnotation(Si.class));
        }
    }

    @Test
    void publicMethodsTakeFewLooseNumbers() {
        Set<String> crowded = new TreeSet<>();
        for (Class<?> type : publicTypes()) {
            for (Method m : publicMethods(type)) {
                long numbers = Arrays.stream(m.getParameterTypes())
                        .filter(t -> t == double.class)
                        .count();
                if (numbers > 3) {
                    crowded.add(type.getName() + "." + m.getName());
                }
            }
        }
        assertEquals(Set.of(), crowded);
    }
}
