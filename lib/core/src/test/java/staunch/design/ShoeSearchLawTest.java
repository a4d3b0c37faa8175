package staunch.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.design.ShoeObstacle.Criterion;
import staunch.earth.EarthModel;
import staunch.earth.StayOut;
import staunch.envelope.MethodOptions;
import staunch.envelope.Verdict;
import staunch.units.InputFault;
import staunch.units.Source;

class ShoeSearchLawTest {
    private static final String STRING = "9 5/8 in casing";
    private static final double PLANNED = 4400;

    private static ShoeSearch search(WellCase wellCase, MudRule mud) {
        return Study.of(wellCase).shoes(mud, Progress.SILENT);
    }

    /** The whole evaluation of a design that was built with that shoe, not moved to it. */
    private static boolean holds(double shoe, double mud) {
        return Study.of(TwoSectionWell.with(TwoSectionWell.design("moved", shoe, mud))).evaluate().sections().stream()
                .filter(s -> s.plan().name().equals(TwoSectionWell.BELOW))
                .allMatch(s -> s.verdict().outcome() == Verdict.Outcome.HOLDS);
    }

    private static boolean allowed(ShoeWindow window, double depth) {
        return window.allowed().stream().anyMatch(s -> depth >= s.from() && depth <= s.to());
    }

    @Property(tries = 12, seed = "1")
    void aBoundaryHoldsAndAMetreBeyondItDoesNot(@ForAll @DoubleRange(min = 1420, max = 1830) double mud) {
        ShoeWindow window = search(TwoSectionWell.with(TwoSectionWell.design("one", PLANNED, mud)), MudRule.AS_PLANNED)
                .window(STRING);
        for (ShoeStretch stretch : window.allowed()) {
            assertTrue(holds(stretch.from(), mud), () -> "upper end " + stretch);
            assertTrue(holds(stretch.to(), mud), () -> "lower end " + stretch);
            boolean end = stretch.boundAbove().get(0).criterion() == Criterion.END_OF_SEARCH;
            double shallower = stretch.from() - 1;
            assertTrue(end || !holds(shallower, mud) || allowed(window, shallower), () -> "above " + stretch);
        }
        for (ShoeStretch stretch : window.stretches()) {
            if (!stretch.allowed()) {
                assertFalse(holds(stretch.from(), mud), () -> "upper end " + stretch);
                assertFalse(holds(stretch.to(), mud), () -> "lower end " + stretch);
                assertFalse(stretch.boundAbove().isEmpty());
                assertFalse(stretch.boundBelow().isEmpty());
            }
        }
    }

    @Property(tries = 25, seed = "1")
    void everyDepthIsWhatTheStretchItLiesInSays(
            @ForAll @DoubleRange(min = 1420, max = 1830) double mud,
            @ForAll @DoubleRange(min = 502, max = PLANNED) double shoe) {
        ShoeWindow window = search(TwoSectionWell.with(TwoSectionWell.design("one", PLANNED, mud)), MudRule.AS_PLANNED)
                .window(STRING);
        boolean atBoundary = window.stretches().stream()
                .anyMatch(s -> Math.abs(s.from() - shoe) < 0.1 || Math.abs(s.to() - shoe) < 0.1);
        assertTrue(atBoundary || allowed(window, shoe) == holds(shoe, mud));
    }

    @Test
    void stretchesCoverTheSearchWithoutGap() {
        ShoeWindow window = search(TwoSectionWell.with(TwoSectionWell.design("one", 3000, 1560)), MudRule.AS_PLANNED)
                .window(STRING);
        List<ShoeStretch> stretches = window.stretches();
        assertEquals(501, stretches.get(0).from());
        assertEquals(3000, stretches.get(stretches.size() - 1).to());
        for (int i = 1; i < stretches.size(); i++) {
            assertEquals(stretches.get(i - 1).to(), stretches.get(i).from(), 0.1, "boundary to a decimetre");
            assertTrue(stretches.get(i - 1).allowed() != stretches.get(i).allowed());
        }
        assertEquals(
                Criterion.NOT_SHUT_IN_ABOVE,
                stretches.get(stretches.size() - 1).boundBelow().get(0).criterion());
        assertTrue(window.plannedAllowed());
    }

    private static WellCase withStayOut(WellCase c, double top, double bottom) {
        EarthModel e = c.earth();
        EarthModel earth = new EarthModel(
                e.porePressure(),
                e.strength(),
                e.tests(),
                e.weakZones(),
                e.temperature(),
                e.tops(),
                List.of(new StayOut("fault", top, bottom, "losses", new Source("invented", ""))));
        return new WellCase(
                c.header(),
                c.units(),
                c.datum(),
                c.path(),
                earth,
                c.designs(),
                c.equipment(),
                c.options(),
                c.files(),
                c.warnings());
    }

