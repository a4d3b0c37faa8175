package staunch.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;
import staunch.design.Sensitivity;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.earth.BoundUse;
import staunch.earth.EvidenceUse;
import staunch.earth.LogUse;
import staunch.earth.OffsetEvidence;
import staunch.envelope.Assumption;
import staunch.envelope.Drilling;
import staunch.envelope.SectionOperations;
import staunch.envelope.WellEnvelope;
import staunch.present.Fixtures;
import staunch.table.TableHtml;
import staunch.units.UnitSystem;
import staunch.units.Warning;

class ReviewPageTest {
    private static final String HOSTILE = "</style></title><script>alert('x')</script>\"&<b>";

    @TempDir
    Path directory;

    private static String page(UnitSystem units) {
        return ReviewPage.html(new Review(Fixtures.wellCase(), Fixtures.envelope(), Fixtures.operations()), units);
    }

    @Test
    void equalResultsGiveEqualBytes() {
        assertEquals(page(UnitSystem.FIELD), page(UnitSystem.FIELD));
    }

    @Test
    void thePageStandsAlone() {
        String page = page(UnitSystem.FIELD);
        assertFalse(page.contains("<script"));
        assertFalse(page.contains("<link"));
        assertFalse(Pattern.compile("(src|href)=\"(?!#|data:)").matcher(page).find(), "nothing is loaded from outside");
        assertFalse(page.contains("@import"));
        assertFalse(Pattern.compile("url\\((?!#|data:)").matcher(page).find());
    }

    @Test
    void thePageIsWellFormed() throws Exception {
        for (UnitSystem units : List.of(UnitSystem.FIELD, UnitSystem.METRIC, UnitSystem.MIXED, UnitSystem.SI)) {
            parse(page(units));
        }
    }

