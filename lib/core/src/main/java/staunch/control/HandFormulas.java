package staunch.control;

import java.util.List;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * The formulas of the kill sheet and of hand checks: columns of constant gradient, gas by Boyle's law. They explain and
 * check the full calculation and do not replace it. Pressures are gauge where they stand at surface, and counted from the
 * atmosphere downhole as the trade does; Boyle's law alone takes absolute ones. The formulas are those of the usual
 * well-control course notes and handbooks (for instance N.J. Lapeyrouse, "Formulas and Calculations for Drilling,
 * Production and Workover"; R. Grace, "Blowout and Well Control Handbook").
 *
 * <p>Ranges: vertical depth 0 to 20 000 m, densities 0 to 5000 kg/m³, pressures 0 to 400 MPa. Outside them, and for
 * numbers that are not finite, every formula throws {@link RangeFault}.
 */
public final class HandFormulas {
    private static final double DEEPEST = 20_000;
    private static final double DENSEST = 5000;
    private static final double HIGHEST = 4e8;

    private HandFormulas() {}

    /** Hydrostatic pressure of a column: p = k ρ z. */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public static double hydrostaticPressure(
            @Si("kg/m3") double density,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            HydrostaticConstant constant) {
        density("mud density", density);
        depth("vertical depth", verticalDepth);
        return constant.gradient(density) * verticalDepth;
    }

    /**
     * Equivalent mud weight of a pressure at a vertical depth: ρ = p / (k z).
     *
     * @param verticalDepth m, above zero
     */
    @Si(value = "kg/m3", kind = Kind.EQUIVALENT)
    public static double equivalentDensity(
            @Si(value = "Pa", kind = Kind.GAUGE) double pressure,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            HydrostaticConstant constant) {
        pressure("pressure", pressure);
        below("vertical depth", verticalDepth);
        return constant.density(pressure / verticalDepth);
    }

    /**
     * Equivalent mud weight of a pressure held on top of a mud column: ρ = ρₘ + p / (k z). With the leak-off pressure at
     * surface it is the leak-off equivalent at the shoe; with the shut-in drill-pipe pressure and the depth of the influx
     * it is the kill mud density; with a limit on the difference to the formation it is the heaviest mud.
     *
     * @param surfacePressure Pa gauge
     * @param mudDensity kg/m³
     * @param verticalDepth m, above zero
     */
    @Si(value = "kg/m3", kind = Kind.EQUIVALENT)
    public static double equivalentDensityUnder(
            @Si(value = "Pa", kind = Kind.GAUGE) double surfacePressure,
            @Si("kg/m3") double mudDensity,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            HydrostaticConstant constant) {
        density("mud density", mudDensity);
        return mudDensity + equivalentDensity(surfacePressure, verticalDepth, constant);
    }

    /**
     * Formation MAASP from the allowable density at the weak point: p = k (ρₐ − ρₘ) z. Negative where the mud is already
     * heavier than allowed.
     *
     * @param allowableDensity equivalent density the weak point holds, kg/m³
     * @param mudDensity kg/m³
     * @param verticalDepth of the weak point, m
     */
    @Si(value = "Pa", kind = Kind.GAUGE)
    public static double formationMaasp(
            @Si(value = "kg/m3", kind = Kind.EQUIVALENT) double allowableDensity,
            @Si("kg/m3") double mudDensity,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            HydrostaticConstant constant) {
        density("allowable density", allowableDensity);
        density("mud density", mudDensity);
        depth("vertical depth of the weak point", verticalDepth);
        return constant.gradient(allowableDensity - mudDensity) * verticalDepth;
    }

    /**
     * Formation MAASP after the mud was changed: p = p_old − k (ρ_new − ρ_old) z.
     *
     * @param maasp with the old mud, Pa gauge
     * @param densityRise new less old density, kg/m³, −2500 to 2500
     * @param verticalDepth of the weak point, m
     */
    @Si(value = "Pa", kind = Kind.GAUGE)
    public static double maaspAfterMudChange(
            @Si(value = "Pa", kind = Kind.GAUGE) double maasp,
            @Si(value = "kg/m3", kind = Kind.DIFFERENCE) double densityRise,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            HydrostaticConstant constant) {
        pressure("MAASP", maasp);
        Check.within("rise of the mud density", densityRise, -2500, 2500, Measure.DENSITY_DIFFERENCE);
        depth("vertical depth of the weak point", verticalDepth);
        return maasp - constant.gradient(densityRise) * verticalDepth;
    }

    /**
     * Capacity of a hole, a casing or an annulus: C = π/4 (D² − d²).
     *
     * @param holeDiameter m, 0.01 to 2
     * @param pipeDiameter outside diameter of the pipe inside, m, from 0 (no pipe) to less than the hole
     */
    @Si("m3/m")
    public static double capacity(
            @Si(value = "m", kind = Kind.DIAMETER) double holeDiameter,
            @Si(value = "m", kind = Kind.DIAMETER) double pipeDiameter) {
        Check.within("hole diameter", holeDiameter, 0.01, 2, Measure.DIAMETER);
        Check.within("pipe diameter", pipeDiameter, 0, holeDiameter, Measure.DIAMETER);
        return 0.25 * Math.PI * (holeDiameter - pipeDiameter) * (holeDiameter + pipeDiameter);
    }

    /**
     * Length along hole of an influx that fills the annulus upwards from the bottom: h = V / C interval by interval.
     *
     * @param volume m³, at least 0
     * @param annulus intervals from the bottom up
     * @throws InputFault where the intervals hold less
     */
    @Si(value = "m", kind = Kind.LENGTH)
    public static double influxHeight(@Si("m3") double volume, List<CapacityInterval> annulus) {
        Check.atLeast("influx volume", volume, 0, Measure.VOLUME);
        double rest = volume;
        double height = 0;
        for (CapacityInterval interval : annulus) {
            if (rest <= interval.volume()) {
                return height + rest / interval.capacity();
            }
            rest -= interval.volume();
            height += interval.length();
        }
        throw new InputFault("influx", "is larger than the intervals given", "give the annulus farther up");
    }

    /**
     * Volume of an influx that stands to a height above the bottom: V = Σ C h.
     *
     * @param height along hole, m, at least 0
     * @param annulus intervals from the bottom up
     * @throws InputFault where the intervals are shorter
     */
    @Si("m3")
    public static double influxVolume(
            @Si(value = "m", kind = Kind.LENGTH) double height, List<CapacityInterval> annulus) {
        Check.atLeast("influx height", height, 0, Measure.LENGTH);
        double rest = height;
        double volume = 0;
        for (CapacityInterval interval : annulus) {
            if (rest <= interval.length()) {
                return volume + rest * interval.capacity();
            }
            rest -= interval.length();
            volume += interval.volume();
        }
        throw new InputFault("influx", "is longer than the intervals given", "give the annulus farther up");
    }

    /**
     * A shut-in well of two constant gradients: mud above an influx on bottom.
     *
     * @param formationPressure at the bottom, Pa gauge
     * @param verticalDepth of the bottom, m
     * @param mudGradient Pa/m, 0 to 50 000
     * @param influxGradient Pa/m, 0 to 50 000
     */
    public record TwoGradients(
            @Si(value = "Pa", kind = Kind.GAUGE) double formationPressure,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si("Pa/m") double mudGradient,
            @Si("Pa/m") double influxGradient) {
        public TwoGradients {
            pressure("formation pressure", formationPressure);
            depth("vertical depth of the bottom", verticalDepth);
            Check.within("gradient of the mud", mudGradient, 0, 50_000, Measure.PRESSURE_GRADIENT);
            Check.within("gradient of the influx", influxGradient, 0, 50_000, Measure.PRESSURE_GRADIENT);
        }

        /**
         * Shut-in casing pressure: p = p_f − G_m (z − h) − G_i h.
         *
         * @param influxHeight vertical, m, 0 to the depth of the bottom
         */
        @Si(value = "Pa", kind = Kind.GAUGE)
        public double casingPressure(@Si(value = "m", kind = Kind.LENGTH) double influxHeight) {
            Check.within("influx height", influxHeight, 0, verticalDepth, Measure.LENGTH);
            return formationPressure - mudGradient * (verticalDepth - influxHeight) - influxGradient * influxHeight;
        }

        /**
         * Height of the influx on bottom that brings a weak point to its limit: h = (p_w − p_f + G_m (z − z_w)) / (G_m −
         * G_i). Negative where the limit is passed without any influx.
         *
         * @param weakPointDepth vertical depth of the weak point, m, 0 to the depth of the bottom
         * @param limit pressure it holds, Pa gauge
         * @throws RangeFault where the influx is not lighter than the mud
         */
        @Si(value = "m", kind = Kind.LENGTH)
        public double heightAtLimit(
                @Si(value = "m", kind = Kind.DEPTH) double weakPointDepth,
                @Si(value = "Pa", kind = Kind.GAUGE) double limit) {
            Check.within("vertical depth of the weak point", weakPointDepth, 0, verticalDepth, Measure.DEPTH);
            pressure("limit of the weak point", limit);
            double lift = mudGradient - influxGradient;
            if (!(lift > 0)) {
                throw new RangeFault(
                        "gradient of the influx",
                        influxGradient,
                        0,
                        mudGradient,
                        Measure.PRESSURE_GRADIENT,
                        "the influx must be lighter than the mud");
            }
            return (limit - formationPressure + mudGradient * (verticalDepth - weakPointDepth)) / lift;
        }
    }

    /**
     * Density of an influx from the shut-in pressures: ρ_i = ρ_m − (p_casing − p_drillpipe) / (k h).
     *
     * @param mudDensity kg/m³
     * @param pressureDifference shut-in casing less drill-pipe pressure, Pa, 0 to 400 MPa
     * @param influxHeight vertical, m, above zero
     * @return negative where the readings cannot belong to one slug of that height
     */
    @Si("kg/m3")
    public static double influxDensity(
            @Si("kg/m3") double mudDensity,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double pressureDifference,
            @Si(value = "m", kind = Kind.LENGTH) double influxHeight,
            HydrostaticConstant constant) {
        density("mud density", mudDensity);
        Check.within(
                "difference of the shut-in pressures", pressureDifference, 0, HIGHEST, Measure.PRESSURE_DIFFERENCE);
        Check.within("influx height", influxHeight, 1e-3, DEEPEST, Measure.LENGTH);
        return mudDensity - constant.density(pressureDifference / influxHeight);
    }

    /**
     * Influx that came in while the pump was running.
     *
     * @param gain volume of the influx, m³, above zero
     * @param pumped mud pumped past the bit meanwhile, m³
     */
    public record MixedZone(@Si("m3") double gain, @Si("m3") double pumped) {
        public MixedZone {
            Check.atLeast("gain", gain, 1e-6, Measure.VOLUME);
            Check.atLeast("volume pumped", pumped, 0, Measure.VOLUME);
        }

        /** Volume of the mixture. */
        @Si("m3")
        public double volume() {
            return gain + pumped;
        }

        /**
         * Density of the influx alone, by the balance of mass: ρ_i = (ρ_mix (V_i + V_p) − ρ_m V_p) / V_i.
         *
         * @param mixedDensity of the mixture, kg/m³
         * @param mudDensity kg/m³
         * @return negative where the readings cannot belong to such a mixture
         */
        @Si("kg/m3")
        public double influxDensity(@Si("kg/m3") double mixedDensity, @Si("kg/m3") double mudDensity) {
            density("density of the mixture", mixedDensity);
            density("mud density", mudDensity);
            return (mixedDensity * volume() - mudDensity * pumped) / gain;
        }
    }

    /**
     * Kick tolerance as a zero-gain margin: Δρ = (z_w / z) (ρₐ − ρₘ): the rise of formation pressure above the mud, as
     * equivalent density at the bottom, that the weak point holds with no influx in the well.
     *
     * @param weakPointDepth vertical, m, 0 to the depth of the bottom
     * @param bottomDepth vertical, m, above zero
     * @param densityMargin allowable less mud density at the weak point, kg/m³, −2500 to 2500
     */
    @Si(value = "kg/m3", kind = Kind.DIFFERENCE)
    public static double zeroGainMargin(
            @Si(value = "m", kind = Kind.DEPTH) double weakPointDepth,
            @Si(value = "m", kind = Kind.DEPTH) double bottomDepth,
            @Si(value = "kg/m3", kind = Kind.DIFFERENCE) double densityMargin) {
        below("vertical depth of the bottom", bottomDepth);
        Check.within("vertical depth of the weak point", weakPointDepth, 0, bottomDepth, Measure.DEPTH);
        Check.within("margin of density at the weak point", densityMargin, -2500, 2500, Measure.DENSITY_DIFFERENCE);
        return weakPointDepth / bottomDepth * densityMargin;
    }

    /**
     * Boyle's law: V₂ = V₁ p₁ / p₂, an ideal gas at one temperature.
     *
     * @param volume at the first pressure, m³, at least 0
     * @param pressure there, Pa absolute, above zero
     * @param otherPressure Pa absolute, above zero
     */
    @Si("m3")
    public static double boyleVolume(
            @Si("m3") double volume,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double otherPressure) {
        Check.atLeast("volume of gas", volume, 0, Measure.VOLUME);
        Check.within("first pressure of the gas", pressure, 1e3, HIGHEST, Measure.PRESSURE_ABSOLUTE);
        Check.within("second pressure of the gas", otherPressure, 1e3, HIGHEST, Measure.PRESSURE_ABSOLUTE);
        return volume * pressure / otherPressure;
    }

    private static void density(String field, double value) {
        Check.within(field, value, 0, DENSEST, Measure.DENSITY);
    }

    private static void depth(String field, double value) {
        Check.within(field, value, 0, DEEPEST, Measure.DEPTH);
    }

    private static void below(String field, double value) {
        Check.within(field, value, 1e-3, DEEPEST, Measure.DEPTH);
    }

    private static void pressure(String field, double value) {
        Check.within(field, value, 0, HIGHEST, Measure.PRESSURE_GAUGE);
    }
}
