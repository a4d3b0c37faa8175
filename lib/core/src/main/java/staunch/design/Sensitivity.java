package staunch.design;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * How much each input of a hole section matters, one varied at a time: what its swing changes, and the value at which the
 * verdict of the section flips.
 *
 * @param design name of the casing design
 * @param section name of the hole section
 * @param base with every input as the case gives it
 * @param inputs the greatest swing first
 */
public record Sensitivity(String design, String section, Effect base, List<Input> inputs) {
    public Sensitivity {
        Objects.requireNonNull(design, "design");
        Objects.requireNonNull(section, "section");
        Objects.requireNonNull(base, "base");
        inputs = List.copyOf(inputs);
    }

    /**
     * What the section reaches with one value of an input.
     *
     * @param drilled tolerance of the formation for the drilled kick
     * @param swabbed tolerance of the formation for the swabbed kick
     * @param margin least of tolerance less required volume over both kicks, formation and way to surface, m³; empty where
     *     none is a volume
     * @param formationMaasp Pa gauge; empty where not assessed
     * @param verdict of the section
     */
    public record Effect(
            Tolerance drilled,
            Tolerance swabbed,
            @Si("m3") OptionalDouble margin,
            @Si(value = "Pa", kind = Kind.GAUGE) OptionalDouble formationMaasp,
            Verdict verdict) {
        public Effect {
            Objects.requireNonNull(drilled, "drilled");
            Objects.requireNonNull(swabbed, "swabbed");
            Objects.requireNonNull(margin, "margin");
            Objects.requireNonNull(formationMaasp, "formationMaasp");
            Objects.requireNonNull(verdict, "verdict");
        }
    }

    /**
     * One input.
     *
     * @param input which
     * @param measure of its value
     * @param base value in the case; empty where it has none and is not varied
     * @param low lower end of the swing; empty where there is none
     * @param atLow what the section reaches there
     * @param high upper end of the swing; empty where there is none
     * @param atHigh what the section reaches there
     * @param basis what the swing rests on, or why there is none
     * @param flip value at which the verdict flips
     */
    public record Input(
            SensitiveInput input,
            Measure measure,
            OptionalDouble base,
            OptionalDouble low,
            Optional<Effect> atLow,
            OptionalDouble high,
            Optional<Effect> atHigh,
            String basis,
            Flip flip) {
        public Input {
            Objects.requireNonNull(input, "input");
            Objects.requireNonNull(measure, "measure");
            Objects.requireNonNull(base, "base");
            Objects.requireNonNull(low, "low");
            Objects.requireNonNull(atLow, "atLow");
            Objects.requireNonNull(high, "high");
            Objects.requireNonNull(atHigh, "atHigh");
            Objects.requireNonNull(basis, "basis");
            Objects.requireNonNull(flip, "flip");
        }

        /** Change of the margin from one end of the swing to the other, m³; empty where either end has no volume. */
        @Si("m3")
        public OptionalDouble span() {
            return atLow.isPresent()
                            && atHigh.isPresent()
                            && atLow.get().margin().isPresent()
                            && atHigh.get().margin().isPresent()
                    ? OptionalDouble.of(Math.abs(atHigh.get().margin().getAsDouble()
                            - atLow.get().margin().getAsDouble()))
                    : OptionalDouble.empty();
        }
    }

    /** Where the verdict flips. */
    public sealed interface Flip {}

    /**
     * The value nearest to the base at which the verdict is another one.
     *
     * @param measure of the value
     * @param value at which it flips
     * @param verdict beyond it
     */
    public record FlipsAt(Measure measure, double value, Verdict verdict) implements Flip {
        public FlipsAt {
            Objects.requireNonNull(measure, "measure");
            Objects.requireNonNull(verdict, "verdict");
        }
    }

    /**
     * The verdict stays the same over a range.
     *
     * @param measure of the range
     * @param from lower end
     * @param to upper end
     */
    public record DoesNotFlip(Measure measure, double from, double to) implements Flip {
        public DoesNotFlip {
            Objects.requireNonNull(measure, "measure");
        }
    }

    /**
     * Nothing was varied.
     *
     * @param reason why
     */
    public record NotVaried(String reason) implements Flip {
        public NotVaried {
            Objects.requireNonNull(reason, "reason");
        }
    }
}
