package staunch.design;

import java.util.List;
import java.util.Objects;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Steel that a casing design takes.
 *
 * @param design name of the casing design
 * @param strings in the order they are set
 * @param length of all strings, m
 * @param mass of all strings, kg
 */
public record SteelUse(
        String design,
        List<StringSteel> strings,
        @Si(value = "m", kind = Kind.LENGTH) double length,
        @Si("kg") double mass) {
    public SteelUse {
        Objects.requireNonNull(design, "design");
        strings = List.copyOf(strings);
    }

    /**
     * Steel of a design: nominal weight (threaded and coupled) · length for each interval whose weight the case gives;
     * π/4 · (OD² − ID²) · length · 7850 kg/m³ for any other, which is plain pipe without couplings. The density is that behind the plain-end mass of API 5CT / ISO
     * 11960, from memory.
     */
    public static SteelUse of(CasingDesign design) {
        List<StringSteel> strings =
                design.strings().stream().map(StringSteel::of).toList();
        return new SteelUse(
                design.name(),
                strings,
                strings.stream().mapToDouble(StringSteel::length).sum(),
                strings.stream().mapToDouble(StringSteel::mass).sum());
    }
}
