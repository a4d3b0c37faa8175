package staunch.fluid;

import staunch.units.Kind;
import staunch.units.Si;

/** A gas as the influx calculations see it: two densities at a pressure and a temperature. */
public sealed interface Gas permits RealGas, IdealGas, FixedGradientGas, GasInMud {
    /**
     * Density that carries the mass balance.
     *
     * @throws staunch.units.RangeFault where pressure or temperature lie outside the range of the model
     */
    @Si("kg/m3")
    double density(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature);

    /** Density that gives the weight of the gas column; equal to {@link #density} but for the hand formula's fixed gradient. */
    @Si("kg/m3")
    default double columnDensity(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        return density(pressure, temperature);
    }

    /** Whether the column weighs what its mass says: both densities are one. */
    default boolean weighsItsMass() {
        return true;
    }

    /** One line for the list of options: model and correlation. */
    String description();
}
