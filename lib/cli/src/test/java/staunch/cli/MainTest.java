package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.table.TableBook;
import staunch.units.InputFault;
import staunch.units.UnitSystem;

class MainTest {
    private static final List<String> FILES = List.of(
            "survey.csv",
            "pore-pressure.csv",
            "strength.csv",
            "tops.csv",
            "quillmarsh-south-3-pore-pressure.csv",
            "quillmarsh-south-3-tops.csv");
    private static final Path SOURCE = Path.of(System.getProperty("staunch.root"), "data", "quillmarsh-1");

    @TempDir
    private static Path common;

    /** The land demo well, computed at a few depths only. */
    private static String demo;

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeAll
    static void copyDemo() throws IOException {
        demo = copy(common.resolve("quillmarsh-1"), text -> text + "  depth_step: 3000 ft\n  depth_count: 2\n");
    }

    private static String copy(Path directory, UnaryOperator<String> change) throws IOException {
        Files.createDirectories(directory);
        Files.writeString(directory.resolve("case.yaml"), change.apply(Files.readString(SOURCE.resolve("case.yaml"))));
        for (String name : FILES) {
            Files.copy(SOURCE.resolve(name), directory.resolve(name));
        }
        return directory.toString();
    }

    private int run(String... arguments) {
        return run(false, arguments);
    }

