package staunch.influx;

import staunch.units.Check;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * Drift flux with constants that were measured or chosen. v_g = C₀ v_m + v_d (N. Zuber and J.A. Findlay, Journal of Heat
 * Transfer 87, 1965).
 *
 * @param parameter C₀, 0.8 to 2 (1.2 in turbulent flow, 1 where the gas is spread evenly, up to 2 in laminar flow)
 * @param drift v_d, m/s, 0 to 3
 */
public record DriftFlux(
        @Si("1") double parameter, @Si("m/s") double drift) implements SlipLaw {
    public DriftFlux {
        Check.within("distribution parameter", parameter, 0.8, 2, Measure.NUMBER);
        Check.within("drift velocity", drift, 0, 3, Measure.SPEED);
    }

    @Override
    @Si("1")
    public double distributionParameter(SlipConditions conditions) {
        return parameter;
    }

    @Override
    @Si("m/s")
    public double driftVelocity(SlipConditions conditions) {
        return drift;
    }

    /**
     * Share of gas in a cross-section through which gas and mud flow steadily upwards: α = v_sg / (C₀ (v_sg + v_sl) +
     * v_d).
     *
     * @param gasFlux volume flow of gas over the cross-section v_sg, m/s, 0 to 10
     * @param mudFlux volume flow of mud over the cross-section v_sl, m/s, 0 to 10
     * @return 0 where no gas flows
     */
    @Si("1")
    public double gasFraction(@Si("m/s") double gasFlux, @Si("m/s") double mudFlux) {
        Check.within("flux of gas", gasFlux, 0, 10, Measure.SPEED);
        Check.within("flux of mud", mudFlux, 0, 10, Measure.SPEED);
        return gasFlux == 0 ? 0 : gasFlux / (parameter * (gasFlux + mudFlux) + drift);
    }

    @Override
    public String description() {
        return "drift flux with C₀ " + parameter + " and drift velocity " + drift + " m/s";
    }

    @Override
    public Source source() {
        return new Source("N. Zuber and J.A. Findlay, Journal of Heat Transfer 87 (1965) 453", "");
    }
}
