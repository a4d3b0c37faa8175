package staunch.earth;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * Overburden and pore pressure at one depth, and what follows from them by Terzaghi's effective stress σ = S − P.
 *
 * @param overburden total vertical stress S, Pa absolute, to 400 MPa
 * @param porePressure P, Pa absolute, from vacuum to the overburden
 */
public record StressState(
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double overburden,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double porePressure) {
    /** Stress ratios beyond these belong to a slip in units, depth or datum rather than to rock. */
    private static final double LEAST_RATIO = 0;

    private static final double GREATEST_RATIO = 2;

    public StressState {
        Check.within("overburden", overburden, 1e5, 4e8, Measure.PRESSURE_ABSOLUTE);
        Check.within("pore pressure", porePressure, 0, overburden, Measure.PRESSURE_ABSOLUTE);
    }

    /** Vertical effective stress σ = S − P. */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public double effectiveStress() {
        return overburden - porePressure;
    }

    /**
     * Effective-stress ratio of a strength: K = (F − P) / (S − P).
     *
     * @param strength F, Pa absolute
     * @return 0 to 2
     * @throws RangeFault where the effective stress is below 10 kPa or K lies outside 0 to 2
     */
    @Si("1")
    public double ratioOf(@Si(value = "Pa", kind = Kind.ABSOLUTE) double strength) {
        Check.atLeast("effective stress", effectiveStress(), 1e4, Measure.PRESSURE_DIFFERENCE);
        return Check.within(
                "effective-stress ratio of the strength",
                (strength - porePressure) / effectiveStress(),
                LEAST_RATIO,
                GREATEST_RATIO,
                Measure.NUMBER);
    }

    /**
     * Fracture pressure by the matrix stress coefficient: F = P + K (S − P) (Matthews, W.R. and Kelly, J., "How to predict
     * formation pressure and fracture gradient", Oil and Gas Journal, 20 February 1967; from memory). The paper reads K off
     * a regional chart and states no error; here K comes from tests, see {@link OffsetTransfer}, and its spread is the
     * uncertainty.
     *
     * @param ratio K, 0 to 2
     * @throws RangeFault outside that range
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double strengthAt(@Si("1") double ratio) {
        Check.within("effective-stress ratio", ratio, LEAST_RATIO, GREATEST_RATIO, Measure.NUMBER);
        return porePressure + ratio * effectiveStress();
    }

    /**
     * Depth at which a normally pressured formation bears the same effective stress, at which Matthews and Kelly read K:
     * D = σ / g with g the gradient of normal effective stress, 0.535 psi/ft in the paper (overburden 1.0, water
     * 0.465 psi/ft).
     *
     * @param normalGradient g, Pa/m, 3000 to 20 000
     * @throws RangeFault outside that range
     */
    @Si(value = "m", kind = Kind.LENGTH)
    public double equivalentNormalDepth(@Si("Pa/m") double normalGradient) {
        Check.within("gradient of normal effective stress", normalGradient, 3000, 20_000, Measure.PRESSURE_GRADIENT);
        return effectiveStress() / normalGradient;
    }

    /**
     * Stress ratio of a rock that does not strain sideways: K = ν / (1 − ν), which makes {@link #strengthAt} the fracture
     * gradient of Eaton (Journal of Petroleum Technology, October 1969).
     *
     * @param poissonRatio ν, 0.05 to 0.5
     * @throws RangeFault outside that range
     */
    @Si("1")
    public static double ratioOfPoisson(@Si("1") double poissonRatio) {
        Check.within("Poisson's ratio", poissonRatio, 0.05, 0.5, Measure.NUMBER);
        return poissonRatio / (1 - poissonRatio);
    }

    /**
     * Poisson's ratio that stands for a stress ratio in Eaton's formula: ν = K / (1 + K). Calibrated to tests it is a
     * fitting number, not a property of the rock.
     *
     * @param ratio K, 0.0527 to 1, as ν from 0.05 to 0.5
     * @throws RangeFault outside that range
     */
    @Si("1")
    public static double poissonOfRatio(@Si("1") double ratio) {
        Check.within("effective-stress ratio", ratio, 0.05 / 0.95, 1, Measure.NUMBER);
        return ratio / (1 + ratio);
    }
}
