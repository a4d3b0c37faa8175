package staunch.chart;

/** What a chart was asked for gives: a picture, or the reason why there is none. */
public sealed interface Figure permits ChartImage, NotDrawn {
    /** Title for a caption. */
    String title();

    /** What the picture shows, in words. */
    String altText();

    /** As an HTML element that stands alone. */
    String html();
}
