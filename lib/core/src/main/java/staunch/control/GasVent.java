package staunch.control;

import org.apache.commons.numbers.rootfinder.BrentSolver;
import staunch.fluid.FixedGradientGas;
import staunch.fluid.Gas;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * Gas that leaves a mud-gas separator to the air by its vent line. Steady isothermal flow of gas in a pipe (from any
 * textbook of gas dynamics), p₁² − p₂² = G² r T (f L/d + 2 ln(p₁/p₂)), with G the mass flow per cross-section, r T = p/ρ of
 * the gas at one atmosphere and the temperature of the vent, p₂ the pressure at its end: one atmosphere, or where the gas
 * would leave faster than √(r T) the pressure at which it leaves at that speed. Friction factor of T.R. Weymouth (1912),
 * Darcy's f = 0.032/d^⅓ with d in inches (from memory), which knows no viscosity and holds for fully turbulent flow.
 */
public final class GasVent {
    /** Temperature of standard conditions, 15 °C. */
    private static final double STANDARD_TEMPERATURE = 288.15;

    private static final double WEYMOUTH = 0.032 * Math.cbrt(0.0254);

    /** 5e-12 psi in⁵/(ft (ft³/d)²) in SI. */
    private static final double HAND_FACTOR = 5e-12
            * (0.45359237 * 9.80665 / (0.0254 * 0.0254))
            / 0.3048
            * Math.pow(86_400 / Math.pow(0.3048, 3), 2)
            * Math.pow(0.0254, 5);

    private GasVent() {}

    /**
     * The vent line.
     *
     * @param length with the straight pipe that its bends stand for, m, 1 to 500
     * @param insideDiameter m, 0.05 to 1
     */
    public record Line(
            @Si(value = "m", kind = Kind.LENGTH) double length,
            @Si(value = "m", kind = Kind.DIAMETER) double insideDiameter) {
        public Line {
            Check.within("length of the vent line", length, 1, 500, Measure.LENGTH);
            Check.within("inside diameter of the vent line", insideDiameter, 0.05, 1, Measure.DIAMETER);
        }

        double area() {
            return Math.PI / 4 * insideDiameter * insideDiameter;
        }

        double friction() {
            return WEYMOUTH / Math.cbrt(insideDiameter) * length / insideDiameter;
        }
    }

    /**
     * Pressure in the separator.
     *
     * @param gas that leaves; not the gas of the hand formula, whose density means nothing
     * @param rate m³/s at 15 °C and one atmosphere, 0 to 100
     * @param temperature of the gas in the vent, K, 250 to 450
     * @return Pa gauge
     */
    @Si(value = "Pa", kind = Kind.GAUGE)
    public static double backPressure(
            Line line,
            Gas gas,
            @Si(value = "m3/s", kind = Kind.STANDARD) double rate,
            @Si(value = "K", kind = Kind.POINT) double temperature) {
        Check.within("gas rate of the vent", rate, 0, 100, Measure.GAS_RATE);
        Check.within("temperature of the vent", temperature, 250, 450, Measure.TEMPERATURE);
        if (gas instanceof FixedGradientGas) {
            throw new InputFault(
                    "gas of the vent", "is the fixed gradient of the hand formula", "choose a gas with a density");
        }
        if (rate == 0) {
            return 0;
        }
        double flux = rate * gas.density(Physics.ATMOSPHERE, STANDARD_TEMPERATURE) / line.area();
        double rt = Physics.ATMOSPHERE / gas.density(Physics.ATMOSPHERE, temperature);
        double end = Math.max(Physics.ATMOSPHERE, flux * Math.sqrt(rt));
        double square = flux * flux * rt;
        double withoutExpansion = Math.sqrt(end * end + square * line.friction());
        double most = 2 * withoutExpansion + end;
        while (excess(most, end, square, line) < 0) {
            most *= 2;
        }
        double found = excess(withoutExpansion, end, square, line) >= 0
                ? withoutExpansion
                : new BrentSolver(1e-14, 1e-9, 0).findRoot(p -> excess(p, end, square, line), withoutExpansion, most);
        return found - Physics.ATMOSPHERE;
    }

    private static double excess(double p, double end, double square, Line line) {
        return p * p - end * end - square * (line.friction() + 2 * Math.log(p / end));
    }

    /**
     * The hand formula, 5·10⁻¹² L Q²/d⁵ (psi; ft, ft³/d, in): G.R. MacDougall, Mud/Gas Separator Sizing and Evaluation, SPE
     * Drilling Engineering, December 1991 (from memory). It is the same friction without expansion, for a gas of about two
     * thirds of the density of air.
     *
     * @param rate m³/s at standard conditions, 0 to 100
     */
    @Si(value = "Pa", kind = Kind.GAUGE)
    public static double handBackPressure(Line line, @Si(value = "m3/s", kind = Kind.STANDARD) double rate) {
        Check.within("gas rate of the vent", rate, 0, 100, Measure.GAS_RATE);
        return HAND_FACTOR * line.length() * rate * rate / Math.pow(line.insideDiameter(), 5);
    }
}
