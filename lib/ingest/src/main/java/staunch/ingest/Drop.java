package staunch.ingest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A folder of offset data handed in with a case.
 *
 * @param name of the folder
 * @param files by name; notes are not among them
 */
record Drop(String name, TreeMap<String, Path> files) {
    private static final int MOST_FILES = 1000;

    /** Every drop; what is wrong with one is recorded. */
    static List<Drop> of(List<Path> directories, FaultLog log) {
        List<Drop> drops = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Path directory : directories) {
            Path last = directory.toAbsolutePath().normalize().getFileName();
            String name = last == null ? "drop" : last.toString();
            if (!Files.isDirectory(directory)) {
                log.add(new Place(name, 0, ""), "", "is not a folder", "name the folder that holds the offset data");
            } else if (!names.add(name)) {
                log.add(
                        new Place(name, 0, ""),
                        "",
                        "is the name of two folders",
                        "rename one, so that files can be told apart");
            } else {
                log.attempt(new Place(name, 0, ""), () -> read(directory, name, log))
                        .ifPresent(drops::add);
            }
        }
        return drops;
    }

    private static Drop read(Path directory, String name, FaultLog log) {
        TreeMap<String, Path> files = new TreeMap<>();
        try (Stream<Path> found = Files.list(directory)) {
            found.limit(MOST_FILES)
                    .filter(Drop::isData)
                    .forEach(p -> files.put(p.getFileName().toString(), p));
        } catch (IOException e) {
            log.add(new Place(name, 0, ""), "", "cannot be read", "check the rights on the folder");
            throw new FaultLog.Unreadable();
        }
        return new Drop(name, files);
    }

    private static boolean isData(Path path) {
        String file = path.getFileName().toString().toLowerCase(Locale.ROOT);
        boolean note = file.startsWith(".") || file.endsWith(".md") || file.endsWith(".txt");
        return !note && Files.isRegularFile(path);
    }

    /** How a file of it is named in results. */
    String shown(String file) {
        return name + "/" + file;
    }
}
