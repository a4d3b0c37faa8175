package staunch.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file as a whole or not at all: beside its place first, then moved there. */
public final class WholeFile {
    private WholeFile() {}

    /** Gives the content of a file. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    public static Path write(Path file, Content content) throws IOException {
        Path directory = file.toAbsolutePath().getParent();
        Files.createDirectories(directory);
        Path beside = Files.createTempFile(directory, "." + file.getFileName(), ".part");
        try {
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                OutputStream out = Channels.newOutputStream(channel);
                content.writeTo(out);
                out.flush();
                channel.force(true);
            }
            readableByAll(beside);
            try {
                Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(beside);
        }
        return file;
    }

    /** A temporary file is its owner's alone; a page is there to be passed round. */
    private static void readableByAll(Path file) {
        if (!file.toFile().setReadable(true, false)) {
            throw new IllegalStateException(file + " cannot be made readable");
        }
    }
}
