package staunch.well;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
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
}
