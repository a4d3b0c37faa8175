package staunch.kernel;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * How a front end starts the kernel: {@code java OPTIONS -jar JAR ARGUMENTS}.
 *
 * @param jar the runnable archive
 * @param jvmOptions options of the JVM, as a list such as {@link #fastStart()}
 * @param arguments what follows the archive; one of them is {@code {connection_file}}, which the front end replaces
 * @param warmUp arguments with which the archive starts a kernel, uses it once and ends, so that the classes it loads can
 *     be kept; empty to keep none
 */
public record KernelLaunch(Path jar, List<String> jvmOptions, List<String> arguments, List<String> warmUp) {
    public static final String CONNECTION_FILE = "{connection_file}";

    public KernelLaunch {
        jar = jar.toAbsolutePath().normalize();
        jvmOptions = List.copyOf(jvmOptions);
        arguments = List.copyOf(arguments);
        warmUp = List.copyOf(warmUp);
        if (!arguments.contains(CONNECTION_FILE)) {
            throw new IllegalArgumentException(
                    "the arguments " + arguments + " lack " + CONNECTION_FILE + ", which the front end replaces");
        }
    }

    /** Options with which a notebook's first results come soonest; heavy computing runs slower with them. */
    public static List<String> fastStart() {
        return List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Djava.awt.headless=true");
    }

    /** Options for notebooks that compute for long: the JVM's full compiler, a little later with the first result. */
    public static List<String> fullSpeed() {
        return List.of("-XX:+UseSerialGC", "-Djava.awt.headless=true");
    }

    List<String> command(List<String> more, List<String> tail) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(more);
        command.addAll(jvmOptions);
        command.add("-jar");
        command.add(jar.toString());
        command.addAll(tail);
        return command;
    }
}
