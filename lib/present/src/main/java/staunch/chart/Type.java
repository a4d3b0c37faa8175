package staunch.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** The typeface of charts, taken from a jar so that every machine lays text out alike; Arial has the same widths. */
final class Type {
    static final String FAMILY = "Liberation Sans";
    static final String CSS_FAMILY = "'Liberation Sans',Arial,Helvetica,sans-serif";
    static final int SIZE = 12;
    static final Font PLAIN = load("/liberation/LiberationSans-Regular.ttf");
    static final Font BOLD = load("/liberation/LiberationSans-Bold.ttf").deriveFont(Font.BOLD);

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
