package staunch.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.function.Consumer;
import javax.imageio.ImageIO;

/** A finished chart. Equal data give equal bytes. */
public final class ChartImage implements Figure {
    private static final int PNG_SCALE = 2;

    private final String name;
    private final String title;
    private final String altText;
    private final int width;
    private final int height;
    private final Consumer<Graphics2D> painter;

    ChartImage(String name, String title, String altText, Size size, Consumer<Graphics2D> painter) {
        this.name = name;
        this.title = title;
        this.altText = altText;
        this.width = size.width();
        this.height = size.height();
        this.painter = painter;
    }

    record Size(int width, int height) {}

    @Override
    public String title() {
        return title;
    }

    @Override
    public String altText() {
        return altText;
    }

    /** Width of the drawing, in CSS pixels. */
    public int width() {
        return width;
    }

    /** Height of the drawing, in CSS pixels. */
    public int height() {
        return height;
    }

    /** Drawing as SVG that stands alone: dark lines on a transparent ground, alternative text inside. */
    public String svg() {
        return SvgText.of(this, painter);
    }

    /** The same drawing scaled to another width, in CSS pixels. */
    public String svg(int newWidth) {
        long newHeight = Math.round((double) height * newWidth / width);
        return svg().replaceFirst(
                        "width=\"" + width + "\" height=\"" + height + "\"",
                        "width=\"" + newWidth + "\" height=\"" + newHeight + "\"");
    }

    /**
     * Drawing as SVG to be set into a page: ink follows the page's text colour, other colours its custom properties
     * {@code --muted}, {@code --grid}, {@code --blue} and {@code --vermillion}, so that it reads on dark pages too.
     */
    public String inlineSvg() {
        return SvgText.themed(svg());
    }

    /** Drawing as PNG on white, twice the size of the SVG. */
    public byte[] png() {
        BufferedImage image = new BufferedImage(width * PNG_SCALE, height * PNG_SCALE, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.setColor(Color.WHITE);
            g.fillRect(0, 0, image.getWidth(), image.getHeight());
            g.scale(PNG_SCALE, PNG_SCALE);
            painter.accept(g);
        } finally {
            g.dispose();
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** An {@code img} element with the SVG inside and a light ground, safe to set into any page. */
    @Override
    public String html() {
        String data = Base64.getEncoder().encodeToString(svg().getBytes(StandardCharsets.UTF_8));
        return "<img style=\"background:#fff;max-width:100%\" width=\"" + width + "\" height=\"" + height + "\" alt=\""
                + SvgText.escape(altText) + "\" src=\"data:image/svg+xml;base64," + data + "\">";
    }

    /** Short name in letters, digits and hyphens; ids inside the SVG begin with it. */
    public String name() {
        return name;
    }

    @Override
    public String toString() {
        return "[chart] " + altText;
    }
}
