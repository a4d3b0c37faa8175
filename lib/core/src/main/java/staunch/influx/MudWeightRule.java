package staunch.influx;

import staunch.units.Check;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * Rule of thumb that knows the mud weight alone: v_d = 12 exp(−0.37 W) in ft/s, W in ppg. No range is given with it; it is
 * held here to 1000 to 2200 kg/m³ (8.3 to 18.4 ppg), where it was checked. It lies far below the rise of large gas
 * volumes in experiments.
 */
public record MudWeightRule() implements SlipLaw {
    private static final double FOOT = 0.3048;
    private static final double POUND_PER_GALLON = 0.45359237 / (231 * 0.0254 * 0.0254 * 0.0254);

    @Override
    @Si("1")
    public double distributionParameter(SlipConditions conditions) {
        return 1;
    }

    @Override
    @Si("m/s")
    public double driftVelocity(SlipConditions conditions) {
        return riseRate(conditions.mudDensity());
    }

    /**
     * Rise rate for a mud density.
     *
     * @param mudDensity kg/m³, 1000 to 2200
     * @throws staunch.units.RangeFault outside that range
     */
    @Si("m/s")
    public double riseRate(@Si("kg/m3") double mudDensity) {
        Check.within("mud density of the rule for gas migration", mudDensity, 1000, 2200, Measure.DENSITY);
        return 12 * FOOT * Math.exp(-0.37 * mudDensity / POUND_PER_GALLON);
    }

    @Override
    public String description() {
        return "rule of thumb by mud weight";
    }

    @Override
    public Source source() {
        return new Source(
                "N.J. Lapeyrouse, Formulas and Calculations for Drilling, Production and Workover, 2nd ed., 2002",
                "gas migration; form from memory");
    }
}
