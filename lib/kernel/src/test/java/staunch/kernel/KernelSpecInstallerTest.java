package staunch.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KernelSpecInstallerTest {
    @TempDir
    private Path folder;

    private final KernelSpecInstaller installer = new KernelSpecInstaller("sample", "Sample (Java)");

    private KernelLaunch launch() throws IOException {
        Path jar = Files.writeString(folder.resolve("some tool.jar"), "");
        return new KernelLaunch(
                jar, KernelLaunch.fastStart(), List.of("kernel", "run", KernelLaunch.CONNECTION_FILE), List.of());
    }

    @Test
    void writesTheSpecAndItsLogos() throws IOException {
        Path directory =
                installer.install(KernelSpecDirectory.prefix(folder), launch()).directory();
        assertEquals(folder.resolve("share/jupyter/kernels/sample"), directory);
        JsonObject spec = JsonParser.parseString(Files.readString(directory.resolve("kernel.json")))
                .getAsJsonObject();
        assertEquals("Sample (Java)", spec.get("display_name").getAsString());
        assertEquals("java", spec.get("language").getAsString());
        assertEquals("message", spec.get("interrupt_mode").getAsString());
        JsonArray command = spec.getAsJsonArray("argv");
        assertTrue(Files.isExecutable(Path.of(command.get(0).getAsString())));
        List<String> tail = command.asList().subList(command.size() - 5, command.size()).stream()
                .map(word -> word.getAsString())
                .toList();
        assertEquals(
                List.of("-jar", folder.resolve("some tool.jar").toString(), "kernel", "run", "{connection_file}"),
                tail);
        for (int size : new int[] {32, 64}) {
            Path logo = directory.resolve("logo-" + size + "x" + size + ".png");
            assertEquals(size, ImageIO.read(logo.toFile()).getWidth());
        }
        assertTrue(Files.readString(directory.resolve("logo-svg.svg")).startsWith("<svg"));
    }

    @Test
    void removesWhatItHasWrittenAndNothingElse() throws IOException {
        KernelSpecDirectory where = new KernelSpecDirectory(folder.resolve("kernels"));
        Path directory = installer.install(where, launch()).directory();
        assertTrue(installer.uninstall(where));
        assertFalse(Files.exists(directory));
        assertFalse(installer.uninstall(where));
        assertTrue(Files.exists(where.path()));
    }

    @Test
    void saysWhatIsMissing() {
        KernelLaunch launch =
                new KernelLaunch(folder.resolve("absent.jar"), List.of(), List.of("{connection_file}"), List.of());
        assertThrows(IOException.class, () -> installer.install(KernelSpecDirectory.prefix(folder), launch));
        assertThrows(
                IllegalArgumentException.class,
                () -> new KernelLaunch(folder.resolve("x.jar"), List.of(), List.of("run"), List.of()));
    }

    @Test
    void findsTheUsersFolderAsJupyterDoes() {
        Path home = Path.of("/home/u");
        assertEquals(
                Path.of("/data/kernels"),
                KernelSpecDirectory.user(Map.of("JUPYTER_DATA_DIR", "/data", "XDG_DATA_HOME", "/x"), "Linux", home)
                        .path());
        assertEquals(
                Path.of("/x/jupyter/kernels"),
                KernelSpecDirectory.user(Map.of("XDG_DATA_HOME", "/x"), "Linux", home)
                        .path());
        assertEquals(
                home.resolve(".local/share/jupyter/kernels"),
                KernelSpecDirectory.user(Map.of(), "Linux", home).path());
        assertEquals(
                home.resolve("Library/Jupyter/kernels"),
                KernelSpecDirectory.user(Map.of(), "Mac OS X", home).path());
        assertEquals(
                Path.of("/roaming/jupyter/kernels"),
                KernelSpecDirectory.user(Map.of("APPDATA", "/roaming"), "Windows 11", home)
                        .path());
    }
}
