package staunch.report;

import java.io.IOException;
import java.nio.file.Path;
import staunch.design.CaseHeader;
import staunch.units.UnitSystem;

/** The review of a well as PDF: the same pack as the page, on A4 sheets with running head and page numbers. */
public final class ReviewPdf {
    /** Name of the file in its directory. */
    public static final String FILE_NAME = "review.pdf";

    private static final int FIGURE_WIDTH = 400;

    private ReviewPdf() {}

    /**
     * Writes the PDF. It appears whole or not at all.
     *
     * @param review what it shows
     * @param units to show
     * @param directory made where it does not exist
     * @return the file
     * @throws IOException where it cannot be written
     */
    public static Path write(Review review, UnitSystem units, Path directory) throws IOException {
        byte[] pdf = bytes(review, units);
        return WholeFile.write(directory.resolve(FILE_NAME), out -> out.write(pdf));
    }

    /** The PDF itself; equal results give equal bytes. */
    public static byte[] bytes(Review review, UnitSystem units) throws IOException {
        ReviewModel model = new ReviewModel(review, units, chart -> chart.svg(FIGURE_WIDTH), true);
        String page = Pages.fill("review.ftl", model.root(Sheets.fontFaces() + Pages.resource("pack.css")));
        CaseHeader header = review.wellCase().header();
        return Sheets.pdf(page, "Well-control review: " + header.well(), header.preparedBy());
    }
}
