package staunch.ingest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
        return read(directoryOrYaml, List.of());
    }

    /**
     * The case together with folders of offset data that came in later. The case says in {@code offset_evidence} how their
     * tables are read and what is made of them; a file that it does not know is a fault, except notes (.md, .txt).
     *
     * @param directoryOrYaml the case
     * @param drops folders of offset data; their order makes no difference
     * @return the case with the evidence in its rock, see {@link WellCase#evidence()}; files of a drop are among its
     *     {@link WellCase#files()} under the name of their folder
     * @throws CaseFaults with everything that is wrong
     */
    public static WellCase read(Path directoryOrYaml, List<Path> drops) throws CaseFaults {
        return input(directoryOrYaml, drops).wellCase();
    }

    /** The case with what was read for it. */
    static CaseInput input(Path directoryOrYaml, List<Path> drops) throws CaseFaults {
        Objects.requireNonNull(directoryOrYaml, "directoryOrYaml");
        List<Path> folders = List.copyOf(drops);
        Path file = Files.isDirectory(directoryOrYaml) ? directoryOrYaml.resolve(CASE_FILE) : directoryOrYaml;
        String name = String.valueOf(file.getFileName());
        FaultLog log = new FaultLog(name);
        if (!Files.isRegularFile(file)) {
            log.add(new Place(name, 0, ""), "", "is not there", "name a case directory with a case.yaml, or the file");
            throw log.all();
        }
        try {
            Path root = file.toAbsolutePath().getParent().toRealPath();
            return read(new CaseDirectory(root, name, log), Drop.of(folders, log), name, log);
        } catch (IOException e) {
            log.add(new Place(name, 0, ""), "", "cannot be read", "check the rights on its directory");
            throw log.all();
        }
    }

    private static CaseInput read(CaseDirectory directory, List<Drop> drops, String name, FaultLog log)
            throws CaseFaults {
        Optional<CaseInput> built = Optional.empty();
        try {
            Item.Mapping tree = YamlTree.read(directory.main(), name, log);
            Validator validator = new Validator(directory, log);
            validator.check(tree, CaseKeys.CASE, true);
            CaseBuilder builder = new CaseBuilder(new Fields(tree, CaseKeys.CASE, validator), validator, log);
            Optional<WellCase> wellCase = builder.build(directory, drops);
            built = wellCase.map(c -> CaseInput.of(c, tree, validator, builder.evidence()));
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
