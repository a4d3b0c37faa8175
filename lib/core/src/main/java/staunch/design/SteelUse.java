package staunch.design;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Steel that a casing design takes.
 *
 * @param design name of the casing design
 * @param strings in the order they are set
 * @param length of all strings, m
 * @param mass of all strings, kg
 * @param cost of all strings; empty where a string has no price, or prices are of several currencies
 */
public record SteelUse(
        String design,
        List<StringSteel> strings,
        @Si(value = "m", kind = Kind.LENGTH) double length,
        @Si("kg") double mass,
        Optional<SteelCost> cost) {
    public SteelUse {
        Objects.requireNonNull(cost, "cost");
        Objects.requireNonNull(design, "design");
        strings = List.copyOf(strings);
    }

    /**
     * Steel of a design: nominal weight (threaded and coupled) · length for each interval whose weight the case gives;
     * π/4 · (OD² − ID²) · length · 7850 kg/m³ for any other, which is plain pipe without couplings. The density is that behind the plain-end mass of API 5CT / ISO
     * 11960, from memory.
     */
    public static SteelUse of(CasingDesign design) {
        List<StringSteel> strings = design.strings().stream()
                .map(s -> StringSteel.of(s, price(design, s.name())))
                .toList();
        return new SteelUse(
                design.name(),
                strings,
                strings.stream().mapToDouble(StringSteel::length).sum(),
                strings.stream().mapToDouble(StringSteel::mass).sum(),
                cost(strings));
    }

    private static Optional<StringPrice> price(CasingDesign design, String string) {
        return design.prices().stream().filter(p -> p.string().equals(string)).findFirst();
    }

    private static Optional<SteelCost> cost(List<StringSteel> strings) {
        List<SteelCost> costs = strings.stream().flatMap(s -> s.cost().stream()).toList();
        boolean whole = !strings.isEmpty()
                && costs.size() == strings.size()
                && costs.stream().map(SteelCost::currency).distinct().count() == 1;
        return whole
                ? Optional.of(new SteelCost(
                        costs.get(0).currency(),
                        costs.stream().mapToDouble(SteelCost::amount).sum()))
                : Optional.empty();
    }
}
