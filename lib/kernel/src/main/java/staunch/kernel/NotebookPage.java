package staunch.kernel;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An executed notebook as one HTML page that loads nothing and runs nothing. */
final class NotebookPage {
    private static final Pattern ANSI = Pattern.compile("\u001b\\[[0-9;]*[A-Za-z]");
    private static final Pattern OVERWRITTEN = Pattern.compile("(?m)^.*\r(?!\n|$)");
    private static final Pattern HEADING = Pattern.compile("(?m)^# +(.+?)[ #]*$");

    private final String stem;
    private final Markdown markdown;

    NotebookPage(String stem, Markdown markdown) {
        this.stem = stem;
        this.markdown = markdown;
    }

    String render(List<NotebookFile.Cell> cells, Map<String, String> overrides, Optional<NotebookRun.Failure> failure) {
        StringBuilder page = new StringBuilder();
        page.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        page.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        page.append("<meta name=\"color-scheme\" content=\"light dark\">\n");
        page.append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; "
                + "style-src 'unsafe-inline'; font-src data:\">\n");
        page.append("<title>").append(Html.escape(title(cells))).append("</title>\n<style>\n");
        page.append(style()).append("</style>\n</head>\n<body>\n");
        page.append(banner(cells, overrides, failure));
        page.append("<main>\n");
        cells.forEach(cell -> cell(page, cell));
        page.append("</main>\n</body>\n</html>\n");
        return page.toString();
    }

    private static String style() {
        try (InputStream sheet = NotebookPage.class.getResourceAsStream("notebook-page.css")) {
            return new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the style sheet of the page is missing from this build", e);
        }
    }

    private String title(List<NotebookFile.Cell> cells) {
        return cells.stream()
                .filter(NotebookFile.Cell::isMarkdown)
                .map(cell -> HEADING.matcher(cell.source()))
                .filter(Matcher::find)
                .map(matcher -> matcher.group(1).replaceAll("[*_`$\\\\]", ""))
                .findFirst()
                .orElse(stem);
    }

    private String banner(
            List<NotebookFile.Cell> cells, Map<String, String> overrides, Optional<NotebookRun.Failure> failure) {
        StringBuilder banner = new StringBuilder("<header>\n");
        failure.ifPresentOrElse(
                failed -> banner.append("<p class=\"failed\" role=\"alert\"><strong>Stopped.</strong> <a href=\"#cell-")
                        .append(failed.cell())
                        .append("\">A cell failed</a>: ")
                        .append(Html.escape(failed.error().traceback().get(0)))
                        .append(". The cells after it were not run.</p>\n"),
                () -> banner.append("<p>All ")
                        .append(cells.stream().filter(NotebookFile.Cell::isCode).count())
                        .append(" code cells of <code>")
                        .append(Html.escape(stem))
                        .append("</code> were run.</p>\n"));
        if (!overrides.isEmpty()) {
            banner.append("<p>Set for this run:</p>\n<dl>\n");
            new TreeMap<>(overrides)
                    .forEach((name, value) -> banner.append("<dt>")
                            .append(Html.escape(name))
                            .append("</dt><dd>")
                            .append(Html.escape(value))
                            .append("</dd>\n"));
            banner.append("</dl>\n");
        }
        return banner.append("</header>\n").toString();
    }

    private void cell(StringBuilder page, NotebookFile.Cell cell) {
        if (cell.isMarkdown()) {
            page.append("<section class=\"text\" id=\"cell-")
                    .append(cell.number())
                    .append("\">\n")
                    .append(markdown.render(cell.source()))
                    .append("</section>\n");
        } else if (cell.isCode()) {
            boolean ran = Json.present(cell.json(), "execution_count");
            String count = ran ? cell.json().get("execution_count").getAsString() : " ";
            page.append("<section class=\"code")
                    .append(ran ? "" : " waiting")
                    .append("\" id=\"cell-")
                    .append(cell.number())
                    .append("\">\n<pre class=\"source\" data-count=\"[")
                    .append(count)
                    .append("]\"><code>")
                    .append(JavaHighlighter.html(cell.source()))
                    .append("</code></pre>\n");
            cell.json().getAsJsonArray("outputs").forEach(output -> output(page, output.getAsJsonObject()));
            page.append("</section>\n");
        }
    }

    private void output(StringBuilder page, JsonObject output) {
        switch (Json.string(output, "output_type", "")) {
            case "stream" ->
                page.append("<pre class=\"stream ")
                        .append(Html.escape(Json.string(output, "name", "")))
                        .append("\">")
                        .append(terminal(NotebookFile.text(output.get("text"))))
                        .append("</pre>\n");
            case "error" -> {
                page.append("<pre class=\"error\" role=\"alert\">");
                boolean first = true;
                for (JsonElement line : output.getAsJsonArray("traceback")) {
                    String text = terminal(line.getAsString());
                    page.append(first ? "<strong>" + text + "</strong>" : text).append('\n');
                    first = false;
                }
                page.append("</pre>\n");
            }
            default ->
                page.append("<div class=\"output\">")
                        .append(richest(output.getAsJsonObject("data")))
                        .append("</div>\n");
        }
    }

    private String richest(JsonObject data) {
        String plain = NotebookFile.text(data.get(MimeBundle.PLAIN));
        if (data.has(MimeBundle.HTML)) {
            return HtmlFragment.clean(NotebookFile.text(data.get(MimeBundle.HTML)));
        }
        if (data.has("image/svg+xml")) {
            byte[] drawing = NotebookFile.text(data.get("image/svg+xml")).getBytes(StandardCharsets.UTF_8);
            return image("image/svg+xml", Base64.getEncoder().encodeToString(drawing), plain);
        }
        for (String type : List.of("image/png", "image/jpeg")) {
            if (data.has(type)) {
                return image(type, NotebookFile.text(data.get(type)).replaceAll("\\s", ""), plain);
            }
        }
        if (data.has("text/markdown")) {
            return markdown.render(NotebookFile.text(data.get("text/markdown")));
        }
        if (data.has("text/latex")) {
            return markdown.render(NotebookFile.text(data.get("text/latex")));
        }
        return "<pre>" + terminal(plain) + "</pre>";
    }

    private static String image(String type, String base64, String alternative) {
        return "<img alt=\"" + Html.escape(alternative) + "\" src=\"data:" + type + ";base64,"
                + base64.replaceAll("[^A-Za-z0-9+/=]", "") + "\">";
    }

    /** As a terminal would show it: without colour codes, and lines that were written over only in their last state. */
    private static String terminal(String text) {
        return Html.escape(
                OVERWRITTEN.matcher(ANSI.matcher(text).replaceAll("")).replaceAll(""));
    }
}
