package staunch.envelope;

import java.util.Objects;
import staunch.units.Kind;
import staunch.units.Si;

/** Largest kick intensity that some volume allows, or why there is none. */
public sealed interface IntensityLimit {
    /**
     * The well holds the volume up to this intensity.
     *
     * @param volume asked for, m³; zero for the zero-gain margin
     * @param intensity formation pressure above the static mud, as equivalent density, kg/m³; of a zero-gain margin
     *     negative where even the mud is too heavy
     * @param weakPoint that breaks first beyond it
     */
    record Largest(
            @Si("m3") double volume,
            @Si(value = "kg/m3", kind = Kind.DIFFERENCE) double intensity,
            WeakPoint weakPoint) implements IntensityLimit {
        public Largest {
            Objects.requireNonNull(weakPoint, "weakPoint");
        }
    }

    /**
     * The volume is not held at any intensity: not even a swabbed influx of that size.
     *
     * @param volume asked for, m³
     */
    record NeverHeld(@Si("m3") double volume) implements IntensityLimit {}

    /**
     * No answer.
     *
     * @param reason one sentence
     */
    record NotAssessed(String reason) implements IntensityLimit {
        public NotAssessed {
            Objects.requireNonNull(reason, "reason");
        }
    }
}
