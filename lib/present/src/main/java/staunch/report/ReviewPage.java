package staunch.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import staunch.chart.ChartImage;
import staunch.units.Check;
import staunch.units.UnitSystem;

/**
 * The review of a well as one HTML page that needs nothing beside it: no script, no file, no network. Equal results give
 * equal bytes; the only date in it is the case's own.
 */
public final class ReviewPage {
    /** Name of the page in its directory. */
    public static final String FILE_NAME = "index.html";

    private ReviewPage() {}

    /**
     * Writes the page. It appears whole or not at all: an interrupted run leaves the page that was there before.
     *
     * @param review what it shows
     * @param units to show
     * @param directory made where it does not exist
     * @return the page's file
     * @throws IOException where it cannot be written
     */
    public static Path write(Review review, UnitSystem units, Path directory) throws IOException {
        return write(review, units, directory, List.of());
    }

    /**
     * Writes the page with links to other pages of the same review.
     *
     * @param review what it shows
     * @param units to show
     * @param directory made where it does not exist
     * @param companions pages in the same directory
     * @return the page's file
     * @throws IOException where it cannot be written
     */
    public static Path write(Review review, UnitSystem units, Path directory, List<Companion> companions)
            throws IOException {
        byte[] page = html(review, units, companions).getBytes(StandardCharsets.UTF_8);
        return WholeFile.write(directory.resolve(FILE_NAME), out -> out.write(page));
    }

    /** The page as text. */
    public static String html(Review review, UnitSystem units) {
        return html(review, units, List.of());
    }

    private static String html(Review review, UnitSystem units, List<Companion> companions) {
        ReviewModel model = new ReviewModel(review, units, ChartImage::inlineSvg, false);
        Map<String, Object> root = model.root(Pages.resource("page.css"));
        root.put("companions", companions);
        return Pages.fill("review.ftl", root);
    }

    /**
     * A page that belongs to the same review.
     *
     * @param title in the reader's words
     * @param file name in the same directory
     */
    public record Companion(String title, String file) {
        public Companion {
            Check.text("title of a page", title);
            Check.text("file name of a page", file);
        }
    }
}
