package staunch.envelope;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import staunch.control.KillSheetInput;
import staunch.influx.MigrationBracket;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.Si;

/**
 * How an influx into a section is to be handled in time. Everything may stay empty: what has a stated default is taken with
 * an assumption in the result, what has none makes its result "not assessed".
 *
 * @param influx whose course is followed
 * @param killRate pump rate of the circulation, m³/s, 1e-5 to 0.2; default: the greatest of the section's slow circulating
 *     rates
 * @param surfaceLineVolume from the pump to the top of the string, m³, 0 to 20; default: none, strokes count from the top of
 *     the string
 * @param killMud how kill mud is made
 * @param killSheet choices of the kill sheet; default: {@link KillSheetInput.Options#DEFAULT}
 * @param startUpSteps steps in which the pump of a subsea well is brought to the kill rate, 1 to 100; default: 4
 * @param yielding what gives way in the closed well
 * @param migration rise rates or slip laws; default: {@link MigrationBracket#PUBLISHED}
 * @param volumetric pressures of the volumetric method
 * @param lubrication of lubricate and bleed
 * @param bullheading of pumping the influx back
 * @param trippingSpeed mean speed of the string while it is tripped, m/s, 0.001 to 10; without it no swab and surge
 */
public record OperationsPlan(
        InfluxChoice influx,
        @Si("m3/s") OptionalDouble killRate,
        @Si("m3") OptionalDouble surfaceLineVolume,
        KillMud killMud,
        Optional<KillSheetInput.Options> killSheet,
        Optional<Integer> startUpSteps,
        Yielding yielding,
        Optional<MigrationBracket> migration,
        Volumetric volumetric,
        Lubrication lubrication,
        Bullhead bullheading,
        @Si("m/s") OptionalDouble trippingSpeed) {
    /** Nothing given. */
    public static final OperationsPlan NONE = new OperationsPlan(
            new InfluxChoice.RequiredOrDetectable(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            new KillMud(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
            Optional.empty(),
            Optional.empty(),
            new Yielding(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty()),
            Optional.empty(),
            new Volumetric(OptionalDouble.empty(), OptionalDouble.empty()),
            new Lubrication(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
            new Bullhead(OptionalDouble.empty(), OptionalDouble.empty()),
            OptionalDouble.empty());

    public OperationsPlan {
        Objects.requireNonNull(influx, "influx");
        killRate.ifPresent(v -> Check.within("kill rate", v, 1e-5, 0.2, Measure.FLOW_RATE));
        surfaceLineVolume.ifPresent(v -> Check.within("volume of the surface lines", v, 0, 20, Measure.VOLUME));
        Objects.requireNonNull(killMud, "killMud");
        Objects.requireNonNull(killSheet, "killSheet");
        startUpSteps.ifPresent(v -> Check.within("steps of start-up", v, 1, 100, Measure.NUMBER));
        Objects.requireNonNull(yielding, "yielding");
        Objects.requireNonNull(migration, "migration");
        Objects.requireNonNull(volumetric, "volumetric");
        Objects.requireNonNull(lubrication, "lubrication");
        Objects.requireNonNull(bullheading, "bullheading");
        trippingSpeed.ifPresent(v -> Check.within("tripping speed", v, 1e-3, 10, Measure.SPEED));
    }

    /** The same plan following another influx. */
    public OperationsPlan withInflux(InfluxChoice choice) {
        return with(parts -> parts.influx = choice);
    }

    /** The same plan circulating at a rate. */
    public OperationsPlan withKillRate(Quantity rate) {
        return with(parts -> parts.killRate = OptionalDouble.of(rate.si("kill rate", Measure.FLOW_RATE)));
    }

    /** The same plan with the volume between pump and string. */
    public OperationsPlan withSurfaceLines(Quantity volume) {
        return with(parts ->
                parts.surfaceLineVolume = OptionalDouble.of(volume.si("volume of the surface lines", Measure.VOLUME)));
    }

    /** The same plan with what gives way in the closed well. */
    public OperationsPlan withYielding(Yielding gives) {
        return with(parts -> parts.yielding = gives);
    }

    /** The same plan with another bracket of rise. */
    public OperationsPlan withMigration(MigrationBracket bracket) {
        return with(parts -> parts.migration = Optional.of(bracket));
    }

    /** The same plan with a window of the volumetric method. */
    public OperationsPlan withVolumetric(Volumetric window) {
        return with(parts -> parts.volumetric = window);
    }

    /** The same plan with how an influx is pumped back. */
    public OperationsPlan withBullheading(Bullhead bullhead) {
        return with(parts -> parts.bullheading = bullhead);
    }

    /** The same plan with the string tripped at a speed. */
    public OperationsPlan withTrippingSpeed(Quantity speed) {
        return with(parts -> parts.trippingSpeed = OptionalDouble.of(speed.si("tripping speed", Measure.SPEED)));
    }

    private OperationsPlan with(Consumer<Parts> change) {
        Parts parts = new Parts(this);
        change.accept(parts);
        return new OperationsPlan(
                parts.influx,
                parts.killRate,
                parts.surfaceLineVolume,
                killMud,
                killSheet,
                startUpSteps,
                parts.yielding,
                parts.migration,
                parts.volumetric,
                lubrication,
                parts.bullheading,
                parts.trippingSpeed);
    }

    /** What may be changed, while one of it is. */
    private static final class Parts {
        private InfluxChoice influx;
        private OptionalDouble killRate;
        private OptionalDouble surfaceLineVolume;
        private Yielding yielding;
        private Optional<MigrationBracket> migration;
        private Volumetric volumetric;
        private Bullhead bullheading;
        private OptionalDouble trippingSpeed;

        Parts(OperationsPlan from) {
            influx = from.influx;
            killRate = from.killRate;
            surfaceLineVolume = from.surfaceLineVolume;
            yielding = from.yielding;
            migration = from.migration;
            volumetric = from.volumetric;
            bullheading = from.bullheading;
            trippingSpeed = from.trippingSpeed;
        }
    }

    /** Which influx is followed. */
    public sealed interface InfluxChoice {
        /** The volume the criteria require of the scenario; where they set none, the detectable gain. */
        record RequiredOrDetectable() implements InfluxChoice {}

        /** The kick tolerance itself, of the formation or of casing and equipment, whichever is less. */
        record AtTolerance() implements InfluxChoice {}

        /**
         * A given volume.
         *
         * @param volume on bottom at shut-in, m³, above zero to 200
         */
        record Given(@Si("m3") double volume) implements InfluxChoice {
            public Given {
                Check.within("influx volume of the operations", volume, 1e-3, 200, Measure.VOLUME);
            }
        }
    }

    /**
     * How kill mud is made.
     *
     * @param step to which its density is rounded up, kg/m³, 0.1 to 100; default: 0.1 ppg (11.98 kg/m³), the step of the
     *     trade
     * @param overbalance density beyond balance, kg/m³, 0 to 300; default: none
     * @param material density of the weighting material, kg/m³, 2600 to 7000; default: barite of 4200 kg/m³ (API Spec 13A
     *     asks for at least that; from memory)
     */
    public record KillMud(
            @Si(value = "kg/m3", kind = Kind.DIFFERENCE) OptionalDouble step,
            @Si(value = "kg/m3", kind = Kind.DIFFERENCE) OptionalDouble overbalance,
            @Si("kg/m3") OptionalDouble material) {
        public KillMud {
            step.ifPresent(v -> Check.within("step of the kill mud density", v, 0.1, 100, Measure.DENSITY_DIFFERENCE));
            overbalance.ifPresent(
                    v -> Check.within("overbalance of the kill mud", v, 0, 300, Measure.DENSITY_DIFFERENCE));
            material.ifPresent(v -> Check.within("density of the weighting material", v, 2600, 7000, Measure.DENSITY));
        }
    }

    /**
     * What gives way to pressure in the closed well. Without any of it the well is rigid: an upper bound of the pressures.
     *
     * @param mudCompressibility 1/Pa, 0 to 2e-9; default: that of the mud's expansion, else none
     * @param holeCompliance growth of the annulus per volume and pressure, open hole and casing, 1/Pa, 0 to 1e-8; default:
     *     none
     * @param filtrateLoss lost into the formation per time, m³/s, 0 to 0.01; default: none
     * @param floatInString whether a float closes the mud in the string off; default: it does, which is the stiffer well
     */
    public record Yielding(
            @Si("1/Pa") OptionalDouble mudCompressibility,
            @Si("1/Pa") OptionalDouble holeCompliance,
            @Si("m3/s") OptionalDouble filtrateLoss,
            Optional<Boolean> floatInString) {
        public Yielding {
            mudCompressibility.ifPresent(v -> Check.within("mud compressibility", v, 0, 2e-9, Measure.COMPRESSIBILITY));
            holeCompliance.ifPresent(v -> Check.within("compliance of the hole", v, 0, 1e-8, Measure.COMPRESSIBILITY));
            filtrateLoss.ifPresent(v -> Check.within("filtrate loss", v, 0, 0.01, Measure.FLOW_RATE));
            Objects.requireNonNull(floatInString, "floatInString");
        }
    }

    /**
     * Window of the volumetric method; without both the method is not assessed.
     *
     * @param safety pressure held above the formation's, Pa, 0 to 2e7
     * @param working height of the window above that, Pa, 1e4 to 2e7
     */
    public record Volumetric(
            @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble safety,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble working) {
        public Volumetric {
            safety.ifPresent(v -> Check.within("safety margin", v, 0, 2e7, Measure.PRESSURE_DIFFERENCE));
            working.ifPresent(v -> Check.within("working pressure", v, 1e4, 2e7, Measure.PRESSURE_DIFFERENCE));
        }
    }

    /**
     * Lubricate and bleed, begun where the volumetric method ends and within its working pressure.
     *
     * @param density of the mud lubricated in, kg/m³, 500 to 3000; default: the section's mud
     * @param largestStep most that is pumped before bleeding, m³, 1e-3 to 50; default: what the working pressure allows
     * @param left gas volume that ends the operation, m³, 1e-3 to 50; default: 0.1 m³
     */
    public record Lubrication(
            @Si("kg/m3") OptionalDouble density,
            @Si("m3") OptionalDouble largestStep,
            @Si("m3") OptionalDouble left) {
        public Lubrication {
            density.ifPresent(v -> Check.within("density of the lubricated mud", v, 500, 3000, Measure.DENSITY));
            largestStep.ifPresent(v -> Check.within("largest step of lubrication", v, 1e-3, 50, Measure.VOLUME));
            left.ifPresent(v -> Check.within("gas volume that may be left", v, 1e-3, 50, Measure.VOLUME));
        }
    }

    /**
     * Pumping the influx back into its formation.
     *
     * @param rate m³/s, 1e-5 to 0.2; default: the kill rate
     * @param injectionAbove pressure above the formation's at which it takes fluid, Pa, 0 to 1e8; without it bullheading is
     *     not assessed
     */
    public record Bullhead(
            @Si("m3/s") OptionalDouble rate,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble injectionAbove) {
        public Bullhead {
            rate.ifPresent(v -> Check.within("rate of bullheading", v, 1e-5, 0.2, Measure.FLOW_RATE));
            injectionAbove.ifPresent(v ->
                    Check.within("injection pressure above the formation's", v, 0, 1e8, Measure.PRESSURE_DIFFERENCE));
        }
    }
}
