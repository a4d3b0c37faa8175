package staunch.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.WellEnvelope;
import staunch.ingest.CaseFaults;
import staunch.ingest.CaseReader;
import staunch.kernel.Notebook;
import staunch.report.ResultHtml;
import staunch.units.InputFault;
import staunch.units.UnitSystem;

/** What cells of a notebook call besides the library itself. Imported into every cell. */
public final class Cells {
    private static final long PATIENCE = TimeUnit.SECONDS.toNanos(1);

    private Cells() {}

    /**
     * Reads a case.
     *
     * @param directory of the case, relative to the folder of the notebook or to a folder above it
     * @throws CaseFaults with everything that is wrong in it
     */
    public static WellCase loadCase(String directory) throws CaseFaults {
        Path here = Notebook.notebookFolder().toAbsolutePath();
        for (Path folder = here; folder != null; folder = folder.getParent()) {
            if (Files.exists(folder.resolve(directory))) {
                return CaseReader.read(folder.resolve(directory));
            }
        }
        throw new InputFault(
                "case directory \"" + directory + "\"",
                "is neither in " + here + " nor in a folder above it",
                "name the directory that holds its case.yaml");
    }

    /** Evaluates a study; work over a second shows its progress. */
    public static WellEnvelope evaluate(Study study) {
        try (CellProgress progress = new CellProgress(study.design())) {
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

    private static final class CellProgress implements staunch.design.Progress, AutoCloseable {
        private final String design;
        private final long start = System.nanoTime();
        private staunch.kernel.Progress shown;
        private long before;

        CellProgress(String design) {
            this.design = design;
        }

        @Override
        public void step(long done, long total, String what) {
            if (shown == null && System.nanoTime() - start > PATIENCE) {
                shown = Notebook.progress("casing design " + design, total);
            }
            if (shown != null && done > before) {
                shown.step(done - before);
                before = done;
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
