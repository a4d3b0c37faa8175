package staunch.cli;

import java.util.Base64;
import java.util.stream.Collectors;
import staunch.chart.ChartImage;
import staunch.chart.Figure;
import staunch.design.CasingDesign;
import staunch.design.WellCase;
import staunch.kernel.DisplayRegistry;
import staunch.kernel.MimeBundle;
import staunch.report.ResultHtml;
import staunch.table.ResultTable;
import staunch.table.TableHtml;
import staunch.table.TableText;
import staunch.table.Tables;
import staunch.units.UnitSystem;
import tech.tablesaw.api.Table;

/** How values look in a notebook. Each has a form in plain text. */
final class Displays {
    private static final int ROWS_OF_HTML = 60;
    private static final int ROWS_OF_TEXT = 20;

    private final UnitSystem units;
    private final RecordCard recordCard;

    private Displays(UnitSystem units) {
        this.units = units;
        this.recordCard = new RecordCard(units);
    }

    /** Displays of numbers that carry no unit of their own in the given units. */
    static DisplayRegistry in(UnitSystem units) {
        Displays displays = new Displays(units);
        return DisplayRegistry.standard()
                .with(Record.class, displays::record)
                .with(ResultHtml.Card.class, card -> MimeBundle.html(card.html(), card.text()))
                .with(WellCase.class, displays::wellCase)
                .with(Figure.class, Displays::figure)
                .with(ResultTable.class, Displays::table)
                .with(Table.class, Displays::table);
    }

    /** Results have cards that speak the trade's words; any other record shows its components. */
    private MimeBundle record(Record record) {
        return ResultHtml.card(record, units)
                .map(card -> MimeBundle.html(card.html(), card.text()))
                .orElseGet(() -> recordCard.of(record));
    }

    private MimeBundle wellCase(WellCase wellCase) {
        MimeBundle header = recordCard.of(wellCase.header());
        String html = wellCase.designs().stream()
                .map(d -> "<p>Casing design " + TableHtml.escape(d.name()) + "</p>" + holes(d).html())
                .collect(Collectors.joining());
        String text = wellCase.designs().stream()
                .map(d -> "Casing design " + d.name() + "\n" + holes(d).text())
                .collect(Collectors.joining("\n"));
        return MimeBundle.html(header.data().get(MimeBundle.HTML) + html, header.plain() + "\n" + text);
    }

    private ResultTable holes(CasingDesign design) {
        return Tables.holeProgramme(design, units);
    }

    private static MimeBundle table(ResultTable table) {
        String caption = table.caption();
        return MimeBundle.html(
                table.htmlToFit(ROWS_OF_HTML) + (caption.isEmpty() ? "" : "<p>" + TableHtml.escape(caption) + "</p>"),
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
}
