package staunch.kernel;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the embedding application gives a session.
 *
 * @param imports what every cell may use without importing it, as written after {@code import}: {@code java.util.*}
 * @param startup declarations evaluated before the first cell
 * @param displays how values are shown
 * @param errors how faults read
 * @param sources source folders and archives holding {@code .java} files, from which Javadoc is shown
 * @param classPath what cells are compiled and run against
 * @param folder where the notebook lies, if that is not the folder this JVM was started in
 */
public record SessionOptions(
        List<String> imports,
        List<String> startup,
        DisplayRegistry displays,
        ErrorDescriber errors,
        List<Path> sources,
        List<Path> classPath,
        Path folder) {
    public SessionOptions {
        imports = List.copyOf(imports);
        startup = List.copyOf(startup);
        sources = List.copyOf(sources);
        classPath = List.copyOf(classPath);
        folder = folder.toAbsolutePath().normalize();
    }

    /** The usual JDK packages, the display functions, and this JVM's own class path. */
    public static SessionOptions standard() {
        return new SessionOptions(
                List.of(
                        "java.io.*",
                        "java.math.*",
                        "java.nio.file.*",
                        "java.util.*",
                        "java.util.concurrent.*",
                        "java.util.function.*",
                        "java.util.stream.*",
                        "static staunch.kernel.Notebook.*"),
                List.of(),
                DisplayRegistry.standard(),
                ErrorDescriber.none(),
                List.of(),
                ownClassPath(),
                Path.of(""));
    }

    public SessionOptions withImports(List<String> more) {
        List<String> all =
                Stream.concat(imports.stream(), more.stream()).distinct().toList();
        return new SessionOptions(all, startup, displays, errors, sources, classPath, folder);
    }

    public SessionOptions withStartup(List<String> declarations) {
        return new SessionOptions(imports, declarations, displays, errors, sources, classPath, folder);
    }

    public SessionOptions withDisplays(DisplayRegistry registry) {
        return new SessionOptions(imports, startup, registry, errors, sources, classPath, folder);
    }

    public SessionOptions withErrors(ErrorDescriber describer) {
        return new SessionOptions(imports, startup, displays, describer, sources, classPath, folder);
    }

    public SessionOptions withSources(List<Path> roots) {
        return new SessionOptions(imports, startup, displays, errors, roots, classPath, folder);
    }

    public SessionOptions withClassPath(List<Path> entries) {
        return new SessionOptions(imports, startup, displays, errors, sources, entries, folder);
    }

    public SessionOptions withFolder(Path notebookFolder) {
        return new SessionOptions(imports, startup, displays, errors, sources, classPath, notebookFolder);
    }

    private static List<Path> ownClassPath() {
        return Stream.of(System.getProperty("java.class.path", "").split(File.pathSeparator))
                .filter(entry -> !entry.isBlank())
                .map(entry -> Path.of(entry).toAbsolutePath())
                .toList();
    }
}
