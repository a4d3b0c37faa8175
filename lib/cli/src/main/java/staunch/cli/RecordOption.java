package staunch.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import staunch.design.RunRecord;
import staunch.ingest.RecordFile;
import staunch.report.WholeFile;

/** Where a run leaves its record. */
final class RecordOption {
    @Option(
            names = "--record",
            paramLabel = "FILE",
            description = "Write the record of this run: everything it was computed from and what it found, as text."
                    + " A later run can be held against it (staunch rerun).")
    private Path file;

    boolean isGiven() {
        return file != null;
    }

    /** Writes the record where it is asked for. */
    void write(RunRecord record) throws IOException {
        if (isGiven()) {
            write(record, file);
        }
    }

    static Path write(RunRecord record, Path file) throws IOException {
        byte[] text = RecordFile.text(record).getBytes(StandardCharsets.UTF_8);
        return WholeFile.write(file, out -> out.write(text));
    }
}
