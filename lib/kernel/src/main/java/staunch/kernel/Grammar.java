package staunch.kernel;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Parses Java without compiling it. */
final class Grammar {
    /** What may stand before and after a piece of a cell to make a compilation unit of it. */
    private static final List<String[]> FRAMES = List.of(
            new String[] {"class $ { void $() throws Throwable {\n", "\n} }"},
            new String[] {"class $ {\n", "\n}"},
            new String[] {"class $ { Object $ =\n", "\n; }"},
            new String[] {"", ""});

    private final JavaCompiler compiler;
    private final StandardJavaFileManager files;

    Grammar() {
        compiler = Optional.ofNullable(ToolProvider.getSystemJavaCompiler())
                .orElseThrow(() -> new IllegalStateException(
                        "this Java has no compiler: run with a JDK of version 17 or later, not with a JRE"));
        files = compiler.getStandardFileManager(null, null, null);
    }

    /** A parsed compilation unit with what is needed to ask for positions and comments. */
    record Parsed(JavacTask task, CompilationUnitTree unit, boolean wellFormed) {}

    Parsed parse(String source) {
        DiagnosticCollector<JavaFileObject> faults = new DiagnosticCollector<>();
        JavacTask task =
                (JavacTask) compiler.getTask(null, files, faults, List.of("-proc:none"), null, List.of(text(source)));
        try {
            CompilationUnitTree unit = task.parse().iterator().next();
            boolean wellFormed =
                    faults.getDiagnostics().stream().noneMatch(fault -> fault.getKind() == Diagnostic.Kind.ERROR);
            return new Parsed(task, unit, wellFormed);
        } catch (IOException e) {
            throw new UncheckedIOException("a source held in memory could not be read", e);
        }
    }

    /** Whether {@code piece} could stand in a cell, as far as the grammar goes. */
    boolean accepts(String piece) {
        return FRAMES.stream()
                .anyMatch(frame -> parse(frame[0] + piece + frame[1]).wellFormed());
    }

    /** What the statements and declarations of {@code code} declare for those after them. */
    List<String> declaredNames(String code) {
        List<String> names = new ArrayList<>();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitVariable(VariableTree tree, Void none) {
                names.add(tree.getName().toString());
                return null;
            }

            @Override
            public Void visitMethod(MethodTree tree, Void none) {
                if (tree.getName().contentEquals("$")) {
                    return super.visitMethod(tree, none);
                }
                names.add(tree.getName() + "(");
                return null;
            }

            @Override
            public Void visitClass(ClassTree tree, Void none) {
                if (tree.getSimpleName().contentEquals("$")) {
                    return super.visitClass(tree, none);
                }
                names.add(tree.getSimpleName().toString());
                return null;
            }

            @Override
            public Void visitLambdaExpression(LambdaExpressionTree tree, Void none) {
                return null;
            }
        }.scan(parse(FRAMES.get(0)[0] + code + FRAMES.get(0)[1]).unit(), null);
        return names;
    }

    private static JavaFileObject text(String source) {
        return new SimpleJavaFileObject(URI.create("string:///Cell.java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return source;
            }
        };
    }
}
