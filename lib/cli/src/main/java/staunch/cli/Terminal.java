package staunch.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.Help.Ansi;

/**
 * Where a command writes.
 *
 * @param bytes standard output, for machine output
 * @param out standard output, for text
 * @param err standard error: faults and progress
 * @param interactive whether a person watches: only then are colours and a progress bar used
 */
record Terminal(OutputStream bytes, PrintWriter out, PrintWriter err, boolean interactive) {
    /** The terminal that started this program. */
    static Terminal ofSystem() {
        Console console = System.console();
        OutputStream out = new FileOutputStream(FileDescriptor.out);
        OutputStream err = new FileOutputStream(FileDescriptor.err);
        Charset charset = charset(console);
        return new Terminal(
                out, new PrintWriter(out, true, charset), new PrintWriter(err, true, charset), console != null);
    }

    /** A file or a pipe gets UTF-8 like every file the program writes; so does a console that only claims ASCII. */
    private static Charset charset(Console console) {
        return console == null || console.charset().equals(StandardCharsets.US_ASCII)
                ? StandardCharsets.UTF_8
                : console.charset();
    }

    /** A text in a style, such as {@code bold,red}, where a person watches and wants colours. */
    String styled(String style, String text) {
        if (!interactive || !Ansi.AUTO.enabled()) {
            return text;
        }
        Ansi.IStyle[] styles = Ansi.Style.parse(style);
        return Ansi.Style.on(styles) + text + Ansi.Style.off(styles);
    }
}
