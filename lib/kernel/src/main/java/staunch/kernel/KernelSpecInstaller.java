package staunch.kernel;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Makes the kernel known to Jupyter, and unknown again. */
public final class KernelSpecInstaller {
    private static final String SPEC = "kernel.json";
    private static final String ARCHIVE = "classes.jsa";
    private static final List<String> LOGOS = List.of("logo-32x32.png", "logo-64x64.png", "logo-svg.svg");
    private static final long DUMP_SECONDS = 120;

    private final String name;
    private final String displayName;

    /**
     * @param name what {@code jupyter --kernel} and the metadata of notebooks call the kernel
     * @param displayName what menus call it
     */
    public KernelSpecInstaller(String name, String displayName) {
        this.name = name;
        this.displayName = displayName;
    }

    /**
     * What an installation has made.
     *
     * @param directory the folder of the kernel
     * @param classArchive whether an archive of loaded classes was made, with which the kernel starts faster
     */
    public record Installed(Path directory, boolean classArchive) {}

    /**
     * Writes the folder {@code where/name}, replacing an earlier installation of the same kernel.
     *
     * @throws IOException if it cannot be written
     */
    public Installed install(KernelSpecDirectory where, KernelLaunch launch) throws IOException {
        if (!Files.isRegularFile(launch.jar())) {
            throw new IOException("there is no archive " + launch.jar() + ": build it first, then install the kernel");
        }
        Path directory = where.path().resolve(name);
        Files.createDirectories(directory);
        for (String logo : LOGOS) {
            try (InputStream drawing = KernelSpecInstaller.class.getResourceAsStream(logo)) {
                Files.copy(drawing, directory.resolve(logo), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Path archive = directory.resolve(ARCHIVE).toAbsolutePath();
        Files.deleteIfExists(archive);
        boolean dumped = !launch.warmUp().isEmpty() && dump(launch, archive);
        List<String> options = new ArrayList<>();
        if (dumped) {
            // An archive that no longer fits the jar is passed over in silence: the kernel only starts slower.
            options.addAll(List.of(
                    "-XX:SharedArchiveFile=" + archive, "-Xshare:auto", "-Xlog:disable", "-Xlog:all=error:stderr"));
        }
        JsonObject spec = Json.object(
                "argv",
                launch.command(options, launch.arguments()),
                "display_name",
                displayName,
                "language",
                "java",
                "interrupt_mode",
                "message",
                "metadata",
                Map.of("debugger", false));
        Files.writeString(
                directory.resolve(SPEC),
                new GsonBuilder()
                                .setPrettyPrinting()
                                .disableHtmlEscaping()
                                .create()
                                .toJson(spec) + "\n");
        return new Installed(directory, dumped);
    }

    /** A kernel without the archive works as well, so a JVM that cannot make one is no fault. */
    private static boolean dump(KernelLaunch launch, Path archive) throws IOException {
        Process process = new ProcessBuilder(launch.command(
                        List.of("-XX:ArchiveClassesAtExit=" + archive, "-Xlog:disable"), launch.warmUp()))
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            if (!process.waitFor(DUMP_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor();
            }
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
        boolean dumped = !process.isAlive() && process.exitValue() == 0 && Files.isRegularFile(archive);
        if (!dumped) {
            Files.deleteIfExists(archive);
        }
        return dumped;
    }

    /**
     * Removes what {@link #install} has written there.
     *
     * @return whether there was anything to remove
     * @throws IOException if it cannot be removed
     */
    public boolean uninstall(KernelSpecDirectory where) throws IOException {
        Path directory = where.path().resolve(name);
        boolean found = Files.deleteIfExists(directory.resolve(SPEC));
        for (String logo : LOGOS) {
            found |= Files.deleteIfExists(directory.resolve(logo));
        }
        found |= Files.deleteIfExists(directory.resolve(ARCHIVE));
        if (found) {
            Files.deleteIfExists(directory);
        }
        return found;
    }
}
