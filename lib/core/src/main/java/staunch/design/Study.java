package staunch.design;

import java.util.Objects;
import staunch.envelope.MethodOptions;
import staunch.envelope.WellEnvelope;
import staunch.units.InputFault;

/** The front door: takes a case, chooses a casing design and methods, and evaluates the envelope of every section. */
public final class Study {
    private final WellCase wellCase;
    private final String design;
    private final MethodOptions options;

    private Study(WellCase wellCase, String design, MethodOptions options) {
        this.wellCase = wellCase;
        this.design = design;
        this.options = options;
    }

    /** Study of the base design with the methods of the case. */
    public static Study of(WellCase wellCase) {
        Objects.requireNonNull(wellCase, "wellCase");
        return new Study(wellCase, wellCase.designs().get(0).name(), wellCase.options());
    }

    /**
     * The same study of another casing design.
     *
     * @throws InputFault where the case has no design of that name
     */
    public Study withDesign(String name) {
        return new Study(wellCase, wellCase.design(name).name(), options);
    }

    /** The same study with other methods. */
    public Study withOptions(MethodOptions newOptions) {
        return new Study(wellCase, design, Objects.requireNonNull(newOptions, "newOptions"));
    }

    /** The case as studied, with every change made to it. */
    public WellCase wellCase() {
        return wellCase;
    }

    /** Name of the casing design studied. */
    public String design() {
        return design;
    }

    /** Methods used. */
    public MethodOptions options() {
        return options;
    }

    /** Envelope of every section. */
    public WellEnvelope evaluate() {
        return evaluate(Progress.SILENT);
    }

    /** Envelope of every section, telling the progress. */
    public WellEnvelope evaluate(Progress progress) {
        throw new InputFault("study", "cannot be evaluated yet", "wait for the engine");
    }
}
