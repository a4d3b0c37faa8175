package staunch.fluid;

import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Parts of a mud by volume, as a retort measures them.
 *
 * @param oil volume fraction of oil, 0 to 1
 * @param water volume fraction of water, 0 to 1
 * @param solids volume fraction of solids, 0 to 0.6
 */
public record MudVolumes(
        @Si("1") double oil, @Si("1") double water, @Si("1") double solids) {
    private static final double SUM_TOLERANCE = 1e-3;

    public MudVolumes {
        Check.within("volume fraction of oil", oil, 0, 1, Measure.NUMBER);
        Check.within("volume fraction of water", water, 0, 1, Measure.NUMBER);
        Check.within("volume fraction of solids", solids, 0, 0.6, Measure.NUMBER);
        if (Math.abs(oil + water + solids - 1) > SUM_TOLERANCE) {
            throw new InputFault(
                    "volume fractions of the mud",
                    "add up to " + (oil + water + solids) + " instead of 1",
                    "check oil, water and solids");
        }
    }

    /**
     * Compressibility of the mud, 1/Pa: c = f_oil c_oil + f_water c_water + f_solids c_solids, for parts that do not
     * mix.
     *
     * @param ofOil 1/Pa
     * @param ofWater 1/Pa
     * @param ofSolids 1/Pa
     */
    @Si("1/Pa")
    public double compressibility(@Si("1/Pa") double ofOil, @Si("1/Pa") double ofWater, @Si("1/Pa") double ofSolids) {
        return oil * ofOil + water * ofWater + solids * ofSolids;
    }

    /**
     * Density of the mud at another pressure and temperature over its density at a reference state, by conservation of
     * mass of each part (Hoberock, Thomas and Nickens, Oil and Gas J. (22 March 1982) 159):
     *
     * <pre>
     * ρ/ρ₀ = 1 / (f_oil ρ_oil₀/ρ_oil + f_water ρ_water₀/ρ_water + f_solids)
     * </pre>
     *
     * <p>Oil is {@link MudLiquid#DIESEL}, water is {@link PureWater}, solids do not change.
     */
    double relativeDensity(State state, State reference) {
        double volume = solids;
        if (oil > 0) {
            volume += oil * diesel(reference) / diesel(state);
        }
        if (water > 0) {
            volume += water * pureWater(reference) / pureWater(state);
        }
        return (oil + water + solids) / volume;
    }

    private static double diesel(State s) {
        return MudLiquid.DIESEL.density(s.pressure, s.temperature);
    }

    private static double pureWater(State s) {
        return PureWater.density(s.pressure, s.temperature);
    }

    /**
     * A pressure and a temperature.
     *
     * @param pressure Pa absolute
     * @param temperature K
     */
    public record State(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        public State {
            Check.within("pressure of the mud", pressure, 1e5, 2e8, Measure.PRESSURE_ABSOLUTE);
            Check.within("temperature of the mud", temperature, 250, 600, Measure.TEMPERATURE);
        }
    }
}
