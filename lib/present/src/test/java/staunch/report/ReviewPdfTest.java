package staunch.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.envelope.WellEnvelope;
import staunch.present.Fixtures;
import staunch.units.UnitSystem;

class ReviewPdfTest {
    @TempDir
    Path directory;

    /** Few sections: laying out sheets takes most of the time of these tests. */
    private static WellEnvelope envelope() {
        WellEnvelope all = Fixtures.envelope();
        return new WellEnvelope(all.design(), all.options(), all.sections().subList(3, 5), all.warnings());
    }

    @Test
    void theFileHoldsThePackAndEqualResultsGiveEqualBytes() throws IOException {
        Path file = ReviewPdf.write(
                new Review(Fixtures.wellCase(), envelope(), Fixtures.operations()), UnitSystem.FIELD, directory);
        assertEquals(directory.resolve("review.pdf"), file);
        byte[] bytes = Files.readAllBytes(file);
        assertArrayEquals(
                ReviewPdf.bytes(new Review(Fixtures.wellCase(), envelope(), Fixtures.operations()), UnitSystem.FIELD),
                bytes);
        try (PDDocument document = Loader.loadPDF(bytes)) {
            assertNull(document.getDocumentInformation().getCreationDate());
            String text = new PDFTextStripper().getText(document);
            int pages = document.getNumberOfPages();
            assertTrue(text.contains("8 1/2 in hole fails; 6 in hole is not assessed"));
            assertTrue(text.contains("Heron-1: Exploration well, base design"), "running head");
            assertTrue(text.contains("Revision B, 2026-03-14"));
            assertTrue(text.contains("page 1 of " + pages) && text.contains("page " + pages + " of " + pages));
            assertTrue(text.contains("to be verified by a competent person"));
            assertFalse(text.contains("#"), "a character that the typeface lacks");
            assertTrue(text.contains("Criteria: "), "sources stand once, under the methods");
            int appendix = text.indexOf("Appendix: tables by section");
            assertTrue(appendix > text.indexOf("Methods, input files, cautions"), "first what a reader wants");
            for (String behind : List.of("Inputs of the sections", "Volumetric method", "Highest pressures")) {
                assertTrue(text.indexOf(behind, appendix) > 0, behind);
            }
            assertFalse(text.contains("Tolerance along the section"), "a curve's numbers are left to page and export");
            for (PDFont font : fonts(document)) {
                assertTrue(font.isEmbedded() && font.getName().contains("Liberation"), font.getName());
            }
        }
    }

    @Test
    void textsOfTheCaseCannotBecomeMarkup() throws IOException {
        byte[] bytes = ReviewPdf.bytes(
                new Review(Fixtures.wellCase("</div><b>&\""), envelope(), Fixtures.operations()), UnitSystem.METRIC);
        try (PDDocument document = Loader.loadPDF(bytes)) {
            assertTrue(new PDFTextStripper().getText(document).contains("</div><b>&\""));
        }
    }

    private static List<PDFont> fonts(PDDocument document) throws IOException {
        var resources = document.getPage(0).getResources();
        List<PDFont> fonts = new ArrayList<>();
        for (var name : resources.getFontNames()) {
            fonts.add(resources.getFont(name));
        }
        return fonts;
    }
}
