package staunch.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The typeface of charts, taken from a jar so that every machine lays text out alike; Arial has the same widths. */
final class Type {
    static final String FAMILY = "Liberation Sans";
    static final String CSS_FAMILY = "'Liberation Sans',Arial,Helvetica,sans-serif";
    static final int SIZE = 12;
    static final Font PLAIN = load("/liberation/LiberationSans-Regular.ttf");
    static final Font BOLD = load("/liberation/LiberationSans-Bold.ttf").deriveFont(Font.BOLD);

    /** A number with what belongs to it after the space. */
    private static final Pattern NUMBER = Pattern.compile("(\\d) (?=\\d+/\\d|\\p{L}[\\p{L}³/°]{0,5}(?:\\W|$))");

    private static final double STEP = 4;

    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private Type() {}

    static double width(String text, Font font) {
        return text.isEmpty() ? 0 : font.getStringBounds(text, CONTEXT).getWidth();
    }

    /** The text in lines no wider than told, broken at spaces. */
    static List<String> wrap(String text, double widest, Font font) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, font) > widest) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    /** The text in as few lines as {@link #wrap}, of about equal length; a number keeps its unit and its fraction. */
    static List<String> balanced(String text, double widest, Font font) {
        String kept = NUMBER.matcher(text).replaceAll("$1\u00a0");
        List<String> lines = wrap(kept, widest, font);
        List<String> narrower = lines;
        for (double width = widest - STEP; narrower.size() == lines.size() && width > 0; width -= STEP) {
            lines = narrower;
            narrower = wrap(kept, width, font);
        }
        return lines;
    }

    private static Font load(String resource) {
        try (InputStream in = Type.class.getResourceAsStream(resource)) {
            return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont((float) SIZE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("font " + resource + " cannot be read", e);
        }
    }
}
