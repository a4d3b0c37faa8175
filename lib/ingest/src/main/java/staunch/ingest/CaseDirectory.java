package staunch.ingest;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import staunch.design.InputFile;

/** Reads the files of one case as text and keeps their hashes; nothing outside the directory is opened. */
final class CaseDirectory {
    static final int YAML_LIMIT = 1 << 20;
    static final int CSV_LIMIT = 16 << 20;

    private final Path root;
    private final String mainFile;
    private final FaultLog log;
    private final Map<String, String> hashes = new TreeMap<>();
    private final Optional<List<InputFile>> recorded;

    CaseDirectory(Path root, String mainFile, FaultLog log) {
        this(root, mainFile, log, Optional.empty());
    }

    private CaseDirectory(Path root, String mainFile, FaultLog log, Optional<List<InputFile>> recorded) {
        this.root = root;
        this.mainFile = mainFile;
        this.log = log;
        this.recorded = recorded;
    }

    /** Stands for files that were read by an earlier run; none of them is opened. */
    static CaseDirectory recorded(List<InputFile> files, FaultLog log) {
        return new CaseDirectory(Path.of(""), "", log, Optional.of(files));
    }

    /** Whether it stands for files that an earlier run read. */
    boolean isRecorded() {
        return recorded.isPresent();
    }

    /** Text of the case file. */
    String main() {
        return text(root.resolve(mainFile), mainFile, YAML_LIMIT, new Place(mainFile, 0, ""), "");
    }

    /** Text of a CSV file named in the case. */
    String csv(Item.Scalar name) {
        Path path = inside(name);
        String relative = root.relativize(path).toString().replace('\\', '/');
        return text(path, relative, CSV_LIMIT, name.place(), name.text());
    }

    /** Path of a CSV file relative to the case directory. */
    String relative(Item.Scalar name) {
        return root.relativize(inside(name)).toString().replace('\\', '/');
    }

    /** Path of a data file named in the case; its hash is kept. */
    Path data(Item.Scalar name) {
        Path path = inside(name);
        keep(path, relative(name), name.place());
        return path;
    }

    /** Keeps the hash of a file that is read by others. */
    void keep(Path path, String shown, Place place) {
        try (DigestInputStream in = new DigestInputStream(Files.newInputStream(path), digest())) {
            in.transferTo(OutputStream.nullOutputStream());
            hashes.put(shown, HexFormat.of().formatHex(in.getMessageDigest().digest()));
        } catch (IOException e) {
            log.add(place, shown, "\"" + shown + "\" cannot be read", "check that it is a file and may be read");
            throw new FaultLog.Unreadable();
        }
    }

    List<InputFile> files() {
        List<InputFile> files = new ArrayList<>(recorded.orElse(List.of()));
        if (hashes.containsKey(mainFile)) {
            files.add(new InputFile(mainFile, hashes.get(mainFile)));
        }
        hashes.forEach((path, hash) -> {
            if (!path.equals(mainFile)) {
                files.add(new InputFile(path, hash));
            }
        });
        return files;
    }

    private Path inside(Item.Scalar name) {
        Path asked;
        try {
            asked = Path.of(name.text());
        } catch (InvalidPathException e) {
            throw refuse(name, "is not a file name", "name a file of the case directory");
        }
        if (name.text().indexOf('\\') >= 0) {
            throw refuse(name, "holds a backslash", "separate folders with /");
        }
        Path path = root.resolve(asked).normalize();
        if (asked.isAbsolute() || !path.startsWith(root)) {
            throw refuse(name, "leaves the case directory", "keep the file within it and name it relative to it");
        }
        if (!Files.exists(path)) {
            throw refuse(name, "is not there", "check the name and its capitals");
        }
        try {
            if (!path.toRealPath().startsWith(root)) {
                throw refuse(name, "is a link that leaves the case directory", "copy the file into it");
            }
        } catch (IOException e) {
            throw refuse(name, "cannot be read", "check the rights on the file");
        }
        if (!Files.isRegularFile(path)) {
            throw refuse(name, "is not a file", "name a CSV file");
        }
        return path;
    }

    private FaultLog.Unreadable refuse(Item.Scalar name, String problem, String hint) {
        log.add(name.place(), name.text(), "\"" + name.text() + "\" " + problem, hint);
        return new FaultLog.Unreadable();
    }

    private String text(Path path, String relative, int limit, Place place, String value) {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(path)) {
            bytes = in.readNBytes(limit + 1);
        } catch (IOException e) {
            log.add(place, value, "\"" + relative + "\" cannot be read", "check that it is a file and may be read");
            throw new FaultLog.Unreadable();
        }
        Place file = new Place(relative, 0, "");
        if (bytes.length > limit) {
            log.add(file, "", "is larger than " + (limit >> 20) + " MiB", "leave out what the case does not need");
            throw new FaultLog.Unreadable();
        }
        hashes.put(relative, sha256(bytes));
        return decode(bytes, file);
    }

    private String decode(byte[] bytes, Place file) {
        if (starts(bytes, 0xFE, 0xFF) || starts(bytes, 0xFF, 0xFE)) {
            log.add(file, "", "is written in UTF-16", "save it as UTF-8");
            throw new FaultLog.Unreadable();
        }
        int skip = starts(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        ByteBuffer in = ByteBuffer.wrap(bytes, skip, bytes.length - skip);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(in, out, true);
        try {
            if (result.isError()) {
                result.throwException();
            }
        } catch (CharacterCodingException e) {
            int line = line(bytes, in.position());
            String found = String.format("0x%02X", bytes[in.position()] & 0xFF);
            log.add(
                    new Place(file.file(), line, ""),
                    found,
                    "byte " + found + " is not UTF-8",
                    "save the file as UTF-8, not as Windows-1252 or Latin-1");
            throw new FaultLog.Unreadable();
        }
        String text = out.flip().toString();
        int zero = text.indexOf('\0');
        if (zero >= 0) {
            log.add(
                    new Place(file.file(), line(text, zero), ""),
                    "",
                    "holds a zero byte",
                    "it seems to be no text file, or to be written in UTF-16: save it as UTF-8");
            throw new FaultLog.Unreadable();
        }
        return text;
    }

    private static int line(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            if (bytes[i] == '\n') {
                line++;
            }
        }
        return line;
    }

    private static int line(String text, int position) {
        return 1
                + (int) text.substring(0, position)
                        .chars()
                        .filter(c -> c == '\n')
                        .count();
    }

    private static boolean starts(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(digest().digest(bytes));
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
