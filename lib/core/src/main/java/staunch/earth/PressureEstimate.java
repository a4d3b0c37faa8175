package staunch.earth;

import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * A pressure with its spread at one depth.
 *
 * @param low Pa absolute
 * @param likely Pa absolute, not below low
 * @param high Pa absolute, not below likely
 */
public record PressureEstimate(
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double low,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double likely,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double high) {
    public PressureEstimate {
        Check.within("low estimate of the pressure", low, 0, 4e8, Measure.PRESSURE_ABSOLUTE);
        Check.within("likely estimate of the pressure", likely, 0, 4e8, Measure.PRESSURE_ABSOLUTE);
        Check.within("high estimate of the pressure", high, 0, 4e8, Measure.PRESSURE_ABSOLUTE);
        if (low > likely || likely > high) {
            throw new InputFault("pressure estimate", "has its estimates out of order", "give low, likely and high");
        }
    }
}
