package staunch.cli;

import java.util.regex.Pattern;
import staunch.envelope.WellEnvelope;
import staunch.table.Tables;
import staunch.units.UnitSystem;

/** The section summary as a person reads it on a terminal. */
final class SectionSummary {
    private static final Pattern FAILS = Pattern.compile("\\bfails\\b");
    private static final Pattern HOLDS = Pattern.compile("\\bholds\\b");
    private static final Pattern OPEN = Pattern.compile("\\bnot assessed\\b");

    private SectionSummary() {}

    /** Colours only repeat what the word beside says. */
    static String text(WellEnvelope envelope, UnitSystem units, Terminal terminal) {
        String text = Tables.sectionSummary(envelope, units).text();
        text = FAILS.matcher(text).replaceAll(terminal.styled("@|bold,red fails|@"));
        text = HOLDS.matcher(text).replaceAll(terminal.styled("@|green holds|@"));
        return OPEN.matcher(text).replaceAll(terminal.styled("@|yellow not assessed|@"));
    }
}
