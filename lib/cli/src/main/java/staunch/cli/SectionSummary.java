package staunch.cli;

import java.util.Map;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.Verdict;
import staunch.envelope.WellEnvelope;
import staunch.table.ResultWords;
import staunch.table.TableText;
import staunch.table.Tables;
import staunch.units.UnitSystem;
import tech.tablesaw.api.Table;

/** The section summary as a person reads it on a terminal: figures in a table, verdicts in words below it. */
final class SectionSummary {
    /** Colours only repeat what the word itself says. */
    private static final Map<Verdict.Outcome, String> STYLES = Map.of(
            Verdict.Outcome.FAILS, "bold,red",
            Verdict.Outcome.NOT_ASSESSED, "yellow",
            Verdict.Outcome.HOLDS, "green",
            Verdict.Outcome.NOT_SHUT_IN, "faint");

    private SectionSummary() {}

    static String text(WellEnvelope envelope, UnitSystem units, Terminal terminal) {
        Table figures = Tables.verdicts(envelope, units).table().removeColumns("Verdict", "Governing limit");
        StringBuilder text = new StringBuilder(TableText.of(figures, Integer.MAX_VALUE)).append('\n');
        int width = envelope.sections().stream()
                .mapToInt(s -> s.plan().name().length())
                .max()
                .orElse(0);
        for (SectionEnvelope section : envelope.sections()) {
            String name = section.plan().name();
            Verdict verdict = section.verdict();
            text.append(name).append(" ".repeat(width - name.length() + 2));
            text.append(statement(verdict, terminal));
            if (!verdict.governing().isEmpty()) {
                text.append("; governed by ").append(verdict.governing());
            }
            text.append('\n');
        }
        return text.append('\n')
                .append(ResultWords.verdict(envelope.sections()))
                .append('\n')
                .toString();
    }

    /** The statement, opened by the outcome in colour. */
    private static String statement(Verdict verdict, Terminal terminal) {
        String outcome = verdict.outcome().title();
        String styled = terminal.styled(STYLES.get(verdict.outcome()), outcome);
        return verdict.statement().startsWith(outcome)
                ? styled + verdict.statement().substring(outcome.length())
                : styled + ": " + verdict.statement();
    }
}
