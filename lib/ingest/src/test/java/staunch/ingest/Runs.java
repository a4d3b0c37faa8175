package staunch.ingest;

import java.nio.file.Path;
import java.util.List;
import staunch.design.Progress;
import staunch.design.Rerun;
import staunch.design.RunRecord;

/** Runs of cases on disk, with few depths along their sections: those are not recorded. */
final class Runs {
    private Runs() {}

    static RunRecord record(Path directory, String... designs) throws CaseFaults {
        return record(CaseInput.read(directory), designs);
    }

    static RunRecord record(CaseInput input, String... designs) {
        return input.run("1.0", List.of(designs), Progress.SILENT);
    }

    /** What changed, that of the envelope shared out: a test asks for the rest, which takes longer, where it needs it. */
    static Rerun rerun(RunRecord before, RunRecord after) {
        return RecordedCase.compare(before, after, Rerun.Scope.ENVELOPE, Progress.SILENT);
    }

    static Rerun whole(RunRecord before, RunRecord after) {
        return RecordedCase.compare(before, after, Rerun.Scope.ALL, Progress.SILENT);
    }
}
