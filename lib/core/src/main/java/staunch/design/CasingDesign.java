package staunch.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import staunch.envelope.SectionPlan;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.well.CasingString;

/**
 * A named casing design: the strings, and the hole sections drilled between them.
 *
 * @param name of the design
 * @param strings in the order they are set
 * @param sections in the order they are drilled
 * @param prices of strings, where the case gives them
 */
public record CasingDesign(
        String name, List<CasingString> strings, List<SectionPlan> sections, List<StringPrice> prices) {
    public CasingDesign {
        Check.text("name of the casing design", name);
        strings = List.copyOf(strings);
        sections = List.copyOf(sections);
        prices = List.copyOf(prices);
        if (sections.isEmpty()) {
            throw new InputFault("casing design \"" + name + "\"", "has no hole section", "give at least one");
        }
        Set<String> names = new HashSet<>();
        for (SectionPlan section : sections) {
            if (!names.add(section.name())) {
                throw new InputFault(
                        "casing design \"" + name + "\"",
                        "has two hole sections named \"" + section.name() + "\"",
                        "give each its own name");
            }
        }
    }

    /** A design whose strings have no price. */
    public CasingDesign(String name, List<CasingString> strings, List<SectionPlan> sections) {
        this(name, strings, sections, List.of());
    }

    /** The section of that name. */
    public SectionPlan section(String sectionName) {
        return sections.stream()
                .filter(s -> s.name().equals(sectionName))
                .findFirst()
                .orElseThrow(() -> new InputFault(
                        "hole section \"" + sectionName + "\"",
                        "is not in casing design \"" + name + "\"",
                        "use one of " + sections.stream().map(SectionPlan::name).toList()));
    }

    /**
     * The same design with another section in the place of the named one.
     *
     * @throws InputFault where there is no section of that name
     */
    public CasingDesign withSection(String sectionName, SectionPlan replacement) {
        List<SectionPlan> changed = new ArrayList<>(sections);
        changed.set(sections.indexOf(section(sectionName)), replacement);
        return new CasingDesign(name, strings, changed, prices);
    }
}
