package staunch.ingest;

import java.util.List;
import java.util.stream.Collectors;
import staunch.units.Measure;
import staunch.units.Quantity;

/** Writes the reference of keys in the documentation of the case file from the table of keys. */
final class ReferenceWriter {
    private ReferenceWriter() {}

    static String reference() {
        StringBuilder page = new StringBuilder();
        for (Block block : CaseKeys.blocks()) {
            page.append("\n### ").append(block.name()).append("\n\n");
            block.alternatives()
                    .forEach(group -> page.append("Exactly one of ")
                            .append(group.stream().map(k -> "`" + k + "`").collect(Collectors.joining(", ")))
                            .append(" must be given.\n\n"));
            page.append(
                    "| key | value | needed | what it is | without it: not assessed, or what is taken |\n|---|---|---|---|---|\n");
            for (Key key : block.keys()) {
                page.append("| `")
                        .append(key.name())
                        .append("` | ")
                        .append(value(key.form()))
                        .append(" | ")
                        .append(key.needed() ? "yes" : "")
                        .append(" | ")
                        .append(key.meaning())
                        .append(" | ")
                        .append(key.without())
                        .append(" |\n");
            }
        }
        return page.toString();
    }

    private static String value(Form form) {
        if (form instanceof Form.Text) {
            return "text";
        } else if (form instanceof Form.Amount amount) {
            return amount(amount);
        } else if (form instanceof Form.RockPressure) {
            return "equivalent mud weight 500 to 3000 kg/m3, gradient 4.91 to 29.4 kPa/m, or pressure 1 to 4000 bar";
        } else if (form instanceof Form.PumpRate) {
            return "flow rate 0.6 to 12000 l/min, or strokes per minute (spm)";
        } else if (form instanceof Form.Count count) {
            return "whole number, " + count.lowest() + " to " + count.highest();
        } else if (form instanceof Form.Flag) {
            return "`true` or `false`";
        } else if (form instanceof Form.Choice choice) {
            return words(choice.names());
        } else if (form instanceof Form.Word word) {
            return words(word.words());
        } else if (form instanceof Form.UnitOf unit) {
            return "unit of " + unit.measure().title();
        } else if (form instanceof Form.Nested nested) {
            return link(nested.block());
        } else if (form instanceof Form.NameOrNested either) {
            return words(either.names()) + ", or " + link(either.block());
        } else if (form instanceof Form.Csv csv) {
            return "name of a CSV file, columns as " + link(csv.block());
        }
        Form.Rows rows = (Form.Rows) form;
        return "list of " + link(rows.block())
                + (rows.csv() ? ", or `{file: NAME.csv}`" : "")
                + (rows.word().isEmpty() ? "" : ", or `" + rows.word() + "`");
    }

    private static String amount(Form.Amount amount) {
        Measure measure = amount.measure();
        String unit = measure.usualUnits().get(0);
        Quantity shown = Quantity.of(1, unit.equals("1") ? "" : unit);
        return (measure == Measure.NUMBER ? "number or %" : measure.title()) + ", " + Values.range(shown, amount);
    }

    private static String words(List<String> words) {
        return words.stream().map(w -> "`" + w + "`").collect(Collectors.joining(", "));
    }

    private static String link(Block block) {
        return "[" + block.name() + "](#" + block.name() + ")";
    }
}
