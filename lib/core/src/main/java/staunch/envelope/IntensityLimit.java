package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.units.Amount;
import staunch.units.Fault;
import staunch.units.Kind;
import staunch.units.Si;
import staunch.units.UnitSystem;
import staunch.units.Wording;

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
     * @param reason one sentence, in SI units
     * @param amounts quantities the reason names, in their order
     */
    record NotAssessed(String reason, List<Amount> amounts) implements IntensityLimit {
        public NotAssessed {
            Objects.requireNonNull(reason, "reason");
            amounts = List.copyOf(amounts);
        }

        /** A reason that names no quantity. */
        public NotAssessed(String reason) {
            this(reason, List.of());
        }

        static NotAssessed of(Fault fault) {
            Wording wording = fault.wording();
            return new NotAssessed(wording.text(), wording.amounts());
        }

        /** The reason in the given units. */
        public String reason(UnitSystem units) {
            return new Wording(reason, amounts).in(units);
        }
    }
}
