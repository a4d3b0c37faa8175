package staunch.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import staunch.design.Rerun;
import staunch.design.RunRecord;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.WellEnvelope;
import staunch.ingest.CaseFaults;
import staunch.ingest.CaseInput;
import staunch.ingest.DataFileFault;
import staunch.ingest.RecordFile;
import staunch.ingest.RecordedCase;
import staunch.kernel.Notebook;
import staunch.report.ResultHtml;
import staunch.report.WholeFile;
import staunch.table.ResultTable;
import staunch.table.TableBook;
import staunch.table.TableExport;
import staunch.units.InputFault;
import staunch.units.UnitSystem;
import tech.tablesaw.api.Table;

/** What cells of a notebook call besides the library itself. Imported into every cell. */
public final class Cells {
    private static final long PATIENCE = TimeUnit.SECONDS.toNanos(1);

    private Cells() {}

    /**
     * Reads a case, with folders of offset data that came in later.
     *
     * @param directory of the case, relative to the folder of the notebook or to a folder above it
     * @param drops folders of offset data, likewise
     * @throws CaseFaults with everything that is wrong in it
     */
    public static WellCase loadCase(String directory, String... drops) throws CaseFaults {
        return loadInput(directory, drops).wellCase();
    }

    /**
     * Reads a case with what a run of it puts on record, and folders of offset data that came in later.
     *
     * @param directory of the case, relative to the folder of the notebook or to a folder above it
     * @param drops folders of offset data, likewise
     * @throws CaseFaults with everything that is wrong in it
     */
    public static CaseInput loadInput(String directory, String... drops) throws CaseFaults {
        Path path = found(directory, "case directory", "name the directory that holds its case.yaml");
        return CaseInput.read(
                path,
                List.of(drops).stream()
                        .map(d -> found(d, "folder of offset data", "name the folder that holds its tables"))
                        .toList());
    }

    /** Evaluates casing designs of a case and gives the record of the run; without names, the base design. */
    public static RunRecord run(CaseInput input, String... designs) {
        try (CellProgress progress = new CellProgress("run")) {
            return input.run(Version.LIBRARY, List.of(designs), progress);
        }
    }

    /** What changed in a case since the record of an earlier run, and because of what: every design that both have. */
    public static Rerun against(CaseInput input, RunRecord before) {
        try (CellProgress progress = new CellProgress("what changed")) {
            return input.against(before, Version.LIBRARY, progress);
        }
    }

    /**
     * Reads the record of an earlier run.
     *
     * @param file relative to the folder of the notebook or to a folder above it
     * @throws DataFileFault where it is no record, is damaged or was written by a newer version
     */
    public static RunRecord loadRecord(String file) throws DataFileFault {
        return RecordFile.read(found(file, "run record", "name a file that an earlier run left"));
    }

    /**
     * Writes the record of a run as a whole or not at all.
     *
     * @param file relative to the folder of the notebook
     */
    public static Path saveRecord(RunRecord record, String file) throws IOException {
        return RecordOption.write(record, Notebook.notebookFolder().resolve(file));
    }

    /** What changed between two runs, and because of what; work over a second shows its progress. */
    public static Rerun compareRuns(RunRecord before, RunRecord after) {
        try (CellProgress progress = new CellProgress("what changed")) {
            return RecordedCase.compare(before, after, Rerun.Scope.ALL, progress);
        }
    }

    private static Path found(String path, String what, String advice) {
        Path here = Notebook.notebookFolder().toAbsolutePath();
        for (Path folder = here; folder != null; folder = folder.getParent()) {
            if (Files.exists(folder.resolve(path))) {
                return folder.resolve(path);
            }
        }
        throw new InputFault(what + " \"" + path + "\"", "is neither in " + here + " nor in a folder above it", advice);
    }

    /** Evaluates a study; work over a second shows its progress. */
    public static WellEnvelope evaluate(Study study) {
        try (CellProgress progress = new CellProgress("casing design " + study.design())) {
            return study.evaluate(progress);
        }
    }

    /**
     * Card of a result in units of one's own choice; a result alone at the end of a cell is shown in those of the kernel.
     *
     * @throws InputFault where results of that kind have no card
     */
    public static ResultHtml.Card card(Object result, UnitSystem units) {
        return ResultHtml.card(result, units)
                .orElseThrow(() -> new InputFault(
                        "result of type " + result.getClass().getSimpleName(),
                        "has no card",
                        "end the cell with the result itself"));
    }

    /**
     * Writes what is shown into a file, whole or not at all, numbers to nine significant digits.
     *
     * @param file relative to the folder of the notebook: a workbook (.xlsx) with a sheet for each table, or one table as
     *     CSV (.csv)
     * @param shown tables of results, Tablesaw tables, cards of results, or lists of them
     * @throws InputFault where the file ends otherwise, something else than a table is given, or CSV is to hold several
     */
    public static Path export(String file, Object... shown) throws IOException {
        List<ResultTable> tables = new ArrayList<>();
        for (Object each : shown) {
            tables(tables, each);
        }
        Path path = Notebook.notebookFolder().resolve(file);
        if (file.endsWith(".xlsx") && !tables.isEmpty()) {
            return TablesOption.workbook(TableBook.of(tables), path);
        }
        if (file.endsWith(".csv") && tables.size() == 1) {
            return WholeFile.write(path, out -> TableExport.csv(tables.get(0), out));
        }
        throw new InputFault(
                "export of " + tables.size() + (tables.size() == 1 ? " table" : " tables") + " to \"" + file + "\"",
                "cannot be written",
                "give a table and the name of a workbook that ends in .xlsx, or one table and a name that ends in .csv");
    }

    private static void tables(List<ResultTable> tables, Object shown) {
        if (shown instanceof ResultTable table) {
            tables.add(table);
        } else if (shown instanceof Table table) {
            tables.add(ResultTable.of(table));
        } else if (shown instanceof ResultHtml.Card card) {
            tables.addAll(card.tables());
        } else if (shown instanceof Iterable<?> several) {
            several.forEach(each -> tables(tables, each));
        } else {
            throw new InputFault(
                    "export of a " + shown.getClass().getSimpleName(),
                    "is not possible: it is no table",
                    "give a table, or the card of a result in units of your choice: card(result, UnitSystem.FIELD)");
        }
    }

    private static final class CellProgress implements staunch.design.Progress, AutoCloseable {
        private final String title;
        private final long start = System.nanoTime();
        private staunch.kernel.Progress shown;
        private long steps;
        private long before;

        CellProgress(String title) {
            this.title = title;
        }

        @Override
        public void step(long done, long total, String what) {
            if (shown == null && System.nanoTime() - start > PATIENCE) {
                steps = total;
                shown = Notebook.progress(title, total);
            }
            if (shown == null) {
                return;
            }
            // The work to do may turn out to be less, or more, than it was when the line was begun.
            long reached = done >= total ? steps : done * steps / total;
            if (reached > before) {
                shown.step(reached - before);
                before = reached;
            }
        }

        @Override
        public void close() {
            if (shown != null) {
                shown.close();
            }
        }
    }
}
