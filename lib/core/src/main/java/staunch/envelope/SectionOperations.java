package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.units.Warning;

/**
 * How it goes after an influx into a section at its TD: circulated out, left to migrate, killed. The time side of its
 * envelope.
 *
 * @param section name of the hole section
 * @param drilled course of the drilled kick
 * @param swabbed course of the swabbed kick
 * @param riser what a subsea well loses with its riser
 * @param mudFlow friction of the mud while pumped slowly and while the string is tripped
 * @param assumptions choices and defaults behind the results
 * @param warnings what is suspicious
 */
public record SectionOperations(
        String section,
        KickOperations drilled,
        KickOperations swabbed,
        RiserOutcome riser,
        MudFlowOutcome mudFlow,
        List<Assumption> assumptions,
        List<Warning> warnings) {
    public SectionOperations {
        Objects.requireNonNull(section, "section");
        Objects.requireNonNull(drilled, "drilled");
        Objects.requireNonNull(swabbed, "swabbed");
        Objects.requireNonNull(riser, "riser");
        Objects.requireNonNull(mudFlow, "mudFlow");
        assumptions = List.copyOf(assumptions);
        warnings = List.copyOf(warnings);
    }
}
