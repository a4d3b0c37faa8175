package staunch.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import staunch.control.KillSheet;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.Kick;
import staunch.envelope.KickOperations;
import staunch.envelope.KillSheetOutcome;
import staunch.envelope.NotAssessed;
import staunch.envelope.SectionOperations;
import staunch.report.KillSheetPage;
import staunch.report.Review;
import staunch.table.OperationTables;
import staunch.table.ResultTable;
import staunch.units.Fault;
import staunch.units.UnitSystem;

/** {@code staunch killsheet}: the kill sheet of a planned influx. */
@Command(
        name = "killsheet",
        description = {
            "Work out the kill sheet of a planned influx into a section, print its answers, and write it on two A4 sheets."
                    + " It is a planning sheet, not for use on a live well."
        },
        mixinStandardHelpOptions = true)
final class KillSheetCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Option(names = "--section", paramLabel = "NAME", required = true, description = "Hole section.")
    private String section;

    @Mixin
    private DesignOption design;

    @Option(
            names = "--kick",
            paramLabel = "SCENARIO",
            description = "Influx that is killed: ${COMPLETION-CANDIDATES}. Default: drilled.")
    private Kick.Scenario scenario = Kick.Scenario.DRILLED;

    @Mixin
    private PagesOption pages;

    @Mixin
    private UnitsOption units;

    @Override
    public Integer call() throws IOException {
        WellCase wellCase = argument.read();
        UnitSystem shown = units.or(wellCase.units());
        Study study = design.of(argument, wellCase);
        SectionOperations operations = operations(study, shown);
        KickOperations kick = scenario == Kick.Scenario.DRILLED ? operations.drilled() : operations.swabbed();
        KillSheet sheet = sheet(kick, shown);
        KillSheetPage.Subject subject = Review.subject(
                wellCase, new Review.Place(study.design(), section), (KickOperations.Followed) kick, shown);
        Path directory = pages.directory(argument);
        Terminal terminal = main.terminal();
        terminal.out()
                .println(terminal.styled("bold", wellCase.header().well()) + ", " + section + ": " + subject.basis());
        terminal.out().println(KillSheet.NOTICE);
        print(OperationTables.killSheetAnswers(sheet, shown));
        print(OperationTables.killSheetWeakPoint(sheet, shown));
        print(OperationTables.killSheetVolumes(sheet, shown));
        sheet.warnings().forEach(w -> terminal.out().println("Warning, " + w.subject() + ": " + w.text(shown)));
        terminal.out().println("Page: " + KillSheetPage.write(subject, sheet, shown, directory));
        if (pages.pdf()) {
            terminal.out().println("PDF:  " + KillSheetPage.writePdf(subject, sheet, shown, directory));
        }
        return ExitCode.OK;
    }

    private void print(ResultTable table) {
        main.terminal().out().println();
        main.terminal().out().println(table.name());
        main.terminal().out().println(table.text());
    }

    private SectionOperations operations(Study study, UnitSystem shown) {
        if (study.wellCase().design(study.design()).sections().stream()
                .noneMatch(s -> s.name().equals(section))) {
            throw new CommandFailure(
                    ExitCode.USAGE,
                    "staunch: --section: \"" + section + "\" is not in casing design \"" + study.design()
                            + "\"; use one of "
                            + study.wellCase().design(study.design()).sections().stream()
                                    .map(s -> "\"" + s.name() + "\"")
                                    .toList());
        }
        try {
            return study.operations(section);
        } catch (Fault fault) {
            throw new CommandFailure(
                    ExitCode.CASE_FAULTS, argument.path() + ", section \"" + section + "\": " + fault.text(shown));
        }
    }

    private KillSheet sheet(KickOperations kick, UnitSystem shown) {
        if (kick instanceof NotAssessed not) {
            throw none(not, shown);
        }
        KillSheetOutcome outcome = ((KickOperations.Followed) kick).killSheet();
        if (outcome instanceof NotAssessed not) {
            throw none(not, shown);
        }
        return ((KillSheetOutcome.Computed) outcome).sheet();
    }

    private CommandFailure none(NotAssessed not, UnitSystem shown) {
        return new CommandFailure(
                ExitCode.FAILED, "staunch: no kill sheet for \"" + section + "\": " + not.summary(shown));
    }
}
