package staunch.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import staunch.envelope.MethodOptions;
import staunch.envelope.OperationsEvaluator;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SectionEvaluator;
import staunch.envelope.SectionInput;
import staunch.envelope.SectionOperations;
import staunch.envelope.SectionPlan;
import staunch.envelope.WellEnvelope;
import staunch.units.InputFault;
import staunch.well.Annulus;
import staunch.well.AnnulusGeometry;
import staunch.well.CasingString;

/** The front door: takes a case, chooses a casing design and methods, and evaluates the envelope of every section. */
public final class Study {
    private static final double SAME_DEPTH = 0.01;

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

    /**
     * The same study with a hole section of its design changed: another mud, other criteria.
     *
     * @param name of the section
     * @param change gives the section as it is to be studied, under the same name
     * @throws InputFault where the design has no section of that name
     */
    public Study withSection(String name, UnaryOperator<SectionPlan> change) {
        SectionPlan changed = change.apply(wellCase.design(design).section(name));
        return new Study(wellCase.withDesign(wellCase.design(design).withSection(name, changed)), design, options);
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

    /**
     * Envelope of every section, telling the progress.
     *
     * @throws staunch.units.Fault where the case contradicts itself; what is merely missing is reported in the results
     */
    public WellEnvelope evaluate(Progress progress) {
        List<SectionPlan> plans = wellCase.design(design).sections();
        List<SectionInput> inputs = plans.stream().map(this::input).toList();
        long total = inputs.stream().mapToLong(SectionEvaluator::depths).sum();
        List<SectionEnvelope> sections = new ArrayList<>();
        long before = 0;
        for (SectionInput input : inputs) {
            long done = before;
            String what = input.plan().name();
            sections.add(SectionEvaluator.evaluate(input, n -> progress.step(done + n, total, what)));
            before += SectionEvaluator.depths(input);
        }
        progress.step(total, total, "done");
        return new WellEnvelope(design, options, sections, wellCase.warnings());
    }

    /**
     * How it goes after an influx into each section: the time side of its envelope.
     *
     * @throws staunch.units.Fault where the case contradicts itself; what is merely missing is reported in the results
     */
    public List<SectionOperations> operations() {
        return wellCase.design(design).sections().stream()
                .map(this::input)
                .map(OperationsEvaluator::evaluate)
                .toList();
    }

    /**
     * How it goes after an influx into one section.
     *
     * @param sectionName of the section
     * @throws InputFault where the design has no section of that name
     */
    public SectionOperations operations(String sectionName) {
        return OperationsEvaluator.evaluate(input(wellCase.design(design).section(sectionName)));
    }

    /**
     * Annulus of a section at its TD, bit on bottom, from the stack down.
     *
     * @param sectionName of the section
     * @throws InputFault where the design has no section of that name, or the section no string
     */
    public Annulus annulus(String sectionName) {
        SectionInput input = input(wellCase.design(design).section(sectionName));
        SectionPlan plan = input.plan();
        return Annulus.of(new AnnulusGeometry(
                input.casing(),
                plan.hole(),
                plan.string()
                        .orElseThrow(() -> new InputFault(
                                "hole section \"" + sectionName + "\"",
                                "has no string",
                                "give one, or none by its word")),
                plan.bottomDepth(),
                input.datum().stackDepth(),
                plan.bottomDepth()));
    }

    /**
     * Evaluates casing designs of the case by the methods of this study and compares them.
     *
     * @param designs names of two or more
     * @throws InputFault where fewer than two are named, one is named twice or is not in the case
     */
    public Comparison compare(List<String> designs) {
        return compare(designs, Progress.SILENT);
    }

    /**
     * Evaluates casing designs of the case by the methods of this study and compares them, telling the progress.
     *
     * @param designs names of two or more
     * @param progress told how far it has come over all designs
     * @throws InputFault where fewer than two are named, one is named twice or is not in the case
     */
    public Comparison compare(List<String> designs, Progress progress) {
        List<Study> studies = each(designs);
        long total = studies.stream().mapToLong(Study::depths).sum();
        List<WellEnvelope> envelopes = new ArrayList<>();
        long before = 0;
        for (Study study : studies) {
            long done = before;
            envelopes.add(study.evaluate((n, ofDesign, what) -> progress.step(done + n, total, study.design)));
            before += study.depths();
        }
        return Comparison.of(wellCase, envelopes);
    }

    /**
     * Searches where the casing shoes of the design may stand, with the planned muds.
     *
     * @throws staunch.units.Fault where the case contradicts itself
     */
    public ShoeSearch shoes() {
        return shoes(MudRule.AS_PLANNED, Progress.SILENT);
    }

    /**
     * Searches where the casing shoes of the design may stand, telling the progress.
     *
     * @param mud rule by which the mud of each section follows its depths
     * @param progress told how far it has come
     * @throws InputFault where the lightest mud is asked for and mud density moves with pressure and temperature
     */
    public ShoeSearch shoes(MudRule mud, Progress progress) {
        return new ShoeSearcher(wellCase, wellCase.design(design), options, mud).search(progress);
    }

    /**
     * This study of each of the designs that are to be compared.
     *
     * @param designs names of two or more
     * @throws InputFault where fewer than two are named, one is named twice or is not in the case
     */
    public List<Study> each(List<String> designs) {
        Comparison.check(designs);
        return designs.stream().map(this::withDesign).toList();
    }

    private long depths() {
        return wellCase.design(design).sections().stream()
                .mapToLong(plan -> SectionEvaluator.depths(input(plan)))
                .sum();
    }

    /** The strings whose shoes stand at or above the top of a section are set when it is drilled. */
    private SectionInput input(SectionPlan plan) {
        List<CasingString> set = wellCase.design(design).strings().stream()
                .filter(s -> s.shoeDepth() <= plan.topDepth() + SAME_DEPTH)
                .toList();
        return new SectionInput(
                wellCase.datum(), wellCase.path(), wellCase.earth(), set, wellCase.equipment(), plan, options);
    }
}
