package staunch.earth;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.DoubleStream;
import staunch.units.InputFault;
import staunch.units.Measure;
import staunch.units.Source;
import staunch.units.UnitSystem;

/**
 * A profile with its spread.
 *
 * @param likely best estimate
 * @param low lower estimate, where given
 * @param high higher estimate, where given
 * @param source where the estimates come from, where given
 */
public record Range(
        PressureProfile likely,
        Optional<PressureProfile> low,
        Optional<PressureProfile> high,
        Optional<Source> source) {
    /** Difference that the rounding of unit conversions may leave between equal pressures, Pa. */
    private static final double ROUNDING = 1;

    public Range {
        if (likely == null) {
            throw new InputFault("pressure profile", "has no likely estimate", "give it");
        }
        Objects.requireNonNull(low, "low");
        Objects.requireNonNull(high, "high");
        Objects.requireNonNull(source, "source");
        low.ifPresent(lower -> checkOrder("low estimate", lower, "likely estimate", likely));
        high.ifPresent(higher -> checkOrder("likely estimate", likely, "high estimate", higher));
        if (low.isPresent() && high.isPresent()) {
            checkOrder("low estimate", low.get(), "high estimate", high.get());
        }
    }

    /** A profile with its spread, of no stated source. */
    public Range(PressureProfile likely, Optional<PressureProfile> low, Optional<PressureProfile> high) {
        this(likely, low, high, Optional.empty());
    }

    /** Both are straight between their points, so that they can only cross at a point of either. */
    private static void checkOrder(String lowerName, PressureProfile lower, String higherName, PressureProfile higher) {
        DoubleStream.concat(Arrays.stream(lower.depths()), Arrays.stream(higher.depths()))
                .filter(z -> lower.covers(z) && higher.covers(z))
                .forEach(z -> {
                    boolean crossed =
                            lower.above(z) > higher.above(z) + ROUNDING || lower.below(z) > higher.below(z) + ROUNDING;
                    if (crossed) {
                        throw new InputFault(
                                "pressure profile",
                                "has a " + lowerName + " above its " + higherName + " at vertical depth "
                                        + UnitSystem.SI.precise(z, Measure.DEPTH),
                                "exchange them or check the values there");
                    }
                });
    }

    /** A profile without spread. */
    public static Range of(PressureProfile likely) {
        return new Range(likely, Optional.empty(), Optional.empty());
    }

    /** Lower estimate, or the likely one where no lower is given. */
    public PressureProfile lowOrLikely() {
        return low.orElse(likely);
    }

    /** Higher estimate, or the likely one where no higher is given. */
    public PressureProfile highOrLikely() {
        return high.orElse(likely);
    }
}
