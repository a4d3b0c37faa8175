package staunch.kernel;

import java.io.File;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import jdk.jshell.execution.LoaderDelegate;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;
import jdk.jshell.spi.ExecutionControl.ClassInstallException;
import jdk.jshell.spi.ExecutionControl.EngineTerminationException;
import jdk.jshell.spi.ExecutionControl.InternalException;

/** Defines the classes JShell has compiled, with the guards of {@link SnippetGuard} put in. */
final class SnippetLoader implements LoaderDelegate {
    private final Loader loader;
    private final List<Class<?>> latest = new ArrayList<>();

    SnippetLoader(ClassLoader parent, List<Path> classPath) {
        this.loader = new Loader(urls(classPath), parent);
    }

    private static URL[] urls(List<Path> classPath) {
        URL[] urls = new URL[classPath.size()];
        for (int i = 0; i < urls.length; i++) {
            try {
                urls[i] = classPath.get(i).toUri().toURL();
            } catch (MalformedURLException e) {
                throw new IllegalArgumentException(classPath.get(i) + " cannot be on a class path", e);
            }
        }
        return urls;
    }

    ClassLoader classLoader() {
        return loader;
    }

    /** The classes defined since the last call. */
    List<Class<?>> takeLatest() {
        List<Class<?>> taken = List.copyOf(latest);
        latest.clear();
        return taken;
    }

    @Override
    public void load(ClassBytecodes[] compiled) throws ClassInstallException {
        boolean[] loaded = new boolean[compiled.length];
        try {
            for (ClassBytecodes one : compiled) {
                loader.compiled.put(one.name(), SnippetGuard.guard(one.bytecodes()));
            }
            for (int i = 0; i < compiled.length; i++) {
                latest.add(loader.loadClass(compiled[i].name()));
                loaded[i] = true;
            }
        } catch (ClassNotFoundException | LinkageError e) {
            throw new ClassInstallException(e.toString(), loaded);
        }
    }

    @Override
    public void classesRedefined(ClassBytecodes[] compiled) {
        // Redefinition is refused by the execution control, so JShell loads a class of a new name instead.
    }

    @Override
    public void addToClasspath(String path) throws EngineTerminationException, InternalException {
        try {
            for (String entry : path.split(File.pathSeparator)) {
                loader.addURL(Path.of(entry).toUri().toURL());
            }
        } catch (MalformedURLException e) {
            throw new InternalException(e.toString());
        }
    }

    @Override
    public Class<?> findClass(String name) throws ClassNotFoundException {
        return loader.loadClass(name);
    }

    private static final class Loader extends URLClassLoader {
        private final Map<String, byte[]> compiled = new HashMap<>();

        Loader(URL[] classPath, ClassLoader parent) {
            super("cells", classPath, parent);
        }

        @Override
        protected void addURL(URL url) {
            super.addURL(url);
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            byte[] bytes = compiled.remove(name);
            return bytes == null ? super.findClass(name) : defineClass(name, bytes, 0, bytes.length);
        }
    }
}
