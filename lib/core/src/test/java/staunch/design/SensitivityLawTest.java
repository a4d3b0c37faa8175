package staunch.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.earth.EarthModel;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.envelope.SectionCheck;
import staunch.envelope.SectionEvaluator;
import staunch.envelope.SectionInput;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;
import staunch.units.Physics;
import staunch.units.Source;

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
        assertTrue(volume(with(study, SensitiveInput.KICK_INTENSITY, 15))
                > volume(with(study, SensitiveInput.KICK_INTENSITY, 45)));
    }

    /** A range is the case's own or there is none. */
    @Test
    void noRangeIsMadeUp() {
        Sensitivity bare = study(3000, 1560).sensitivity(TwoSectionWell.BELOW);
        assertTrue(bare.inputs().stream()
                .allMatch(
                        i -> i.low().isEmpty() && i.high().isEmpty() && i.span().isEmpty()));
        assertTrue(bare.inputs().stream().anyMatch(i -> i.flip() instanceof Sensitivity.FlipsAt), "flips all the same");
        Sensitivity ranged = ranged().sensitivity(TwoSectionWell.BELOW);
        for (Sensitivity.Input input : ranged.inputs()) {
            boolean stated = input.input() == SensitiveInput.PORE_PRESSURE || input.input() == SensitiveInput.STRENGTH;
            assertEquals(stated, input.low().isPresent(), input.input().title());
            String basis = stated ? "low and high estimate of the case (offset wells, table 3)" : bare(input);
            assertEquals(basis, input.basis());
        }
        assertEquals(1740, of(ranged, SensitiveInput.STRENGTH).low().getAsDouble(), 1e-6);
        assertEquals(1760, of(ranged, SensitiveInput.STRENGTH).high().getAsDouble(), 1e-6);
        assertEquals(1380, of(ranged, SensitiveInput.PORE_PRESSURE).low().getAsDouble(), 1e-6);
    }

    private static String bare(Sensitivity.Input input) {
        return input.flip() instanceof Sensitivity.NotVaried
                ? "the case does not give it"
                : "no range is stated in the case";
    }

    private static Study ranged() {
        WellCase base = TwoSectionWell.with(TwoSectionWell.design("one", 3000, 1560));
        return Study.of(WellCase.of(
                base.header(),
                base.units(),
                base.datum(),
                base.path(),
                EarthModel.of(
                        range(1400, 1380, 1420),
                        range(1750, 1740, 1760),
                        base.earth().temperature().orElseThrow()),
                base.designs().get(0)));
    }

    private static Range range(double likely, double low, double high) {
        return new Range(
                gradient(likely),
                Optional.of(gradient(low)),
                Optional.of(gradient(high)),
                Optional.of(new Source("offset wells", "table 3")));
    }

    private static PressureProfile gradient(double density) {
        double deep = Physics.ATMOSPHERE + density * Physics.GRAVITY * 9000;
        return PressureProfile.of(new double[] {0, 9000}, new double[] {Physics.ATMOSPHERE, deep});
    }

    @Test
    void theGreatestSwingStandsFirstAndEveryInputIsThere() {
        Sensitivity sensitivity = ranged().sensitivity(TwoSectionWell.BELOW);
        assertEquals(SensitiveInput.values().length, sensitivity.inputs().size());
        double[] spans = sensitivity.inputs().stream()
                .mapToDouble(i -> i.span().orElse(-1))
                .toArray();
        double[] sorted = spans.clone();
        Arrays.sort(sorted);
        for (int i = 0; i < spans.length; i++) {
            assertEquals(sorted[spans.length - 1 - i], spans[i]);
        }
        assertTrue(sensitivity.inputs().get(0).span().getAsDouble() > 0);
        Sensitivity.Input pore = of(study(3000, 1560).sensitivity(TwoSectionWell.BELOW), SensitiveInput.PORE_PRESSURE);
        assertEquals(Optional.empty(), pore.atLow(), "no spread, no swing");
        assertEquals("the case gives one estimate only", pore.basis());
    }

    @Test
    void aSectionThatIsNotShutInIsNotVaried() {
        Sensitivity sensitivity = study(3000, 1560).sensitivity(TwoSectionWell.TOP);
        assertTrue(sensitivity.inputs().stream().allMatch(i -> i.flip() instanceof Sensitivity.NotVaried));
    }
}
