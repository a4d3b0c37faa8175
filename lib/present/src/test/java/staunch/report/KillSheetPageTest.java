package staunch.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;
import staunch.control.KillSheet;
import staunch.present.Fixtures;
import staunch.present.KillSheets;
import staunch.units.Measure;
import staunch.units.UnitSystem;
import staunch.units.Warning;

class KillSheetPageTest {
    @TempDir
    Path directory;

    private static KillSheetPage.Subject subject(String section) {
        return new KillSheetPage.Subject(
                Fixtures.wellCase().header(), "Base", section, "rotary table", "planned drilled kick");
    }

    private static List<KillSheet> sheets() {
        return List.of(KillSheets.atSurface(), KillSheets.subsea(), fullOfWarnings());
    }

    /** As much as a sheet can carry. */
    private static KillSheet fullOfWarnings() {
        KillSheet s = KillSheets.subsea();
        List<Warning> warnings = new ArrayList<>(Collections.nCopies(
                9,
                new Warning("choke line", "A warning that is long enough to run over more than one line. ".repeat(2))));
        return new KillSheet(
                s.input(),
                s.formationPressure(),
                s.balancingDensity(),
                s.killDensity(),
                s.initialCirculatingPressure(),
                s.finalCirculatingPressure(),
                s.schedule(),
                s.legs(),
                s.weakPoint(),
                s.weighting(),
                s.chokeLine(),
                warnings);
    }

    @Test
    void aSheetHasTwoPagesAndBothSayThatItIsNotForALiveWell() throws IOException {
        for (UnitSystem units : List.of(UnitSystem.FIELD, UnitSystem.METRIC, UnitSystem.MIXED, UnitSystem.SI)) {
            for (KillSheet sheet : sheets()) {
                byte[] bytes = KillSheetPage.pdf(subject("8 1/2 in"), sheet, units);
                try (PDDocument document = Loader.loadPDF(bytes)) {
                    assertEquals(
                            2,
                            document.getNumberOfPages(),
                            units.name() + " " + sheet.warnings().size());
                    for (int page = 1; page <= 2; page++) {
                        PDFTextStripper stripper = new PDFTextStripper();
                        stripper.setStartPage(page);
                        stripper.setEndPage(page);
                        String text = stripper.getText(document);
                        assertTrue(text.contains("sheet " + page + " of 2"), text);
                        assertTrue(text.contains(KillSheet.NOTICE), text);
                        assertTrue(text.contains("verified by a competent person"), text);
                        assertFalse(text.contains("#"), "a character that the typeface lacks");
                    }
                }
            }
        }
    }

    @Test
    void thePageStandsAloneAndIsWellFormed() throws Exception {
        for (KillSheet sheet : sheets()) {
            String page = KillSheetPage.html(subject("</style><script>\"&"), sheet, UnitSystem.FIELD);
            assertFalse(page.contains("<script"));
            assertFalse(page.contains("<link"));
            assertFalse(
                    Pattern.compile("(src|href)=\"(?!#|data:)").matcher(page).find());
            assertFalse(Pattern.compile("url\\((?!#|data:)").matcher(page).find());
            DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
        }
    }

    @Test
    void theAnswerComesFirst() {
        KillSheet sheet = KillSheets.atSurface();
        String page = KillSheetPage.html(subject("8 1/2 in"), sheet, UnitSystem.FIELD);
        String first = page.substring(page.indexOf("<body>"), page.indexOf("<table class=\"columns\">"));
        for (String said : List.of(
                "Heron-1",
                KillSheet.NOTICE,
                "Invented well",
                UnitSystem.FIELD.text(sheet.killDensity(), Measure.DENSITY),
                UnitSystem.FIELD.text(sheet.initialCirculatingPressure(), Measure.PRESSURE_GAUGE),
                "9 5/8 in shoe holds kill mud to surface")) {
            assertTrue(first.contains(said), said);
        }
        String subsea = KillSheetPage.html(subject("8 1/2 in"), fullOfWarnings(), UnitSystem.FIELD);
        assertTrue(subsea.contains("4 more in the full results"));
        assertFalse(subsea.contains("Stack at surface"));
    }

    @Test
    void filesAreWrittenAndEqualSheetsGiveEqualBytes() throws IOException {
        KillSheet sheet = KillSheets.atSurface();
        Path page = KillSheetPage.write(subject("8 1/2 in"), sheet, UnitSystem.METRIC, directory);
        Path pdf = KillSheetPage.writePdf(subject("8 1/2 in"), sheet, UnitSystem.METRIC, directory);
        assertEquals("kill-sheet-8-1-2-in.html", page.getFileName().toString());
        assertEquals("kill-sheet-8-1-2-in.pdf", pdf.getFileName().toString());
        assertEquals(KillSheetPage.html(subject("8 1/2 in"), sheet, UnitSystem.METRIC), Files.readString(page));
        assertArrayEquals(KillSheetPage.pdf(subject("8 1/2 in"), sheet, UnitSystem.METRIC), Files.readAllBytes(pdf));
    }

    @Test
    void sectionsToldApartBySignsAloneGetFilesOfTheirOwn() {
        List<String> names = List.of("8 1/2 in", "8-1/2 in", "8 1/2 IN", "6 in", "8 1/2 in no 2");
        List<String> files = names.stream()
                .map(n -> KillSheetPage.Subject.fileName(n, names))
                .toList();
        assertEquals("kill-sheet-8-1-2-in", files.get(0));
        assertEquals("kill-sheet-6-in", files.get(3));
        assertEquals(names.size(), files.stream().distinct().count());
    }
}
