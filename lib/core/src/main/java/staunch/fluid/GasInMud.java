package staunch.fluid;

import java.util.Objects;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Gas spread evenly in mud, both moving together: each kilogram of gas keeps its r kilograms of mud, and only the gas
 * expands. With ρ_g the density of the gas and ρ_m that of the mud the mixture fills 1/ρ_g + r/ρ_m for each kilogram of
 * gas, so that its density is (1 + r)/(1/ρ_g + r/ρ_m) and its gas fraction (1/ρ_g)/(1/ρ_g + r/ρ_m): the homogeneous,
 * no-slip mixture of two-phase flow (common practice). Gas in solution is not counted.
 *
 * @param gas that expands
 * @param mudDensity density of the mud between the gas, kg/m³, 500 to 3000, the same at every pressure
 * @param mudPerGas mass of mud for each mass of gas, r, 0 or more
 */
public record GasInMud(
        Gas gas, @Si("kg/m3") double mudDensity, @Si("1") double mudPerGas) implements Gas {
    public GasInMud {
        Objects.requireNonNull(gas, "gas");
        Check.within("density of the mud between the gas", mudDensity, 500, 3000, Measure.DENSITY);
        Check.atLeast("mass of mud for each mass of gas", mudPerGas, 0, Measure.NUMBER);
    }

    /**
     * What is mixed.
     *
     * @param gasFraction part of the volume that gas fills, above 0 and up to 1
     * @param mudDensity kg/m³, 500 to 3000
     */
    public record Mixing(
            @Si("1") double gasFraction, @Si("kg/m3") double mudDensity) {
        public Mixing {
            Check.within("gas fraction", gasFraction, 1e-6, 1, Measure.NUMBER);
            Check.within("density of the mud between the gas", mudDensity, 500, 3000, Measure.DENSITY);
        }
    }

    /**
     * The mixture that has a gas fraction λ at a pressure and a temperature: r = (1 − λ) ρ_m/(λ ρ_g).
     *
     * @param pressure Pa, in the range of the gas
     * @param temperature K, in the range of the gas
     * @throws staunch.units.RangeFault where the gas does not reach there
     */
    public static GasInMud of(
            Gas gas,
            Mixing mixing,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        double share = mixing.gasFraction();
        double ratio = (1 - share) * mixing.mudDensity() / (share * gas.density(pressure, temperature));
        return new GasInMud(gas, mixing.mudDensity(), ratio);
    }

    @Override
    @Si("kg/m3")
    public double density(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        double density = gas.density(pressure, temperature);
        return (1 + mudPerGas) * density * mudDensity / (mudDensity + mudPerGas * density);
    }

    @Override
    @Si("kg/m3")
    public double columnDensity(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        if (gas.weighsItsMass()) {
            return density(pressure, temperature);
        }
        double fraction = gasFraction(pressure, temperature);
        return fraction * gas.columnDensity(pressure, temperature) + (1 - fraction) * mudDensity;
    }

    /** Part of the volume that gas fills at a pressure and a temperature. */
    @Si("1")
    public double gasFraction(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        return mudDensity / (mudDensity + mudPerGas * gas.density(pressure, temperature));
    }

    @Override
    public boolean weighsItsMass() {
        return gas.weighsItsMass();
    }

    @Override
    public String description() {
        return gas.description() + ", spread evenly in mud";
    }
}
