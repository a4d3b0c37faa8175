package staunch.report;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** Turns a well-formed page into PDF. */
final class Sheets {
    private static final String FAMILY = "Liberation Sans";

    private Sheets() {}

    /** The PDF of a page; equal pages give equal bytes. */
    static byte[] pdf(String page, String title, Optional<String> author) throws IOException {
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
            about.setTitle(title);
            author.ifPresent(about::setAuthor);
            document.setDocumentInformation(about);
            // Without these the file would carry the clock in its dates and its identifier.
            document.setDocumentId(0L);
            document.save(out);
            document.close();
        }
        return out.toByteArray();
    }

    /** Declared in the style sheet rather than in code, because the drawings look for their typeface there. */
    static String fontFaces() {
        return face("Sans-Regular", FAMILY, "normal")
                + face("Sans-Bold", FAMILY, "bold")
                + face("Mono-Regular", "Liberation Mono", "normal");
    }

    private static String face(String file, String family, String weight) {
        return "@font-face{font-family:\"" + family + "\";font-weight:" + weight + ";font-style:normal;src:url(\""
                + Sheets.class.getResource("/liberation/Liberation" + file + ".ttf")
                + "\");-fs-font-subset:subset}\n";
    }
}
