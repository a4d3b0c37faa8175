package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import staunch.design.WellCase;

/** Cases on disk for tests: a copy of a directory, changed by exchanging text. */
final class Cases {
    static final Path ROOT = Path.of(System.getProperty("staunch.root"));
    static final Path BASE = ROOT.resolve("lib/ingest/src/test/resources/base");

    private final Path directory;

    private Cases(Path directory) {
        this.directory = directory;
    }

    static Cases copy(Path source, Path target) throws IOException {
        try (Stream<Path> files = Files.list(source)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, target.resolve(file.getFileName()));
            }
        }
        return new Cases(target);
    }

    Cases with(String file, String old, String replacement) throws IOException {
        String text = Files.readString(directory.resolve(file));
        assertTrue(text.contains(old), file + " has no \"" + old + "\"");
        Files.writeString(directory.resolve(file), text.replace(old, replacement));
        return this;
    }

    Cases with(String old, String replacement) throws IOException {
        return with("case.yaml", old, replacement);
    }

    WellCase read() throws CaseFaults {
        return CaseReader.read(directory);
    }
}
