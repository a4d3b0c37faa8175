package staunch.ingest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import staunch.design.WellCase;

/**
 * Reads a case: a directory with {@code case.yaml} and the CSV files it names, in UTF-8. The case file may hold 1 MiB,
 * each CSV file 16 MiB. Nothing outside the directory is read, and no object is constructed from YAML.
 */
public final class CaseReader {
    private static final String CASE_FILE = "case.yaml";

    private CaseReader() {}

    /**
     * The case in a directory, or in a file and the directory around it.
     *
     * @throws CaseFaults with everything that is wrong, each with file, line, key and what may have been meant
     */
    public static WellCase read(Path directoryOrYaml) throws CaseFaults {
        Objects.requireNonNull(directoryOrYaml, "directoryOrYaml");
        Path file = Files.isDirectory(directoryOrYaml) ? directoryOrYaml.resolve(CASE_FILE) : directoryOrYaml;
        String name = String.valueOf(file.getFileName());
        FaultLog log = new FaultLog(name);
        if (!Files.isRegularFile(file)) {
            log.add(new Place(name, 0, ""), "", "is not there", "name a case directory with a case.yaml, or the file");
            throw log.all();
        }
        try {
            Path root = file.toAbsolutePath().getParent().toRealPath();
            return read(new CaseDirectory(root, name, log), name, log);
        } catch (IOException e) {
            log.add(new Place(name, 0, ""), "", "cannot be read", "check the rights on its directory");
            throw log.all();
        }
    }

    private static WellCase read(CaseDirectory directory, String name, FaultLog log) throws CaseFaults {
        Optional<WellCase> built = Optional.empty();
        try {
            Item.Mapping tree = YamlTree.read(directory.main(), name, log);
            Validator validator = new Validator(directory, log);
            validator.check(tree, CaseKeys.CASE, true);
            built = new CaseBuilder(new Fields(tree, CaseKeys.CASE, validator), validator, log).build(directory);
        } catch (FaultLog.Unreadable recorded) {
            // Its fault is in the log, and nothing was built.
            built = Optional.empty();
        }
        if (log.isEmpty()) {
            return built.orElseThrow(() -> new IllegalStateException("a case without a fault was not built"));
        }
        throw log.all();
    }
}
