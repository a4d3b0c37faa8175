package staunch.earth;

import java.util.Objects;
import java.util.Optional;
import staunch.units.InputFault;

/**
 * A profile with its spread.
 *
 * @param likely best estimate
 * @param low lower estimate, where given
 * @param high higher estimate, where given
 */
public record Range(PressureProfile likely, Optional<PressureProfile> low, Optional<PressureProfile> high) {
    public Range {
        if (likely == null) {
            throw new InputFault("pressure profile", "has no likely estimate", "give it");
        }
        Objects.requireNonNull(low, "low");
        Objects.requireNonNull(high, "high");
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
