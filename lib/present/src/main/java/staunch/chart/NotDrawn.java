package staunch.chart;

import java.util.Objects;

/**
 * A chart without data.
 *
 * @param title of the chart
 * @param reason why there is nothing to draw
 */
public record NotDrawn(String title, String reason) implements Figure {
    public NotDrawn {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(reason, "reason");
    }

    @Override
    public String altText() {
        return title + ": not drawn, " + reason;
    }

    @Override
    public String html() {
        return "<p class=\"not-drawn\">" + SvgText.escape(altText()) + "</p>";
    }
}
