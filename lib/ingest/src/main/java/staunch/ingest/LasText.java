package staunch.ingest;

import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Lines of a file, whatever ends them (LF, CR LF, CR), one at a time in a reused array of characters. */
final class LasText implements Closeable {
    /** Longest line that is read, in characters: more than ten thousand curves side by side. */
    static final int LONGEST_LINE = 1_000_000;

    static final Charset WESTERN = Charset.forName("windows-1252");
    private static final int SNIFFED = 4096;

    private final Reader in;
    private final char[] buffer = new char[1 << 16];
    private int position;
    private int filled;
    private boolean afterReturn;

    private char[] line = new char[1024];
    private int length;
    private int number;

    private LasText(Reader in) {
        this.in = in;
    }

    /** What the first bytes of a file say of it. */
    enum Content {
        TEXT,
        EMPTY,
        POINT_CLOUD,
        ZIP,
        BINARY
    }

    /** First bytes of a file: what it is and how its characters are encoded. */
    record Head(Content content, Charset charset, int markLength) {
        static Head of(Path path) throws IOException {
            byte[] b = new byte[SNIFFED];
            int n;
            try (InputStream in = Files.newInputStream(path)) {
                n = in.readNBytes(b, 0, SNIFFED);
            }
            return of(Arrays.copyOf(b, n));
        }

        private static Head of(byte[] b) {
            if (b.length == 0) {
                return new Head(Content.EMPTY, StandardCharsets.UTF_8, 0);
            }
            if (starts(b, 'L', 'A', 'S', 'F')) {
                return new Head(Content.POINT_CLOUD, StandardCharsets.UTF_8, 0);
            }
            if (starts(b, 'P', 'K', 3, 4) || starts(b, 0x1f, 0x8b)) {
                return new Head(Content.ZIP, StandardCharsets.UTF_8, 0);
            }
            if (starts(b, 0xef, 0xbb, 0xbf)) {
                return new Head(Content.TEXT, StandardCharsets.UTF_8, 3);
            }
            if (starts(b, 0xff, 0xfe)) {
                return new Head(Content.TEXT, StandardCharsets.UTF_16LE, 2);
            }
            if (starts(b, 0xfe, 0xff)) {
                return new Head(Content.TEXT, StandardCharsets.UTF_16BE, 2);
            }
            int even = 0;
            int odd = 0;
            for (int i = 0; i < b.length; i++) {
                if (b[i] == 0 && i % 2 == 0) {
                    even++;
                } else if (b[i] == 0) {
                    odd++;
                }
            }
            if (even == 0 && odd == 0) {
                return new Head(Content.TEXT, StandardCharsets.UTF_8, 0);
            }
            // Latin text in two bytes a character has nearly all of its zero bytes on one side.
            if (odd > b.length / 4 && even == 0) {
                return new Head(Content.TEXT, StandardCharsets.UTF_16LE, 0);
            }
            if (even > b.length / 4 && odd == 0) {
                return new Head(Content.TEXT, StandardCharsets.UTF_16BE, 0);
            }
            return new Head(Content.BINARY, StandardCharsets.UTF_8, 0);
        }

        private static boolean starts(byte[] b, int... first) {
            for (int i = 0; i < first.length; i++) {
                if (i >= b.length || (b[i] & 0xff) != first[i]) {
                    return false;
                }
            }
            return true;
        }
    }

    /** Opens a file; reading fails with a {@link java.nio.charset.CharacterCodingException} at bytes of no character. */
    static LasText open(Path path, Charset charset, int markLength) throws IOException {
        InputStream in = new BufferedInputStream(Files.newInputStream(path), 1 << 16);
        try {
            in.skipNBytes(markLength);
            boolean strict = !charset.equals(WESTERN);
            CodingErrorAction action = strict ? CodingErrorAction.REPORT : CodingErrorAction.REPLACE;
            CharsetDecoder decoder =
                    charset.newDecoder().onMalformedInput(action).onUnmappableCharacter(action);
            return new LasText(new InputStreamReader(in, decoder));
        } catch (IOException e) {
            in.close();
            throw e;
        }
    }

    /** Thrown at a line longer than {@link #LONGEST_LINE}. */
    static final class LineTooLong extends IOException {
        private static final long serialVersionUID = 1L;
    }

    /** Moves to the next line; false at the end. */
    boolean next() throws IOException {
        length = 0;
        boolean any = false;
        while (true) {
            if (position == filled) {
                filled = Math.max(in.read(buffer, 0, buffer.length), 0);
                position = 0;
                if (filled == 0) {
                    number += any ? 1 : 0;
                    return any;
                }
            }
            if (afterReturn) {
                afterReturn = false;
                if (buffer[position] == '\n') {
                    position++;
                    continue;
                }
            }
            int start = position;
            while (position < filled && buffer[position] != '\n' && buffer[position] != '\r') {
                position++;
            }
            append(start, position);
            any = true;
            if (position < filled) {
                afterReturn = buffer[position++] == '\r';
                number++;
                return true;
            }
        }
    }

    private void append(int from, int to) throws LineTooLong {
        int more = to - from;
        if (length + more > LONGEST_LINE) {
            number++;
            throw new LineTooLong();
        }
        if (length + more > line.length) {
            line = Arrays.copyOf(line, Math.max(2 * line.length, length + more));
        }
        System.arraycopy(buffer, from, line, length, more);
        length += more;
    }

    /** Characters of the line; only the first {@link #length()} count. */
    char[] line() {
        return line;
    }

    int length() {
        return length;
    }

    /** Number of the line, from 1. */
    int number() {
        return number;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
