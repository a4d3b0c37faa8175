package staunch.kernel;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** The folder in which Jupyter looks for kernels, one folder for each. */
public record KernelSpecDirectory(Path path) {
    /** Where the current user's kernels are, as Jupyter itself decides it on this system. */
    public static KernelSpecDirectory user() {
        return user(System.getenv(), System.getProperty("os.name"), Path.of(System.getProperty("user.home")));
    }

    static KernelSpecDirectory user(Map<String, String> environment, String system, Path home) {
        return new KernelSpecDirectory(dataDirectory(environment, system, home).resolve("kernels"));
    }

    private static Path dataDirectory(Map<String, String> environment, String system, Path home) {
        Optional<Path> chosen = variable(environment, "JUPYTER_DATA_DIR");
        if (chosen.isPresent()) {
            return chosen.get();
        }
        if (system.startsWith("Mac")) {
            return home.resolve("Library").resolve("Jupyter");
        }
        if (system.startsWith("Windows")) {
            return variable(environment, "APPDATA")
                    .map(roaming -> roaming.resolve("jupyter"))
                    .orElseGet(() -> home.resolve(".jupyter").resolve("data"));
        }
        return variable(environment, "XDG_DATA_HOME")
                .orElseGet(() -> home.resolve(".local").resolve("share"))
                .resolve("jupyter");
    }

    private static Optional<Path> variable(Map<String, String> environment, String name) {
        return Optional.ofNullable(environment.get(name))
                .filter(value -> !value.isBlank())
                .map(Path::of);
    }

    /** Where the kernels of an installation or environment are. */
    public static KernelSpecDirectory prefix(Path prefix) {
        return new KernelSpecDirectory(
                prefix.resolve("share").resolve("jupyter").resolve("kernels"));
    }
}