    private static void parse(String page) throws Exception {
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    @Test
    void everyTextOfTheCaseIsEscaped() throws Exception {
        WellCase wellCase = Fixtures.wellCase(HOSTILE);
        WellEnvelope plain = Fixtures.envelope();
        WellEnvelope envelope = new WellEnvelope(
                plain.design(), plain.options(), plain.sections(), List.of(new Warning(HOSTILE, HOSTILE)));
        String page = ReviewPage.html(new Review(wellCase, envelope, Fixtures.operations()), UnitSystem.FIELD);
        assertFalse(page.contains("<script"));
        assertFalse(page.contains("alert('x')"));
        assertTrue(page.contains("&lt;script&gt;"));
        parse(page);
    }

    private static String pageWith(BoundUse bounds) {
        WellCase plain = Fixtures.wellCase();
        OffsetEvidence evidence = new OffsetEvidence(
                EvidenceUse.PREDICTED,
                EvidenceUse.PREDICTED,
                false,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                bounds,
                LogUse.COMPARED,
                List.of(),
                List.of());
        WellCase wellCase = new WellCase(
                plain.header(),
                plain.units(),
                plain.datum(),
                plain.path(),
                plain.earth(),
                plain.designs(),
                plain.equipment(),
                plain.options(),
                plain.files(),
                plain.warnings(),
                Optional.of(evidence),
                plain.register());
        return ReviewPage.html(new Review(wellCase, Fixtures.envelope(), Fixtures.operations()), UnitSystem.FIELD);
    }

    @Test
    void boundsThatCountAreSaidOnTheFirstScreen() {
        String words = "bounds of offset wells: counted: losses lower the strength, kicks raise the pore pressure";
        String counted = pageWith(BoundUse.COUNTED);
        int said = counted.indexOf(words);
        assertTrue(said > 0 && said < counted.indexOf("<section id=\"well\">"), "within the section summary");
        assertFalse(pageWith(BoundUse.LISTED).contains(words));
    }

    /** What flips the verdict, with the source of every range, in the units of the reader; nothing where it was not asked. */
    @Test
    void everySensitivityHasABlockOfItsOwn() {
        WellCase wellCase = Fixtures.wellCase();
        String section = Fixtures.envelope().sections().stream()
                .filter(s -> s.plan().drilling() == Drilling.SHUT_IN)
                .findFirst()
                .orElseThrow()
                .plan()
                .name();
        Sensitivity sensitivity = Study.of(wellCase).sensitivity(section);
        Review review = new Review(wellCase, Fixtures.envelope(), Fixtures.operations(), List.of(sensitivity));
        for (UnitSystem units : List.of(UnitSystem.FIELD, UnitSystem.METRIC)) {
            String page = ReviewPage.html(review, units);
            assertEquals(2, page.split("What the verdict hangs on", -1).length, "one section was asked for");
            for (Sensitivity.Input input : sensitivity.inputs()) {
                assertTrue(page.contains(input.input().title()), input.input().title());
                if (input.flip() instanceof Sensitivity.FlipsAt at) {
                    String value = units.significant(at.value(), 4, at.measure());
                    assertTrue(page.contains("to " + at.verdict().outcome().title() + " at " + value), value);
                }
            }
        }
        assertFalse(page(UnitSystem.FIELD).contains("What the verdict hangs on"));
    }

    @Test
    void theFirstScreenHoldsTheAnswer() {
        String page = page(UnitSystem.FIELD);
        String first = page.substring(0, page.indexOf("<section id=\"well\">"));
        for (String said : List.of(
                "Heron-1",
                "2026-03-14",
                "A. Planner",
                "Invented well",
                "8 1/2 in hole fails; 6 in hole is not assessed",
                "14.9 bbl",
                "required 25.0 bbl",
                "depleted sand, influx part-way up",
                ">−85<",
                "at most 605",
                ">no limit</span> <span class=\"small\">formation<")) {
            assertTrue(first.contains(said), said);
        }
    }

    @Test
    void everySectionHasItsPage() {
        String page = page(UnitSystem.FIELD);
        for (int i = 1; i <= 5; i++) {
            assertTrue(page.contains("<section class=\"hole\" id=\"section-" + i + "\">"));
            assertTrue(page.contains("href=\"#section-" + i + "\""));
        }
        assertTrue(page.contains("to be verified by a competent person"));
        assertTrue(page.contains("certified well-control staff"));
    }

    @Test
    void whatTheEngineComputesCanBeShown() throws Exception {
        WellEnvelope envelope = Study.of(Fixtures.wellCase()).evaluate();
        parse(ReviewPage.html(new Review(Fixtures.wellCase(), envelope, Fixtures.operations()), UnitSystem.METRIC));
    }

    @Test
    void aKillSheetIsLinkedFromTheFirstScreenAndFromItsSection() throws IOException {
        Review review = new Review(Fixtures.wellCase(), Fixtures.envelope(), Fixtures.operations());
        ReviewPage.Companion sheet = new ReviewPage.Companion("kill sheet", "kill-sheet-8-1-2-in-hole.html");
        String page = Files.readString(ReviewPage.write(review, UnitSystem.FIELD, directory, List.of(sheet)));
        int well = page.indexOf("<section id=\"well\">");
        String link = "href=\"kill-sheet-8-1-2-in-hole.html\"";
        assertTrue(page.indexOf(link) < well);
        assertTrue(page.lastIndexOf(link) > page.indexOf("id=\"section-4\""));
        assertFalse(page.contains("href=\"kill-sheet-12-1-4-in-hole.html\""), "that sheet is not there");
    }

    @Test
    void whatFollowsAnInfluxBeginsWithHowLongToWait() {
        String page = page(UnitSystem.FIELD);
        String section = page.substring(page.indexOf("id=\"section-4\""), page.indexOf("id=\"section-5\""));
        assertTrue(section.indexOf("Drilled kick, closed in, can wait") < section.indexOf("<h3>Charts</h3>"));
        for (String said : List.of(
                "After an influx: circulating out, waiting, killing",
                "How long can it wait",
                "Choke pressure while circulating out",
                "Surface pressure of the closed well",
                "Time to each limit",
                "Gas at surface")) {
            assertTrue(section.contains(said), said);
        }
    }

    @Test
    void whatEverySectionAssumesStandsOnceAndEachSectionPointsToIt() {
        String page = page(UnitSystem.FIELD);
        String section = page.substring(page.indexOf("id=\"section-4\""), page.indexOf("id=\"section-5\""));
        String methods = page.substring(page.indexOf("<section id=\"methods\">"));
        assertTrue(methods.contains("Assumptions of the operations in every section"));
        assertTrue(section.contains("href=\"#methods\""));
        for (SectionOperations operations : Fixtures.operations()) {
            for (Assumption assumption : operations.assumptions()) {
                String row = ">" + TableHtml.escape(assumption.text(UnitSystem.FIELD))
                        + "</td><td style=\"text-align:left\">" + TableHtml.escape(assumption.origin()) + "</td>";
                assertTrue(methods.contains(row) != section.contains(row), row);
            }
        }
    }

    @Test
    void whatOneSectionAssumesByItselfIsNotShared() {
        Assumption common = new Assumption("gas", "real", "default");
        Assumption own = new Assumption("friction", "35 psi", "case");
        SharedAssumptions two = SharedAssumptions.of(List.of(List.of(), List.of(common, own), List.of(common)));
        assertEquals(List.of(common), two.shared());
        assertEquals(List.of(own), two.rest(List.of(common, own)));
        assertEquals(
                List.of(),
                SharedAssumptions.of(List.of(List.of(common), List.of())).shared(),
                "one section alone");
    }

    @Test
    void headingsDescendStepByStepAndEveryTableHasAName() {
        String page = page(UnitSystem.FIELD);
        int before = 0;
        var heading = Pattern.compile("<h([1-6])[ >]").matcher(page);
        while (heading.find()) {
            int level = Integer.parseInt(heading.group(1));
            assertTrue(level <= before + 1, "h" + before + " is followed by h" + level + " at " + heading.start());
            before = level;
        }
        assertTrue(before > 0);
        var table = Pattern.compile("<table class=\"staunch\"").matcher(page);
        assertFalse(table.find(), "a table of results without a name");
    }

    @Test
    void writesOneFileAndReplacesIt() throws IOException {
        Path target = directory.resolve("made/on/the/way");
        ReviewPage.write(
                new Review(Fixtures.wellCase(), Fixtures.envelope(), Fixtures.operations()), UnitSystem.METRIC, target);
        Path file = ReviewPage.write(
                new Review(Fixtures.wellCase(), Fixtures.envelope(), Fixtures.operations()), UnitSystem.FIELD, target);
        assertEquals(target.resolve("index.html"), file);
        assertEquals(page(UnitSystem.FIELD), Files.readString(file));
        assertEquals(List.of("index.html"), names(target));
    }

    @Test
    void anInterruptedRunLeavesThePreviousPageWhole() throws IOException {
        Path file = directory.resolve("index.html");
        Files.writeString(file, "the page before");
        IOException stopped = assertThrows(
                IOException.class,
                () -> WholeFile.write(file, out -> {
                    out.write("half a pa".getBytes(StandardCharsets.UTF_8));
                    out.flush();
                    assertEquals("the page before", Files.readString(file));
                    throw new IOException("disk full");
                }));
        assertEquals("disk full", stopped.getMessage());
        assertEquals("the page before", Files.readString(file));
        assertEquals(List.of("index.html"), names(directory));
    }

    private static List<String> names(Path directory) throws IOException {
        try (Stream<Path> files = Files.list(directory)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }
}
