package staunch.cli;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** First sentences and component texts of the Javadoc of every class below a source folder. */
final class RecordJavadoc {
    private final Map<String, String> sentences = new HashMap<>();
    private final Map<String, Map<String, String>> components = new HashMap<>();

    static RecordJavadoc of(List<Path> sourceFolders) throws IOException {
        RecordJavadoc javadoc = new RecordJavadoc();
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            List<Path> sources =
                    sourceFolders.stream().flatMap(RecordJavadoc::sources).toList();
            Iterable<? extends JavaFileObject> units = files.getJavaFileObjectsFromPaths(sources);
            JavacTask task = (JavacTask) compiler.getTask(null, files, d -> {}, List.of("-proc:none"), null, units);
            DocTrees trees = DocTrees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                javadoc.read(unit, trees);
            }
        }
        return javadoc;
    }

    private static Stream<Path> sources(Path folder) {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(p -> p.toString().endsWith(".java")).toList().stream();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void read(CompilationUnitTree unit, DocTrees trees) {
        new TreePathScanner<Void, String>() {
            @Override
            public Void visitClass(ClassTree node, String outer) {
                String name = outer + node.getSimpleName();
                DocCommentTree comment = trees.getDocCommentTree(getCurrentPath());
                if (comment != null) {
                    keep(name, comment);
                }
                return super.visitClass(node, name + "$");
            }
        }.scan(new TreePath(unit), unit.getPackageName() + ".");
    }

    private void keep(String type, DocCommentTree comment) {
        sentences.put(type, plain(comment.getFirstSentence()));
        Map<String, String> texts = new HashMap<>();
        for (DocTree tag : comment.getBlockTags()) {
            if (tag instanceof ParamTree param) {
                texts.put(param.getName().getName().toString(), plain(param.getDescription()));
            }
        }
        components.put(type, texts);
    }

    /** The printer of doc trees escapes every character above Latin-1. */
    private static final Pattern ESCAPED = Pattern.compile("\\\\u([0-9a-f]{4})");

    private static String plain(List<? extends DocTree> text) {
        String printed = text.stream().map(DocTree::toString).collect(Collectors.joining());
        return ESCAPED.matcher(printed)
                .replaceAll(r -> String.valueOf((char) Integer.parseInt(r.group(1), 16)))
                .replaceAll("\\{@(?:link|code) #?(?:[\\w.]*#)?([^}]*)}", "$1")
                .replaceAll("\\s+", " ")
                .strip();
    }

    String sentence(Class<?> type) {
        return sentences.getOrDefault(type.getName(), "");
    }

    String component(Class<?> type, String name) {
        return components.getOrDefault(type.getName(), Map.of()).getOrDefault(name, "");
    }
}
