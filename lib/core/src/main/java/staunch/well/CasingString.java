package staunch.well;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.Si;

/**
 * A casing or liner set in the well.
 *
 * @param name what the programme calls it
 * @param intervals stretches of one weight and grade, top to bottom without gaps; a liner's first begins at its hanger
 * @param topOfCement measured depth, m, where known
 * @param fluidBehindDensity density of the mud left above the cement behind it, kg/m³, where known
 * @param mixWaterDensity density of the cement's mix water, kg/m³, for the long-term back-up, where known
 * @param allowedBurstShare part of the burst rating that may be used, 0 to 1, where the case sets one
 * @param testPressure pressure it was or will be tested to at surface, Pa gauge, where given
 * @param linerTopRating pressure the liner-top packer and lap hold from inside, Pa difference, where given
 * @param backUp outside it as the case specifies; empty for the lower of pore pressure and mix-water column
 */
public record CasingString(
        String name,
        List<CasingInterval> intervals,
        @Si(value = "m", kind = Kind.DEPTH) OptionalDouble topOfCement,
        @Si("kg/m3") OptionalDouble fluidBehindDensity,
        @Si("kg/m3") OptionalDouble mixWaterDensity,
        @Si("1") OptionalDouble allowedBurstShare,
        @Si(value = "Pa", kind = Kind.GAUGE) OptionalDouble testPressure,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble linerTopRating,
        Optional<BurstBackUp> backUp) {
    public CasingString {
        Check.text("name of the casing string", name);
        intervals = List.copyOf(intervals);
        if (intervals.isEmpty()) {
            throw new InputFault(
                    "casing string \"" + name + "\"", "has no interval", "give at least one weight and grade");
        }
        for (int i = 1; i < intervals.size(); i++) {
            if (Math.abs(intervals.get(i).topDepth() - intervals.get(i - 1).bottomDepth()) > 1e-6) {
                throw new InputFault(
                        "casing string \"" + name + "\"",
                        "has a gap or an overlap between interval " + i + " and " + (i + 1),
                        "let each interval begin where the one above it ends");
            }
        }
        topOfCement.ifPresent(v -> Check.within("top of cement of " + name, v, 0, 20_000, Measure.DEPTH));
        fluidBehindDensity.ifPresent(
                v -> Check.within("density of the fluid behind " + name, v, 700, 2700, Measure.DENSITY));
        mixWaterDensity.ifPresent(
                v -> Check.within("density of the mix water of " + name, v, 900, 1300, Measure.DENSITY));
        testPressure.ifPresent(v -> Check.within("test pressure of " + name, v, 0, 2e8, Measure.PRESSURE_GAUGE));
        linerTopRating.ifPresent(
                v -> Check.within("liner-top rating of " + name, v, 1e5, 4e8, Measure.PRESSURE_DIFFERENCE));
        Objects.requireNonNull(backUp, "backUp");
        allowedBurstShare.ifPresent(v -> Check.within("allowed share of burst of " + name, v, 0.01, 1, Measure.NUMBER));
    }

    /** A string with the default back-up. */
    public CasingString(
            String name,
            List<CasingInterval> intervals,
            @Si(value = "m", kind = Kind.DEPTH) OptionalDouble topOfCement,
            @Si("kg/m3") OptionalDouble fluidBehindDensity,
            @Si("kg/m3") OptionalDouble mixWaterDensity,
            @Si("1") OptionalDouble allowedBurstShare,
            @Si(value = "Pa", kind = Kind.GAUGE) OptionalDouble testPressure,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble linerTopRating) {
        this(
                name,
                intervals,
                topOfCement,
                fluidBehindDensity,
                mixWaterDensity,
                allowedBurstShare,
                testPressure,
                linerTopRating,
                Optional.empty());
    }

    /** Measured depth of the top: zero or wellhead for a casing, hanger depth for a liner. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double topDepth() {
        return intervals.get(0).topDepth();
    }

    /** Measured depth of the shoe. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double shoeDepth() {
        return intervals.get(intervals.size() - 1).bottomDepth();
    }

    /** A string of which nothing but its pipe is known. */
    public static CasingString of(String name, CasingInterval... intervals) {
        return new CasingString(
                name,
                List.of(intervals),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    /** The same string cemented up to a measured depth. */
    public CasingString withTopOfCement(Quantity depth) {
        return with(
                parts -> parts.topOfCement = OptionalDouble.of(depth.si("top of cement of " + name, Measure.DEPTH)));
    }

    /** The same string with that mud left above its cement. */
    public CasingString withFluidBehind(Quantity density) {
        return with(parts -> parts.fluidBehindDensity =
                OptionalDouble.of(density.si("density of the fluid behind " + name, Measure.DENSITY)));
    }

    /** The same string with that mix water in its cement. */
    public CasingString withMixWater(Quantity density) {
        return with(parts -> parts.mixWaterDensity =
                OptionalDouble.of(density.si("density of the mix water of " + name, Measure.DENSITY)));
    }

    /** The same string of whose burst rating that part may be used. */
    public CasingString withAllowedBurstShare(@Si("1") double share) {
        return with(parts -> parts.allowedBurstShare = OptionalDouble.of(share));
    }

    /** The same string tested to a pressure at surface. */
    public CasingString withTestPressure(Quantity pressure) {
        return with(parts -> parts.testPressure =
                OptionalDouble.of(pressure.si("test pressure of " + name, Measure.PRESSURE_GAUGE)));
    }

    /** The same liner with what its top holds from inside. */
    public CasingString withLinerTopRating(Quantity rating) {
        return with(parts -> parts.linerTopRating =
                OptionalDouble.of(rating.si("liner-top rating of " + name, Measure.PRESSURE_DIFFERENCE)));
    }

    /** The same string with a back-up as specified. */
    public CasingString withBackUp(BurstBackUp outside) {
        return with(parts -> parts.backUp = Optional.of(outside));
    }

    private CasingString with(Consumer<Parts> change) {
        Parts parts = new Parts(this);
        change.accept(parts);
        return new CasingString(
                name,
                intervals,
                parts.topOfCement,
                parts.fluidBehindDensity,
                parts.mixWaterDensity,
                parts.allowedBurstShare,
                parts.testPressure,
                parts.linerTopRating,
                parts.backUp);
    }

    /** What may be changed, while one of it is. */
    private static final class Parts {
        private OptionalDouble topOfCement;
        private OptionalDouble fluidBehindDensity;
        private OptionalDouble mixWaterDensity;
        private OptionalDouble allowedBurstShare;
        private OptionalDouble testPressure;
        private OptionalDouble linerTopRating;
        private Optional<BurstBackUp> backUp;

        Parts(CasingString from) {
            topOfCement = from.topOfCement;
            fluidBehindDensity = from.fluidBehindDensity;
            mixWaterDensity = from.mixWaterDensity;
            allowedBurstShare = from.allowedBurstShare;
            testPressure = from.testPressure;
            linerTopRating = from.linerTopRating;
            backUp = from.backUp;
        }
    }
}
