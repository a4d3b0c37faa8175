package staunch.fluid;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Pseudo-critical point of a gas mixture: known from a laboratory, or from a {@link PseudoCriticalCorrelation}.
 *
 * @param temperature K, 120 to 700
 * @param pressure Pa absolute, 1e6 to 1e7
 */
public record PseudoCritical(
        @Si(value = "K", kind = Kind.POINT) double temperature,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure) {
    public PseudoCritical {
        Check.within("pseudo-critical temperature", temperature, 120, 700, Measure.TEMPERATURE);
        Check.within("pseudo-critical pressure", pressure, 1e6, 1e7, Measure.PRESSURE_ABSOLUTE);
    }
}
