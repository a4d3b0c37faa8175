package staunch.ingest;

import java.nio.file.Path;
import java.util.List;
import staunch.design.Progress;
import staunch.design.Rerun;
import staunch.design.RunRecord;
import staunch.design.Study;
import staunch.envelope.WellEnvelope;

/** Runs of cases on disk, with few depths along their sections: those are not recorded. */
final class Runs {
    private Runs() {}

    static RunRecord record(Path directory, String... designs) throws CaseFaults {
        return record(CaseInput.read(directory), designs);
    }

    static RunRecord record(CaseInput input, String... designs) {
        List<WellEnvelope> envelopes = List.of(designs).stream()
                .map(d -> Study.of(input.wellCase()).withDesign(d).evaluate())
                .toList();
        return input.record("1.0", envelopes);
    }

    static Rerun rerun(RunRecord before, RunRecord after) {
        return Rerun.of(before, after, RecordedCase.between(before, after), Progress.SILENT);
    }
}