    @Test
    void noShoeStandsInAStayOut() {
        WellCase free = TwoSectionWell.with(TwoSectionWell.design("one", PLANNED, 1560));
        double shallowest = search(free, MudRule.AS_PLANNED)
                .window(STRING)
                .shallowest()
                .orElseThrow()
                .from();
        ShoeWindow window = search(withStayOut(free, shallowest - 5, shallowest + 7), MudRule.AS_PLANNED)
                .window(STRING);
        ShoeStretch first = window.shallowest().orElseThrow();
        assertEquals(shallowest + 7, first.from(), 0.1);
        assertEquals(Criterion.STAY_OUT, first.boundAbove().get(0).criterion());
        assertEquals("losses", first.boundAbove().get(0).statement());
        ShoeWindow split = search(withStayOut(free, shallowest + 20, shallowest + 20.5), MudRule.AS_PLANNED)
                .window(STRING);
        assertEquals(2, split.allowed().size(), "half a metre is not missed");
    }

    /** Deeper TD, heavier mud: what the lightest mud holds, the search with it allows at least as much. */
    @Property(tries = 6, seed = "1")
    void theLightestMudAllowsNoLess(@ForAll @DoubleRange(min = 1420, max = 1830) double mud) {
        WellCase wellCase = TwoSectionWell.with(TwoSectionWell.design("one", PLANNED, mud));
        ShoeWindow planned = search(wellCase, MudRule.AS_PLANNED).window(STRING);
        ShoeWindow lightest = search(wellCase, MudRule.LIGHTEST).window(STRING);
        for (ShoeStretch stretch : planned.allowed()) {
            assertTrue(allowed(lightest, stretch.from()) && allowed(lightest, stretch.to()));
        }
    }

    @Test
    void jointShoesHoldTogetherAndBracketEachOther() {
        WellCase wellCase = DeepWell.of(4);
        ShoeSearch search = search(wellCase, MudRule.LIGHTEST);
        assertEquals(2, search.joint().size());
        for (JointShoes joint : search.joint()) {
            CasingDesign design = joint.design().orElseThrow();
            assertEquals(4, joint.shoes().size() + joint.leftOut().size());
            Study.of(wellCase.withDesign(design)).evaluate().sections().stream()
                    .filter(s -> s.verdict().outcome() != Verdict.Outcome.NOT_SHUT_IN)
                    .forEach(s -> assertEquals(
                            Verdict.Outcome.HOLDS,
                            s.verdict().outcome(),
                            joint.direction() + " " + s.plan().name() + ": "
                                    + s.verdict().statement()));
            assertEquals(
                    joint.shoes().size(),
                    design.strings().stream()
                            .filter(s -> joint.shoes().stream()
                                    .anyMatch(j -> j.string().equals(s.name()) && j.measuredDepth() == s.shoeDepth()))
                            .count());
        }
        JointShoes up = search.joint().get(0);
        JointShoes down = search.joint().get(1);
        assertEquals(up.leftOut(), down.leftOut(), "one number of strings is the fewest from either end");
        for (int i = 0; i < up.shoes().size(); i++) {
            assertTrue(up.shoes().get(i).measuredDepth() <= down.shoes().get(i).measuredDepth() + 0.1);
        }
    }

    @Test
    void aStringThatIsNotNeededIsLeftOut() {
        // One gradient of pore pressure and of strength: a single shoe carries what is below it.
        JointShoes joint = search(DeepWell.easy(3), MudRule.LIGHTEST).joint().get(0);
        assertTrue(joint.shoes().size() < 3, joint.toString());
        assertEquals(3 - joint.shoes().size(), joint.leftOut().size());
        assertTrue(joint.statement().contains("not needed"), joint.statement());
    }

    @Test
    void whereNothingWorksItSaysSo() {
        JointShoes joint = search(TwoSectionWell.with(TwoSectionWell.design("one", PLANNED, 2400)), MudRule.AS_PLANNED)
                .joint()
                .get(0);
        assertEquals(Optional.empty(), joint.design());
        assertTrue(joint.statement().startsWith("no depths"), joint.statement());
    }

    @Test
    void theLightestMudIsRefusedWhereDensityMoves() {
        Study study = Study.of(TwoSectionWell.with(TwoSectionWell.design("one", PLANNED, 1560)))
                .withOptions(
                        MethodOptions.DEFAULT.withMudDensity(MethodOptions.MudDensityModel.PRESSURE_AND_TEMPERATURE));
        InputFault fault = assertThrows(InputFault.class, () -> study.shoes(MudRule.LIGHTEST, Progress.SILENT));
        assertTrue(fault.getMessage().contains("planned muds"), fault.getMessage());
    }
}