    private int run(boolean interactive, String... arguments) {
        out.reset();
        err.reset();
        Terminal terminal = new Terminal(
                out,
                new PrintWriter(out, true, StandardCharsets.UTF_8),
                new PrintWriter(err, true, StandardCharsets.UTF_8),
                interactive);
        return Main.run(terminal, arguments);
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private List<Path> written() throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(Files::isRegularFile).toList();
        }
    }

    private String brokenCase() throws IOException {
        return copy(
                folder.resolve("broken"),
                text -> text.replace("density: 8.9 ppg", "density: 89 ppg").replace("gravity: 0.65", "gravitee: 0.65"));
    }

    @Test
    void helpAndVersionSucceedOnStandardOutput() {
        assertEquals(ExitCode.OK, run("--help"));
        assertTrue(out().contains("Exit codes:"), out());
        assertEquals(ExitCode.OK, run("--version"));
        assertTrue(out().startsWith("staunch 0.1.0"), out());
        assertEquals("", err());
    }

    @Test
    void offsetDataHandedInFlipAVerdict() {
        assertEquals(ExitCode.VERDICT, run("review", demo, "--fail-on-verdict", "--out", folder.toString()));
        assertTrue(out().contains("8 1/2 in fails"), out());
        String drop = SOURCE.resolve("offset-drop").toString();
        assertEquals(ExitCode.OK, run("review", demo, "--with", drop, "--out", folder.toString()));
        assertFalse(out().contains("8 1/2 in fails"), out());
        assertEquals(
                ExitCode.CASE_FAULTS,
                run("review", demo, "--with", folder.resolve("none").toString()));
        assertTrue(err().contains("none: is not a folder"), err());
    }

    @Test
    void exportWritesEveryTable() throws IOException {
        Path book = folder.resolve("tables.xlsx");
        Path csv = folder.resolve("tables");
        assertEquals(ExitCode.USAGE, run("export", demo));
        assertEquals(
                ExitCode.OK,
                run("export", demo, "--design", "Base", "--xlsx", book.toString(), "--csv", csv.toString()));
        assertTrue(Files.size(book) > 10_000);
        String summary = Files.readString(csv.resolve("base-section-summary.csv"));
        assertEquals(5, summary.lines().count(), summary);
        assertTrue(summary.startsWith("Section,Hole size [in],"), summary);
        assertTrue(
                Files.exists(csv.resolve("base-8-1-2-in-sensitivity-of-8-1-2-in.csv")),
                written().toString());
        String register = Files.readString(csv.resolve("where-the-numbers-come-from.csv"));
        assertTrue(register.contains("earth.weak_zones[Burdock sand].strength,14.25 ppg,case.yaml,"), register);
        assertTrue(
                register.contains("earth.pore_pressure.likely,6.25 ppg,pore-pressure.csv,3,Invented basin model"),
                register);
    }

    @Test
    void exportHoldsTheDesignsSideBySideAndTheShoes() throws IOException {
        Path csv = folder.resolve("tables");
        assertEquals(ExitCode.OK, run("export", demo, "--csv", csv.toString()));
        List<String> names;
        try (Stream<Path> files = Files.list(csv)) {
            names = files.map(f -> f.getFileName().toString()).sorted().toList();
        }
        for (String part : List.of("steel", "maasp", "sensitivity", "kill-sheet", "hand-calculation")) {
            assertTrue(names.stream().anyMatch(n -> n.contains(part)), part + " in " + names);
        }
        assertTrue(names.contains("base-shoe-depths-planned-mud.csv"), names.toString());
        assertTrue(names.contains("base-shoe-depths-lightest-mud.csv"), names.toString());
        String study = Files.readString(csv.resolve("study.csv"));
        // 2 estimates, 2 designs, 4 sections, 2 kicks, and the headings.
        assertEquals(33, study.lines().count(), study);
        List<String> listed = Files.readString(csv.resolve("contents.csv"))
                .lines()
                .filter(l -> l.startsWith("table,"))
                .map(l -> l.split(",")[1])
                .sorted()
                .toList();
        assertEquals(names.stream().filter(n -> !n.equals("contents.csv")).toList(), listed);
    }

    /** The rule of the lightest mud knows no density that moves with depth. */
    @Test
    void exportGoesOnWithoutAPartThatCannotBeComputed() throws IOException {
        String moving = copy(
                folder.resolve("moving"),
                text -> text.replace("density: 12.6 ppg", "density: 12.6 ppg")
                        + "  mud_density: pressure_and_temperature\n");
        Path csv = folder.resolve("tables");
        assertEquals(ExitCode.INCOMPLETE, run("export", moving, "--design", "Base", "--csv", csv.toString()));
        String why =
                "Not computed, design Base, shoe depths, lightest mud of each section that holds pore pressure plus"
                        + " trip margin: ";
        assertTrue(err().startsWith(why), err());
        String contents = Files.readString(csv.resolve("contents.csv"));
        assertTrue(contents.contains("not computed,,Base,,"), contents);
        assertTrue(contents.contains("base-shoe-depths-planned-mud.csv"), contents);
        assertEquals(
                ExitCode.VERDICT,
                run("export", moving, "--design", "Base", "--csv", csv.toString(), "--fail-on-verdict"));
    }

    @Test
    void anErrorOfTheProgramIsNoPartThatIsMissing() {
        Parts parts = new Parts(UnitSystem.FIELD);
        assertEquals(Optional.of(1), parts.of("", "", "part", () -> 1));
        assertEquals(Optional.empty(), parts.of("", "", "part", () -> {
            throw new InputFault("mud", "is missing", "give it");
        }));
        assertEquals(
                List.of("part: mud is missing; give it"),
                parts.missing().stream().map(TableBook.Missing::text).toList());
        assertThrows(
                IllegalStateException.class,
                () -> parts.of("", "", "part", () -> {
                    throw new IllegalStateException();
                }));
    }

    @Test
    void tablesOfACommandAreWrittenBesideItsText() throws IOException {
        for (String command : List.of("compare", "shoes", "sensitivity")) {
            Path csv = folder.resolve(command);
            Path book = folder.resolve(command + ".xlsx");
            assertEquals(ExitCode.OK, run(command, demo, "--csv", csv.toString(), "--xlsx", book.toString()), err());
            assertTrue(out().contains("Workbook: " + book) && out().contains("CSV: " + csv), out());
            assertTrue(Files.readString(csv.resolve("contents.csv")).contains("competent person"));
            try (Stream<Path> files = Files.list(csv)) {
                assertTrue(files.count() >= 4, command);
            }
            assertEquals(ExitCode.OK, run(command, demo, "--csv", csv.toString(), "--json", "-"));
            assertTrue(out().startsWith("{") && out().endsWith("}\n"), "standard output holds JSON alone");
        }
        Path csv = folder.resolve("review");
        assertEquals(
                ExitCode.OK,
                run(
                        "review",
                        demo,
                        "--csv",
                        csv.toString(),
                        "--out",
                        folder.resolve("page").toString()));
        assertTrue(Files.exists(csv.resolve("base-section-summary.csv")));
    }

    @Test
    void aCommandLineThatIsNotUnderstoodNamesWhatIsWrong() {
        assertEquals(ExitCode.USAGE, run());
        assertTrue(err().contains("No command"), err());
        assertEquals(ExitCode.USAGE, run("evaluate", demo));
        assertTrue(err().contains("--json"), err());
        assertEquals(ExitCode.USAGE, run("review", demo, "--units", "cubits", "--out", folder.toString()));
        assertTrue(err().contains("cubits") && err().contains("metric"), err());
        assertEquals(ExitCode.USAGE, run("review", demo, "--design", "none", "--out", folder.toString()));
        assertTrue(err().contains("\"none\"") && err().contains("Base"), err());
        assertEquals("", out());
    }

    @Test
    void validateNamesTheDesignsOfAGoodCase() {
        assertEquals(ExitCode.OK, run("validate", demo));
        assertTrue(out().contains("no faults") && out().contains("Base (4 hole sections)"), out());
        assertEquals("", err());
    }

    @Test
    void everyFaultOfACaseIsToldAtOnceAndNothingIsWritten() throws IOException {
        String broken = brokenCase();
        List<Path> before = written();
        Path target = folder.resolve("results.json");
        for (String[] arguments : List.of(
                new String[] {"validate", broken},
                new String[] {"evaluate", broken, "--json", target.toString()},
                new String[] {"compare", broken, "--json", target.toString()},
                new String[] {"shoes", broken, "--json", target.toString()},
                new String[] {"review", broken, "--out", folder.resolve("page").toString()})) {
            assertEquals(ExitCode.CASE_FAULTS, run(arguments));
            assertTrue(err().contains("89 ppg"), err());
            assertTrue(err().contains("gravitee"), err());
            assertEquals("", out());
            assertEquals(before, written());
        }
    }

    @Test
    void shoesGivesTheSameBytesToAFileAndToStandardOutput() throws IOException {
        Path file = folder.resolve("shoes.json");
        String[] asked = {"shoes", demo, "--design", "Early liner", "--json"};
        assertEquals(ExitCode.OK, run(asked[0], asked[1], asked[2], asked[3], asked[4], file.toString()));
        assertTrue(out().contains("9 5/8 in casing") && out().contains("planning aid"), out());
        assertEquals(ExitCode.OK, run(asked[0], asked[1], asked[2], asked[3], asked[4], "-"));
        assertArrayEquals(Files.readAllBytes(file), out.toByteArray());
        JsonNode search = new ObjectMapper().readTree(file.toFile()).get("search");
        assertEquals("AS_PLANNED", search.get("mud").asText());
        JsonNode window = search.get("windows").get(2);
        assertEquals("9 5/8 in casing", window.get("string").asText());
        assertEquals(8230 * 0.3048, window.get("planned_m").asDouble(), 1e-9);
        assertTrue(window.get("stretches").get(1).get("allowed").asBoolean());
        assertEquals(ExitCode.USAGE, run("shoes", demo, "--design", "none"));
        assertTrue(err().contains("Early liner"), err());
    }

    @Test
    void sensitivityIsWrittenAndPrinted() throws IOException {
        Path file = folder.resolve("sensitivity.json");
        assertEquals(ExitCode.OK, run("sensitivity", demo, "--section", "12 1/4 in", "--json", file.toString()));
        assertTrue(out().contains("mud density") && out().contains("flip") && out().contains("planning aid"), out());
        JsonNode sections = new ObjectMapper().readTree(file.toFile()).get("sections");
        assertEquals(1, sections.size());
        assertEquals("12 1/4 in", sections.get(0).get("section").asText());
        assertEquals(ExitCode.USAGE, run("sensitivity", demo, "--section", "none"));
        assertTrue(err().contains("--section") && err().contains("12 1/4 in"), err());
    }

    @Test
    void aCaseThatIsNotThereIsACaseFault() {
        assertEquals(
                ExitCode.CASE_FAULTS, run("validate", folder.resolve("nowhere").toString()));
        assertTrue(err().contains("nowhere"), err());
    }

    @Test
    void evaluateGivesTheSameBytesToAFileAndToStandardOutput() throws IOException {
        Path file = folder.resolve("results.json");
        assertEquals(ExitCode.OK, run("evaluate", demo, "--json", file.toString()));
        assertEquals("", out());
        assertEquals("", err());
        assertEquals(ExitCode.OK, run("evaluate", demo, "--json", "-"));
        assertArrayEquals(Files.readAllBytes(file), out.toByteArray());
        assertEquals(List.of(file), written());
        JsonNode results = new ObjectMapper().readTree(file.toFile());
        assertEquals(2, results.get("designs").size());
        assertEquals("case.yaml", results.at("/inputs/0/path").textValue());
        assertEquals(64, results.at("/inputs/0/sha256").textValue().length());
    }

    @Test
    void evaluateNarrowsToADesign() throws IOException {
        assertEquals(ExitCode.OK, run("evaluate", demo, "--design", "Early liner", "--json", "-"));
        JsonNode results = new ObjectMapper().readTree(out.toByteArray());
        assertEquals(1, results.get("designs").size());
        assertEquals("Early liner", results.at("/designs/0/design").textValue());
    }

    @Test
    void aVerdictIsAnErrorOnlyWhereAskedFor() throws IOException {
        Path file = folder.resolve("results.json");
        assertEquals(ExitCode.VERDICT, run("evaluate", demo, "--fail-on-verdict", "--json", file.toString()));
        assertTrue(Files.size(file) > 0);
    }

    @Test
    void reviewPrintsEachSectionWithItsVerdictInWordsAndSaysWhereThePageIs() throws IOException {
        Path directory = folder.resolve("page");
        assertEquals(ExitCode.OK, run("review", demo, "--out", directory.toString()));
        for (String word : List.of("17 1/2 in", "12 1/4 in", "8 1/2 in", "6 in", "holds", "fails", "not assessed")) {
            assertTrue(out().contains(word), word + " in " + out());
        }
        assertTrue(out().contains("bbl"), out());
        Path page = directory.resolve("index.html");
        assertTrue(out().contains("Page: " + page), out());
        assertTrue(Files.readString(page).startsWith("<!DOCTYPE html>"));
        assertEquals("", err());
        assertFalse(out().contains("\u001b["), "no colours without a terminal");
    }

    @Test
    void aKillSheetIsWrittenBesideTheReviewAndByItsOwnCommand() throws IOException {
        Path directory = folder.resolve("page");
        assertEquals(ExitCode.OK, run("review", demo, "--out", directory.toString()));
        String review = Files.readString(directory.resolve("index.html"));
        assertTrue(review.contains("href=\"kill-sheet-12-1-4-in.html\""), "linked from its section");
        Path own = folder.resolve("own");
        assertEquals(ExitCode.OK, run("killsheet", demo, "--section", "12 1/4 in", "--out", own.toString(), "--pdf"));
        assertTrue(out().contains("Not for use on a live well") && out().contains("Kill mud, rounded up"), out());
        assertEquals(
                Files.readString(directory.resolve("kill-sheet-12-1-4-in.html")),
                Files.readString(own.resolve("kill-sheet-12-1-4-in.html")));
        assertTrue(Files.size(own.resolve("kill-sheet-12-1-4-in.pdf")) > 1000);
    }

    @Test
    void aKillSheetThatCannotBeMadeSaysWhy() {
        assertEquals(ExitCode.USAGE, run("killsheet", demo, "--section", "9 in", "--out", folder.toString()));
        assertTrue(err().contains("\"9 in\"") && err().contains("\"12 1/4 in\""), err());
        assertEquals(ExitCode.FAILED, run("killsheet", demo, "--section", "17 1/2 in", "--out", folder.toString()));
        assertTrue(err().contains("drilled on a diverter"), err());
        assertEquals(ExitCode.USAGE, run("killsheet", demo, "--section", "6 in", "--kick", "big"));
        assertTrue(err().contains("DRILLED"), err());
    }

    @Test
    void evaluateTellsWhatFollowsAnInflux() throws IOException {
        assertEquals(ExitCode.OK, run("evaluate", demo, "--design", "Base", "--json", "-"));
        JsonNode sections = new ObjectMapper().readTree(out.toByteArray()).at("/operations/0/sections");
        assertEquals("notAssessed", sections.at("/0/drilled/outcome").textValue());
        JsonNode kick = sections.at("/1/drilled");
        assertEquals("followed", kick.get("outcome").textValue());
        assertTrue(kick.at("/drillers/schedule/points/0/chokePressure_Pa_gauge").isNumber());
        assertTrue(kick.at("/drillers/schedule/points/0/watched_Pa_abs").isArray());
        assertTrue(kick.at("/migration/courses/2/limits/0/moment/time_s").isNumber());
        assertTrue(kick.at("/killSheet/sheet/killDensity_kg_per_m3").isNumber());
    }

    @Test
    void reviewShowsTheUnitsAskedFor() {
        assertEquals(ExitCode.OK, run("review", demo, "--units", "metric", "--out", folder.toString()));
        assertTrue(out().contains("m³"), out());
        assertFalse(out().contains("bbl"), out());
    }

    @Test
    void compareShowsDesignsSideBySideAndWhichDominates() throws IOException {
        assertEquals(ExitCode.OK, run("compare", demo));
        for (String word : List.of("Base", "Early liner", "least shoe margin", "fails", "holds", "7850 kg/m³")) {
            assertTrue(out().contains(word), word + " in " + out());
        }
        assertTrue(out().contains("8 1/2 in: Early liner dominates Base"), out());
        assertTrue(out().contains("12 1/4 in: neither dominates"), out());
        assertTrue(out().contains("17 1/2 in: Base and Early liner are not compared: not shut in"), out());
        assertTrue(out().contains("777120  USD"), out());
        assertTrue(out().lines().allMatch(l -> l.length() <= 100), "fits a terminal of 100 columns");
        assertTrue(out().contains("bbl"), out());
        assertEquals("", err());
        assertEquals(List.of(), written());
        assertEquals(ExitCode.OK, run("compare", demo, "--designs", "Early liner, Base", "--units", "metric"));
        assertTrue(out().contains("m³") && !out().contains("bbl"), out());
        assertTrue(out().indexOf("Early liner") < out().indexOf("Base"), out());
    }

    @Test
    void compareGivesTheSameJsonToAFileAndToStandardOutput() throws IOException {
        Path file = folder.resolve("comparison.json");
        assertEquals(ExitCode.OK, run("compare", demo, "--json", file.toString()));
        assertTrue(out().contains("side by side"), out());
        assertEquals(ExitCode.OK, run("compare", demo, "--json", "-"));
        assertArrayEquals(Files.readAllBytes(file), out.toByteArray());
        JsonNode results = new ObjectMapper().readTree(file.toFile());
        assertEquals("Base", results.at("/comparison/designs/0").textValue());
        assertEquals(
                "SECOND_DOMINATES",
                results.at("/comparison/sections/2/pairs/0/relation").textValue());
        assertTrue(results.at("/comparison/steel/0/mass_kg").doubleValue() > 0);
    }

    @Test
    void compareNeedsTwoDesignsOfTheCase() {
        assertEquals(ExitCode.USAGE, run("compare", demo, "--designs", "Base"));
        assertTrue(err().contains("fewer than two"), err());
        assertEquals(ExitCode.USAGE, run("compare", demo, "--designs", "Base,Base"));
        assertTrue(err().contains("twice"), err());
        assertEquals(ExitCode.OK, run("compare", demo, "--designs", "Early liner", "--designs", "Base"));
        assertEquals(ExitCode.USAGE, run("compare", demo, "--designs", "Base,none"));
        assertTrue(err().contains("\"none\"") && err().contains("Early liner"), err());
        assertEquals(ExitCode.VERDICT, run("compare", demo, "--fail-on-verdict"));
    }

    @Test
    void aNameOfADesignMayHaveACommaInIt() {
        List<String> known = List.of("Base", "7 in, deep", "7 in", "deep");
        assertEquals(List.of("Base", "7 in, deep"), DesignNames.of(List.of("Base, 7 in, deep"), known));
        assertEquals(List.of("7 in", "Base", "deep"), DesignNames.of(List.of("7 in,Base", " deep"), known));
        assertEquals(List.of("Base", "none", ""), DesignNames.of(List.of("Base,none,"), known));
    }

    @Test
    void aCaseOfOneDesignHasNothingToCompare() throws IOException {
        String one = copy(folder.resolve("one"), text -> {
            int second = text.indexOf("  - name: Early liner");
            return text.substring(0, second) + text.substring(text.indexOf("\ncriteria:", second) + 1);
        });
        assertEquals(ExitCode.USAGE, run("compare", one));
        assertTrue(err().contains("has one casing design, \"Base\": there is nothing to compare"), err());
    }

    @Test
    void rerunTellsWhichVerdictFlipsAndBecauseOfWhat() throws IOException {
        Path record = folder.resolve("before.txt");
        assertEquals(ExitCode.OK, run("evaluate", demo, "--record", record.toString()));
        assertEquals("", out() + err());
        String drop = SOURCE.resolve("offset-drop").toString();
        Path page = folder.resolve("page");
        assertEquals(
                ExitCode.OK,
                run("rerun", demo, "--with", drop, "--against", record.toString(), "--out", page.toString()));
        assertEquals("", err());
        String text = out();
        assertTrue(text.contains("One verdict flips: 8 1/2 in (Base), fails → holds."), text);
        assertTrue(text.contains("Turned by strength test \"Quillmarsh South 3: LOT 8 1/2 in\" alone."), text);
        assertTrue(text.indexOf("8 1/2 in (Base), fails") < text.indexOf("8 1/2 in (Early liner)"), text);
        assertTrue(text.contains("remainder") && text.contains("new: tvd 9393 ft, standing leak off"), text);
        assertTrue(text.contains("To be judged in the later case:") && text.contains(" against "), text);
        Path csv = folder.resolve("tables");
        assertEquals(
                ExitCode.OK,
                run("rerun", demo, "--with", drop, "--against", record.toString(), "--csv", csv.toString()));
        String flips = Files.readString(csv.resolve("flipped-verdicts.csv"));
        assertTrue(flips.contains("8 1/2 in,Base,fails,holds,\"Turned by strength test"), flips);
        String values = Files.readString(csv.resolve("changed-values-volume.csv"));
        assertTrue(values.startsWith("Section,Design,Result,Before [bbl],After [bbl],Change [bbl]"), values);
        assertTrue(values.contains("\n8 1/2 in,Base,\"drilled kick, formation\",18.7"), values);
        String causes = Files.readString(csv.resolve("causes-of-changes-volume.csv"));
        assertTrue(causes.contains(",remainder,") && causes.contains(",total,"), causes);
        String inputs = Files.readString(csv.resolve("changed-inputs.csv"));
        assertTrue(inputs.contains("7211.93 psia") && inputs.contains("end-of-well report"), inputs);
        assertTrue(Files.readString(csv.resolve("files-of-both-runs.csv")).contains("leak-off.csv,new,"));
        String html = Files.readString(page.resolve("rerun.html"));
        assertTrue(html.contains("To be judged in the later case"), html);
        assertTrue(html.contains("One verdict flips") && html.contains("<svg") && html.contains("Cautions"));
        run("rerun", demo, "--with", drop, "--against", record.toString(), "--json", "-");
        JsonNode json = new ObjectMapper().readTree(out());
        assertEquals("8 1/2 in", json.at("/rerun/sections/0/section").textValue());
        assertTrue(json.at("/rerun/sections/0/attributions/0/total_m3").doubleValue() > 1);
        assertFalse(json.at("/nothingChanged").booleanValue());
    }

    @Test
    void rerunOfTheSameCaseSaysThatNothingChanged() throws IOException {
        Path page = folder.resolve("page");
        run("review", demo, "--out", page.toString());
        Path record = page.resolve("record.txt");
        assertTrue(out().contains("Record: " + record), out());
        Path again = folder.resolve("again.txt");
        assertEquals(ExitCode.OK, run("rerun", demo, "--against", record.toString(), "--record", again.toString()));
        assertTrue(out().contains("Nothing changed"), out());
        assertArrayEquals(Files.readAllBytes(record), Files.readAllBytes(again), "byte by byte");
        assertEquals(ExitCode.VERDICT, run("rerun", demo, "--against", record.toString(), "--fail-on-verdict"));
    }

    @Test
    void aRecordThatCannotBeUsedIsToldAndNothingIsWritten() throws IOException {
        Path record = folder.resolve("before.txt");
        run("evaluate", demo, "--record", record.toString());
        String text = Files.readString(record);
        String subsea = SOURCE.resolveSibling("wrenskerry-2").toString();
        for (String broken : List.of(
                text.substring(0, 900), text.replace("format 2", "format 3"), text.replace("13 3/8", "13 5/8"), "")) {
            Files.writeString(record, broken);
            assertEquals(
                    ExitCode.CASE_FAULTS,
                    run(
                            "rerun",
                            demo,
                            "--against",
                            record.toString(),
                            "--json",
                            folder.resolve("r.json").toString()));
            assertTrue(err().startsWith("staunch: --against: before.txt"), err());
            assertEquals(1, err().lines().count(), err());
            assertEquals("", out());
            assertEquals(List.of(record), written());
        }
        assertEquals(
                ExitCode.CASE_FAULTS,
                run("rerun", demo, "--against", folder.resolve("no").toString()));
        Files.writeString(record, text);
        assertEquals(ExitCode.CASE_FAULTS, run("rerun", subsea, "--against", record.toString()));
        assertTrue(err().contains("Quillmarsh 1") && err().contains("Wrenskerry 2"), err());
        assertEquals(ExitCode.USAGE, run("rerun", demo));
    }

    @Test
    void reviewRunsANotebookOnTheSameCaseAndLinksItsPage() throws IOException {
        String notebook = SOURCE.resolve("../../notebooks/02-section-review.ipynb")
                .normalize()
                .toString();
        Path directory = folder.resolve("page");
        assertEquals(
                ExitCode.OK,
                run("review", demo, "--units", "metric", "--notebook", notebook, "--out", directory.toString()));
        assertEquals("", err());
        assertTrue(Files.readString(directory.resolve("index.html")).contains("href=\"02-section-review.html\""));
        assertTrue(Files.readString(directory.resolve("02-section-review.html")).contains("m³"));
        String drop = SOURCE.resolve("offset-drop").toString();
        assertEquals(
                ExitCode.OK,
                run("review", demo, "--with", drop, "--notebook", notebook, "--out", directory.toString()));
        String page = Files.readString(directory.resolve("02-section-review.html"));
        assertTrue(page.contains("offset-drop"), "the notebook reads the folder too");
        assertTrue(page.contains("44.2 bbl"), "and computes with it: with the leak-off test the sand holds more");
        Path elsewhere = Files.copy(
                Path.of(notebook),
                Files.createDirectory(folder.resolve("elsewhere")).resolve("own.ipynb"));
        Path here = Path.of("").toAbsolutePath();
        assertEquals(
                ExitCode.OK,
                run(
                        "review",
                        here.relativize(SOURCE.toAbsolutePath()).toString(),
                        "--with",
                        here.relativize(SOURCE.resolve("offset-drop").toAbsolutePath())
                                .toString(),
                        "--notebook",
                        elsewhere.toString(),
                        "--out",
                        directory.toString()));
        assertEquals("", err(), "relative paths count from where the command was started");
        assertEquals(ExitCode.USAGE, run("review", demo, "--notebook", "nowhere.ipynb", "--out", directory.toString()));
        assertTrue(err().contains("nowhere.ipynb"), err());
    }

    @Test
    void coloursOnATerminalOnlyRepeatTheWords() {
        run("review", demo, "--out", folder.toString());
        String plain = out();
        run(true, "review", demo, "--out", folder.toString());
        assertEquals(plain, out().replaceAll("\u001b\\[[0-9;]*m", ""));
    }

    @Test
    void aFileThatCannotBeWrittenIsNamed() throws IOException {
        Path file = Files.createFile(folder.resolve("taken"));
        assertEquals(
                ExitCode.FAILED,
                run("evaluate", demo, "--json", file.resolve("x.json").toString()));
        assertTrue(err().contains("taken"), err());
        assertEquals(List.of(file), written());
    }
}
