package staunch.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.units.InputFault;

/** A well whose shoe and mud both move: what is shared out must be what changed. */
class RerunAttributionLawTest {
    private static final String SHOE = "shoe";
    private static final String MUD = "mud";

    /** A case between two, which may forbid to move the shoe without the mud. */
    private record Between(double shoe, double mud, double newShoe, double newMud, boolean free)
            implements ChangedCase {
        @Override
        public List<InputChange> changes() {
            return List.of(change(SHOE), change(MUD));
        }

        @Override
        public WellCase with(Set<String> made) {
            if (!free && made.equals(Set.of(SHOE))) {
                throw new InputFault("shoe", "stands in mud that is too light", "change both");
            }
            return TwoSectionWell.with(TwoSectionWell.design(
                    "base", made.contains(SHOE) ? newShoe : shoe, made.contains(MUD) ? newMud : mud));
        }

        RunRecord before() {
            return record(with(Set.of()));
        }

        RunRecord after() {
            return record(with(Set.of(SHOE, MUD)));
        }

        Rerun rerun() {
            return Rerun.of(before(), after(), this, Rerun.Scope.ALL, Progress.SILENT);
        }
    }

    private static InputChange change(String name) {
        ChangedField field = new ChangedField(name, "", "then", "now", Optional.empty());
        return new InputChange(name, InputChange.Kind.INPUT, List.of(field));
    }

    private static RunRecord record(WellCase wellCase) {
        return new RunRecord(
                "1",
                wellCase.header().well(),
                List.of(),
                List.of(),
                List.of(),
                RunRecord.results(
                        Study.of(wellCase).evaluate(), Study.of(wellCase).operations()));
    }

    private static double sum(List<OptionalDouble> shares) {
        return shares.stream().mapToDouble(OptionalDouble::getAsDouble).sum();
    }

    @Property(tries = 12, seed = "1")
    void sharesAndRemainderAreTheWholeChange(
            @ForAll @DoubleRange(min = 2000, max = 4200) double shoe,
            @ForAll @DoubleRange(min = 1450, max = 1750) double mud,
            @ForAll @DoubleRange(min = 2000, max = 4200) double newShoe,
            @ForAll @DoubleRange(min = 1450, max = 1750) double newMud) {
        Between between = new Between(shoe, mud, newShoe, newMud, true);
        for (SectionChange section : between.rerun().sections()) {
            for (Attribution a : section.attributions()) {
                if (a.total().isEmpty() || a.remainderAlone().isEmpty()) {
                    continue;
                }
                double expected = section.after()
                                .orElseThrow()
                                .value(a.quantity())
                                .value()
                                .getAsDouble()
                        - section.before()
                                .orElseThrow()
                                .value(a.quantity())
                                .value()
                                .getAsDouble();
                assertEquals(expected, a.total().getAsDouble(), 1e-6);
                assertEquals(
                        expected,
                        sum(a.shares().stream().map(Attribution.Share::alone).toList())
                                + a.remainderAlone().getAsDouble(),
                        1e-6);
                assertEquals(
                        expected,
                        sum(a.shares().stream()
                                .map(Attribution.Share::inSequence)
                                .toList()),
                        1e-6,
                        "in sequence nothing is left over");
            }
        }
    }

    @Property(tries = 6, seed = "1")
    void aRunAgainstItselfHasNothingChanged(
            @ForAll @DoubleRange(min = 2000, max = 4200) double shoe,
            @ForAll @DoubleRange(min = 1450, max = 1750) double mud) {
        RunRecord record = new Between(shoe, mud, shoe, mud, true).before();
        ChangedCase none = new ChangedCase() {
            @Override
            public List<InputChange> changes() {
                return List.of();
            }

            @Override
            public WellCase with(Set<String> made) {
                throw new IllegalStateException("nothing is computed anew where nothing changed");
            }
        };
        assertTrue(
                Rerun.of(record, record, none, Rerun.Scope.ALL, Progress.SILENT).nothingChanged());
    }

    @Test
    void changesThatNeedEachOtherAreOneCause() {
        Rerun rerun = new Between(3000, 1560, 3300, 1600, false).rerun();
        assertEquals(1, rerun.causes().size());
        assertEquals("shoe and mud", rerun.causes().get(0).name());
        assertTrue(rerun.causes().get(0).together().contains("too light"));
        SectionChange below = rerun.section("base", TwoSectionWell.BELOW);
        Attribution a = below.attribution(SectionQuantity.DRILLED_MARGIN).orElseThrow();
        assertEquals(a.total(), a.shares().get(0).alone());
        assertEquals(OptionalDouble.of(0), a.remainderAlone());
    }

    @Test
    void whatALaterVersionComputesOtherwiseIsTheLibrarys() {
        Between between = new Between(3000, 1560, 3000, 1600, true);
        RunRecord now = between.before();
        List<SectionResult> shifted = now.results().stream()
                .map(r -> new SectionResult(
                        r.design(),
                        r.section(),
                        r.verdict(),
                        r.values().stream()
                                .map(RerunAttributionLawTest::shifted)
                                .toList()))
                .toList();
        RunRecord older = new RunRecord("0", now.well(), List.of(), List.of(), List.of(), shifted);
        Rerun rerun = Rerun.of(older, between.after(), between, Rerun.Scope.ALL, Progress.SILENT);
        assertEquals(InputChange.Kind.LIBRARY, rerun.causes().get(0).kind());
        Attribution a = rerun.section("base", TwoSectionWell.BELOW)
                .attribution(SectionQuantity.DRILLED_MARGIN)
                .orElseThrow();
        assertEquals(OptionalDouble.of(-1000), a.shares().get(0).alone(), "recorded 1 kPa more than is found now");
        assertEquals(OptionalDouble.of(0), a.remainderInSequence());
        assertFalse(rerun.nothingChanged());
    }

    private static ResultValue shifted(ResultValue value) {
        return value.quantity() != SectionQuantity.DRILLED_MARGIN
                        || value.value().isEmpty()
                ? value
                : new ResultValue(
                        value.quantity(),
                        value.measure(),
                        OptionalDouble.of(value.value().getAsDouble() + 1000),
                        value.outcome());
    }
}
