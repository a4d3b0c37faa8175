package staunch.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import staunch.envelope.CirculationPeaks;
import staunch.envelope.Kick;
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
        return together(List.of(this), progress).get(0);
    }

    /** Envelopes of studies in their order, on all cores; a section that several studies share is evaluated once. */
    private static List<WellEnvelope> together(List<Study> studies, Progress progress) {
        List<List<SectionInput>> asked = studies.stream()
                .map(s -> s.wellCase.design(s.design).sections().stream()
                        .map(s::input)
                        .toList())
                .toList();
        List<SectionInput> different =
                asked.stream().flatMap(List::stream).distinct().toList();
        SharedProgress shared = new SharedProgress(
                progress, different.stream().mapToLong(SectionEvaluator::depths).sum());
        List<SectionEnvelope> found = different.parallelStream()
                .map(i -> SectionEvaluator.evaluate(i, shared.of(i.plan().name())))
                .toList();
        shared.done();
        Map<SectionInput, SectionEnvelope> byInput = new HashMap<>();
        for (int i = 0; i < different.size(); i++) {
            byInput.put(different.get(i), found.get(i));
        }
        List<WellEnvelope> envelopes = new ArrayList<>();
        for (int i = 0; i < studies.size(); i++) {
            Study study = studies.get(i);
            envelopes.add(new WellEnvelope(
                    study.design,
                    study.options,
                    asked.get(i).stream().map(byInput::get).toList(),
                    study.wellCase.warnings()));
        }
        return envelopes;
    }

    /**
     * How it goes after an influx into each section: the time side of its envelope.
     *
     * @throws staunch.units.Fault where the case contradicts itself; what is merely missing is reported in the results
     */
    public List<SectionOperations> operations() {
        return wellCase.design(design).sections().parallelStream()
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
        return OperationsEvaluator.evaluate(input(sectionName));
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
        return Comparison.of(wellCase, evaluate(designs, progress));
    }

    /**
     * Envelopes of several casing designs of the case by the methods of this study, in the order asked for. Sections that
     * designs share are evaluated once.
     *
     * @param designs names of two or more
     * @param progress told how far it has come over all designs
     * @throws InputFault where fewer than two are named, one is named twice or is not in the case
     */
    public List<WellEnvelope> evaluate(List<String> designs, Progress progress) {
        return together(each(designs), progress);
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

    /**
     * Checks designs × sections × scenarios × variants of evidence and method at section TD, on all cores, as one table.
     * What several of them share is computed once.
     *
     * @param designs names of one or more
     * @param variants of this case and these methods, each under its own name
     * @throws InputFault where no design or no variant is named, one is named twice, or a design is not in a variant's case
     */
    public StudyTable table(List<String> designs, List<StudyVariant> variants) {
        return StudyTable.of(designs, variants);
    }

    /**
     * How much each input of a section matters, and at which value of it the verdict flips.
     *
     * @param sectionName of the section
     * @throws InputFault where the design has no section of that name
     */
    public Sensitivity sensitivity(String sectionName) {
        return new SensitivitySearch(design, input(sectionName)).search();
    }

    /** What one section is evaluated from. */
    SectionInput input(String sectionName) {
        return input(wellCase.design(design).section(sectionName));
    }

    /** Highest pressures while the drilled influx into one section is circulated out. */
    CirculationPeaks peaks(String sectionName) {
        return OperationsEvaluator.peaks(input(sectionName), Kick.Scenario.DRILLED);
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
