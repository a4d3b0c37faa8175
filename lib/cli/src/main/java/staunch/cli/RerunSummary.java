package staunch.cli;

import java.util.List;
import java.util.stream.Collectors;
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
        if (!rerun.notCompared().isEmpty()) {
            line("Not compared: " + rerun.notCompared() + ".");
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
                                .orElse(", no longer there")
                        + (section.before().isEmpty() ? ", not in the earlier run" : "");
        line(terminal.styled("bold", verdict));
        String turned = RerunWords.turnedBy(section);
        if (!turned.isEmpty()) {
            line("  " + turned);
        }
        if (section.flips()) {
            line("  " + RerunWords.verdictNow(section));
        }
        SectionQuantity.Part told = SectionQuantity.Part.ENVELOPE;
        List<SectionQuantity> visible = RerunWords.visible(section, units);
        if (visible.isEmpty() && section.before().isPresent() && section.after().isPresent()) {
            line("  by less than is shown");
        }
        for (SectionQuantity quantity : visible) {
            if (quantity.part() != told) {
                told = quantity.part();
                line("  " + told.title() + ":");
            }
            value(quantity, section);
        }
        RerunWords.told(section, units).forEach(q -> shares(RerunTables.attribution(section, q, units)));
    }

    private void value(SectionQuantity quantity, SectionChange section) {
        ResultValue before = section.before().orElseThrow().value(quantity);
        ResultValue after = section.after().orElseThrow().value(quantity);
        String was = RerunWords.value(before, units);
        String now = RerunWords.value(after, units);
        String change = RerunWords.change(section, quantity, units);
        if (was.equals(now) || change.matches("[^1-9]*")) {
            change = "";
        }
        String where = before.outcome().equals(after.outcome())
                ? ""
                : after.value().isPresent() ? "; now " + after.outcome() : behind(now, after.outcome());
        String inset = quantity.part() == SectionQuantity.Part.ENVELOPE ? "  " : "    ";
        line(inset + quantity.titleInPart() + ": " + (was.equals(now) ? now : was + " → " + now)
                + (change.isEmpty() ? "" : " (" + change + ")") + where);
    }

    /** What an outcome without a number says behind the words that stand in its place. */
    private static String behind(String shown, String outcome) {
        String rest = outcome.startsWith(shown) ? outcome.substring(shown.length()) : ": " + outcome;
        return rest.isEmpty() ? "" : "; " + rest.substring(2);
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
