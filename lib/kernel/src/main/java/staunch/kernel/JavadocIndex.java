package staunch.kernel;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.TreePath;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds the documentation comment that belongs to a signature as JShell writes it, in source folders and archives. */
final class JavadocIndex {
    private final List<Path> roots;
    private final Grammar grammar;
    private Map<String, List<SourceFile>> files;

    JavadocIndex(List<Path> roots, Grammar grammar) {
        this.roots = roots;
        this.grammar = grammar;
    }

    /** @param archive the archive {@code path} lies in; empty if it lies in a folder */
    private record SourceFile(Optional<Path> archive, String path) {
        String stem() {
            String name = path.substring(path.lastIndexOf('/') + 1);
            return name.substring(0, name.length() - ".java".length());
        }

        String read() throws IOException {
            if (archive.isEmpty()) {
                return Files.readString(Path.of(path));
            }
            try (FileSystem zip = FileSystems.newFileSystem(archive.get())) {
                return Files.readString(zip.getPath(path));
            }
        }
    }

    /**
     * What a signature names.
     *
     * @param path the package, where the signature gives it, then the chain of type names, outermost first
     * @param member the method or field, empty for a type
     * @param parameters the simple names of a method's parameter types; empty if it is none
     */
    private record Target(List<String> path, String member, Optional<List<String>> parameters) {
        static Target of(String signature) {
            String bare = withoutGenerics(signature);
            int open = bare.indexOf('(');
            int colon = bare.indexOf(':');
            if (open >= 0) {
                String head = bare.substring(0, open).strip();
                boolean method = head.contains(" ");
                List<String> names = names(head.substring(head.lastIndexOf(' ') + 1));
                String inside = bare.substring(open + 1, bare.lastIndexOf(')')).strip();
                List<String> parameters = inside.isEmpty()
                        ? List.of()
                        : Arrays.stream(inside.split(","))
                                .map(parameter -> simple(parameter.strip().replaceFirst("\\s+\\S+$", "")))
                                .toList();
                return method
                        ? new Target(
                                names.subList(0, names.size() - 1),
                                names.get(names.size() - 1),
                                Optional.of(parameters))
                        : new Target(names, "<init>", Optional.of(parameters));
            }
            if (colon >= 0) {
                List<String> names = names(bare.substring(0, colon));
                return names.size() > 1
                        ? new Target(names.subList(0, names.size() - 1), names.get(names.size() - 1), Optional.empty())
                        : new Target(names(bare.substring(colon + 1)), "", Optional.empty());
            }
            return new Target(names(bare.substring(bare.lastIndexOf(' ') + 1)), "", Optional.empty());
        }

        private static List<String> names(String qualified) {
            return List.of(qualified.strip().split("\\."));
        }

        List<String> types() {
            return path.stream().dropWhile(Target::isPackage).toList();
        }

        String home() {
            return path.stream().takeWhile(Target::isPackage).collect(Collectors.joining("."));
        }

        private static boolean isPackage(String name) {
            return name.isEmpty() || Character.isLowerCase(name.charAt(0));
        }

        private static String withoutGenerics(String text) {
            StringBuilder kept = new StringBuilder();
            int depth = 0;
            for (char c : text.toCharArray()) {
                if (c == '<') {
                    depth++;
                } else if (c == '>') {
                    depth--;
                } else if (depth == 0) {
                    kept.append(c);
                }
            }
            return kept.toString();
        }
    }

    private static String simple(String type) {
        String bare = Target.withoutGenerics(type).replace("...", "[]");
        return bare.substring(bare.lastIndexOf('.') + 1).replaceFirst("^.*\\s", "");
    }

    /** The comment of what {@code signature} names, if its source is among the roots. */
    synchronized Optional<JavadocText> find(String signature) {
        Target target = Target.of(signature);
        if (target.types().isEmpty()) {
            return Optional.empty();
        }
        for (SourceFile file : index().getOrDefault(target.types().get(0), List.of())) {
            try {
                Optional<JavadocText> found = find(target, grammar.parse(file.read()));
                if (found.isPresent()) {
                    return found;
                }
            } catch (IOException e) {
                throw new UncheckedIOException("the source " + file.path() + " cannot be read", e);
            }
        }
        return Optional.empty();
    }

    /** The comment {@code raw}, without its stars, as text. */
    JavadocText read(String raw) {
        Grammar.Parsed parsed = grammar.parse("/**\n" + raw.replace("*/", "*&#47;") + "\n*/ class $ {}");
        TreePath path =
                TreePath.getPath(parsed.unit(), parsed.unit().getTypeDecls().get(0));
        return JavadocText.of(DocTrees.instance(parsed.task()).getDocCommentTree(path));
    }

    private static Optional<JavadocText> find(Target target, Grammar.Parsed parsed) {
        Tree home = parsed.unit().getPackageName();
        if (!target.home().isEmpty() && !target.home().equals(String.valueOf(home))) {
            return Optional.empty();
        }
        List<? extends Tree> level = parsed.unit().getTypeDecls();
        Optional<ClassTree> type = Optional.empty();
        for (String name : target.types()) {
            type = level.stream()
                    .filter(ClassTree.class::isInstance)
                    .map(ClassTree.class::cast)
                    .filter(candidate -> candidate.getSimpleName().contentEquals(name))
                    .findFirst();
            if (type.isEmpty()) {
                return Optional.empty();
            }
            level = type.get().getMembers();
        }
        ClassTree owner = type.orElseThrow();
        Optional<Tree> member = target.member().isEmpty()
                ? Optional.of(owner)
                : owner.getMembers().stream()
                        .filter(candidate -> matches(candidate, target))
                        .map(Tree.class::cast)
                        .findFirst();
        // The constructor and the accessors of a record are documented at the record.
        return member.flatMap(tree -> comment(parsed, tree))
                .or(() -> owner.getKind() == Tree.Kind.RECORD ? comment(parsed, owner) : Optional.empty());
    }

    private static Optional<JavadocText> comment(Grammar.Parsed parsed, Tree tree) {
        DocCommentTree comment =
                DocTrees.instance(parsed.task()).getDocCommentTree(TreePath.getPath(parsed.unit(), tree));
        return Optional.ofNullable(comment).map(JavadocText::of);
    }

    private static boolean matches(Tree candidate, Target target) {
        if (candidate instanceof VariableTree field) {
            return target.parameters().isEmpty() && field.getName().contentEquals(target.member());
        }
        return candidate instanceof MethodTree method
                && method.getName().contentEquals(target.member())
                && target.parameters()
                        .filter(types -> types.equals(method.getParameters().stream()
                                .map(parameter -> simple(parameter.getType().toString()))
                                .toList()))
                        .isPresent();
    }

    private Map<String, List<SourceFile>> index() {
        if (files == null) {
            files = new HashMap<>();
            roots.forEach(this::add);
        }
        return files;
    }

    private void add(Path root) {
        try {
            if (Files.isDirectory(root)) {
                add(root, Optional.empty());
            } else if (Files.isRegularFile(root)) {
                try (FileSystem zip = FileSystems.newFileSystem(root)) {
                    for (Path top : zip.getRootDirectories()) {
                        add(top, Optional.of(root));
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the sources in " + root + " cannot be read", e);
        }
    }

    private void add(Path top, Optional<Path> archive) throws IOException {
        try (Stream<Path> walk = Files.walk(top)) {
            walk.filter(path -> path.toString().endsWith(".java")).forEach(path -> {
                SourceFile file = new SourceFile(archive, path.toString());
                files.computeIfAbsent(file.stem(), stem -> new ArrayList<>()).add(file);
            });
        }
    }
}
