package staunch.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Version of the library, written by the build. */
final class Version implements IVersionProvider {
    static final String LIBRARY = read();

    private static String read() {
        try (InputStream in = Version.class.getResourceAsStream("build.properties")) {
            Properties properties = new Properties();
            properties.load(in);
            return properties.getProperty("version");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String[] getVersion() {
        return new String[] {"staunch " + LIBRARY, "Java " + Runtime.version()};
    }
}
