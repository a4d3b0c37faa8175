package staunch.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import staunch.design.ShoeObstacle.Criterion;
import staunch.earth.EarthModel;
import staunch.earth.StayOut;
import staunch.envelope.MethodOptions;
import staunch.envelope.SectionCheck;
import staunch.envelope.SectionEvaluator;
import staunch.envelope.Verdict;
import staunch.units.InputFault;
import staunch.units.Source;
import staunch.well.CasingString;

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

    /** The last shoe of a bottom-up solution, and the first of a top-down one, are bound where they are said to be. */
    @Test
    void aJointBoundaryHoldsAndAMetreBeyondItDoesNot() {
        WellCase wellCase = DeepWell.of(3);
        ShoeProgramme programme =
                new ShoeProgramme(wellCase, wellCase.designs().get(0), wellCase.options(), MudRule.LIGHTEST);
        ShoeSections sections = new ShoeSections(wellCase, programme);
        List<CasingString> strings = programme.movable();
        for (JointShoes joint : search(wellCase, MudRule.LIGHTEST).joint()) {
            assertEquals(3, joint.shoes().size());
            boolean up = joint.direction() == JointShoes.Direction.BOTTOM_UP;
            int end = up ? 2 : 0;
            JointShoes.Shoe shoe = joint.shoes().get(end);
            assertTrue(shoe.boundBy().get(0).criterion() != Criterion.END_OF_SEARCH, joint.toString());
            ShoeSections.Between hole = up
                    ? new ShoeSections.Between(Optional.of(strings.get(2)), Optional.empty())
                    : new ShoeSections.Between(Optional.empty(), Optional.of(strings.get(0)));
            double beyond = shoe.measuredDepth() + (up ? -1 : 1);
            assertTrue(sections.holds(hole, Map.of(strings.get(end), shoe.measuredDepth()), Set.of()));
            assertFalse(sections.holds(hole, Map.of(strings.get(end), beyond), Set.of()));
        }
    }

    /** Every choice of strings and depths, each built as a design and checked section by section. */
    private static Optional<Integer> fewest(WellCase wellCase, double[] depths) {
        ShoeProgramme programme =
                new ShoeProgramme(wellCase, wellCase.designs().get(0), wellCase.options(), MudRule.LIGHTEST);
        List<CasingString> strings = programme.movable();
        Integer least = null;
        long choices = Math.round(Math.pow(depths.length + 1, strings.size()));
        for (long choice = 0; choice < choices; choice++) {
            Map<CasingString, Double> shoes = new HashMap<>();
            Set<CasingString> leftOut = new HashSet<>();
            double last = 0;
            boolean downwards = true;
            long rest = choice;
            for (CasingString string : strings) {
                int which = (int) (rest % (depths.length + 1));
                rest /= depths.length + 1;
                if (which == depths.length) {
                    leftOut.add(string);
                } else {
                    downwards &= depths[which] > last;
                    last = depths[which];
                    shoes.put(string, last);
                }
            }
            if (downwards && (least == null || shoes.size() < least)) {
                Study study = Study.of(wellCase.withDesign(programme.design(shoes, leftOut)));
                boolean holds = study.wellCase().designs().get(0).sections().stream()
                        .allMatch(p -> SectionEvaluator.check(study.input(p.name()))
                                        .verdict()
                                        .outcome()
                                == Verdict.Outcome.HOLDS);
                least = holds ? Integer.valueOf(shoes.size()) : least;
            }
        }
        return Optional.ofNullable(least);
    }

    /** What the search says of a well is what every choice of depths says, liners that hang from each other included. */
    @ParameterizedTest
    @CsvSource({
        "2, 0, false",
        "2, -120, false",
        "3, 0, false",
        "3, 0, true",
        "2, -120, true",
        "3, 60, true",
        "3, -200, true"
    })
    void theSearchAgreesWithEveryChoiceOfDepths(int strings, double weaker, boolean liners) {
        WellCase wellCase = DeepWell.weaker(strings, weaker, liners);
        double[] depths = {450, 900, 1300, 1800, 2500, 3300, 3700, 4600};
        ShoeProgramme programme =
                new ShoeProgramme(wellCase, wellCase.designs().get(0), wellCase.options(), MudRule.LIGHTEST);
        List<JointShoes> joint =
                new JointSearch(wellCase, programme, new ShoeSections(wellCase, programme), depths, false).search();
        Optional<Integer> brute = fewest(wellCase, depths);
        for (JointShoes found : joint) {
            assertEquals(brute, found.design().map(d -> found.shoes().size()), found.toString());
            assertEquals(brute.isEmpty(), found.block().isPresent());
        }
    }

    /** Stronger rock: every shoe may stand at least as shallow, alone and, with as many strings, the last one of all. */
    @Property(tries = 6, seed = "1")
    void moreStrengthNeverMakesTheShallowestDepthDeeper(@ForAll @DoubleRange(min = 1, max = 80) double stronger) {
        ShoeSearch base = search(DeepWell.of(3), MudRule.LIGHTEST);
        ShoeSearch strong = search(DeepWell.weaker(3, -stronger, false), MudRule.LIGHTEST);
        for (ShoeWindow window : base.windows()) {
            if (window.shallowest().isPresent()) {
                ShoeStretch more = strong.window(window.string()).shallowest().orElseThrow();
                assertTrue(more.from() <= window.shallowest().get().from() + 0.05, window.string());
            }
        }
        JointShoes few = base.joint().get(0);
        JointShoes now = strong.joint().get(0);
        assertTrue(now.shoes().size() <= few.shoes().size());
        if (now.leftOut().equals(few.leftOut())) {
            int last = few.shoes().size() - 1;
            assertTrue(now.shoes().get(last).measuredDepth()
                    <= few.shoes().get(last).measuredDepth() + 0.05);
        }
    }

    /** Depths of strings that are covered change nothing below; what a liner hangs from does. */
    @Test
    void aSectionSeesTheStringAboveItAndWhatThatHangsFrom() {
        for (boolean liners : new boolean[] {false, true}) {
            WellCase wellCase = DeepWell.weaker(3, 0, liners);
            ShoeProgramme programme =
                    new ShoeProgramme(wellCase, wellCase.designs().get(0), wellCase.options(), MudRule.LIGHTEST);
            List<CasingString> s = programme.movable();
            ShoeSections.Between last = new ShoeSections.Between(Optional.of(s.get(2)), Optional.empty());
            SectionCheck some = check(programme, last, Map.of(s.get(0), 500.0, s.get(1), 1700.0, s.get(2), 3900.0));
            SectionCheck covered = check(programme, last, Map.of(s.get(0), 900.0, s.get(1), 1700.0, s.get(2), 3900.0));
            SectionCheck hung = check(programme, last, Map.of(s.get(0), 500.0, s.get(1), 3000.0, s.get(2), 3900.0));
            assertEquals(!liners, some.equals(covered), "the outermost string");
            assertEquals(!liners, some.equals(hung), "the string above the last");
        }
    }

    private static SectionCheck check(
            ShoeProgramme programme, ShoeSections.Between section, Map<CasingString, Double> shoes) {
        return SectionEvaluator.check(programme.section(section.upper(), section.lower(), shoes, Set.of()));
    }

    @Test
    void whereNothingWorksThePairThatBlocksIsNamed() {
        ShoeSearch search = search(DeepWell.of(2), MudRule.LIGHTEST);
        JointShoes.Block up = search.joint().get(0).block().orElseThrow();
        JointShoes.Block down = search.joint().get(1).block().orElseThrow();
        assertEquals(Optional.empty(), up.upper(), "every string carries the one below it");
        assertEquals(Optional.of("string 1"), up.lower());
        assertEquals(Criterion.DRILLED_TOLERANCE, up.obstacles().get(0).criterion());
        assertEquals(Optional.of("string 2"), down.upper());
        assertEquals(Optional.empty(), down.lower(), "every string stands below the one above it");
        assertEquals(5500, down.to());
        assertTrue(down.from() < 3635, "the last string would have to stand deeper");
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
