package staunch.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import staunch.design.MudRule;
import staunch.design.ShoeSearch;
import staunch.design.WellCase;
import staunch.table.ResultTable;
import staunch.table.ShoeTables;
import staunch.table.TableBook;
import staunch.units.UnitSystem;

/** {@code staunch shoes}: where the casing shoes of a design may stand. */
@Command(
        name = "shoes",
        description =
                "Find the depths at which each casing shoe may stand, what binds at each end, and shoe depths for all"
                        + " strings together with the fewest strings.",
        mixinStandardHelpOptions = true)
final class ShoesCommand implements Callable<Integer> {
    private static final String CAUTION =
            "A planning aid: every depth is to be verified by a competent person, with what the search does not know.";

    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Mixin
    private UnitsOption units;

    @Mixin
    private DesignOption design;

    @Option(
            names = "--mud",
            paramLabel = "RULE",
            description =
                    "Mud of each section: as_planned, or lightest for the lightest one that holds pore pressure plus"
                            + " trip margin. Default: as_planned.")
    private MudRule mud = MudRule.AS_PLANNED;

    @Mixin
    private JsonOption json;

    @Mixin
    private TablesOption tables;

    @Override
    public Integer call() throws IOException {
        WellCase wellCase = argument.read();
        UnitSystem shown = units.or(wellCase.units());
        ShoeSearch search = argument.shoes(design.of(argument, wellCase), mud, shown, main.terminal());
        json.write(MachineShoes.of(wellCase, search)::write, main.terminal());
        Listing listing = new Listing(main.terminal(), json.text(main.terminal()));
        listing.title(wellCase, "casing design " + search.design());
        List<ResultTable> all = ShoeTables.all(search, shown);
        all.forEach(listing::table);
        search.joint().forEach(j -> listing.line(j.direction().title() + ": " + ShoeTables.statement(j, shown) + "."));
        listing.line(CAUTION);
        tables.write(() -> TableBook.of(wellCase, shown, Optional.of(search.design()), all), listing.out());
        return ExitCode.OK;
    }
}
