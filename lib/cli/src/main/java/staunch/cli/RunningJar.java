package staunch.cli;

import java.net.URISyntaxException;
import java.nio.file.Path;

/** The archive or folder of classes that this program runs from. */
final class RunningJar {
    private RunningJar() {}

    static Path path() {
        try {
            return Path.of(RunningJar.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException("the place of the program is no path", e);
        }
    }
}
