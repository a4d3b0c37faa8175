package staunch.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NotebookRunnerTest {
    @TempDir
    private Path folder;

    private final List<String> log = new ArrayList<>();

    private static JsonObject markdown(String source) {
        return Json.object("cell_type", "markdown", "metadata", Map.of(), "source", source);
    }

    private static JsonObject code(String source, String... tags) {
        return Json.object(
                "cell_type",
                "code",
                "metadata",
                tags.length == 0 ? Map.of() : Map.of("tags", Arrays.asList(tags)),
                "source",
                source,
                "outputs",
                List.of(),
                "execution_count",
                null);
    }

    private Path notebook(JsonObject... cells) throws IOException {
        JsonObject root = Json.object("nbformat", 4, "nbformat_minor", 4, "metadata", Map.of("kept", "yes"));
        JsonArray list = new JsonArray();
        List.of(cells).forEach(list::add);
        root.add("cells", list);
        Path file = folder.resolve("sample.ipynb");
        Files.writeString(file, root.toString());
        return file;
    }

    private NotebookRun run(Path notebook, Map<String, String> overrides) throws IOException {
        // A log that prints must not end up in the output of the cell that causes its lines.
        NotebookRunner runner = new NotebookRunner(SessionOptions.standard(), ParameterWriter.java(), line -> {
            System.out.println(line);
            log.add(line);
        });
        return runner.run(notebook, overrides, folder.resolve("out"));
    }

    private static JsonArray outputs(NotebookRun run, int cell) throws IOException {
        return JsonParser.parseString(Files.readString(run.notebook()))
                .getAsJsonObject()
                .getAsJsonArray("cells")
                .get(cell)
                .getAsJsonObject()
                .getAsJsonArray("outputs");
    }

    private static Document page(NotebookRun run) throws IOException {
        String html = Files.readString(run.page());
        Parser parser = Parser.htmlParser().setTrackErrors(20);
        Document document = parser.parseInput(new StringReader(html), "");
        assertEquals(List.of(), parser.getErrors(), "the page is not valid HTML");
        return document;
    }

    @Test
    void writesAnExecutedNotebookAndAPage() throws IOException {
        NotebookRun run = run(
                notebook(
                        markdown("# Shut-in *pressures*\n\nWith $p = \\rho g h$ and `x < y`, <b>bold</b>."),
                        code("var depths = List.of(1000, 2000);\nSystem.out.println(\"a < b & c\");"),
                        code("System.err.println(\"careful\");\ndepths")),
                Map.of());
        assertTrue(run.succeeded());
        JsonObject root =
                JsonParser.parseString(Files.readString(run.notebook())).getAsJsonObject();
        assertEquals(5, root.get("nbformat_minor").getAsInt());
        assertEquals("yes", root.getAsJsonObject("metadata").get("kept").getAsString());
        JsonObject result = outputs(run, 2).get(1).getAsJsonObject();
        assertEquals("execute_result", result.get("output_type").getAsString());
        assertEquals(2, result.get("execution_count").getAsInt());
        assertEquals(
                "[1000, 2000]", result.getAsJsonObject("data").get("text/plain").getAsString());
        Document page = page(run);
        assertEquals("Shut-in pressures", page.title());
        assertEquals("a < b & c\n", page.selectFirst("pre.stdout").wholeText());
        assertEquals("careful\n", page.selectFirst("pre.stderr").wholeText());
        assertEquals("[1000, 2000]", page.selectFirst(".output pre").text());
        assertEquals("bold", page.selectFirst("section b").text());
        assertEquals("x < y", page.selectFirst("section code").text());
        assertEquals("p = \\rho g h", page.selectFirst("math").attr("alttext"));
        assertEquals(0, page.select("script, link, [src^=http], [href^=http]").size());
    }

    @Test
    void stopsAtTheFirstCellThatFails() throws IOException {
        NotebookRun run =
                run(notebook(code("int zero = 0;"), code("\nint bad = 1 / zero;"), code("int never = 1;")), Map.of());
        assertFalse(run.succeeded());
        assertEquals(2, run.failure().orElseThrow().cell());
        assertEquals(
                "error",
                outputs(run, 1).get(0).getAsJsonObject().get("output_type").getAsString());
        assertEquals(0, outputs(run, 2).size());
        Document page = page(run);
        assertEquals(
                "ArithmeticException: / by zero",
                page.selectFirst("pre.error strong").text());
        assertTrue(page.selectFirst("pre.error").wholeText().contains("at cell [2], line 2:  int bad = 1 / zero;"));
        assertEquals("#cell-2", page.selectFirst("header .failed a").attr("href"));
        assertTrue(page.selectFirst("#cell-3").hasClass("waiting"));
        assertTrue(log.stream().anyMatch(line -> line.contains("stopped at cell 2")));
    }

    @Test
    void setsTypedParameters() throws IOException {
        Path notebook = notebook(
                code(
                        "// the case\ndouble density = 2 * 600.0; // kg/m3\nString well = \"A\";\nvar rate = 5;\nint[] steps = {1, 2};",
                        "parameters"),
                code("density + well + rate + steps.length"));
        NotebookRun run = run(notebook, Map.of("density", "1250.5", "well", "B \"east\"", "steps", "{1, 2, 3}"));
        assertEquals(
                "1250.5B \"east\"53",
                outputs(run, 1)
                        .get(0)
                        .getAsJsonObject()
                        .getAsJsonObject("data")
                        .get("text/plain")
                        .getAsString());
        String executed = Files.readString(run.notebook());
        assertTrue(executed.contains("// the case\\ndouble density = 1250.5; // kg/m3"), executed);
        assertEquals("B \"east\"", page(run).select("header dd").last().text());
    }

    @Test
    void tellsTheWriterWhatIsDeclared() throws IOException {
        List<NotebookParameter> seen = new ArrayList<>();
        NotebookRunner runner = new NotebookRunner(
                SessionOptions.standard(),
                (parameter, text) -> {
                    seen.add(parameter);
                    return "1.5";
                },
                log::add);
        runner.run(
                notebook(code("double a = Math.max(1, 2);\nvar b = 3.0;", "parameters")),
                Map.of("a", "10.4 ppg", "b", "x"),
                folder.resolve("out"));
        assertTrue(seen.contains(new NotebookParameter("a", "double", "Math.max(1, 2)")), seen.toString());
        assertTrue(seen.contains(new NotebookParameter("b", "var", "3.0")), seen.toString());
    }

    @Test
    void refusesAParameterTheNotebookDoesNotHave() throws IOException {
        Path notebook = notebook(code("double density = 1;\nint n = 2;", "parameters"));
        String message = assertThrows(IllegalArgumentException.class, () -> run(notebook, Map.of("densty", "1")))
                .getMessage();
        assertEquals("the notebook has no parameter densty; it has density, n", message);
        Path without = notebook(code("double density = 1;"));
        assertThrows(IllegalArgumentException.class, () -> run(without, Map.of("density", "1")));
    }

    @Test
    void keepsOneDisplayForProgressAndLogsIt() throws IOException {
        NotebookRun run = run(
                notebook(
                        code("var shown = display(\"first\");"),
                        code("try (var p = progress(\"integrating\", 3)) {\n"
                                + "  for (int i = 0; i < 3; i++) { p.step(); }\n}\nshown.update(\"second\");")),
                Map.of());
        assertEquals(1, outputs(run, 1).size());
        assertTrue(outputs(run, 1).toString().contains("3 of 3, 100 %"));
        assertTrue(outputs(run, 0).toString().contains("second"));
        assertTrue(log.stream().anyMatch(line -> line.contains("integrating: 3 of 3, 100 %")), log.toString());
    }

    @Test
    void clearsOutput() throws IOException {
        NotebookRun run = run(
                notebook(
                        code("System.out.println(\"gone\"); clearOutput(false); System.out.println(\"stays\");"),
                        code("System.out.println(\"gone\"); clearOutput(true); display(\"instead\");"),
                        code("System.out.println(\"stays\"); clearOutput(true);")),
                Map.of());
        assertEquals(
                "stays\n", outputs(run, 0).get(0).getAsJsonObject().get("text").getAsString());
        assertEquals(1, outputs(run, 1).size());
        assertEquals(1, outputs(run, 2).size());
    }

    @Test
    void makesHtmlOfCellsSafeToShow() throws IOException {
        NotebookRun run = run(
                notebook(
                        code("displayHtml(\"<div onclick='x()'><script>x()</script><p>kept<img src='http://x/y.png'>\","
                                + " \"kept\")")),
                Map.of());
        Document page = page(run);
        assertEquals("kept", page.selectFirst(".output").text());
        assertEquals(0, page.select("script, [onclick], img[src]").size());
    }

    @Test
    void givesInputNobodyCanAnswerAsAnError() throws IOException {
        NotebookRun run = run(notebook(code("input(\"?\")")), Map.of());
        assertTrue(run.failure().orElseThrow().error().message().contains("nobody can be asked"));
    }

    @Test
    void knowsWhereTheNotebookLies() throws IOException {
        NotebookRun run = run(notebook(code("notebookFolder().equals(Path.of(\"" + folder + "\"))")), Map.of());
        assertTrue(outputs(run, 0).toString().contains("true"));
    }

    @Test
    void doesNotWriteOverItsOwnInput() throws IOException {
        Path notebook = notebook(code("1"));
        NotebookRunner runner = new NotebookRunner(SessionOptions.standard(), ParameterWriter.java(), log::add);
        assertThrows(IOException.class, () -> runner.run(notebook, Map.of(), folder));
    }

    @Test
    void pageIsReadableAsHtml() throws IOException {
        NotebookRun run = run(
                notebook(
                        markdown(
                                "| a | b |\n|---|--:|\n| 1 | 2 |\n\n$$\\frac{a}{b}$$\n\n- x\n- y\n\n<details><summary>s</summary>"),
                        code("String s = \"\"\"\n  <b>\n  \"\"\"; // <i>\nchar c = '<';")),
                Map.of());
        Document page = page(run);
        assertEquals("2", page.select("td").last().text());
        assertEquals("block", page.selectFirst("math").attr("display"));
        assertEquals(
                "String s = \"\"\"\n  <b>\n  \"\"\"; // <i>\nchar c = '<';",
                page.selectFirst("pre.source code").wholeText());
        assertEquals(List.of(), Jsoup.parse(page.outerHtml()).select("b, i").eachText());
    }
}
