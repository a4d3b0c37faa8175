package staunch.kernel;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** A kernel without anything of an application: {@code PlainKernel CONNECTION_FILE [SOURCE_ROOT…]}. */
public final class PlainKernel {
    private PlainKernel() {}

    public static void main(String[] args) throws IOException {
        List<Path> sources = Arrays.stream(args).skip(1).map(Path::of).toList();
        KernelProcess.run(
                Path.of(args[0]),
                SessionOptions.standard().withSources(sources),
                new KernelIdentity("plain", "1", "A plain Java kernel", Map.of("JDK", "https://docs.oracle.com")));
    }
}
