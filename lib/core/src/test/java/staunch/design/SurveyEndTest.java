package staunch.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.Verdict;
import staunch.envelope.WellEnvelope;
import staunch.well.WellPath;

/** A case built in code whose survey does not reach the deepest section. */
class SurveyEndTest {
    private static WellEnvelope ending(double end) {
        WellCase whole = TwoSectionWell.with(TwoSectionWell.design("one", 3000, 1560));
        WellCase cut = new WellCase(
                whole.header(),
                whole.units(),
                whole.datum(),
                WellPath.vertical(end),
                whole.earth(),
                whole.designs(),
                whole.equipment(),
                whole.options(),
                whole.files(),
                whole.warnings());
        return Study.of(cut).evaluate();
    }

    @Test
    void onlyTheSectionBelowItsEndIsNotAssessed() {
        WellEnvelope whole = ending(9000);
        WellEnvelope cut = ending(4000);
        assertEquals(
                whole.section(TwoSectionWell.TOP).window().points(),
                cut.section(TwoSectionWell.TOP).window().points());
        SectionEnvelope below = cut.section(TwoSectionWell.BELOW);
        assertEquals(Verdict.Outcome.NOT_ASSESSED, below.verdict().outcome());
        assertTrue(below.verdict().statement().contains("the survey ends above section TD"));
        assertTrue(below.verdict().statement().contains("missing: survey to section TD"));
        assertEquals(3000, below.shoeVerticalDepth().orElseThrow(), 1e-9);
        assertTrue(below.bottomVerticalDepth().isEmpty());
        assertTrue(below.maasp().isEmpty());
        assertTrue(below.masps().isEmpty());
        assertEquals(2, below.drilled().required().orElseThrow(), 0);
    }

    @Test
    void aSectionThatIsNotShutInStaysSo() {
        SectionEnvelope top = ending(2000).section(TwoSectionWell.TOP);
        assertEquals(Verdict.Outcome.NOT_SHUT_IN, top.verdict().outcome());
        assertEquals(Verdict.Outcome.NOT_ASSESSED, top.window().verdict().outcome());
    }

    @Test
    void aSurveyThatEndsAtSectionTotalDepthReachesIt() {
        assertTrue(
                ending(4500).section(TwoSectionWell.BELOW).bottomVerticalDepth().isPresent());
    }
}
