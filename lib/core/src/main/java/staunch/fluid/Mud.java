package staunch.fluid;

import java.util.Objects;
import java.util.Optional;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.Si;

/**
 * A drilling fluid.
 *
 * @param name what the programme calls it
 * @param density stated density, kg/m³, 700 to 2700 (5.8 to 22.5 ppg)
 * @param base continuous phase
 * @param rheometer readings, where the case gives them
 * @param expansion change with pressure and temperature, where the case gives it
 */
public record Mud(
        String name,
        @Si("kg/m3") double density,
        MudBase base,
        Optional<RheometerReadings> rheometer,
        Optional<MudExpansion> expansion) {
    public Mud {
        Check.text("name of the mud", name);
        Check.within("mud density", density, 700, 2700, Measure.DENSITY);
        Objects.requireNonNull(base, "base");
        Objects.requireNonNull(rheometer, "rheometer");
        Objects.requireNonNull(expansion, "expansion");
    }

    /** A water-based mud of constant density. */
    public static Mud waterBased(String name, @Si("kg/m3") double density) {
        return new Mud(name, density, MudBase.WATER, Optional.empty(), Optional.empty());
    }

    /** A water-based mud of constant density, in the unit as written. */
    public static Mud waterBased(String name, Quantity density) {
        return waterBased(name, density.si("mud density", Measure.DENSITY));
    }

    /** The same mud at another density. */
    public Mud withDensity(@Si("kg/m3") double newDensity) {
        return new Mud(name, newDensity, base, rheometer, expansion);
    }

    /**
     * Density at a pressure and a temperature: by the {@link MudExpansion} where the mud has one, its stated density
     * otherwise.
     */
    @Si("kg/m3")
    public double densityAt(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        return expansion.isPresent() ? density * expansion.get().relativeDensity(pressure, temperature) : density;
    }
}
