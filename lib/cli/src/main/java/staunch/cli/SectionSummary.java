package staunch.cli;

import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import staunch.design.WellCase;
import staunch.envelope.KickResult;
import staunch.envelope.Masp;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.Verdict;
import staunch.envelope.WellEnvelope;
import staunch.table.ResultWords;
import staunch.table.TableText;
import staunch.units.Measure;
import staunch.units.UnitSystem;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/** The section summary as a person reads it on a terminal: figures in a table, verdicts in words below it. */
final class SectionSummary {
    /** Colours only repeat what the word itself says. */
    private static final Map<Verdict.Outcome, String> STYLES = Map.of(
            Verdict.Outcome.FAILS, "bold,red",
            Verdict.Outcome.NOT_ASSESSED, "yellow",
            Verdict.Outcome.HOLDS, "green",
            Verdict.Outcome.NOT_SHUT_IN, "faint");

    private static final String CAUTION =
            "Planning aid: to be verified by a competent person. Local regulations, the rig's own"
                    + " procedures and certified well-control staff prevail.";
    private static final int GAP = 2;

    private SectionSummary() {}

    static String text(WellCase wellCase, WellEnvelope envelope, UnitSystem units, Terminal terminal) {
        StringBuilder text =
                new StringBuilder("Kick tolerance at section TD, bottom-hole volume at shut-in, rounded down:\n");
        text.append(TableText.of(figures(envelope, units), Integer.MAX_VALUE)).append('\n');
        int width = envelope.sections().stream()
                .mapToInt(s -> s.plan().name().length())
                .max()
                .orElse(0);
        for (SectionEnvelope section : envelope.sections()) {
            String name = section.plan().name();
            Verdict verdict = section.verdict();
            String outcome = verdict.outcome().title();
            String lines = TableText.folded(sentence(verdict, units), width + GAP);
            text.append(name).append(" ".repeat(width - name.length() + GAP));
            text.append(terminal.styled(STYLES.get(verdict.outcome()), outcome));
            text.append(lines.substring(outcome.length()));
            text.append('\n');
        }
        masps(text, envelope, units, width);
        text.append('\n');
        Stream.of(
                        ResultWords.verdict(envelope.sections()) + " "
                                + ResultWords.maspFailures(envelope.sections(), units),
                        ResultWords.departures(envelope.options(), wellCase.evidence()),
                        CAUTION)
                .map(String::strip)
                .filter(sentence -> !sentence.isEmpty())
                .forEach(sentence -> text.append(TableText.folded(sentence, 0)).append('\n'));
        return text.toString();
    }

    /** The design load of each section that has one, with what the ratings say. */
    private static void masps(StringBuilder text, WellEnvelope envelope, UnitSystem units, int width) {
        boolean first = true;
        for (SectionEnvelope section : envelope.sections()) {
            for (Masp masp : section.masps()) {
                if (first) {
                    text.append("\nMASP, a design load of casing and equipment, rounded up:\n");
                    first = false;
                }
                String detail = ResultWords.detail(masp.verdict(), units);
                String sentence = ResultWords.basis(masp.basis(), units) + ", "
                        + ResultWords.masp(Optional.of(masp), units)
                        + (detail.equals(masp.verdict().outcome().title()) ? "" : ": " + detail);
                String name = section.plan().name();
                text.append(name).append(" ".repeat(width - name.length() + GAP));
                text.append(TableText.folded(sentence, width + GAP)).append('\n');
            }
        }
    }

    /** A row for each kick, so that the table stays narrow. */
    private static Table figures(WellEnvelope envelope, UnitSystem units) {
        List<String> names = List.of(
                "Section", "Kick", "Formation", "To surface", "Required", "Formation MAASP", "Lowest surface limit");
        List<StringColumn> columns = names.stream().map(StringColumn::create).toList();
        for (SectionEnvelope section : envelope.sections()) {
            String name = section.plan().name();
            if (section.verdict().outcome() == Verdict.Outcome.NOT_SHUT_IN) {
                add(columns, name, section.verdict().outcome().title(), "", "", "", "", "");
                continue;
            }
            add(
                    columns,
                    section,
                    section.drilled(),
                    units,
                    name,
                    ResultWords.formationMaasp(section.maasp(), units),
                    ResultWords.lowestSurfaceLimit(section.maasp(), units));
            add(columns, section, section.swabbed(), units, "", "", "");
        }
        return Table.create(columns.toArray(Column[]::new));
    }

    private static void add(
            List<StringColumn> columns,
            SectionEnvelope section,
            KickResult kick,
            UnitSystem units,
            String name,
            String formation,
            String lowest) {
        OptionalDouble required = kick.required();
        add(
                columns,
                name,
                kick.scenario().name().toLowerCase(Locale.ROOT),
                ResultWords.formation(section, kick, units),
                ResultWords.headline(kick.circulatedToSurface(), units),
                required.isPresent() ? units.text(required.getAsDouble(), Measure.VOLUME, RoundingMode.CEILING) : "",
                formation,
                lowest);
    }

    private static void add(List<StringColumn> columns, String... cells) {
        for (int i = 0; i < cells.length; i++) {
            columns.get(i).append(cells[i]);
        }
    }

    /** Verdict and governing limit, opened by the outcome. */
    private static String sentence(Verdict verdict, UnitSystem units) {
        String shown = verdict.statement(units);
        String outcome = verdict.outcome().title();
        String statement = shown.startsWith(outcome) ? shown : outcome + ": " + shown;
        return verdict.governing().isEmpty() ? statement : statement + "; governed by " + verdict.governing();
    }
}
