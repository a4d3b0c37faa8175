package staunch.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.chart.ChartImage;
import staunch.chart.Charts;
import staunch.envelope.KickOperations;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.Tolerance;
import staunch.present.Fixtures;
import staunch.present.KillSheets;
import staunch.table.Tables;
import staunch.units.InputFault;
import staunch.units.Quantity;
import staunch.units.UnitSystem;
import staunch.units.Warning;

class ResultHtmlTest {
    private static final UnitSystem FIELD = UnitSystem.FIELD;

    @Test
    void everyResultHasItsCardAndItsText() {
        SectionEnvelope section = Fixtures.failing();
        Tolerance.Finite finite = (Tolerance.Finite) section.drilled().tolerance();
        List<Object> results = new ArrayList<>(List.of(
                Fixtures.envelope(),
                section,
                section.drilled(),
                section.drilled().kick().orElseThrow(),
                section.drilled().hand().orElseThrow(),
                section.verdict(),
                section.window(),
                section.maasp().orElseThrow(),
                section.largestIntensity(),
                section.margins().get(0),
                section.assumptions().get(0),
                finite.weakPoint(),
                finite.stage(),
                Fixtures.envelope().options(),
                new Warning("mud", "seen"),
                Quantity.of(9.6, "ppg"),
                Tables.maasp(section.maasp().orElseThrow(), FIELD)));
        Fixtures.envelope().sections().forEach(s -> results.add(s.drilled().tolerance()));
        Fixtures.operations().forEach(results::add);
        KickOperations.Followed kick =
                (KickOperations.Followed) Fixtures.operations().get(3).drilled();
        results.addAll(List.of(
                kick,
                kick.drillers(),
                kick.waitAndWeight(),
                kick.migration(),
                kick.volumetric(),
                kick.lubrication(),
                kick.bullheading(),
                kick.surfaceGas(),
                kick.killSheet(),
                KillSheets.subsea()));
        for (Object result : results) {
            ResultHtml.Card card = ResultHtml.card(result, FIELD).orElseThrow();
            assertTrue(card.html().contains("staunch-card"), card.text());
            assertFalse(card.text().isBlank());
            assertFalse(card.text().contains("NaN") || card.text().contains("Optional"), card.text());
        }
    }

    @Test
    void aToleranceReadsAsItIs() {
        assertEquals(
                "Kick tolerance 14.9 bbl\n"
                        + "  outcome  limited at depleted sand, influx part-way up, its top below the weak point"
                        + " (9703 ft TVD)",
                text(Fixtures.failing().drilled().tolerance()));
        assertEquals(
                "Kick tolerance no limit\n  outcome  no limit: the influx may fill the open hole (391.2 bbl)",
                text(Fixtures.unlimited().drilled().tolerance()));
        assertEquals(
                "Kick tolerance not shut in\n  outcome  not shut in: drilled on a diverter",
                text(Fixtures.notShutIn().drilled().tolerance()));
    }

    private static String text(Object result) {
        return ResultHtml.card(result, FIELD).orElseThrow().text();
    }

    @Test
    void anythingElseHasNone() {
        assertEquals(Optional.empty(), ResultHtml.card("a text", FIELD));
    }

    @Test
    void cardsEscape() {
        String html = ResultHtml.card(new Warning("<script>", "&"), FIELD)
                .orElseThrow()
                .html();
        assertTrue(html.contains("&lt;script&gt;") && html.contains("&amp;"), html);
    }

    @Test
    void aChartIsWrittenByItsEnding(@TempDir Path directory) throws Exception {
        ChartImage chart = (ChartImage) Charts.toleranceAlongSection(Fixtures.holding(), FIELD);
        Path svg = ChartFile.write(chart, directory.resolve("images/tolerance.svg"));
        assertEquals(chart.svg(), Files.readString(svg));
        Path png = ChartFile.write(chart, directory.resolve("images/tolerance.png"));
        assertEquals((byte) 'P', Files.readAllBytes(png)[1]);
        assertThrows(InputFault.class, () -> ChartFile.write(chart, directory.resolve("tolerance.gif")));
    }
}
