package staunch.chart;

import de.erichseifert.vectorgraphics2d.Document;
import de.erichseifert.vectorgraphics2d.Processors;
import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import de.erichseifert.vectorgraphics2d.util.PageSize;
import java.awt.Graphics2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes a drawing as SVG and makes the text of it the same from run to run, short, and fit for a page. */
final class SvgText {
    private static final Pattern TAG = Pattern.compile("<[^>]+>");
    private static final Pattern LONG_NUMBER = Pattern.compile("-?\\d+\\.\\d+");
    private static final Pattern ID = Pattern.compile("clip-?\\d+");
    private static final Pattern HEAD = Pattern.compile("(?s)\\A.*?<svg [^>]*>");
    private static final Pattern ROOT_END = Pattern.compile("</svg>\\s*\\z");

    private SvgText() {}

    static String of(ChartImage chart, Consumer<Graphics2D> painter) {
        VectorGraphics2D graphics = new VectorGraphics2D();
        painter.accept(graphics);
        Document document = Processors.get("svg")
                .getDocument(graphics.getCommands(), new PageSize(0, 0, chart.width(), chart.height()));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            document.writeTo(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String body = HEAD.matcher(bytes.toString(StandardCharsets.UTF_8)).replaceFirst("");
        body = ROOT_END.matcher(body)
                .replaceFirst("")
                .replaceAll(">\\s+<", "><")
                .trim();
        return head(chart) + tidy(body, chart.name()) + "</svg>";
    }

    static String themed(String svg) {
        return svg.replace(rgb(Palette.INK), "currentColor")
                .replace(rgb(Palette.MUTED), "var(--muted,#5b6773)")
                .replace(rgb(Palette.GRID), "var(--grid,#dee3e8)")
                .replace(rgb(Palette.BLUE), "var(--blue,#0072b2)")
                .replace(rgb(Palette.VERMILLION), "var(--vermillion,#d55e00)");
    }

    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    private static String head(ChartImage chart) {
        String titleId = chart.name() + "-title";
        String altId = chart.name() + "-desc";
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"" + chart.width() + "\" height=\""
                + chart.height() + "\" viewBox=\"0 0 " + chart.width() + " " + chart.height()
                + "\" role=\"img\" aria-labelledby=\"" + titleId + " " + altId
                + "\" font-size=\"" + Type.SIZE + "px\"><title id=\"" + titleId + "\">" + escape(chart.title())
                + "</title><desc id=\"" + altId + "\">" + escape(chart.altText()) + "</desc>";
    }

    /** The encoder names clip paths by object identity and writes every digit of a double. */
    private static String tidy(String body, String prefix) {
        Map<String, String> ids = new LinkedHashMap<>();
        return TAG.matcher(body).replaceAll(tag -> {
            String text = ID.matcher(tag.group())
                    .replaceAll(id -> ids.computeIfAbsent(id.group(), k -> prefix + "-c" + (ids.size() + 1)));
            text = LONG_NUMBER.matcher(text).replaceAll(number -> shortened(number.group()));
            text = text.replace("font-family:&quot;" + Type.FAMILY + "&quot;", "font-family:" + Type.CSS_FAMILY);
            return Matcher.quoteReplacement(text);
        });
    }

    private static String shortened(String number) {
        BigDecimal rounded =
                new BigDecimal(number).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    private static String rgb(java.awt.Color c) {
        return "rgb(" + c.getRed() + "," + c.getGreen() + "," + c.getBlue() + ")";
    }
}
