package staunch.ingest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
            Path root = directory.toRealPath();
            List<Path> all = found.limit(MOST_FILES + 1L).sorted().toList();
            if (all.size() > MOST_FILES) {
                log.add(
                        new Place(name, 0, ""),
                        "",
                        "holds more than " + MOST_FILES + " files",
                        "hand in the tables alone");
                throw new FaultLog.Unreadable();
            }
            for (Path path : all) {
                String file = path.getFileName().toString();
                if (isNote(file)) {
                    continue;
                }
                Optional<String> wrong = wrong(path, root);
                if (wrong.isPresent()) {
                    log.add(
                            new Place(name + "/" + file, 0, ""),
                            "",
                            wrong.get(),
                            Files.isDirectory(path)
                                    ? "hand it in as a folder of its own, or take it out"
                                    : "copy the table itself into the folder");
                } else {
                    files.put(file, path);
                }
            }
        } catch (IOException e) {
            log.add(new Place(name, 0, ""), "", "cannot be read", "check the rights on the folder");
            throw new FaultLog.Unreadable();
        }
        return new Drop(name, files);
    }

    /** Why a file is not read: what a drop does not hold itself would come in unseen. */
    private static Optional<String> wrong(Path path, Path root) {
        try {
            if (!path.toRealPath().startsWith(root)) {
                return Optional.of("is a link that leaves the folder");
            }
        } catch (IOException e) {
            return Optional.of("is a link to a file that is not there, or may not be read");
        }
        if (Files.isDirectory(path)) {
            return Optional.of("is a folder within the folder: what it holds is not read");
        }
        return Files.isRegularFile(path) ? Optional.empty() : Optional.of("is no file");
    }

    private static boolean isNote(String name) {
        String file = name.toLowerCase(Locale.ROOT);
        return file.startsWith(".") || file.endsWith(".md") || file.endsWith(".txt");
    }

    /** How a file of it is named in results. */
    String shown(String file) {
        return name + "/" + file;
    }
}
