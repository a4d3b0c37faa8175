package staunch.control;

import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Formulas of tripping as course notes and handbooks give them (N.J. Lapeyrouse, "Formulas and Calculations for Drilling,
 * Production and Workover").
 */
public final class TripFormulas {
    private TripFormulas() {}

    /**
     * Pipe that is pulled from a cased hole that is not filled.
     *
     * @param displacement of the steel, m³/m, 1e-5 to 0.5
     * @param insideCapacity of the pipe, m³/m, 0 to 0.5
     * @param casingCapacity of the empty casing, m³/m, more than both together, to 2
     */
    public record PulledPipe(
            @Si("m3/m") double displacement,
            @Si("m3/m") double insideCapacity,
            @Si("m3/m") double casingCapacity) {
        public PulledPipe {
            Check.within("displacement of the pipe", displacement, 1e-5, 0.5, Measure.CAPACITY);
            Check.within("capacity of the pipe", insideCapacity, 0, 0.5, Measure.CAPACITY);
            Check.within("capacity of the casing", casingCapacity, 0, 2, Measure.CAPACITY);
            if (displacement + insideCapacity >= casingCapacity) {
                throw new InputFault("pipe", "does not fit into the casing", "check the capacities");
            }
        }

        /** Volume per length that leaves the hole: the steel, and what stands in it where the pipe is pulled wet. */
        @Si("m3/m")
        public double leaving(boolean wet) {
            return displacement + (wet ? insideCapacity : 0);
        }

        /** Volume that leaves the hole with a length of pipe. */
        @Si("m3")
        public double volume(@Si(value = "m", kind = Kind.LENGTH) double length, boolean wet) {
            Check.within("length pulled", length, 0, 20_000, Measure.LENGTH);
            return length * leaving(wet);
        }

        /**
         * Hydrostatic pressure lost with a volume: k ρ V/(C_c − C_leaving).
         *
         * @param mudDensity kg/m³, 500 to 3000
         * @param volume m³, 0 to 1000
         */
        @Si(value = "Pa", kind = Kind.DIFFERENCE)
        public double pressureLost(
                @Si("kg/m3") double mudDensity, @Si("m3") double volume, boolean wet, HydrostaticConstant constant) {
            Check.within("mud density", mudDensity, 500, 3000, Measure.DENSITY);
            Check.within("volume that left the hole", volume, 0, 1000, Measure.VOLUME);
            return constant.gradient(mudDensity) * volume / (casingCapacity - leaving(wet));
        }

        /**
         * Length that may be pulled before an overbalance is lost: Δp (C_c − C_leaving)/(k ρ C_leaving).
         *
         * @param overbalance Pa, 0 to 1e8
         * @param mudDensity kg/m³, 500 to 3000
         */
        @Si(value = "m", kind = Kind.LENGTH)
        public double lengthToBalance(
                @Si(value = "Pa", kind = Kind.DIFFERENCE) double overbalance,
                @Si("kg/m3") double mudDensity,
                boolean wet,
                HydrostaticConstant constant) {
            Check.within("overbalance", overbalance, 0, 1e8, Measure.PRESSURE_DIFFERENCE);
            Check.within("mud density", mudDensity, 500, 3000, Measure.DENSITY);
            return overbalance * (casingCapacity - leaving(wet)) / (constant.gradient(mudDensity) * leaving(wet));
        }
    }

    /**
     * Trip margin that covers the yield point of the mud: Δρ = (16/3) τ_y/(k (D − d)), the laminar yield term of a pipe; in
     * field units YP/(11.7 (D − d)) with the trade constant.
     *
     * @param yieldPoint Pa, 0 to 200
     * @param gap difference of the diameters D − d, m, 0.005 to 1
     */
    @Si(value = "kg/m3", kind = Kind.DIFFERENCE)
    public static double tripMarginForYieldPoint(
            @Si(value = "Pa", kind = Kind.STRESS) double yieldPoint,
            @Si(value = "m", kind = Kind.DIAMETER) double gap,
            HydrostaticConstant constant) {
        Check.within("yield point", yieldPoint, 0, 200, Measure.STRESS);
        Check.within("difference of the diameters", gap, 0.005, 1, Measure.DIAMETER);
        return constant.density(16.0 / 3 * yieldPoint / gap);
    }

    /**
     * Trip margin as density: (Δp_needed − Δp_present)/(k z).
     *
     * @param needed overbalance that swabbing calls for, Pa, 0 to 1e8
     * @param present overbalance there is, Pa, −1e8 to 1e8
     * @param verticalDepth m, 1 to 20 000
     * @return negative where the mud is heavier than needed
     */
    @Si(value = "kg/m3", kind = Kind.DIFFERENCE)
    public static double tripMargin(
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double needed,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double present,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            HydrostaticConstant constant) {
        Check.within("overbalance needed", needed, 0, 1e8, Measure.PRESSURE_DIFFERENCE);
        Check.within("overbalance present", present, -1e8, 1e8, Measure.PRESSURE_DIFFERENCE);
        Check.within("vertical depth", verticalDepth, 1, 20_000, Measure.DEPTH);
        return constant.density((needed - present) / verticalDepth);
    }
}
