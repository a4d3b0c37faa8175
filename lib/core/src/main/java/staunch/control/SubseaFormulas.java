package staunch.control;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * Formulas of subsea well control as course notes and handbooks give them (N.J. Lapeyrouse, "Formulas and Calculations for
 * Drilling, Production and Workover", chapter on subsea considerations). Depths are vertical, from the rotary table.
 */
public final class SubseaFormulas {
    private SubseaFormulas() {}

    /**
     * Casing pressure to hold at the choke once the pump is at kill rate: shut-in casing pressure less choke-line friction.
     * Negative where the friction is more than the choke can give back: that much loads the well.
     *
     * @param shutInCasingPressure Pa gauge, 0 to 4e8
     * @param chokeLineFriction Pa, 0 to 1e8
     */
    @Si(value = "Pa", kind = Kind.GAUGE)
    public static double casingPressureOnChoke(
            @Si(value = "Pa", kind = Kind.GAUGE) double shutInCasingPressure,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double chokeLineFriction) {
        Check.within("shut-in casing pressure", shutInCasingPressure, 0, 4e8, Measure.PRESSURE_GAUGE);
        friction(chokeLineFriction);
        return shutInCasingPressure - chokeLineFriction;
    }

    /** Fall of the casing pressure at each of equal steps of the pump up to kill rate: friction over their number. */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public static double stepOfStartUp(@Si(value = "Pa", kind = Kind.DIFFERENCE) double chokeLineFriction, int steps) {
        friction(chokeLineFriction);
        return chokeLineFriction / Check.within("steps of start-up", steps, 1, 100, Measure.NUMBER);
    }

    /**
     * Choke-line friction after the mud was changed, in proportion to density: Δp ρ₂/ρ₁.
     *
     * @param loss with the old mud, Pa, 0 to 1e8
     * @param oldDensity kg/m³, 500 to 3000
     * @param newDensity kg/m³, 500 to 3000
     */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public static double lossAfterMudChange(
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double loss,
            @Si("kg/m3") double oldDensity,
            @Si("kg/m3") double newDensity) {
        friction(loss);
        Check.within("old mud density", oldDensity, 500, 3000, Measure.DENSITY);
        Check.within("new mud density", newDensity, 500, 3000, Measure.DENSITY);
        return loss * newDensity / oldDensity;
    }

    private static void friction(double loss) {
        Check.within("choke-line friction", loss, 0, 1e8, Measure.PRESSURE_DIFFERENCE);
    }

    /**
     * Water below a rig.
     *
     * @param airGap from the rotary table to the sea, m, 0 to 200
     * @param waterDepth from the sea to the seabed, m, 0 to 4000
     * @param seawaterGradient Pa/m, 9000 to 11 000
     */
    public record Sea(
            @Si(value = "m", kind = Kind.LENGTH) double airGap,
            @Si(value = "m", kind = Kind.LENGTH) double waterDepth,
            @Si("Pa/m") double seawaterGradient) {
        public Sea {
            Check.within("air gap", airGap, 0, 200, Measure.LENGTH);
            Check.within("water depth", waterDepth, 0, 4000, Measure.LENGTH);
            Check.within("gradient of seawater", seawaterGradient, 9000, 11_000, Measure.PRESSURE_GRADIENT);
        }

        /** Sea with a density of its water, kg/m³, and the exact gravity. */
        public static Sea of(
                @Si(value = "m", kind = Kind.LENGTH) double airGap,
                @Si(value = "m", kind = Kind.LENGTH) double waterDepth,
                @Si("kg/m3") double seawaterDensity) {
            return new Sea(airGap, waterDepth, Physics.GRAVITY * seawaterDensity);
        }

        /** Depth of the seabed below the rotary table. */
        @Si(value = "m", kind = Kind.DEPTH)
        public double seabed() {
            return airGap + waterDepth;
        }

        /**
         * Pressure lost at the bottom where the riser parts and seawater stands on the well: k ρ (h_air + h_w) − G_sw h_w,
         * whatever the depth below the seabed.
         *
         * @param mudDensity kg/m³, 500 to 3000
         * @return negative where seawater weighs more than the mud in the riser
         */
        @Si(value = "Pa", kind = Kind.DIFFERENCE)
        public double lossOnDisconnect(@Si("kg/m3") double mudDensity, HydrostaticConstant constant) {
            Check.within("mud density", mudDensity, 500, 3000, Measure.DENSITY);
            return constant.gradient(mudDensity) * seabed() - seawaterGradient * waterDepth;
        }

        /**
         * Riser margin: what the density must be raised by so that the well stays balanced when the riser parts. With the
         * density ρ_f that balances the formation with the riser on, k (ρ_f + Δρ)(z − z_seabed) + G_sw h_w = k ρ_f z gives
         * Δρ = (k ρ_f z_seabed − G_sw h_w)/(k (z − z_seabed)).
         *
         * @param balancingDensity ρ_f, kg/m³, 500 to 3000
         * @param verticalDepth of the formation z, m, below the seabed
         * @return negative where the mud needs no margin
         */
        @Si(value = "kg/m3", kind = Kind.DIFFERENCE)
        public double riserMargin(
                @Si("kg/m3") double balancingDensity,
                @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
                HydrostaticConstant constant) {
            Check.within("vertical depth of the formation", verticalDepth, seabed() + 1, 20_000, Measure.DEPTH);
            return constant.density(lossOnDisconnect(balancingDensity, constant) / (verticalDepth - seabed()));
        }

        /**
         * Heaviest mud with returns to the rig: its column at the shoe weighs as much as the seawater and the rock below the
         * seabed can carry: ρ = (G_sw h_w + G_f (z_shoe − z_seabed))/(k z_shoe).
         *
         * @param shoeDepth vertical, m, below the seabed
         * @param fractureGradient of the rock from the seabed down, Pa/m, 5000 to 30 000
         */
        @Si("kg/m3")
        public double heaviestMud(
                @Si(value = "m", kind = Kind.DEPTH) double shoeDepth,
                @Si("Pa/m") double fractureGradient,
                HydrostaticConstant constant) {
            Check.within("vertical depth of the shoe", shoeDepth, seabed(), 20_000, Measure.DEPTH);
            Check.within("fracture gradient", fractureGradient, 5000, 30_000, Measure.PRESSURE_GRADIENT);
            double carried = seawaterGradient * waterDepth + fractureGradient * (shoeDepth - seabed());
            return constant.density(carried / shoeDepth);
        }
    }
}
