package staunch.cli;

import java.util.Base64;
import staunch.chart.ChartImage;
import staunch.chart.Figure;
import staunch.design.WellCase;
import staunch.envelope.HandCalculation;
import staunch.envelope.IntensityLimit;
import staunch.envelope.KickResult;
import staunch.envelope.Maasp;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;
import staunch.envelope.WellEnvelope;
import staunch.kernel.DisplayRegistry;
import staunch.kernel.MimeBundle;
import staunch.table.ResultTable;
import staunch.table.ResultWords;
import staunch.table.TableHtml;
import staunch.table.TableText;
import staunch.table.Tables;
import staunch.units.Quantity;
import staunch.units.UnitSystem;
import tech.tablesaw.api.Table;

/** How values look in a notebook. Each has a form in plain text. */
final class Displays {
    private static final int ROWS_OF_HTML = 60;
    private static final int ROWS_OF_TEXT = 20;

    private final UnitSystem units;
    private final RecordCard card;

    private Displays(UnitSystem units) {
        this.units = units;
        this.card = new RecordCard(units);
    }

    /** Displays of numbers that carry no unit of their own in the given units. */
    static DisplayRegistry in(UnitSystem units) {
        Displays displays = new Displays(units);
        return DisplayRegistry.standard()
                .with(Record.class, displays.card::of)
                .with(ResultTable.class, Displays::table)
                .with(Table.class, Displays::table)
                .with(Figure.class, Displays::figure)
                .with(ChartImage.class, Displays::figure)
                .with(Quantity.class, q -> MimeBundle.text(q.text()))
                .with(WellCase.class, displays::wellCase)
                .with(WellEnvelope.class, e -> table(Tables.sectionSummary(e, units)))
                .with(SectionEnvelope.class, displays::section)
                .with(KickResult.class, displays::kick)
                .with(Maasp.class, m -> table(Tables.maasp(m, units)))
                .with(HandCalculation.class, h -> table(Tables.handCalculation(h, units)))
                .with(Verdict.class, v -> sentence(v.statement()))
                .with(Tolerance.class, t -> sentence(ResultWords.full(t, units)))
                .with(IntensityLimit.class, i -> sentence(ResultWords.text(i, units)));
    }

    private static MimeBundle table(ResultTable table) {
        String caption = table.caption();
        return MimeBundle.html(
                table.html(ROWS_OF_HTML) + (caption.isEmpty() ? "" : "<p>" + TableHtml.escape(caption) + "</p>"),
                table.text(ROWS_OF_TEXT) + caption);
    }

    private static MimeBundle table(Table table) {
        return MimeBundle.html(TableHtml.of(table, ROWS_OF_HTML), TableText.of(table, ROWS_OF_TEXT));
    }

    /** SVG goes in as an image of its own, since some front ends clean drawings out of HTML. */
    private static MimeBundle figure(Figure figure) {
        MimeBundle bundle = MimeBundle.html(figure.html(), "[chart] " + figure.altText());
        return figure instanceof ChartImage image
                ? bundle.with("image/png", Base64.getEncoder().encodeToString(image.png()))
                : bundle;
    }

    private static MimeBundle sentence(String text) {
        return MimeBundle.html("<p>" + TableHtml.escape(text) + "</p>", text);
    }

    private MimeBundle wellCase(WellCase wellCase) {
        MimeBundle header = card.of(wellCase.header());
        StringBuilder html = new StringBuilder(header.data().get(MimeBundle.HTML));
        StringBuilder text = new StringBuilder(header.plain());
        wellCase.designs().forEach(design -> {
            ResultTable holes = Tables.holeProgramme(design, units);
            html.append("<p>Casing design ")
                    .append(TableHtml.escape(design.name()))
                    .append("</p>");
            html.append(holes.html());
            text.append("Casing design ").append(design.name()).append('\n').append(holes.text());
        });
        return MimeBundle.html(html.toString(), text.toString());
    }

    private MimeBundle section(SectionEnvelope section) {
        String name = section.plan().name();
        String verdict = section.verdict().statement();
        ResultTable kicks = Tables.kicks(section, units);
        return MimeBundle.html(
                "<p><strong>" + TableHtml.escape(name) + "</strong>: " + TableHtml.escape(verdict) + "</p>"
                        + kicks.html(),
                name + ": " + verdict + "\n" + kicks.text());
    }

    private MimeBundle kick(KickResult result) {
        return sentence(result.scenario().title() + ": " + ResultWords.full(result.tolerance(), units) + "; "
                + result.verdict().statement());
    }
}
