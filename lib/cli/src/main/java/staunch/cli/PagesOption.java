package staunch.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Where pages go, and in which forms. */
final class PagesOption {
    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder to write into. Default: target/review/ and the name of the case.")
    private Path out;

    @Option(names = "--pdf", description = "Write the same as PDF beside the page.")
    private boolean pdf;

    Path directory(CaseArgument argument) {
        return out == null ? Path.of("target", "review", argument.name()) : out;
    }

    boolean pdf() {
        return pdf;
    }
}
