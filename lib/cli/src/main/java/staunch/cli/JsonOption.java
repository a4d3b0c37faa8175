package staunch.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import staunch.report.WholeFile;

/** Where the results go as JSON. */
final class JsonOption {
    private static final String STANDARD_OUTPUT = "-";

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Write the results as JSON, in SI; the file is replaced as a whole. - writes them to standard"
                    + " output in place of the text.")
    private String file;

    boolean isGiven() {
        return file != null;
    }

    /** Writes the results where they are asked for. */
    void write(WholeFile.Content results, Terminal terminal) throws IOException {
        if (!isGiven()) {
            return;
        }
        ByteArrayOutputStream json = new ByteArrayOutputStream();
        results.writeTo(json);
        if (takesStandardOutput()) {
            json.writeTo(terminal.bytes());
            terminal.bytes().flush();
        } else {
            WholeFile.write(Path.of(file), json::writeTo);
        }
    }

    /** Where text for a person goes: nowhere if standard output holds JSON. */
    PrintWriter text(Terminal terminal) {
        return takesStandardOutput() ? new PrintWriter(Writer.nullWriter()) : terminal.out();
    }

    private boolean takesStandardOutput() {
        return STANDARD_OUTPUT.equals(file);
    }
}
