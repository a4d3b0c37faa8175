package staunch.cli;

import java.util.List;
import java.util.stream.Collectors;
import staunch.design.Attribution;
import staunch.design.Cause;
import staunch.design.Rerun;
import staunch.design.ResultValue;
import staunch.design.SectionChange;
import staunch.design.SectionQuantity;
import staunch.table.RerunTables;
import staunch.table.RerunWords;
import staunch.table.ResultTable;
import staunch.units.UnitSystem;

/** What changed since an earlier run as a person reads it on a terminal: the answer first, flips before the rest. */
final class RerunSummary {
    /** Results whose change is shared out, the first two that changed. */
    private static final List<SectionQuantity> SHARED = List.of(
            SectionQuantity.DRILLED_TOLERANCE,
            SectionQuantity.DRILLED_MARGIN,
            SectionQuantity.SWABBED_TOLERANCE,
            SectionQuantity.SWABBED_MARGIN,
            SectionQuantity.FORMATION_MAASP);

    private static final int MOST_SHARED = 2;

    private final Rerun rerun;
    private final UnitSystem units;
    private final Terminal terminal;
    private final StringBuilder text = new StringBuilder();

    private RerunSummary(Rerun rerun, UnitSystem units, Terminal terminal) {
        this.rerun = rerun;
        this.units = units;
        this.terminal = terminal;
    }

    static String text(Rerun rerun, UnitSystem units, Terminal terminal) {
        return new RerunSummary(rerun, units, terminal).whole();
    }

    private String whole() {
        line(terminal.styled("bold", RerunWords.answer(rerun)));
        if (!rerun.notAttributed().isEmpty()) {
            line("Nothing is attributed: " + rerun.notAttributed() + ".");
        }
        if (!rerun.causes().isEmpty()) {
            line("");
            line("Changed:");
            rerun.causes().forEach(this::cause);
        }
        rerun.sections().stream().filter(SectionChange::changed).forEach(this::section);
        String same = rerun.sections().stream()
                .filter(s -> !s.changed())
                .map(RerunWords::name)
                .collect(Collectors.joining(", "));
        if (!same.isEmpty() && !rerun.nothingChanged()) {
            line("");
            line("Not changed: " + same + ".");
        }
        return text.toString();
    }

    private void cause(Cause cause) {
        String details = RerunWords.details(cause, units);
        line("  " + cause.name() + (details.isEmpty() ? "" : ": " + details));
        if (!cause.together().isEmpty()) {
            line("    made together: " + cause.together());
        }
    }

    private void section(SectionChange section) {
        line("");
        String verdict = section.flips()
                ? RerunWords.flip(section)
                : RerunWords.name(section)
                        + section.after()
                                .map(r -> ", " + r.verdict().outcome().title())
                                .orElse(", no longer there");
        line(terminal.styled("bold", verdict));
        String turned = RerunWords.turnedBy(section);
        if (!turned.isEmpty()) {
            line("  " + turned);
        }
        if (section.flips()) {
            line("  " + RerunWords.verdictNow(section));
        }
        if (section.before().isPresent() && section.after().isPresent()) {
            for (SectionQuantity quantity : SectionQuantity.values()) {
                value(
                        quantity,
                        section.before().get().value(quantity),
                        section.after().get().value(quantity),
                        section);
            }
        }
        SHARED.stream()
                .filter(q -> section.attribution(q)
                        .filter(a -> a.total().isPresent())
                        .isPresent())
                .limit(MOST_SHARED)
                .forEach(q -> shares(RerunTables.attribution(section, q, units)));
    }

    private void value(SectionQuantity quantity, ResultValue before, ResultValue after, SectionChange section) {
        if (before.equals(after)) {
            return;
        }
        String change = section.attribution(quantity)
                .map(Attribution::total)
                .map(t -> RerunWords.change(t, quantity.measureOfChange(), units))
                .orElse("");
        String was = RerunWords.value(before, units);
        String now = RerunWords.value(after, units);
        String where = before.outcome().equals(after.outcome()) ? "" : "; now " + after.outcome();
        line("  " + quantity.title() + ": " + (was.equals(now) ? now : was + " → " + now)
                + (change.isEmpty() ? "" : " (" + change + ")") + where);
    }

    private void shares(ResultTable table) {
        line("");
        line(table.name());
        text.append(table.text());
    }

    private void line(String words) {
        text.append(words).append('\n');
    }
}
