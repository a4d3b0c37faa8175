package staunch.influx;

import java.util.Objects;
import staunch.units.Check;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * Where gas rises through mud.
 *
 * @param channel cross-section
 * @param inclination of the hole from vertical, rad, 0 to π/2
 * @param mudDensity kg/m³, 500 to 3000
 * @param mudViscosity effective viscosity of the mud at the shear rates of the rise (about velocity over diameter), Pa·s,
 *     1e-4 to 1000
 * @param gasDensity at the pressure and temperature there, kg/m³, from 0 to less than the mud
 * @param mixtureVelocity volume flow of gas and mud together over the cross-section, m/s, −10 to 10; positive upwards;
 *     zero in a closed well
 * @param gasFraction share of gas in the cross-section, 0 to 1
 */
public record SlipConditions(
        FlowChannel channel,
        @Si("rad") double inclination,
        @Si("kg/m3") double mudDensity,
        @Si("Pa.s") double mudViscosity,
        @Si("kg/m3") double gasDensity,
        @Si("m/s") double mixtureVelocity,
        @Si("1") double gasFraction) {
    public SlipConditions {
        Objects.requireNonNull(channel, "channel");
        Check.within("inclination", inclination, 0, Math.PI / 2, Measure.ANGLE);
        Check.within("mud density", mudDensity, 500, 3000, Measure.DENSITY);
        Check.within("effective viscosity of the mud", mudViscosity, 1e-4, 1000, Measure.VISCOSITY);
        if (!(gasDensity >= 0 && gasDensity < mudDensity)) {
            throw new RangeFault(
                    "gas density", gasDensity, 0, mudDensity, Measure.DENSITY, "gas rises only where it is lighter");
        }
        Check.within("mixture velocity", mixtureVelocity, -10, 10, Measure.SPEED);
        Check.within("gas fraction", gasFraction, 0, 1, Measure.NUMBER);
    }

    /** The same channel and fluids with the given direction of the hole. */
    public SlipConditions at(@Si("rad") double newInclination) {
        return new SlipConditions(
                channel, newInclination, mudDensity, mudViscosity, gasDensity, mixtureVelocity, gasFraction);
    }

    /** The same channel and fluids, flowing. */
    public SlipConditions flowing(@Si("m/s") double newMixtureVelocity, @Si("1") double newGasFraction) {
        return new SlipConditions(
                channel, inclination, mudDensity, mudViscosity, gasDensity, newMixtureVelocity, newGasFraction);
    }

    @Si("kg/m3")
    double lift() {
        return mudDensity - gasDensity;
    }
}
