package staunch.report;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import staunch.design.WellCase;
import staunch.envelope.WellEnvelope;
import staunch.units.UnitSystem;

/** The review of a well as PDF: the same pack as the page, on A4 sheets with running head and page numbers. */
public final class ReviewPdf {
    /** Name of the file in its directory. */
    public static final String FILE_NAME = "review.pdf";

    private static final int FIGURE_WIDTH = 424;
    private static final String FAMILY = "Liberation Sans";

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
        String page = Pages.fill("review.ftl", model.root(fontFaces() + Pages.resource("pack.css"), true));
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.withHtmlContent(page, null);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            PDDocumentInformation about = new PDDocumentInformation();
            about.setTitle("Well-control review: " + wellCase.header().well());
            wellCase.header().preparedBy().ifPresent(about::setAuthor);
            document.setDocumentInformation(about);
            // Without these the file would carry the clock in its dates and its identifier.
            document.setDocumentId(0L);
            document.save(out);
            document.close();
        }
        return out.toByteArray();
    }

    /** Declared in the style sheet rather than in code, because the drawings look for their typeface there. */
    private static String fontFaces() {
        return face("Sans-Regular", FAMILY, "normal")
                + face("Sans-Bold", FAMILY, "bold")
                + face("Mono-Regular", "Liberation Mono", "normal");
    }

    private static String face(String file, String family, String weight) {
        return "@font-face{font-family:\"" + family + "\";font-weight:" + weight + ";font-style:normal;src:url(\""
                + ReviewPdf.class.getResource("/liberation/Liberation" + file + ".ttf")
                + "\");-fs-font-subset:subset}\n";
    }
}
