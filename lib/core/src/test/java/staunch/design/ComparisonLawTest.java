package staunch.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.envelope.MethodOptions;
import staunch.units.InputFault;

class ComparisonLawTest {
    private static Comparison compare(CasingDesign... designs) {
        WellCase wellCase = TwoSectionWell.with(designs);
        return Study.of(wellCase)
                .compare(wellCase.designs().stream().map(CasingDesign::name).toList());
    }

    private static SectionComparison below(Comparison comparison) {
        return comparison.sections().stream()
                .filter(s -> s.section().equals(TwoSectionWell.BELOW))
                .findFirst()
                .orElseThrow();
    }

    private static SectionOutcome renamed(SectionOutcome outcome) {
        return new SectionOutcome(
                "",
                outcome.topDepth(),
                outcome.bottomDepth(),
                outcome.drilled(),
                outcome.swabbed(),
                outcome.maasp(),
                outcome.leastShoeMargin(),
                outcome.verdict());
    }

    @Property(tries = 10)
    void aDesignDiffersInNothingFromItself(
            @ForAll @DoubleRange(min = 2000, max = 4200) double shoe,
            @ForAll @DoubleRange(min = 1450, max = 1800) double mud) {
        Comparison comparison =
                compare(TwoSectionWell.design("one", shoe, mud), TwoSectionWell.design("the same again", shoe, mud));
        assertEquals(2, comparison.sections().size());
        for (SectionComparison section : comparison.sections()) {
            assertEquals(
                    renamed(section.outcomes().get(0)),
                    renamed(section.outcomes().get(1)));
            assertEquals(Optional.empty(), section.pairs().get(0).dominant());
        }
        assertEquals(DesignPair.Relation.EQUAL, below(comparison).pairs().get(0).relation());
        assertEquals(
                comparison.steel().get(0).strings(), comparison.steel().get(1).strings());
        assertEquals(comparison.steel().get(0).mass(), comparison.steel().get(1).mass());
    }

    @Property(tries = 10)
    void theOrderOfDesignsDoesNotMatter(
            @ForAll @DoubleRange(min = 2000, max = 4200) double shoe,
            @ForAll @DoubleRange(min = 2000, max = 4200) double otherShoe,
            @ForAll @DoubleRange(min = 1450, max = 1800) double mud) {
        WellCase wellCase = TwoSectionWell.with(
                TwoSectionWell.design("one", shoe, mud),
                TwoSectionWell.design("two", otherShoe, 1560),
                TwoSectionWell.design("three", 3000, mud));
        Comparison forth = Study.of(wellCase).compare(List.of("one", "two", "three"));
        Comparison back = Study.of(wellCase).compare(List.of("three", "two", "one"));
        assertEquals(List.of("three", "two", "one"), back.designs());
        assertEquals(byName(forth.steel(), SteelUse::design), byName(back.steel(), SteelUse::design));
        assertEquals(forth.sections().size(), back.sections().size());
        for (int i = 0; i < forth.sections().size(); i++) {
            SectionComparison a = forth.sections().get(i);
            SectionComparison b = back.sections().get(i);
            assertEquals(a.section(), b.section());
            assertEquals(byName(a.outcomes(), SectionOutcome::design), byName(b.outcomes(), SectionOutcome::design));
            assertEquals(dominances(a), dominances(b));
        }
    }

    private static <T> Map<String, T> byName(List<T> all, Function<T, String> name) {
        return all.stream().collect(Collectors.toMap(name, Function.identity()));
    }

    private static List<String> dominances(SectionComparison section) {
        return section.pairs().stream()
                .filter(p -> p.dominant().isPresent())
                .map(DesignPair::statement)
                .sorted()
                .toList();
    }

    /** Formation MAASP with one gradient of strength grows with the depth of the shoe, whatever else happens. */
    @Property(tries = 10)
    void aShallowerShoeNeverDominates(
            @ForAll @DoubleRange(min = 2000, max = 4000) double shoe,
            @ForAll @DoubleRange(min = 10, max = 200) double raised) {
        Comparison comparison = compare(
                TwoSectionWell.design("deeper", shoe, 1560), TwoSectionWell.design("shallower", shoe - raised, 1560));
        assertNotEquals(
                Optional.of("shallower"), below(comparison).pairs().get(0).dominant());
    }

    /** With a lighter mud the same intensity loads the shoe less in every stage, and MAASP is greater. */
    @Property(tries = 10)
    void theLighterMudDominates(
            @ForAll @DoubleRange(min = 1450, max = 1750) double mud,
            @ForAll @DoubleRange(min = 5, max = 100) double heavier) {
        Comparison comparison = compare(
                TwoSectionWell.design("heavier", 3000, mud + heavier), TwoSectionWell.design("lighter", 3000, mud));
        assertEquals(Optional.of("lighter"), below(comparison).pairs().get(0).dominant());
    }

    @Test
    void aSectionThatIsNotShutInIsNotCompared() {
        Comparison comparison =
                compare(TwoSectionWell.design("one", 3000, 1560), TwoSectionWell.design("two", 2500, 1560));
        SectionComparison top = comparison.sections().get(0);
        assertEquals(TwoSectionWell.TOP, top.section());
        assertEquals(DesignPair.Relation.NOT_COMPARED, top.pairs().get(0).relation());
    }

    @Test
    void aSectionThatOneDesignLacksHasTheOthersOutcomeAlone() {
        CasingDesign whole = TwoSectionWell.design("whole", 3000, 1560);
        CasingDesign half = new CasingDesign(
                "half", whole.strings(), List.of(whole.sections().get(0)));
        SectionComparison below = below(compare(half, whole));
        assertEquals(Optional.empty(), below.outcome("half"));
        assertTrue(below.outcome("whole").isPresent());
        assertEquals(List.of(), below.pairs());
    }

    @Test
    void progressRunsOverAllDesigns() {
        WellCase wellCase =
                TwoSectionWell.with(TwoSectionWell.design("one", 3000, 1560), TwoSectionWell.design("two", 2500, 1560));
        List<Long> done = new ArrayList<>();
        List<Long> totals = new ArrayList<>();
        Comparison.of(wellCase, List.of("one", "two"), MethodOptions.DEFAULT, (n, total, what) -> {
            done.add(n);
            totals.add(total);
        });
        assertEquals(done.stream().sorted().toList(), done);
        assertEquals(1, totals.stream().distinct().count());
        assertEquals(totals.get(0), done.get(done.size() - 1));
    }

    @Test
    void designsThatCannotBeComparedAreAFault() {
        Study study = Study.of(TwoSectionWell.with(TwoSectionWell.design("one", 3000, 1560)));
        for (List<String> names : List.of(List.of("one"), List.of("one", "one"), List.of("one", "two"))) {
            InputFault fault = assertThrows(InputFault.class, () -> study.compare(names));
            assertTrue(fault.getMessage().contains("design"), fault.getMessage());
        }
    }
}
