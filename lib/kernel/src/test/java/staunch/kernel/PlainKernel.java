package staunch.kernel;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * A kernel without anything of an application: {@code PlainKernel CONNECTION_FILE [SOURCE_ROOT…]} serves a front end,
 * {@code PlainKernel warm-up} starts, is used once and ends.
 */
public final class PlainKernel {
    private static final KernelIdentity IDENTITY =
            new KernelIdentity("plain", "1", "A plain Java kernel", Map.of("JDK", "https://docs.oracle.com"));

    private PlainKernel() {}

    public static void main(String[] args) throws IOException {
        if (args[0].equals("warm-up")) {
            KernelProcess.warmUp(SessionOptions.standard(), IDENTITY);
            System.exit(0);
        }
        List<Path> sources = Arrays.stream(args).skip(1).map(Path::of).toList();
        KernelProcess.run(Path.of(args[0]), SessionOptions.standard().withSources(sources), IDENTITY);
    }
}
