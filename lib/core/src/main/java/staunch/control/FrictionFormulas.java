package staunch.control;

import staunch.fluid.FlowModel;
import staunch.influx.FlowChannel;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Hand formulas of friction, kept to check worked examples; {@link Friction} is what the library uses. Mean velocities 1e-6
 * to 50 m/s, densities 500 to 3000 kg/m³; outside, every formula throws a {@link staunch.units.RangeFault}.
 */
public final class FrictionFormulas {
    /**
     * Fanning factor behind the field formula 1.4327e-7 W L v²/(D − d) (psi, ppg, ft, ft/min, in): half of the SI
     * coefficient of ρ v²/(D − d).
     */
    private static final double SIMPLE_FACTOR = 0.5
            * 1.4327e-7
            * (0.45359237 * 9.80665 / (0.0254 * 0.0254))
            * 0.0254
            / (0.45359237 / (231 * 0.0254 * 0.0254 * 0.0254) * 0.3048 * (0.3048 / 60) * (0.3048 / 60));

    /** Diameter of the pipe that stands for a slot: 0.816 (D − d). */
    private static final double EQUIVALENT = 0.816;

    private FrictionFormulas() {}

    /**
     * Turbulent loss in an annulus with one friction factor for every mud: 2 f ρ v²/(D − d), f = 0.0133, as in handbooks
     * (N.J. Lapeyrouse). It knows no rheology.
     */
    @Si("Pa/m")
    public static double simpleTurbulentGradient(
            FlowChannel annulus, @Si("kg/m3") double density, @Si("m/s") double velocity) {
        check(density, velocity);
        return 2 * SIMPLE_FACTOR * density * velocity * velocity / annulus.hydraulicDiameter();
    }

    /**
     * Reynolds number of a power-law fluid in an annulus that is replaced by a pipe of 0.816 (D − d) (A.T. Bourgoyne et al.,
     * "Applied Drilling Engineering", 1986; B. Guo and G. Liu, "Applied Drilling Circulation Systems", 2011, which prints
     * 109 000 ρ v^(2−n)/K (0.0208 (D − d)/(2 + 1/n))ⁿ in field units): Re = (8/0.816) ρ v^(2−n)/K ((D − d)/(4 (2 +
     * 1/n)))ⁿ.
     */
    @Si("1")
    public static double equivalentPipeReynoldsNumber(
            FlowChannel annulus, FlowModel.PowerLaw mud, @Si("kg/m3") double density, @Si("m/s") double velocity) {
        check(density, velocity);
        double n = mud.flowIndex();
        double length = annulus.hydraulicDiameter() / (4 * (2 + 1 / n));
        return 8 / EQUIVALENT * density * Math.pow(velocity, 2 - n) / mud.consistency() * Math.pow(length, n);
    }

    /**
     * Turbulent loss in an annulus by the factor of H. Blasius, f = 0.0791/Re^0.25, on a pipe of 0.816 (D − d): 2 f ρ
     * v²/(0.816 (D − d)) (Guo and Liu 2011).
     *
     * @param reynoldsNumber 2100 to 100 000, the range of the factor
     */
    @Si("Pa/m")
    public static double blasiusGradient(
            FlowChannel annulus,
            @Si("1") double reynoldsNumber,
            @Si("kg/m3") double density,
            @Si("m/s") double velocity) {
        check(density, velocity);
        Check.within("Reynolds number", reynoldsNumber, 2100, 1e5, Measure.NUMBER);
        double factor = 0.0791 / Math.pow(reynoldsNumber, 0.25);
        return 2 * factor * density * velocity * velocity / (EQUIVALENT * annulus.hydraulicDiameter());
    }

    /**
     * Pump pressure of another rate by the square law: p (q₂/q₁)².
     *
     * @param pressure at the old rate, Pa gauge, 0 to 2e8
     * @param rateRatio new over old rate, 0 to 10
     */
    @Si(value = "Pa", kind = Kind.GAUGE)
    public static double pressureAtAnotherRate(
            @Si(value = "Pa", kind = Kind.GAUGE) double pressure, @Si("1") double rateRatio) {
        Check.within("pump pressure", pressure, 0, 2e8, Measure.PRESSURE_GAUGE);
        Check.within("ratio of the pump rates", rateRatio, 0, 10, Measure.NUMBER);
        return pressure * rateRatio * rateRatio;
    }

    /**
     * Pressure that breaks the gel of a mud at rest: the wall carries the gel strength over the length, Δp = 4 τ_g L/(D − d);
     * in field units τ L/(300 (D − d)), psi, lbf/100 ft², ft, in (N.J. Lapeyrouse). Exact for a bore; for an annulus it takes
     * the gel to hold at both walls alike.
     *
     * @param channel bore or annulus
     * @param gelStrength τ_g, Pa, 0 to 100
     * @param length m, 0 to 20 000
     */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public static double gelBreakingPressure(
            FlowChannel channel,
            @Si(value = "Pa", kind = Kind.STRESS) double gelStrength,
            @Si(value = "m", kind = Kind.LENGTH) double length) {
        Check.within("gel strength", gelStrength, 0, 100, Measure.STRESS);
        Check.within("length of the gelled mud", length, 0, 20_000, Measure.LENGTH);
        return 4 * gelStrength * length / channel.hydraulicDiameter();
    }

    private static void check(double density, double velocity) {
        Check.within("mud density", density, 500, 3000, Measure.DENSITY);
        Check.within("mean velocity of the mud", velocity, 1e-6, 50, Measure.SPEED);
    }
}
