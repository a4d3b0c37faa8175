package staunch.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.envelope.SectionCheck;
import staunch.envelope.SectionEvaluator;
import staunch.envelope.SectionInput;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;

class SensitivityLawTest {
    private static Study study(double shoe, double mud) {
        return Study.of(TwoSectionWell.with(TwoSectionWell.design("one", shoe, mud)));
    }

    private static Sensitivity.Input of(Sensitivity sensitivity, SensitiveInput input) {
        return sensitivity.inputs().stream()
                .filter(i -> i.input() == input)
                .findFirst()
                .orElseThrow();
    }

    private static SectionCheck with(Study study, SensitiveInput which, double value) {
        return SectionEvaluator.check(which.with(study.input(TwoSectionWell.BELOW), value));
    }

    @Property(tries = 6, seed = "1")
    void aFlipIsWhereTheVerdictBecomesAnother(
            @ForAll @DoubleRange(min = 2000, max = 4200) double shoe,
            @ForAll @DoubleRange(min = 1450, max = 1800) double mud) {
        Study study = study(shoe, mud);
        Sensitivity sensitivity = study.sensitivity(TwoSectionWell.BELOW);
        Verdict.Outcome base = sensitivity.base().verdict().outcome();
        int flips = 0;
        for (Sensitivity.Input input : sensitivity.inputs()) {
            if (input.flip() instanceof Sensitivity.FlipsAt at) {
                flips++;
                double back = Math.signum(input.base().getAsDouble() - at.value())
                        * 2e-5
                        * input.input().reach();
                assertNotEquals(
                        base, with(study, input.input(), at.value()).verdict().outcome());
                assertEquals(
                        base,
                        with(study, input.input(), at.value() + back).verdict().outcome(),
                        input.input().title());
            } else if (input.flip() instanceof Sensitivity.DoesNotFlip never) {
                assertTrue(never.from() <= input.base().getAsDouble()
                        && never.to() >= input.base().getAsDouble());
                for (double value : List.of(never.from(), never.to())) {
                    assertEquals(
                            base, with(study, input.input(), value).verdict().outcome());
                }
            }
        }
        assertTrue(flips > 0, "some input flips the verdict");
    }

    /** The least required volume that fails is the tolerance itself. */
    @Test
    void theRequiredVolumeFlipsAtTheTolerance() {
        Study study = study(3000, 1560);
        Sensitivity sensitivity = study.sensitivity(TwoSectionWell.BELOW);
        SectionCheck base = SectionEvaluator.check(study.input(TwoSectionWell.BELOW));
        assertEquals(Verdict.Outcome.HOLDS, base.verdict().outcome());
        double least = List.of(base.drilled(), base.swabbed()).stream()
                .flatMap(k -> List.of(k.tolerance(), k.circulatedToSurface().tolerance()).stream())
                .filter(t -> t instanceof Tolerance.Finite)
                .mapToDouble(t -> ((Tolerance.Finite) t).volume())
                .min()
                .orElseThrow();
        Sensitivity.Input volume = of(sensitivity, SensitiveInput.REQUIRED_VOLUME);
        assertEquals(2, volume.base().getAsDouble());
        assertEquals(least, ((Sensitivity.FlipsAt) volume.flip()).value(), 5e-4);
        assertEquals(least - 2, sensitivity.base().margin().getAsDouble(), 1e-9);
    }

    /** The input that is not changed changes nothing. */
    @Property(tries = 5, seed = "1")
    void theBaseValueIsTheBase(@ForAll @DoubleRange(min = 1450, max = 1800) double mud) {
        Study study = study(3000, mud);
        SectionInput input = study.input(TwoSectionWell.BELOW);
        SectionCheck base = SectionEvaluator.check(input);
        for (SensitiveInput which : SensitiveInput.values()) {
            which.base(input).ifPresent(v -> {
                SectionCheck same = SectionEvaluator.check(which.with(input, v));
                assertEquals(base.verdict().outcome(), same.verdict().outcome(), which.title());
                assertEquals(volume(base), volume(same), 1e-6 * Math.max(1, volume(base)), which.title());
            });
        }
    }

    private static double volume(SectionCheck check) {
        return check.drilled().tolerance() instanceof Tolerance.Finite finite ? finite.volume() : -1;
    }

    /** Stronger rock never holds less, a greater intensity never more. */
    @Test
    void swingsGoTheRightWay() {
        Study study = study(3000, 1560);
        SectionInput input = study.input(TwoSectionWell.BELOW);
        double strength = SensitiveInput.STRENGTH.base(input).orElseThrow();
        assertEquals(1860, strength, 1e-6);
        assertTrue(volume(with(study, SensitiveInput.STRENGTH, strength + 20))
                > volume(with(study, SensitiveInput.STRENGTH, strength)));
        Sensitivity.Input intensity = of(study.sensitivity(TwoSectionWell.BELOW), SensitiveInput.KICK_INTENSITY);
        assertTrue(intensity.atLow().orElseThrow().margin().getAsDouble()
                > intensity.atHigh().orElseThrow().margin().getAsDouble());
        assertEquals(OptionalDouble.of(15), intensity.low());
        assertEquals(OptionalDouble.of(45), intensity.high());
    }

    @Test
    void theGreatestSwingStandsFirstAndEveryInputIsThere() {
        Sensitivity sensitivity = study(3000, 1560).sensitivity(TwoSectionWell.BELOW);
        assertEquals(SensitiveInput.values().length, sensitivity.inputs().size());
        double[] spans = sensitivity.inputs().stream()
                .mapToDouble(i -> i.span().orElse(-1))
                .toArray();
        double[] sorted = spans.clone();
        Arrays.sort(sorted);
        for (int i = 0; i < spans.length; i++) {
            assertEquals(sorted[spans.length - 1 - i], spans[i]);
        }
        Sensitivity.Input pore = of(sensitivity, SensitiveInput.PORE_PRESSURE);
        assertEquals(Optional.empty(), pore.atLow(), "no spread, no swing");
        assertEquals("the case gives one estimate only", pore.basis());
    }

    @Test
    void aSectionThatIsNotShutInIsNotVaried() {
        Sensitivity sensitivity = study(3000, 1560).sensitivity(TwoSectionWell.TOP);
        assertTrue(sensitivity.inputs().stream().allMatch(i -> i.flip() instanceof Sensitivity.NotVaried));
    }
}
