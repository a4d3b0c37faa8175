package staunch.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import staunch.design.Comparison;
import staunch.design.MudRule;
import staunch.design.Sensitivity;
import staunch.design.ShoeSearch;
import staunch.design.Study;
import staunch.design.StudyTable;
import staunch.design.StudyVariant;
import staunch.design.WellCase;
import staunch.envelope.SectionOperations;
import staunch.envelope.SectionPlan;
import staunch.envelope.WellEnvelope;
import staunch.table.CaseTables;
import staunch.table.TableBook;
import staunch.units.UnitSystem;

/** {@code staunch export}: every table as a workbook or as CSV. */
@Command(
        name = "export",
        description = {
            "Compute every section, the designs side by side and by each estimate, the shoe depths with planned and with"
                    + " lightest muds, and the sensitivities, and write every table as a workbook (.xlsx), as CSV files,"
                    + " or as both. A part that cannot be computed is named with its reason, and the rest is written."
        },
        mixinStandardHelpOptions = true)
final class ExportCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Mixin
    private VerdictOption verdict;

    @Mixin
    private UnitsOption units;

    @Mixin
    private DesignsOption designs;

    @Mixin
    private TablesOption tables;

    @Override
    public Integer call() throws IOException {
        if (!tables.isGiven()) {
            throw new CommandFailure(ExitCode.USAGE, "staunch: export needs --xlsx, --csv, or both");
        }
        WellCase wellCase = argument.read();
        UnitSystem shown = units.or(wellCase.units());
        Parts parts = new Parts(shown);
        CaseTables.Results results = results(designs.of(argument, wellCase), parts);
        List<WellEnvelope> envelopes =
                results.designs().stream().map(CaseTables.Evaluated::envelope).toList();
        if (envelopes.isEmpty()) {
            throw new CommandFailure(
                    ExitCode.CASE_FAULTS,
                    argument.path() + ", "
                            + String.join(
                                    "\n",
                                    parts.missing().stream()
                                            .map(TableBook.Missing::text)
                                            .toList()));
        }
        List<CaseTables.Entry> all = CaseTables.of(wellCase, results, shown);
        tables.write(
                () -> TableBook.of(wellCase.header(), shown, all, parts.missing()),
                main.terminal().out());
        parts.missing().forEach(m -> main.terminal().err().println("Not computed, " + m.text()));
        int exitCode = verdict.exitCode(envelopes);
        return exitCode == ExitCode.OK && !parts.missing().isEmpty() ? ExitCode.INCOMPLETE : exitCode;
    }

    private CaseTables.Results results(List<Study> studies, Parts parts) {
        List<CaseTables.Evaluated> evaluated = new ArrayList<>();
        for (Study study : studies) {
            parts.of(study.design(), "", "its evaluation", () -> watched(study, "design ", study::evaluate))
                    .ifPresent(envelope -> evaluated.add(new CaseTables.Evaluated(
                            envelope, operations(study, parts), shoes(study, parts), sensitivities(study, parts))));
        }
        List<WellEnvelope> envelopes =
                evaluated.stream().map(CaseTables.Evaluated::envelope).toList();
        if (envelopes.isEmpty()) {
            return new CaseTables.Results(evaluated, Optional.empty(), Optional.empty());
        }
        WellCase wellCase = studies.get(0).wellCase();
        Optional<Comparison> comparison = envelopes.size() < 2
                ? Optional.empty()
                : parts.of("", "", "comparison of the designs", () -> Comparison.of(wellCase, envelopes));
        List<String> names = envelopes.stream().map(WellEnvelope::design).toList();
        Optional<StudyTable> study = parts.of(
                "",
                "",
                "study of the designs by each estimate",
                () -> studies.get(0).table(names, StudyVariant.estimates(wellCase, wellCase.options())));
        return new CaseTables.Results(evaluated, comparison, study);
    }

    private List<SectionOperations> operations(Study study, Parts parts) {
        List<SectionOperations> found = new ArrayList<>();
        for (SectionPlan plan : study.wellCase().design(study.design()).sections()) {
            parts.of(study.design(), plan.name(), "what follows an influx", () -> study.operations(plan.name()))
                    .ifPresent(found::add);
        }
        return found;
    }

    private List<ShoeSearch> shoes(Study study, Parts parts) {
        return Arrays.stream(MudRule.values())
                .flatMap(mud -> parts
                        .of(
                                study.design(),
                                "",
                                "shoe depths, " + mud.title(),
                                () -> watched(study, "shoes of ", progress -> study.shoes(mud, progress)))
                        .stream())
                .toList();
    }

    private List<Sensitivity> sensitivities(Study study, Parts parts) {
        return argument.shutIn(study).stream()
                .flatMap(section ->
                        parts.of(study.design(), section, "sensitivity", () -> study.sensitivity(section)).stream())
                .toList();
    }

    /** Work of which a person who waits sees the progress. */
    private <T> T watched(Study study, String task, Function<ProgressLine, T> work) {
        try (ProgressLine progress = new ProgressLine(task + study.design(), main.terminal())) {
            return work.apply(progress);
        }
    }
}
