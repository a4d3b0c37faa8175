package staunch.ingest;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import staunch.design.CasingDesign;
import staunch.design.InputLine;
import staunch.design.Progress;
import staunch.design.Rerun;
import staunch.design.RunRecord;
import staunch.design.SectionResult;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.SectionOperations;
import staunch.envelope.WellEnvelope;
import staunch.units.InputFault;

/** A case with everything that was read for it, so that a run of it can be put on record. */
public final class CaseInput {
    private final WellCase wellCase;
    private final List<InputLine> inputs;
    private final List<InputLine> tables;

    private CaseInput(WellCase wellCase, List<InputLine> inputs, List<InputLine> tables) {
        this.wellCase = wellCase;
        this.inputs = List.copyOf(inputs);
        this.tables = List.copyOf(tables);
    }

    static CaseInput of(WellCase wellCase, Item.Mapping tree, Validator validator, EvidenceRows evidence) {
        CanonicalCase canonical = new CanonicalCase(validator, evidence);
        List<InputLine> inputs = InputLines.of(canonical.of(tree));
        return new CaseInput(wellCase, inputs, canonical.tables());
    }

    /**
     * The case in a directory, or in a file and the directory around it.
     *
     * @throws CaseFaults with everything that is wrong in it
     */
    public static CaseInput read(Path directoryOrYaml) throws CaseFaults {
        return read(directoryOrYaml, List.of());
    }

    /**
     * The case together with folders of offset data that came in later, see {@link CaseReader#read(Path, List)}.
     *
     * @throws CaseFaults with everything that is wrong
     */
    public static CaseInput read(Path directoryOrYaml, List<Path> drops) throws CaseFaults {
        return CaseReader.input(directoryOrYaml, drops);
    }

    /** The case itself. */
    public WellCase wellCase() {
        return wellCase;
    }

    /** Every value of it in SI, in the order of the reference of case files, defaults of the methods written out. */
    public List<InputLine> inputs() {
        return inputs;
    }

    /**
     * Record of a run.
     *
     * @param library version of the library that evaluated it
     * @param envelopes casing designs of this case, evaluated as it says
     * @param operations what follows an influx into each section of each of them, likewise
     * @throws InputFault where a design was evaluated by other methods than those of the case
     */
    public RunRecord record(String library, List<WellEnvelope> envelopes, List<List<SectionOperations>> operations) {
        if (operations.size() != envelopes.size()) {
            throw new InputFault(
                    "operations of a run",
                    "are of " + operations.size() + " designs, the envelopes of " + envelopes.size(),
                    "give those of each design");
        }
        List<SectionResult> results = new ArrayList<>();
        for (int i = 0; i < envelopes.size(); i++) {
            WellEnvelope envelope = envelopes.get(i);
            if (!envelope.options().equals(wellCase.options())) {
                throw new InputFault(
                        "casing design \"" + envelope.design() + "\"",
                        "is evaluated by other methods than the case has",
                        "write the options into the case: a record must tell how its results came about");
            }
            results.addAll(RunRecord.results(envelope, operations.get(i)));
        }
        return new RunRecord(library, wellCase.header().well(), wellCase.files(), tables, inputs, results);
    }

    /**
     * Evaluates casing designs of the case, and what follows an influx into their sections, and puts them on record.
     *
     * @param library version of the library that evaluates them
     * @param designs names; the base design where there are none
     * @param progress told how far the envelopes have come
     * @throws staunch.units.Fault where the case has no such design or contradicts itself
     */
    public RunRecord run(String library, List<String> designs, Progress progress) {
        Study base = Study.of(wellCase);
        List<WellEnvelope> envelopes = new ArrayList<>();
        List<List<SectionOperations>> operations = new ArrayList<>();
        for (String name : designs.isEmpty() ? List.of(base.design()) : designs) {
            Study study = base.withDesign(name);
            envelopes.add(study.evaluate(progress));
            operations.add(study.operations());
        }
        return record(library, envelopes, operations);
    }

    /**
     * Evaluates the case and holds it against the record of an earlier run: every casing design that both have.
     *
     * @param before record of the earlier run
     * @param library version of the library that evaluates the case
     * @param progress told how far it has come, the evaluation first
     * @throws staunch.units.Fault where the record is of another well or of other designs, or the case contradicts itself
     */
    public Rerun against(RunRecord before, String library, Progress progress) {
        List<String> both = wellCase.designs().stream()
                .map(CasingDesign::name)
                .filter(before.designs()::contains)
                .toList();
        return RecordedCase.compare(before, run(library, both, progress), Rerun.Scope.ALL, progress);
    }
}
