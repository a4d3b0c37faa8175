package staunch.control;

import staunch.fluid.FlowModel;
import staunch.influx.FlowChannel;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Friction of a mud that flows steadily through one cross-section, by the practice of API RP 13D (2010 edition, from memory;
 * restated in SI). With a = 0 in a bore and 1 in an annulus, which is taken as a slot:
 *
 * <ul>
 *   <li>shear rate at the wall γ̇ = (8 V/d) (1 + a/2) ((3 − a) n + 1)/((4 − a) n), d = D − d_pipe;
 *   <li>stress at the wall of laminar flow τ = ((4 − a)/(3 − a))ⁿ τ_y + K γ̇ⁿ;
 *   <li>Reynolds number Re = 8 ρ V²/τ; friction factor (Fanning) of laminar flow 16/Re;
 *   <li>transition 16 Re/Re_c², Re_c = 3470 − 1370 n; turbulence A/Re^B, A = (log n + 3.93)/50, B = (1.75 − log n)/7;
 *   <li>f = (f_l¹² + (f_tr⁻⁸ + f_tu⁻⁸)^(−12/8))^(1/12); pressure gradient 2 f ρ V²/d.
 * </ul>
 *
 * <p>Exact in laminar flow for Newtonian and power-law fluids in a bore and in a slot. The yield-stress term is linear: it
 * overstates the exact laminar solution for a Bingham plastic by no more than the cubic term left out. Re is turbulent
 * above 4270 − 1370 n. Pipe is concentric and at rest, walls are smooth; tool joints, rotation and cuttings are not
 * counted.
 *
 * @param regime by the Reynolds number
 * @param reynoldsNumber generalised
 * @param frictionFactor Fanning
 * @param wallStress of laminar flow at that velocity, Pa
 * @param gradient pressure lost per length, Pa/m
 */
public record Friction(
        FlowRegime regime,
        @Si("1") double reynoldsNumber,
        @Si("1") double frictionFactor,
        @Si(value = "Pa", kind = Kind.STRESS) double wallStress,
        @Si("Pa/m") double gradient) {
    /**
     * Friction at a mean velocity.
     *
     * @param velocity m/s, above 0 (1e-6) to 50
     * @throws staunch.units.RangeFault outside that range; a mud at rest has no friction but gel, which this law does not
     *     know; for a flow index outside 0.1 to 1, beyond which the law is not known to hold
     */
    public static Friction at(FlowChannel channel, FlowingMud mud, @Si("m/s") double velocity) {
        Check.within("mean velocity of the mud", velocity, 1e-6, 50, Measure.SPEED);
        FlowParameters flow = FlowParameters.of(mud.flow());
        double n = flow.flowIndex();
        double stress = wallStress(channel, flow, velocity);
        double inertia = mud.density() * velocity * velocity;
        double re = 8 * inertia / stress;
        double critical = 3470 - 1370 * n;
        double laminar = 16 / re;
        double transition = 16 * re / (critical * critical);
        double turbulent = (Math.log10(n) + 3.93) / 50 / Math.pow(re, (1.75 - Math.log10(n)) / 7);
        double above = Math.pow(Math.pow(transition, -8) + Math.pow(turbulent, -8), -1.0 / 8);
        // Written about the larger term, so that powers of 12 neither overflow nor vanish.
        double larger = Math.max(laminar, above);
        double smaller = Math.min(laminar, above);
        double f = larger * Math.pow(1 + Math.pow(smaller / larger, 12), 1.0 / 12);
        FlowRegime regime = re < critical
                ? FlowRegime.LAMINAR
                : re <= critical + 800 ? FlowRegime.TRANSITION : FlowRegime.TURBULENT;
        return new Friction(regime, re, f, stress, 2 * f * inertia / channel.hydraulicDiameter());
    }

    /** Stress at the wall of laminar flow, see {@link Friction}; four times it over d is the laminar gradient. */
    @Si(value = "Pa", kind = Kind.STRESS)
    public static double wallStress(FlowChannel channel, FlowModel flow, @Si("m/s") double velocity) {
        Check.within("mean velocity of the mud", velocity, 1e-6, 50, Measure.SPEED);
        return wallStress(channel, FlowParameters.of(flow), velocity);
    }

    private static double wallStress(FlowChannel channel, FlowParameters flow, double velocity) {
        double n = flow.flowIndex();
        double a = channel.isAnnulus() ? 1 : 0;
        double shearRate = 8 * velocity / channel.hydraulicDiameter() * (1 + a / 2) * ((3 - a) * n + 1) / ((4 - a) * n);
        return Math.pow((4 - a) / (3 - a), n) * flow.yieldStress() + flow.consistency() * Math.pow(shearRate, n);
    }
}
