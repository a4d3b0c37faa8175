package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.units.InputFault;
import staunch.units.Warning;

/**
 * Envelope of every hole section of one casing design.
 *
 * @param design name of the casing design
 * @param options methods used
 * @param sections downwards
 * @param warnings that concern the well as a whole
 */
public record WellEnvelope(
        String design, MethodOptions options, List<SectionEnvelope> sections, List<Warning> warnings) {
    public WellEnvelope {
        Objects.requireNonNull(design, "design");
        Objects.requireNonNull(options, "options");
        sections = List.copyOf(sections);
        warnings = List.copyOf(warnings);
    }

    /**
     * Envelope of the section of that name.
     *
     * @throws InputFault where there is none
     */
    public SectionEnvelope section(String name) {
        return sections.stream()
                .filter(s -> s.plan().name().equals(name))
                .findFirst()
                .orElseThrow(() -> new InputFault(
                        "hole section \"" + name + "\"",
                        "is not in casing design \"" + design + "\"",
                        "use one of "
                                + sections.stream().map(s -> s.plan().name()).toList()));
    }
}
