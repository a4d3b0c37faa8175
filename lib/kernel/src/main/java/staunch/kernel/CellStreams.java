package staunch.kernel;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** Routes {@code System.out}, {@code System.err} and {@code System.in} to the cell a thread works for. */
final class CellStreams {
    private final PrintStream out;
    private final PrintStream err;
    private final InputStream in;

    private CellStreams(PrintStream out, PrintStream err, InputStream in) {
        this.out = out;
        this.err = err;
        this.in = in;
    }

    /** Replaces the process's streams; threads that work for no cell still reach the original ones. */
    static CellStreams install() {
        CellStreams original = new CellStreams(System.out, System.err, System.in);
        System.setOut(new Router(StreamName.STDOUT, original.out));
        System.setErr(new Router(StreamName.STDERR, original.err));
        System.setIn(new Asker(original.in));
        return original;
    }

    void restore() {
        System.setOut(out);
        System.setErr(err);
        System.setIn(in);
    }

    /**
     * Each call of a print method is one piece of text. It overrides them all rather than an output stream below,
     * because the encoder of a PrintStream keeps text back when it is interrupted and would add it to a later cell.
     */
    private static final class Router extends PrintStream {
        private final StreamName name;
        private final PrintStream original;

        Router(StreamName name, PrintStream original) {
            super(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
            this.name = name;
            this.original = original;
        }

        private void text(String text) {
            Optional<CellContext> cell = CellContext.current();
            if (cell.isPresent()) {
                cell.get().write(name, text);
            } else {
                original.print(text);
            }
        }

        @Override
        public void write(int b) {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] chunk) {
            write(chunk, 0, chunk.length);
        }

        @Override
        public void writeBytes(byte[] chunk) {
            write(chunk, 0, chunk.length);
        }

        @Override
        public void write(byte[] chunk, int offset, int length) {
            Optional<CellContext> cell = CellContext.current();
            if (cell.isPresent()) {
                cell.get().write(name, chunk, offset, length);
            } else {
                original.write(chunk, offset, length);
            }
        }

        @Override
        public void flush() {
            CellContext.current().ifPresentOrElse(CellContext::flush, original::flush);
        }

        @Override
        public void close() {
            flush();
        }

        @Override
        public void print(boolean value) {
            text(String.valueOf(value));
        }

        @Override
        public void print(char value) {
            text(String.valueOf(value));
        }

        @Override
        public void print(int value) {
            text(String.valueOf(value));
        }

        @Override
        public void print(long value) {
            text(String.valueOf(value));
        }

        @Override
        public void print(float value) {
            text(String.valueOf(value));
        }

        @Override
        public void print(double value) {
            text(String.valueOf(value));
        }

        @Override
        public void print(char[] value) {
            text(String.valueOf(value));
        }

        @Override
        public void print(String value) {
            text(String.valueOf(value));
        }

        @Override
        public void print(Object value) {
            text(String.valueOf(value));
        }

        @Override
        public void println() {
            text("\n");
        }

        @Override
        public void println(boolean value) {
            text(value + "\n");
        }

        @Override
        public void println(char value) {
            text(value + "\n");
        }

        @Override
        public void println(int value) {
            text(value + "\n");
        }

        @Override
        public void println(long value) {
            text(value + "\n");
        }

        @Override
        public void println(float value) {
            text(value + "\n");
        }

        @Override
        public void println(double value) {
            text(value + "\n");
        }

        @Override
        public void println(char[] value) {
            text(String.valueOf(value) + "\n");
        }

        @Override
        public void println(String value) {
            text(value + "\n");
        }

        @Override
        public void println(Object value) {
            text(value + "\n");
        }

        @Override
        public PrintStream printf(String format, Object... values) {
            return format(format, values);
        }

        @Override
        public PrintStream printf(Locale locale, String format, Object... values) {
            return format(locale, format, values);
        }

        @Override
        public PrintStream format(String format, Object... values) {
            text(String.format(format, values));
            return this;
        }

        @Override
        public PrintStream format(Locale locale, String format, Object... values) {
            text(String.format(locale, format, values));
            return this;
        }

        @Override
        public PrintStream append(CharSequence value) {
            text(String.valueOf(value));
            return this;
        }

        @Override
        public PrintStream append(CharSequence value, int start, int end) {
            text(String.valueOf(value).substring(start, end));
            return this;
        }

        @Override
        public PrintStream append(char value) {
            text(String.valueOf(value));
            return this;
        }
    }

    /** Asks the front end for a line whenever the last one is used up. */
    private static final class Asker extends InputStream {
        private final InputStream original;
        private CellContext asked;
        private byte[] line = {};
        private int next;

        Asker(InputStream original) {
            this.original = original;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public synchronized int read(byte[] target, int offset, int length) throws IOException {
            Optional<CellContext> cell = CellContext.current();
            if (cell.isEmpty()) {
                return original.read(target, offset, length);
            }
            if (length == 0) {
                return 0;
            }
            // What one cell did not read is not the next cell's input.
            if (next == line.length || asked != cell.get()) {
                asked = cell.get();
                line = (cell.get().readLine("", false) + "\n").getBytes(StandardCharsets.UTF_8);
                next = 0;
            }
            int count = Math.min(length, line.length - next);
            System.arraycopy(line, next, target, offset, count);
            next += count;
            return count;
        }

        @Override
        public synchronized int available() {
            return line.length - next;
        }
    }
}
