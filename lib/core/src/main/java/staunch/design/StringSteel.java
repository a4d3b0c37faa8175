package staunch.design;

import java.util.Objects;
import java.util.Optional;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.well.CasingInterval;
import staunch.well.CasingString;

/**
 * Steel of one string.
 *
 * @param string name of the string
 * @param length measured from its top to its shoe, m
 * @param mass by the nominal weight where the case gives it, else of plain pipe of nominal size without couplings, kg
 * @param cost at the price of the case; empty where it gives none
 */
public record StringSteel(
        String string,
        @Si(value = "m", kind = Kind.LENGTH) double length,
        @Si("kg") double mass,
        Optional<SteelCost> cost) {
    /** Density of casing steel, kg/m³, as in the plain-end mass of API 5CT / ISO 11960. */
    @Si("kg/m3")
    public static final double DENSITY = 7850;

    public StringSteel {
        Objects.requireNonNull(string, "string");
        Check.within("length of the string", length, 0, 20_000, Measure.LENGTH);
        Check.within("mass of the string", mass, 0, 1e8, Measure.MASS);
        Objects.requireNonNull(cost, "cost");
    }

    /** Sum over the intervals of nominal weight · length, or π/4 · (OD² − ID²) · length · 7850 kg/m³; wear not taken off. */
    static StringSteel of(CasingString string, Optional<StringPrice> price) {
        double mass = string.intervals().stream().mapToDouble(StringSteel::mass).sum();
        double length = string.shoeDepth() - string.topDepth();
        return new StringSteel(
                string.name(), length, mass, price.map(p -> new SteelCost(p.currency(), p.of(length, mass))));
    }

    private static double mass(CasingInterval interval) {
        double outside = interval.outsideDiameter();
        double inside = interval.insideDiameter();
        double plain = 0.25 * Math.PI * (outside - inside) * (outside + inside) * DENSITY;
        return interval.nominalWeight().orElse(plain) * (interval.bottomDepth() - interval.topDepth());
    }
}
