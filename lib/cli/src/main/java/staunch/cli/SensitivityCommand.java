package staunch.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import staunch.design.CasingDesign;
import staunch.design.Sensitivity;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.table.ResultTable;
import staunch.table.SensitivityTables;
import staunch.table.TableBook;
import staunch.units.Fault;
import staunch.units.UnitSystem;

/** {@code staunch sensitivity}: what the verdict of each section hangs on. */
@Command(
        name = "sensitivity",
        description =
                "Vary each input of a hole section by itself: what its range changes, and at which value the verdict"
                        + " flips.",
        mixinStandardHelpOptions = true)
final class SensitivityCommand implements Callable<Integer> {
    private static final String CAUTION =
            "A planning aid: one input varied at a time, to be verified by a competent person.";

    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Mixin
    private UnitsOption units;

    @Mixin
    private DesignOption design;

    @Option(
            names = "--section",
            paramLabel = "NAME",
            description = "Hole section; may be repeated. Default: every section that is shut in.")
    private List<String> sections = List.of();

    @Mixin
    private JsonOption json;

    @Mixin
    private TablesOption tables;

    @Override
    public Integer call() throws IOException {
        WellCase wellCase = argument.read();
        UnitSystem shown = units.or(wellCase.units());
        Study study = design.of(argument, wellCase);
        List<Sensitivity> found = varied(study, shown);
        json.write(MachineSensitivity.of(wellCase, found)::write, main.terminal());
        Listing listing = new Listing(main.terminal(), json.text(main.terminal()));
        listing.title(wellCase, "sensitivity, casing design " + study.design());
        List<ResultTable> all =
                found.stream().map(s -> SensitivityTables.swings(s, shown)).toList();
        all.forEach(listing::table);
        listing.line(CAUTION);
        tables.write(() -> TableBook.of(wellCase, shown, Optional.of(study.design()), all), listing.out());
        return ExitCode.OK;
    }

    private List<Sensitivity> varied(Study study, UnitSystem shown) {
        CasingDesign chosen = study.wellCase().design(study.design());
        List<String> names = sections.isEmpty() ? argument.shutIn(study) : sections;
        try {
            names.forEach(chosen::section);
        } catch (Fault fault) {
            throw new CommandFailure(ExitCode.USAGE, "staunch: --section: " + fault.getMessage());
        }
        return argument.sensitivities(study, names, shown, main.terminal());
    }
}
