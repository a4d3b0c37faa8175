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
import staunch.envelope.CirculationPeaks;
import staunch.envelope.Kick;
import staunch.envelope.MethodOptions;
import staunch.envelope.NotAssessed;
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
                outcome.peaks(),
                outcome.verdict());
    }

    @Property(tries = 10, seed = "1")
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

    @Property(tries = 10, seed = "1")
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
    @Property(tries = 10, seed = "1")
    void aShallowerShoeNeverDominates(
            @ForAll @DoubleRange(min = 2000, max = 4000) double shoe,
            @ForAll @DoubleRange(min = 10, max = 200) double raised) {
        Comparison comparison = compare(
                TwoSectionWell.design("deeper", shoe, 1560), TwoSectionWell.design("shallower", shoe - raised, 1560));
        assertNotEquals(
                Optional.of("shallower"), below(comparison).pairs().get(0).dominant());
    }

    /** With a lighter mud the same intensity loads the shoe less in every stage, and MAASP is greater. */
    @Property(tries = 10, seed = "1")
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
        assertEquals("not shut in", top.pairs().get(0).notCompared());
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

    private static CasingDesign priced(CasingDesign design, double perMetre, String currency) {
        return new CasingDesign(
                design.name(),
                design.strings(),
                design.sections(),
                design.strings().stream()
                        .map(s -> new StringPrice(s.name(), currency, perMetre, StringPrice.Basis.METRE))
                        .toList());
    }

    @Test
    void costIsLengthTimesPrice() {
        SteelUse use = SteelUse.of(priced(TwoSectionWell.design("one", 3000, 1560), 10, "EUR"));
        assertEquals(new SteelCost("EUR", 10 * (500 + 3000)), use.cost().orElseThrow());
        CasingDesign half = TwoSectionWell.design("half", 3000, 1560);
        assertEquals(
                Optional.empty(),
                SteelUse.of(new CasingDesign(
                                "half",
                                half.strings(),
                                half.sections(),
                                List.of(new StringPrice("13 3/8 in casing", "EUR", 1, StringPrice.Basis.KILOGRAM))))
                        .cost(),
                "a string without a price leaves the cost open");
    }

    /** Nothing differs but the price, so that the cheaper one dominates in total and neither does in a section. */
    @Test
    void theCheaperOfEqualDesignsDominatesInTotal() {
        Comparison comparison = compare(
                priced(TwoSectionWell.design("dear", 3000, 1560), 20, "EUR"),
                priced(TwoSectionWell.design("cheap", 3000, 1560), 10, "EUR"));
        assertEquals(Optional.of("cheap"), comparison.totals().get(0).dominant());
        assertEquals(List.of(ComparedValue.COST), comparison.totals().get(0).secondBetter());
        assertEquals(List.of("cheap"), comparison.undominated());
        assertEquals(List.of("dear", "cheap"), below(comparison).undominated());
        Comparison mixed = compare(
                priced(TwoSectionWell.design("dear", 3000, 1560), 20, "EUR"),
                priced(TwoSectionWell.design("cheap", 3000, 1560), 10, "NOK"));
        assertEquals(
                DesignPair.Relation.EQUAL, mixed.totals().get(0).relation(), "money of two currencies is not compared");
    }

    @Test
    void aDesignIsEqualToItselfInTotal() {
        Comparison comparison =
                compare(TwoSectionWell.design("one", 3000, 1560), TwoSectionWell.design("two", 3000, 1560));
        assertEquals(DesignPair.Relation.EQUAL, comparison.totals().get(0).relation());
        assertEquals(List.of("one", "two"), comparison.undominated());
    }

    /** The table of a study says what the comparison says, whatever the order it is asked in. */
    @Test
    void theTableOfAStudyAgreesWithTheComparison() {
        WellCase wellCase =
                TwoSectionWell.with(TwoSectionWell.design("one", 3000, 1560), TwoSectionWell.design("two", 2500, 1560));
        Comparison comparison = Study.of(wellCase).compare(List.of("one", "two"));
        List<StudyVariant> variants = StudyVariant.estimates(wellCase, MethodOptions.DEFAULT);
        StudyTable table = Study.of(wellCase).table(List.of("two", "one"), variants);
        assertEquals(2 * 2 * 2 * 2, table.rows().size());
        for (StudyTable.Row row : table.rows()) {
            if (row.variant().equals(MethodOptions.Estimates.HIGH_PORE_LOW_STRENGTH.title())) {
                SectionOutcome outcome = comparison.sections().stream()
                        .filter(s -> s.section().equals(row.section()))
                        .flatMap(s -> s.outcome(row.design()).stream())
                        .findFirst()
                        .orElseThrow();
                assertEquals(outcome.verdict(), row.verdict());
                boolean drilled = row.kick().scenario() == Kick.Scenario.DRILLED;
                assertEquals((drilled ? outcome.drilled() : outcome.swabbed()).check(), row.kick());
            }
        }
        assertThrows(InputFault.class, () -> Study.of(wellCase).table(List.of("one", "one"), variants));
        assertThrows(InputFault.class, () -> Study.of(wellCase).table(List.of("one"), List.of()));
    }

    /** Pressure at the choke with all the gas there never exceeds the formation pressure that drives it. */
    @Property(tries = 5, seed = "1")
    void theChokePeakStaysBelowTheFormationPressure(@ForAll @DoubleRange(min = 2000, max = 4200) double shoe) {
        WellCase wellCase = TwoSectionWell.with(TwoSectionWell.design("one", shoe, 1560));
        SectionOutcome outcome = below(
                        compare(TwoSectionWell.design("one", shoe, 1560), TwoSectionWell.design("two", shoe, 1560)))
                .outcome("one")
                .orElseThrow();
        if (outcome.peaks() instanceof CirculationPeaks.Computed peaks) {
            double formation = outcome.drilled().kick().orElseThrow().formationPressure();
            assertTrue(peaks.chokePressure() > 0 && peaks.chokePressure() < formation);
            assertTrue(peaks.shoePressure().getAsDouble() < formation);
        } else {
            assertTrue(((NotAssessed) outcome.peaks()).missing().length() > 0, wellCase.toString());
        }
    }
}
