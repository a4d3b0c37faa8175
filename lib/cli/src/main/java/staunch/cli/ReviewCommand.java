package staunch.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import staunch.control.KillSheet;
import staunch.design.CaseHeader;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.KickOperations;
import staunch.envelope.SectionOperations;
import staunch.envelope.WellEnvelope;
import staunch.ingest.CaseInput;
import staunch.kernel.NotebookRun;
import staunch.report.KillSheetPage;
import staunch.report.Review;
import staunch.report.ReviewPage;
import staunch.report.ReviewPdf;
import staunch.table.CaseTables;
import staunch.table.TableBook;
import staunch.units.UnitSystem;

/** {@code staunch review}: the section summary on the terminal and the review pack as a page. */
@Command(
        name = "review",
        description = {
            "Compute every section of a casing design, print the section summary, and write the review as one page that"
                    + " opens anywhere."
        },
        mixinStandardHelpOptions = true)
final class ReviewCommand implements Callable<Integer> {
    private static final String RECORD_NAME = "record.txt";

    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Mixin
    private VerdictOption verdict;

    @Mixin
    private DesignOption design;

    @Mixin
    private PagesOption pages;

    @Mixin
    private UnitsOption units;

    @Option(
            names = "--notebook",
            paramLabel = "FILE",
            description =
                    "Notebook to run on the same case, folders of --with, design and units; its page is linked. May be"
                            + " repeated.")
    private List<Path> notebooks = List.of();

    @Mixin
    private TablesOption tables;

    @Override
    public Integer call() throws IOException {
        CaseInput input = argument.input();
        WellCase wellCase = input.wellCase();
        UnitSystem shown = units.or(wellCase.units());
        Study study = design.of(argument, wellCase);
        WellEnvelope envelope = argument.evaluate(study, shown, main.terminal());
        Path directory = pages.directory(argument);
        Review review = new Review(
                wellCase,
                envelope,
                argument.operations(study, shown),
                argument.sensitivities(study, argument.shutIn(study), shown, main.terminal()));
        List<ReviewPage.Companion> sheets = new ArrayList<>();
        for (SectionOperations section : review.operations()) {
            for (KickOperations kick : List.of(section.drilled(), section.swabbed())) {
                Optional<KillSheet> sheet = Review.killSheet(kick);
                if (sheet.isPresent()) {
                    KillSheetPage.Subject subject =
                            review.subject(section.section(), (KickOperations.Followed) kick, shown);
                    Path written = KillSheetPage.write(subject, sheet.get(), shown, directory);
                    sheets.add(new ReviewPage.Companion(
                            "kill sheet " + section.section(),
                            written.getFileName().toString()));
                    break;
                }
            }
        }
        List<NotebookRun> runs = runNotebooks(study.design(), shown, directory);
        List<ReviewPage.Companion> companions = Stream.concat(
                        runs.stream()
                                .map(r -> r.page().getFileName().toString())
                                .map(page -> new ReviewPage.Companion("notebook " + page.replace(".html", ""), page)),
                        sheets.stream())
                .toList();
        Path page = ReviewPage.write(review, shown, directory, companions);
        Path record = RecordOption.write(
                input.record(Version.LIBRARY, List.of(envelope), List.of(review.operations())),
                directory.resolve(RECORD_NAME));
        Optional<Path> document =
                pages.pdf() ? Optional.of(ReviewPdf.write(review, shown, directory)) : Optional.empty();
        print(wellCase, envelope, shown);
        main.terminal().out().println("Page: " + page);
        main.terminal().out().println("Record: " + record);
        document.ifPresent(d -> main.terminal().out().println("PDF:  " + d));
        runs.forEach(r -> main.terminal().out().println("Notebook: " + r.page()));
        sheets.forEach(s -> main.terminal().out().println("Kill sheet: " + directory.resolve(s.file())));
        tables.write(
                () -> TableBook.of(
                        wellCase.header(),
                        shown,
                        CaseTables.of(
                                wellCase,
                                CaseTables.Results.of(envelope, review.operations(), review.sensitivities()),
                                shown),
                        List.of()),
                main.terminal().out());
        return runs.stream().allMatch(NotebookRun::succeeded) ? verdict.exitCode(List.of(envelope)) : ExitCode.CELL;
    }

    private List<NotebookRun> runNotebooks(String designName, UnitSystem shown, Path directory) throws IOException {
        NotebookPages notebookPages = new NotebookPages(shown, true, main.terminal());
        Map<String, String> values = new TreeMap<>();
        // A notebook looks for a relative path from its own folder on, this command from where it was started.
        values.put("caseDirectory", absolute(argument.path()));
        values.put("designName", designName);
        if (!argument.drops().isEmpty()) {
            // A line each: a folder may hold any other character in its name.
            values.put(
                    "offsetData",
                    argument.drops().stream().map(d -> absolute(d) + "\n").collect(Collectors.joining()));
        }
        // Units that the case itself defines have no name outside it.
        UnitSystem.named(shown.name()).ifPresent(u -> values.put("units", u.name()));
        List<NotebookRun> runs = new ArrayList<>();
        for (Path notebook : notebooks) {
            runs.add(notebookPages.run(notebook, values, directory));
        }
        return runs;
    }

    private static String absolute(Path path) {
        return path.toAbsolutePath().normalize().toString();
    }

    private void print(WellCase wellCase, WellEnvelope envelope, UnitSystem shown) {
        CaseHeader header = wellCase.header();
        Terminal terminal = main.terminal();
        List<String> facts = new ArrayList<>(List.of(header.title(), "casing design \"" + envelope.design() + "\""));
        header.revision().ifPresent(revision -> facts.add("revision " + revision));
        header.date().ifPresent(facts::add);
        new Listing(terminal, terminal.out()).title(wellCase, String.join(", ", facts));
        terminal.out().println(SectionSummary.text(wellCase, envelope, shown, terminal));
    }
}
