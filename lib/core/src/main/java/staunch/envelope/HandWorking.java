package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
import staunch.envelope.MethodOptions.ToleranceDefinition;
import staunch.units.Measure;
import staunch.units.Physics;

/**
 * Works a tolerance by hand, as taught: constant gas gradient, influx height that just loads the weak point, its volume
 * on bottom and at the weak point, the latter brought back to bottom by Boyle's law with absolute end-point pressures; the
 * smaller of both, or that of the two that the definition of kick tolerance looks at. Common practice; the worked example of the reference rows D05-07 to D05-09 follows the same steps.
 */
final class HandWorking {
    private HandWorking() {}

    /**
     * What the hand calculation is told.
     *
     * @param definition of kick tolerance, which decides which of the two positions count
     * @param mudDensity stated
     * @param gasDensity at the influx
     * @param pressure at the influx, without friction: at shut-in for a tolerance on bottom, else while circulating
     * @param simplified what else of the full answer it leaves out, in words; empty where nothing
     */
    record Basis(
            ToleranceDefinition definition, double mudDensity, double gasDensity, double pressure, String simplified) {}

    static HandCalculation of(DrilledHole hole, Kick kick, Tolerance.Finite full, Basis basis) {
        double mudDensity = basis.mudDensity();
        double gasDensity = basis.gasDensity();
        WeakPoint weak = full.weakPoint();
        double z = hole.verticalDepth();
        double zw = weak.verticalDepth();
        double limit = weak.limit();
        double bottom = basis.pressure();
        double friction = hole.frictionAbove(weak.measuredDepth(), basis.definition() != ToleranceDefinition.ON_BOTTOM);
        double numerator = limit - friction - bottom + mudDensity * Physics.GRAVITY * (z - zw);
        double height = numerator / ((mudDensity - gasDensity) * Physics.GRAVITY);
        double onBottom = hole.grid().volume(topOfHeight(hole, hole.measuredDepth(), height), hole.measuredDepth());
        double lowerEnd = bottomOfHeight(hole, weak.measuredDepth(), height);
        double atWeakPoint = hole.grid().volume(weak.measuredDepth(), lowerEnd);
        double boyle = atWeakPoint * limit / kick.formationPressure();
        List<HandCalculation.Term> heightTerms = new ArrayList<>(List.of(
                term("p_w", limit, Measure.PRESSURE_ABSOLUTE),
                term("p_b", bottom, Measure.PRESSURE_ABSOLUTE),
                term("ρ_m", mudDensity, Measure.DENSITY),
                term("ρ_g", gasDensity, Measure.DENSITY),
                term("z", z, Measure.DEPTH),
                term("z_w", zw, Measure.DEPTH)));
        if (friction > 0) {
            heightTerms.add(1, term("Δp_a", friction, Measure.PRESSURE_DIFFERENCE));
        }
        List<HandCalculation.Step> steps = new ArrayList<>();
        steps.add(new HandCalculation.Step(
                "Influx height that loads the weak point to its limit",
                "H = (p_w " + (friction > 0 ? "− Δp_a " : "") + "− p_b + ρ_m g (z − z_w)) / ((ρ_m − ρ_g) g)",
                heightTerms,
                height,
                Measure.LENGTH));
        HandCalculation.Step first = new HandCalculation.Step(
                "Volume of that height on bottom",
                "V₁ = annulus volume over H from bottom",
                List.of(term("H", height, Measure.LENGTH)),
                onBottom,
                Measure.VOLUME);
        HandCalculation.Step second = new HandCalculation.Step(
                "Volume of that height below the weak point",
                "V_w = annulus volume over H below the weak point",
                List.of(term("H", height, Measure.LENGTH)),
                atWeakPoint,
                Measure.VOLUME);
        HandCalculation.Step third = new HandCalculation.Step(
                "Brought back to bottom by Boyle's law",
                "V₂ = V_w p_w / p_f",
                List.of(
                        term("V_w", atWeakPoint, Measure.VOLUME),
                        term("p_w", limit, Measure.PRESSURE_ABSOLUTE),
                        term("p_f", kick.formationPressure(), Measure.PRESSURE_ABSOLUTE)),
                boyle,
                Measure.VOLUME);
        double answer =
                switch (basis.definition()) {
                    case ON_BOTTOM -> onBottom;
                    case TOP_AT_WEAK_POINT -> boyle;
                    case WHOLE_DISPLACEMENT -> Math.min(onBottom, boyle);
                };
        switch (basis.definition()) {
            case ON_BOTTOM -> steps.add(first);
            case TOP_AT_WEAK_POINT -> steps.addAll(List.of(second, third));
            case WHOLE_DISPLACEMENT -> {
                steps.addAll(List.of(first, second, third));
                steps.add(new HandCalculation.Step(
                        "Tolerance by hand",
                        "V = min(V₁, V₂)",
                        List.of(term("V₁", onBottom, Measure.VOLUME), term("V₂", boyle, Measure.VOLUME)),
                        answer,
                        Measure.VOLUME));
            }
        }
        return new HandCalculation(steps, answer, full.volume(), difference(answer, full, basis));
    }

    private static String difference(double answer, Tolerance.Finite full, Basis basis) {
        String direction = answer > full.volume()
                ? "The hand answer is the larger"
                : answer < full.volume() ? "The hand answer is the smaller" : "Both answers are equal";
        boolean atRest = basis.definition() == ToleranceDefinition.ON_BOTTOM;
        return direction
                + (atRest
                        ? ": it takes one gas density, that at bottom-hole conditions, and the pressure at shut-in."
                        : ": it takes one gas density at bottom-hole conditions for the whole rise, leaves out the deviation"
                                + " factor and the fall of temperature between bottom and weak point, takes the pressure held"
                                + " while circulating, and looks at "
                                + (basis.definition() == ToleranceDefinition.TOP_AT_WEAK_POINT
                                        ? "one position only."
                                        : "two positions only, with the bit on bottom in both."))
                + (basis.simplified().isEmpty() ? "" : " " + basis.simplified());
    }

    private static HandCalculation.Term term(String symbol, double value, Measure measure) {
        return new HandCalculation.Term(symbol, value, measure);
    }

    /** Measured depth a vertical height above a depth; the top of the annulus where it ends before. */
    private static double topOfHeight(DrilledHole hole, double measured, double height) {
        double target = hole.grid().verticalAt(measured) - height;
        double low = hole.grid().top();
        double high = measured;
        if (hole.grid().verticalAt(low) >= target) {
            return low;
        }
        return bisect(hole, low, high, target);
    }

    private static double bottomOfHeight(DrilledHole hole, double measured, double height) {
        double target = hole.grid().verticalAt(measured) + height;
        double high = hole.measuredDepth();
        if (hole.verticalDepth() <= target) {
            return high;
        }
        return bisect(hole, measured, high, target);
    }

    private static double bisect(DrilledHole hole, double from, double to, double target) {
        double low = from;
        double high = to;
        while (high - low > 1e-6) {
            double middle = 0.5 * (low + high);
            if (hole.grid().verticalAt(middle) < target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }
}
