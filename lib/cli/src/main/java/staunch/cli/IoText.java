package staunch.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** What went wrong with a file, in words: the platform's own message is often no more than its name. */
final class IoText {
    private IoText() {}

    static String of(IOException e) {
        if (e instanceof AccessDeniedException denied) {
            return denied.getFile() + " may not be written; check the rights on it and its folder";
        }
        if (e instanceof NoSuchFileException missing) {
            return missing.getFile() + " is not there";
        }
        if (e instanceof FileAlreadyExistsException there) {
            return there.getFile() + " is there already and is no folder";
        }
        if (e instanceof NotDirectoryException file) {
            return file.getFile() + " is no folder";
        }
        if (e instanceof FileSystemException file) {
            return file.getFile() + (file.getReason() == null ? "" : ": " + file.getReason());
        }
        return e.getMessage() == null ? e.toString() : e.getMessage();
    }
}
