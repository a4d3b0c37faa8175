package staunch.ingest;

import java.nio.file.Path;
import java.util.List;
import staunch.design.InputLine;
import staunch.design.RunRecord;
import staunch.design.WellCase;
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
     * @throws InputFault where a design was evaluated by other methods than those of the case
     */
    public RunRecord record(String library, List<WellEnvelope> envelopes) {
        for (WellEnvelope envelope : envelopes) {
            if (!envelope.options().equals(wellCase.options())) {
                throw new InputFault(
                        "casing design \"" + envelope.design() + "\"",
                        "is evaluated by other methods than the case has",
                        "write the options into the case: a record must tell how its results came about");
            }
        }
        return new RunRecord(
                library, wellCase.header().well(), wellCase.files(), tables, inputs, RunRecord.results(envelopes));
    }
}
