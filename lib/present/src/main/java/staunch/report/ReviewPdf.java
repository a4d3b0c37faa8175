package staunch.report;

import java.io.IOException;
import java.nio.file.Path;
import staunch.design.WellCase;
import staunch.envelope.WellEnvelope;
import staunch.units.UnitSystem;

/** The review of a well as PDF: the same pack as the page, on A4 sheets with running head and page numbers. */
public final class ReviewPdf {
    /** Name of the file in its directory. */
    public static final String FILE_NAME = "review.pdf";

    private static final int FIGURE_WIDTH = 424;

    private ReviewPdf() {}

    /**
     * Writes the PDF. It appears whole or not at all.
     *
     * @param wellCase the case that was evaluated
     * @param envelope its results
     * @param units to show
     * @param directory made where it does not exist
     * @return the file
     * @throws IOException where it cannot be written
     */
    public static Path write(WellCase wellCase, WellEnvelope envelope, UnitSystem units, Path directory)
            throws IOException {
        byte[] pdf = bytes(wellCase, envelope, units);
        return WholeFile.write(directory.resolve(FILE_NAME), out -> out.write(pdf));
    }

    /** The PDF itself; equal results give equal bytes. */
    public static byte[] bytes(WellCase wellCase, WellEnvelope envelope, UnitSystem units) throws IOException {
        ReviewModel model = new ReviewModel(wellCase, envelope, units, chart -> chart.svg(FIGURE_WIDTH));
        String page = Pages.fill("review.ftl", model.root(Sheets.fontFaces() + Pages.resource("pack.css"), true));
        return Sheets.pdf(
                page,
                "Well-control review: " + wellCase.header().well(),
                wellCase.header().preparedBy());
    }
}
